#include "engine/season/phases.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

using std::chrono::days;
using PhaseDays = std::array<int, 6>; // by PhaseKind

constexpr int week = 7;
/// A macrocycle shorter than five tapers gets a shorter taper.
constexpr int tapersInMacrocycle = 5;

int& at(PhaseDays& lengths, PhaseKind kind)
{
    return lengths[static_cast<std::size_t>(kind)];
}

constexpr std::array<PhaseKind, 4> preparation{PhaseKind::GeneralPreparation, PhaseKind::SpecialPreparation,
                                               PhaseKind::PreCompetition, PhaseKind::Competition};

const PhaseRule& rule(const Rules& rules, PhaseKind kind)
{
    return rules.phases[static_cast<std::size_t>(kind)];
}

/// Enough time: shares in whole weeks within their limits; general preparation takes what the others leave.
void shareOut(PhaseDays& lengths, int left, const Rules& rules)
{
    int others = 0;
    for (const auto kind : preparation) {
        if (kind == PhaseKind::GeneralPreparation)
            continue;
        const auto& limits = rule(rules, kind);
        const int wanted = static_cast<int>(std::lround(left * limits.share / week)) * week;
        const int most = limits.maximumDays > 0 ? limits.maximumDays : wanted;
        at(lengths, kind) = std::clamp(wanted, limits.minimumDays, std::max(most, limits.minimumDays));
        others += at(lengths, kind);
    }
    // Near the minimum rounding to weeks may take days that general preparation needs.
    auto give = preparation.rbegin();
    while (left - others < rule(rules, PhaseKind::GeneralPreparation).minimumDays && give != preparation.rend() - 1) {
        if (at(lengths, *give) > rule(rules, *give).minimumDays) {
            --at(lengths, *give);
            --others;
        } else {
            ++give;
        }
    }
    at(lengths, PhaseKind::GeneralPreparation) = left - others;
}

/// Too little time: every phase is cut in proportion to its minimum.
void compress(PhaseDays& lengths, int left, int minimum, const Rules& rules)
{
    int given = 0;
    for (const auto kind : preparation) {
        at(lengths, kind) = rule(rules, kind).minimumDays * left / minimum;
        given += at(lengths, kind);
    }
    at(lengths, PhaseKind::GeneralPreparation) += left - given;
}

std::string dayCount(int count)
{
    return integerText(count) + (count == 1 ? " day" : " days");
}

void noteCompression(const PhaseDays& lengths, const Rules& rules, const Competition& competition,
                     std::vector<std::string>& notes)
{
    std::string text = "Too little time before " + competition.name + " on " + dateText(competition.date) + ": ";
    bool any = false;
    for (const auto& limits : rules.phases) {
        const int length = lengths[static_cast<std::size_t>(limits.kind)];
        if (length >= limits.minimumDays || limits.kind == PhaseKind::Transition)
            continue;
        text += std::string(any ? ", " : "") + std::string(phaseName(limits.kind)) +
                (length == 0 ? " is left out" : " is compressed to " + dayCount(length)) + " (usually at least " +
                integerText(limits.minimumDays) + ")";
        any = true;
    }
    if (any)
        notes.push_back(text + '.');
}

PhaseDays lengthsOf(int total, bool opensWithTransition, const Rules& rules)
{
    PhaseDays lengths{};
    const int fullTaper = static_cast<int>(rules.taperDays);
    const int minimumTaper = rule(rules, PhaseKind::Taper).minimumDays;
    at(lengths, PhaseKind::Taper) = total >= tapersInMacrocycle * minimumTaper
                                        ? std::clamp(total / tapersInMacrocycle, minimumTaper, fullTaper)
                                        : std::max(1, total / tapersInMacrocycle);
    int left = total - at(lengths, PhaseKind::Taper);
    int minimum = 0;
    for (const auto kind : preparation)
        minimum += rule(rules, kind).minimumDays;
    if (opensWithTransition) {
        const auto& limits = rule(rules, PhaseKind::Transition);
        const int rest = left >= minimum + limits.minimumDays ? (left - minimum) / 2 : left / (2 * week);
        at(lengths, PhaseKind::Transition) = std::min(rest, 2 * limits.minimumDays);
        left -= at(lengths, PhaseKind::Transition);
    }
    if (left >= minimum)
        shareOut(lengths, left, rules);
    else
        compress(lengths, left, minimum, rules);
    return lengths;
}

void append(PhaseLayout& layout, PhaseKind kind, CivilDate& from, int length, int macrocycle)
{
    if (length <= 0)
        return;
    layout.spans.push_back({kind, from, from + days(length - 1), macrocycle});
    from += days(length);
}

/// After the last main competition: the races that are left, then transition.
void appendClosing(PhaseLayout& layout, const SeasonSetup& setup, CivilDate from, int macrocycle)
{
    const CivilDate lastRace = setup.competitions.back().date;
    const CivilDate end = setup.end.value_or(lastRace);
    append(layout, PhaseKind::Competition, from, daysBetween(from, lastRace) + 1, macrocycle);
    append(layout, PhaseKind::Transition, from, daysBetween(from, end) + 1, macrocycle);
}

} // namespace

PhaseLayout layPhases(const SeasonSetup& setup, const Rules& rules)
{
    PhaseLayout layout;
    CivilDate from = setup.start;
    int macrocycle = 0;
    for (const auto& competition : setup.competitions) {
        if (!competition.main || competition.date < from)
            continue;
        const auto lengths = lengthsOf(daysBetween(from, competition.date) + 1, macrocycle > 0, rules);
        noteCompression(lengths, rules, competition, layout.notes);
        for (const auto& limits : rules.phases)
            append(layout, limits.kind, from, lengths[static_cast<std::size_t>(limits.kind)], macrocycle);
        ++macrocycle;
    }
    appendClosing(layout, setup, from, macrocycle - 1);
    return layout;
}

const PhaseSpan* phaseOn(std::span<const PhaseSpan> spans, CivilDate day)
{
    const auto found = std::find_if(spans.begin(), spans.end(),
                                    [&](const PhaseSpan& span) { return span.from <= day && day <= span.to; });
    return found == spans.end() ? nullptr : &*found;
}

} // namespace fleetrung::season
