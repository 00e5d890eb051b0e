#include "mobile/feedback/share_sheet.hpp"

namespace fleetrung::feedback
{

OfferFiles shareSheet()
{
    return {}; // files lie in a folder that every program can open
}

} // namespace fleetrung::feedback
