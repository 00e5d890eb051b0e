#include "platform/desk/pdf_output.hpp"

#include <array>
#include <iostream>

#include <QGuiApplication>

#include "mobile/pdf/season_pdf.hpp"

namespace fleetrung::desk
{

namespace
{

/// Qt also speaks of desktops that a program without a window does not need; only what is broken is passed on.
void passOn(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << message.toStdString() << '\n';
}

} // namespace

bool canWritePdf()
{
    return true;
}

Result<void> writePdf(const report::SeasonReport& report, const std::string& path, PdfStyle style)
{
    qInstallMessageHandler(passOn);
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
