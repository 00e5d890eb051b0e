// The season report in the user's language: every text as it is set down, from the invented season that fills each
// part.
#include "bench_day.hpp"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "mobile/views/report_words.hpp"
#include "mobile/views/translations.hpp"
#include "tests/report/invented_season.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

/// The interface in German while it lives.
struct German {
    Preferences preferences;
    Translations translations{&preferences};

    German() { REQUIRE(translations.install(QStringLiteral(":/i18n/fleetrung_de.qm"))); }
};

const Units germanUnits{QLocale(QLocale::German, QLocale::Germany)};

/// What was told of each English text while the report was set.
std::map<QString, QString> toldIn(const pdf::Wording& wording)
{
    std::map<QString, QString> told;
    pdf::Wording heard = wording;
    heard.tell = [&told, &wording](const QString& english) { return told[english] = wording.tell(english); };
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("report.pdf"));
    REQUIRE(pdf::writeSeasonPdf(invented::season(), path, pdf::PageSize::A4, pdf::Units::Metric, heard));
    CHECK(QFile(path).size() > 10000);
    return told;
}

} // namespace

TEST_CASE("The report speaks German from its title to its last table, with German days and decimal commas",
          "[language][report]")
{
    const German german;
    const auto told = toldIn(reportWording(germanUnits));
    CHECK(told.at(QStringLiteral("SEASON REPORT")) == QStringLiteral("SAISONBERICHT"));
    CHECK(told.at(QStringLiteral("Decisions and their reasons")) == QStringLiteral("Entscheidungen und ihre Gründe"));
    CHECK(told.at(QStringLiteral("Days planned")) == QStringLiteral("Tage geplant"));
    // No sentence of the pages is left in English. Reasons and cautions of this season are invented, as are its names.
    std::vector<QString> invented;
    const auto season = invented::season();
    for (const auto& decision : season.decisions) {
        invented.push_back(QString::fromStdString(decision.reason));
        invented.push_back(QString::fromStdString(decision.why.empty() ? decision.reason : decision.why));
    }
    for (const auto& caution : season.cautions)
        invented.push_back(QString::fromStdString(caution));
    static const QRegularExpression english(
        QStringLiteral("\\b(the|of|with|were|are|from|each|this|that|than|not)\\b"));
    for (const auto& [text, said] : told) {
        if (std::ranges::any_of(invented, [&text = text](const QString& one) { return text.contains(one); }))
            continue;
        INFO(text.toStdString() << " -> " << said.toStdString());
        CHECK(said.indexOf(english) < 0);
    }
}

TEST_CASE("Days and numbers of the report follow the user, sources and names stay", "[language][report]")
{
    const auto english = reportWording(Units{QLocale(QLocale::English, QLocale::UnitedKingdom)});
    const QString line =
        QStringLiteral("Flying 20 m: 3 runs; best 2.06 s on 5 January 2026, best of the first day 2.11 s.");
    CHECK(english.tell(line) == line);
    const German german;
    const auto wording = reportWording(germanUnits);
    CHECK(wording.tell(line) ==
          QStringLiteral("20 m fliegend: 3 Läufe; Bestzeit 2,06 s am 05.01.2026, Bestzeit des ersten Tags 2,11 s."));
    CHECK(
        wording.tell(
            QStringLiteral("Time to peak velocity became shorter on full squat (637 to 549 ms, typical error 29 "
                           "ms); half squat (374 to 342 ms, typical error 21 ms).")) ==
        QStringLiteral("Zeit bis zur Höchstgeschwindigkeit wurde kürzer auf Tiefe Kniebeuge (637 auf 549 ms, typischer "
                       "Fehler 29 ms); Halbe Kniebeuge (374 auf 342 ms, typischer Fehler 21 ms)."));
    CHECK(wording.tell(QStringLiteral(
              "No session on this rung yet. Evidence: sessions on this rung 5 (at least 6: not met).")) ==
          QStringLiteral(
              "Noch keine Einheit auf dieser Sprosse. Beleg: Einheiten auf dieser Sprosse 5 (mindestens 6: nicht "
              "erfüllt)."));
    CHECK(wording.tell(QStringLiteral("5 Jan – 12 Feb")) == QStringLiteral("5. Jan. – 12. Feb."));
    CHECK(wording.tell(QStringLiteral("doi:10.1515/humo-2016-0006")) == QStringLiteral("doi:10.1515/humo-2016-0006"));
    CHECK(wording.tell(QStringLiteral("Imani Vesterholt")) == QStringLiteral("Imani Vesterholt"));
    CHECK(wording.tell(QStringLiteral("2.06 (+1.4)")) == QStringLiteral("2,06 (+1,4)"));
}

// For the eye: `mobile_tests "[.look]"` leaves report_de.pdf where it is started.
TEST_CASE("The German report as a document", "[.look]")
{
    const German german;
    REQUIRE(pdf::writeSeasonPdf(invented::season(), QStringLiteral("report_de.pdf"), pdf::PageSize::A4,
                                pdf::Units::Metric, reportWording(germanUnits)));
}
