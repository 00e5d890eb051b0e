// The part of the program behind the season report: as a document for the coach and as tables for other programs.
#include <QFile>
#include <QTemporaryDir>

#include "engine/report/csv_tables.hpp"
#include "mobile/pdf/season_pdf.hpp"
#include "mobile/views/app_view_model.hpp"
#include "mobile/views/report_words.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

/// Paper and units as where the device is used: Letter in North America, as Qt's locale has it.
pdf::PageSize paperOf(const QLocale& locale)
{
    const bool letter = locale.territory() == QLocale::UnitedStates || locale.territory() == QLocale::Canada;
    return letter ? pdf::PageSize::Letter : pdf::PageSize::A4;
}

Expected<QByteArray> pdfBytes(const report::SeasonReport& report, pdf::PageSize paper, pdf::Units units,
                              const pdf::Wording& wording)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("report.pdf"));
    if (const auto written = pdf::writeSeasonPdf(report, path, paper, units, wording); !written)
        return tl::unexpected(written.error());
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return fail(Code::StoreFailed, path.toStdString(), "cannot be read: " + file.errorString().toStdString());
    return file.readAll();
}

using NamedBytes = std::vector<std::pair<QString, QByteArray>>;

NamedBytes tablesOf(const report::SeasonReport& report)
{
    NamedBytes files;
    for (const auto& table : report::csvTables(std::span(&report, 1)))
        files.emplace_back(QString::fromStdString(table.fileName), QByteArray::fromStdString(report::csvText(table)));
    return files;
}

} // namespace

/// "Outdoor 2026, Mira Example": of file and folder.
QString AppViewModel::seasonWords() const
{
    return tr("%1, %2", "season, athlete").arg(season_.name(), bench_.athleteName());
}

void AppViewModel::offer(const QStringList& places)
{
    if (files_.offer)
        files_.offer(places);
}

void AppViewModel::handOutReport()
{
    const auto id = athlete();
    if (!id || !shownSeason_ || !files_.hand)
        return;
    say(tr("The report is being written …"));
    const Units shown = preferences_->units();
    const auto units = shown.typedInPounds() ? pdf::Units::PoundsAndInches : pdf::Units::Metric;
    log_->run(
        this,
        [who = *id, season = *shownSeason_, today = clock_.today(), units, wording = reportWording(shown),
         paper = paperOf(preferences_->locale())](const Logbook& logbook) -> Expected<QByteArray> {
            const auto report = logbook.seasonReport(who, season, today);
            if (!report)
                return tl::unexpected(report.error());
            return pdfBytes(*report, paper, units, wording);
        },
        [this, name = fileName(seasonWords(), QStringLiteral("pdf"))](const Expected<QByteArray>& document) {
            if (!document)
                return sayProblem(document.error());
            const auto place = files_.hand(name, *document);
            if (!place)
                return sayProblem(place.error());
            say(tr("The report is in %1").arg(*place));
            offer({*place});
        });
}

void AppViewModel::handOutTables()
{
    const auto id = athlete();
    if (!id || !shownSeason_ || !files_.hand)
        return;
    say(tr("The tables are being written …"));
    log_->run(
        this,
        [who = *id, season = *shownSeason_, today = clock_.today()](const Logbook& logbook) {
            return logbook.seasonReport(who, season, today).map(tablesOf);
        },
        [this, folder = folderName(seasonWords())](const Expected<NamedBytes>& tables) {
            if (!tables)
                return sayProblem(tables.error());
            QStringList places;
            for (const auto& [name, bytes] : *tables) {
                const auto place = files_.hand(folder + QLatin1Char('/') + name, bytes);
                if (!place)
                    return sayProblem(place.error());
                places += *place;
            }
            say(tr("%1 tables in %2; data_dictionary.csv explains each column")
                    .arg(tables->size())
                    .arg(files_.place + QLatin1Char('/') + folder));
            offer(places);
        });
}

} // namespace fleetrung::views
