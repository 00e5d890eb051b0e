// Strength up, speed not: whether the track has followed the bar.
#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/lines.hpp"
#include "engine/statistics/robust.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::size_t group = 3; // tests

bool comparable(const SpeedTest& test, const SpeedTest& latest, const Rules& rules)
{
    if (test.conditions != latest.conditions || test.windMps.has_value() != latest.windMps.has_value())
        return false;
    return !test.windMps || std::abs(*test.windMps - *latest.windMps) <= rules.speedWind + 1e-9;
}

std::vector<SpeedTest> comparableTests(const LadderDay& day)
{
    std::vector<SpeedTest> tests;
    for (const auto& test : day.input.log.tests)
        if (test.day < day.input.today && test.seconds > 0)
            tests.push_back(test);
    std::stable_sort(tests.begin(), tests.end(), [](const auto& a, const auto& b) { return a.day < b.day; });
    if (tests.empty())
        return tests;
    const auto latest = tests.back();
    std::erase_if(tests, [&](const SpeedTest& test) { return !comparable(test, latest, day.data.rules); });
    return tests;
}

double medianTime(std::span<const SpeedTest> tests)
{
    std::vector<double> seconds;
    for (const auto& test : tests)
        seconds.push_back(test.seconds);
    return statistics::median(seconds);
}

} // namespace

std::optional<EvidenceLine> speedNotFollowing(const LadderDay& day)
{
    const auto& rules = day.data.rules;
    const auto strength = strengthTrend(day);
    if (day.phase == nullptr || day.phase->kind < PhaseKind::SpecialPreparation || !strength ||
        strength->change < rules.speedStrength)
        return std::nullopt;
    const auto tests = comparableTests(day);
    if (tests.size() < 2 * group)
        return std::nullopt;
    const std::span<const SpeedTest> all(tests);
    const double now = medianTime(all.last(group));
    double best = 0;
    CivilDate bestDay{};
    for (std::size_t i = 0; i + 2 * group <= all.size(); ++i) {
        const double median = medianTime(all.subspan(i, group));
        if (best == 0 || median < best) {
            best = median;
            bestDay = all[i + group - 1].day;
        }
    }
    const double allowed = std::max(rules.speedLoss * best, rules.speedLossErrors * rules.speedError);
    const double slower = roundTo((now - best) * 1000, 1);
    const double limit = roundTo(allowed * 1000, 1);
    if (slower <= limit || daysBetween(bestDay, tests.back().day) < static_cast<int>(rules.speedDays))
        return std::nullopt;
    auto told = line("speed tests, slower than the best three", slower, "ms", "at most " + fixedText(limit, 0), false,
                     roundTo(rules.speedError * 1000, 1));
    told.gates = false;
    return told;
}

} // namespace fleetrung::season
