#include "tests/seasons/stays.hpp"

#include "engine/season/decision.hpp"
#include "tests/seasons/athlete.hpp"

namespace fleetrung::seasons
{
namespace
{

using std::chrono::days;

constexpr double entryTime = 0.400;   // s: a typical error of 32 ms, so that rounding to 1 ms says nothing
constexpr double entryVelocity = 0.7; // m/s
constexpr int gap = 3;                // days between sessions
constexpr int fewestForChange = 8;    // sessions before a change can be told: two after six

/// Half squats from the first day of special preparation on: the next rung's phase is open, its date is far.
struct Stage {
    season::DayInput input;
    CivilDate begin;
};

const Stage& stage()
{
    static const Stage made = [] {
        season::SeasonSetup setup;
        setup.name = "Planted";
        setup.start = *parseDate("2026-01-05");
        setup.competitions = {{*parseDate("2026-12-06"), "Main", season::Priority::A, true}};
        setup.trainingDays = setup.sprintDays = {1, 2, 3, 4, 5, 6, 7};
        setup.equipment = {"bar", "rack", "pins", "blocks"};
        setup.ladders = {"squat"};
        setup.athlete.name = "Planted";
        Stage stage;
        stage.input.plan = *season::planSeason(setup);
        for (const auto& span : stage.input.plan.phases)
            if (span.kind == season::PhaseKind::SpecialPreparation)
                stage.begin = span.from;
        stage.input.states = {{"squat", {{"half", stage.begin}}, 100.0, 120.0}};
        return stage;
    }();
    return made;
}

season::SessionEvidence sessionOn(CivilDate day, double time, double velocity)
{
    season::SessionEvidence evidence;
    evidence.day = day;
    evidence.ladder = "squat";
    evidence.rung = "half";
    evidence.loadKg = 100;
    evidence.timeToPeak = season::Measured{time, 0};
    evidence.meanVelocity = season::Measured{velocity, 0};
    return evidence;
}

bool tellsSooner(const season::Decision& decision)
{
    if (decision.rule == "step-for-evidence")
        return true;
    for (const auto& line : decision.evidence)
        if (line.name.find("sooner than the six before") != std::string::npos && line.met)
            return true;
    return false;
}

} // namespace

Stay playStay(std::uint64_t seed, double change)
{
    const auto& rules = season::standardSeasonData().rules;
    Random random(seed);
    auto input = stage().input;
    const double error = 0.08 * entryTime;
    Stay stay;
    for (int done = 1; done <= stayLength; ++done) {
        const auto day = stage().begin + days(gap * (done - 1));
        const double moved = done > sessionsBefore ? change : 0;
        input.history.push_back(sessionOn(day, entryTime + error * (moved + random.normal()),
                                          entryVelocity + rules.meanVelocityError * random.normal()));
        if (done < 6)
            continue;
        input.today = day + days(gap);
        const auto decision = season::decideDay(input).at(0);
        if (decision.rule == "step-for-evidence" && stay.stepped == 0)
            stay.stepped = done;
        if (done < fewestForChange)
            continue;
        const bool told = change < 0 ? tellsSooner(decision) : decision.rule == "ease";
        ++stay.looks;
        stay.told += told ? 1 : 0;
        if (told && stay.seen == 0 && (done > sessionsBefore || change == 0))
            stay.seen = done;
    }
    return stay;
}

} // namespace fleetrung::seasons
