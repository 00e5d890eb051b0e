#include "mobile/pdf/season_pdf.hpp"

#include <QBuffer>
#include <QGuiApplication>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "mobile/fonts/fonts.hpp"
#include "mobile/pdf/page_flow.hpp"
#include "mobile/pdf/report_pages.hpp"

namespace fleetrung::pdf
{
namespace
{

constexpr int dotsPerInch = 1200;
constexpr QMarginsF marginsMm(19, 17, 19, 13);

/// Sets the whole document on `device`; gives the number of pages, 0 where it could not begin.
int setDocument(const report::SeasonReport& report, QIODevice& device, PageSize size, Units units,
                const Wording& wording, int pageCount)
{
    QPdfWriter writer(&device);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(dotsPerInch);
    writer.setPageLayout(QPageLayout(QPageSize(size == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                                     QPageLayout::Portrait, marginsMm, QPageLayout::Millimeter));
    const auto who = qtText(report.athlete.name) + QStringLiteral(" · ") + qtText(report.seasonName);
    const QString heading = QStringLiteral("Season report");
    writer.setTitle((wording.tell ? wording.tell(heading) : heading) + QStringLiteral(": ") + who);
    writer.setCreator(QStringLiteral("Fleetrung"));

    PageFlow flow(writer, who + QStringLiteral(" · no medical advice"), pageCount, wording);
    if (!flow.isOpen())
        return 0;
    setSummary(flow, report, units);
    setLadders(flow, report, units);
    setTrack(flow, report, units);
    setDidItWork(flow, report);
    setDecisions(flow, report, units);
    setPlanAgainstDone(flow, report);
    return flow.finish();
}

} // namespace

Expected<void> writeSeasonPdf(const report::SeasonReport& report, const QString& path, PageSize size, Units units,
                              const Wording& wording)
{
    if (qobject_cast<QGuiApplication*>(QCoreApplication::instance()) == nullptr)
        return fail(Code::InvalidArgument, "", "fonts need a QGuiApplication; make one before the report is written");

    fonts::bring();
    QBuffer draft; // the pages are counted first, so that each can say how many there are
    draft.open(QIODevice::WriteOnly);
    const int pages = setDocument(report, draft, size, units, wording, 0);

    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return fail(Code::StoreFailed, path.toStdString(),
                    "the report cannot be written here (" + file.errorString().toStdString() +
                        "); choose another folder");
    if (pages == 0 || setDocument(report, file, size, units, wording, pages) == 0)
        return fail(Code::StoreFailed, path.toStdString(), "the report could not be set; nothing was written");
    if (!file.commit())
        return fail(Code::StoreFailed, path.toStdString(),
                    "the report could not be finished (" + file.errorString().toStdString() +
                        "); free some space or choose another folder");
    return {};
}

} // namespace fleetrung::pdf
