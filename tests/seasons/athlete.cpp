#include "tests/seasons/athlete.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::seasons
{
namespace
{

using season::Competition;
using season::Metric;
using season::Priority;
using std::chrono::days;

/// Weekly patterns: lifting days, sprint days.
struct Week {
    std::vector<int> lifts, sprints;
};

Week weekOf(Random& random, bool young)
{
    static const std::vector<Week> adults{
        {{1, 3, 5}, {1, 3, 5}}, {{1, 4}, {1, 4, 6}},       {{2, 4, 6}, {2, 6}}, {{1, 2, 4, 6}, {1, 4, 6}},
        {{1, 3, 5}, {2, 4, 6}}, {{1, 2, 4, 5}, {1, 2, 4}}, {{2, 5}, {2, 5}},    {{1, 3, 5, 6}, {1, 3, 5}}};
    const int count = young ? 3 : static_cast<int>(adults.size()); // the first three keep a day between lifts
    return adults[static_cast<std::size_t>(random.below(count))];
}

CivilDate sundayNear(CivilDate day)
{
    return day + days(7 - isoWeekday(day));
}

/// One or two peaks, and lesser races in the last third before each.
std::vector<Competition> competitionsOf(Random& random, CivilDate start, int weeks, bool twoPeaks)
{
    std::vector<Competition> races;
    const auto addPeak = [&](CivilDate from, CivilDate main, const std::string& name) {
        const int length = daysBetween(from, main);
        const int lesser = random.below(4);
        for (int i = 0; i < lesser; ++i) {
            const auto day = main - days(3 + random.below(std::max(1, length / 3)));
            if (day > from)
                races.push_back({day, name + " race " + std::string(1, static_cast<char>('1' + i)),
                                 static_cast<Priority>(random.below(3)), false});
        }
        races.push_back({main, name, Priority::A, true});
    };
    const auto last = sundayNear(start + days(7 * weeks - 7));
    if (twoPeaks) {
        const auto first = sundayNear(start + days(7 * (weeks * 2 / 5)));
        addPeak(start, first, "Indoor");
        addPeak(first, last, "Outdoor");
    } else {
        addPeak(start, last, "Main");
    }
    std::stable_sort(races.begin(), races.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    std::vector<Competition> apart; // one a day
    for (auto& race : races) {
        if (!apart.empty() && apart.back().date == race.date) {
            if (race.main)
                apart.back() = race;
            continue;
        }
        apart.push_back(race);
    }
    return apart;
}

std::vector<std::string> laddersOf(Random& random)
{
    std::vector<std::string> keys{"squat", "clean", "hinge", "pull", "step-up", "drop-jump", "ankle"};
    for (std::size_t i = keys.size() - 1; i > 0; --i)
        std::swap(keys[i], keys[static_cast<std::size_t>(random.below(static_cast<int>(i) + 1))]);
    keys.resize(static_cast<std::size_t>(1 + random.below(5)));
    return keys;
}

SeasonSetup setupOf(Random& random)
{
    SeasonSetup setup;
    setup.name = "Invented season";
    setup.start = *parseDate("2026-01-05") + days(7 * random.below(52) + (random.chance(0.3) ? random.below(7) : 0));
    const bool isShort = random.chance(0.15), twoPeaks = !isShort && random.chance(0.25);
    const int weeks = isShort ? 5 + random.below(7) : twoPeaks ? 34 + random.below(14) : 14 + random.below(25);
    setup.competitions = competitionsOf(random, setup.start, weeks, twoPeaks);
    if (random.chance(0.3))
        setup.end = setup.competitions.back().date + days(7 * random.below(4));
    auto& athlete = setup.athlete;
    athlete.name = "Invented";
    const bool young = random.chance(0.2);
    const int age = young ? 13 + random.below(5) : 18 + random.below(20);
    athlete.birthDate = setup.start - days(365 * age + 1 + age / 4 + random.below(360));
    athlete.trainingYears = young ? random.uniform(0, 3) : random.uniform(0.5, 15);
    athlete.bodyMassKg = young ? random.uniform(45, 75) : random.uniform(52, 108);
    athlete.guardianConsent = young;
    if (young && random.chance(0.5))
        athlete.growthPerMonth = random.uniform(0, 0.009);
    const auto week = weekOf(random, young);
    setup.trainingDays = week.lifts;
    setup.sprintDays = week.sprints;
    setup.sessionMinutes = 45 + 15 * random.below(5);
    for (const double height : {45.0, 35.0, 25.0, 15.0, 10.0, 20.0, 30.0, 40.0})
        if (!random.chance(0.1))
            setup.boxHeights.push_back(season::centimetres(height));
    for (const char* item : {"pins", "blocks"})
        if (random.chance(0.7))
            setup.equipment.emplace_back(item);
    setup.ladders = laddersOf(random);
    return setup;
}

RungTruth rungOf(Random& random, const season::Rung& rung, double allowed)
{
    RungTruth truth;
    truth.time = (rung.targetBand.low + rung.targetBand.high) / 2 * random.uniform(1.0, 1.25);
    truth.gain = random.chance(0.25) ? 0 : random.uniform(0.04, 0.32);
    if (rung.metric == Metric::ContactTime)
        truth.gain = random.chance(0.25) ? 0 : random.uniform(0.02, 0.15);
    truth.pace = random.uniform(2, 6);
    truth.share = allowed;
    truth.range = random.uniform(rung.range.low, rung.range.high);
    return truth;
}

LadderTruth ladderOf(Random& random, const season::Ladder& ladder, const season::AthleteFacts& athlete)
{
    LadderTruth truth;
    const bool jump = ladder.rungs.front().probeShare <= 0;
    truth.maximumKg = jump ? 0 : *athlete.bodyMassKg * random.uniform(0.9, 1.9) * (ladder.key == "clean" ? 0.7 : 1);
    truth.growth = random.uniform(0.02, 0.22);
    truth.pace = random.uniform(8, 40);
    truth.asymmetry = ladder.oneSided ? random.normal(0, 0.06) : 0;
    double allowed = 1;
    for (const auto& rung : ladder.rungs) {
        if (&rung != &ladder.rungs.front())
            allowed *= rung.loadRatio * random.uniform(0.92, 1.12);
        truth.rungs[rung.key] = rungOf(random, rung, allowed);
    }
    return truth;
}

std::vector<Absence> absencesOf(Random& random, const SeasonSetup& setup)
{
    std::vector<Absence> absences;
    const int length = daysBetween(setup.start, setup.competitions.back().date);
    const auto add = [&](const char* reason, int least, int most) {
        const auto from = setup.start + days(random.below(std::max(1, length)));
        absences.push_back({from, from + days(least + random.below(most - least)), reason});
    };
    for (int i = random.below(3); i > 0; --i)
        add("illness", 4, 16);
    if (random.chance(0.4))
        add("holiday or exams", 7, 15);
    if (random.chance(0.08))
        add("injury", 21, 45);
    return absences;
}

std::vector<Pain> painsOf(Random& random, const SeasonSetup& setup)
{
    static const std::vector<std::string> regions{"knee", "back", "hamstring", "ankle", "shoulder", ""};
    std::vector<Pain> pains;
    const int length = daysBetween(setup.start, setup.competitions.back().date);
    for (int i = random.below(4); i > 0; --i) {
        const auto from = setup.start + days(random.below(std::max(1, length)));
        pains.push_back({from, from + days(random.below(8)), 1 + random.below(7),
                         regions[static_cast<std::size_t>(random.below(static_cast<int>(regions.size())))]});
    }
    return pains;
}

template <class Span> const Span* spanOn(const std::vector<Span>& spans, CivilDate day)
{
    const auto found =
        std::find_if(spans.begin(), spans.end(), [&](const Span& s) { return s.from <= day && day <= s.to; });
    return found == spans.end() ? nullptr : &*found;
}

} // namespace

Athlete inventAthlete(std::uint64_t seed)
{
    Random random(seed);
    Athlete athlete;
    athlete.seed = seed;
    athlete.setup = setupOf(random);
    for (const auto& key : athlete.setup.ladders)
        athlete.ladders[key] =
            ladderOf(random, *findLadder(season::standardSeasonData().ladders, key), athlete.setup.athlete);
    athlete.noise = random.uniform(0.7, 1.3);
    athlete.fatigueEffect = random.uniform(0, 0.03);
    athlete.follows = random.chance(0.7) ? 1 : random.uniform(0.6, 0.95);
    athlete.missed = random.uniform(0, 0.12);
    athlete.sloppy = random.chance(0.3) ? random.uniform(0.05, 0.3) : 0;
    athlete.poorNights = random.uniform(0, 0.03);
    athlete.refuses = random.uniform(0, 0.01);
    athlete.sensor = !random.chance(0.15);
    athlete.flying = random.uniform(1.85, 2.6);
    athlete.stopwatch = random.chance(0.5) ? 0.02 : random.uniform(0.05, 0.12); // by hand
    athlete.absences = absencesOf(random, athlete.setup);
    athlete.pains = painsOf(random, athlete.setup);
    return athlete;
}

const Absence* absenceOn(const Athlete& athlete, CivilDate day)
{
    return spanOn(athlete.absences, day);
}

const Pain* painOn(const Athlete& athlete, CivilDate day)
{
    return spanOn(athlete.pains, day);
}

} // namespace fleetrung::seasons
