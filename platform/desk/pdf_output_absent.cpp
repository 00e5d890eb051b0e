#include "platform/desk/pdf_output.hpp"

namespace fleetrung::desk
{

bool canWritePdf()
{
    return false;
}

Result<void> writePdf(const report::SeasonReport&, const std::string&, PdfStyle)
{
    return refuse("--pdf: this build has no PDF, because the phone interface was left out of it; build with "
                  "-DFLEETRUNG_PHONE=ON, or ask for --csv alone");
}

} // namespace fleetrung::desk
