// Sentences of the engine in the user's language: recognised whole or sentence by sentence, values put back.
#include "bench_day.hpp"

#include "engine/season/phases.hpp"
#include "engine/season/plan.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/translations.hpp"

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

} // namespace

TEST_CASE("A decision's reason is told in the language of the user, with its values and rungs", "[language][engine]")
{
    const std::string reason =
        "On Half squat time to peak came down from 295 ms to 250 ms, more than it wanders by itself, "
        "and velocity held: go to Quarter squat.";
    CHECK(engineText(reason) == QString::fromStdString(reason)); // English stays as it is
    const German german;
    const QString said = engineText(reason);
    CHECK(said.contains(QStringLiteral("Halbe Kniebeuge")));
    CHECK(said.contains(QStringLiteral("von 295 ms auf 250 ms")));
    CHECK(said.endsWith(QStringLiteral("weiter zu Viertelkniebeuge.")));
}

TEST_CASE("Several sentences are told one by one, and what is not known stays English", "[language][engine]")
{
    const German german;
    CHECK(engineText(std::string("You chose not to lift today. The rung waits.")) ==
          QStringLiteral("Du wolltest heute nicht heben. Die Sprosse wartet."));
    CHECK(engineText(std::string("The rung waits. Nobody has written this.")) ==
          QStringLiteral("Die Sprosse wartet. Nobody has written this."));
    CHECK(engineText(std::string("at least 6")) == QStringLiteral("mindestens 6"));
    CHECK(engineText(std::string("12 sessions")) == QStringLiteral("12 Einheiten"));
    CHECK(engineText(std::string()).isEmpty());
}

TEST_CASE("Every ladder, rung, phase and caution of the standard season has its words", "[language][engine]")
{
    const German german;
    const auto& data = season::standardSeasonData();
    const auto known = [](const std::string& english) {
        return engineText(english) != QString::fromStdString(english);
    };
    for (const auto& ladder : data.ladders) {
        CAPTURE(ladder.name);
        CHECK(known(ladder.name));
        for (const auto& rung : ladder.rungs) {
            const std::string name = season::rungName(rung, {});
            CAPTURE(name);
            CHECK(known(name));
        }
    }
    for (const auto kind : {season::PhaseKind::GeneralPreparation, season::PhaseKind::SpecialPreparation,
                            season::PhaseKind::PreCompetition, season::PhaseKind::Competition, season::PhaseKind::Taper,
                            season::PhaseKind::Transition})
        CHECK(known(std::string(season::phaseName(kind))));
    for (const auto& caution : data.cautions) {
        CAPTURE(caution.key);
        CHECK(known(caution.text));
    }
}

TEST_CASE("The reasons of a day's lift are told sentence by sentence, also those that begin with a number",
          "[language][engine]")
{
    const German german;
    CHECK(
        engineText(
            std::string("A light, fast ladder: it may stand on any lifting day, before the heavy ones. 4 ladders "
                        "share 3 places a session: it is this one's turn.")) ==
        QStringLiteral("Eine leichte, schnelle Leiter: Sie darf an jedem Übungstag vor den schweren stehen. 4 Leitern "
                       "teilen sich 3 Plätze je Einheit: Diese ist an der Reihe."));
    CHECK(engineText(std::string("From at most 10 % more in 7 days, down to what the plates make.")) ==
          QStringLiteral("Aus: höchstens 10 % mehr in 7 Tagen, abgerundet auf ganze Scheiben."));
}
