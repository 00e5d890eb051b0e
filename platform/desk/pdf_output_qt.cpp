#include "platform/desk/pdf_output.hpp"

#include <array>

#include <QGuiApplication>

#include "mobile/pdf/season_pdf.hpp"

namespace fleetrung::desk
{

bool canWritePdf()
{
    return true;
}

Result<void> writePdf(const report::SeasonReport& report, const std::string& path, PdfStyle style)
{
    qputenv("QT_QPA_PLATFORM", "offscreen"); // fonts are needed, a screen is not
    std::string name = "fleetrung-desk";
    std::array<char*, 2> arguments{name.data(), nullptr};
    int count = 1;
    const QGuiApplication application(count, arguments.data());
    const auto written = pdf::writeSeasonPdf(report, QString::fromStdString(path),
                                             style.letter ? pdf::PageSize::Letter : pdf::PageSize::A4,
                                             style.pounds ? pdf::Units::PoundsAndInches : pdf::Units::Metric);
    if (!written)
        return tl::unexpected(inFile(path, written.error()));
    return {};
}

} // namespace fleetrung::desk
