#include "engine/season/lines.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double gainError = 0.82; // typical errors: standard error of a mean of three minus a mean of three

} // namespace

EvidenceLine line(std::string name, double value, std::string unit, std::string allowed, bool met, double uncertainty)
{
    return {std::move(name), value, uncertainty, std::move(unit), std::move(allowed), met, true, {}};
}

EvidenceLine lacking(EvidenceLine line, std::string words)
{
    line.lacking = std::move(words);
    return line;
}

std::string counted(int count, const std::string& thing)
{
    return integerText(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string atLeast(double value, int decimals)
{
    return "at least " + fixedText(value, decimals);
}

std::string timeName(const LadderDay& day)
{
    switch (day.rung().metric) {
    case Metric::DropTime:
        return "drop time";
    case Metric::ContactTime:
        return "contact time";
    default:
        return "time to peak";
    }
}

int daysOnRung(const LadderDay& day)
{
    return day.stay.empty() ? 0 : daysBetween(day.stay.front().day, day.input.today);
}

int daysUntilOpen(const LadderDay& day)
{
    for (const auto& span : day.input.plan.phases)
        if (span.macrocycle == day.window->macrocycle && span.kind >= day.next()->earliest &&
            span.from >= day.window->from)
            return std::max(0, daysBetween(day.input.today, span.from));
    return 0;
}

void addStayLines(const LadderDay& day, std::vector<EvidenceLine>& lines, bool exposed)
{
    const auto& rules = day.data.rules;
    const auto sessions = static_cast<int>(day.stay.size());
    const auto neededSessions = static_cast<int>(rules.stepSessions), neededDays = static_cast<int>(rules.stepDays);
    const std::string done = exposed ? ", counted as done: strength is up, speed is not" : "";
    lines.push_back(lacking(line("sessions on this rung", sessions, "sessions", atLeast(neededSessions) + done,
                                 exposed || sessions >= neededSessions),
                            counted(neededSessions - sessions, "more session") + " on this rung"));
    lines.push_back(lacking(line("days on this rung", daysOnRung(day), "days", atLeast(neededDays) + done,
                                 exposed || daysOnRung(day) >= neededDays),
                            counted(neededDays - daysOnRung(day), "more day") + " on this rung"));
}

void addTimeLines(const LadderDay& day, const TimeProgress& progress, std::vector<EvidenceLine>& lines)
{
    const double needed = roundTo(day.data.rules.stepGain * progress.error, 1);
    lines.push_back(lacking(line(timeName(day) + ", gain since entry", progress.gain, "ms", atLeast(needed),
                                 progress.gain >= needed, roundTo(gainError * progress.error, 1)),
                            timeName(day) +
                                (progress.gain > 0 ? " is " + milliseconds(progress.gain) + " sooner than at entry"
                                                   : std::string(" is no sooner than at entry")) +
                                ", and only " + milliseconds(needed) + " are more than it wanders by itself"));
    const auto& band = day.rung().targetBand;
    auto target = line(timeName(day), progress.recent, "ms",
                       fixedText(band.low * 1000, 0) + "-" + fixedText(band.high * 1000, 0) + ", for show",
                       progress.recent >= band.low * 1000 && progress.recent <= band.high * 1000, progress.error);
    target.gates = false;
    lines.push_back(std::move(target));
    if (const auto change = recentChange(day)) {
        auto seen =
            line(timeName(day) + ", last two sooner than the six before", -change->later, "ms",
                 atLeast(change->limit) + " to be seen, for show", -change->later >= change->limit, change->error);
        seen.gates = false;
        lines.push_back(std::move(seen));
    }
}

namespace
{

void addStrengthLine(const LadderDay& day, std::vector<EvidenceLine>& lines)
{
    const auto trend = strengthTrend(day);
    if (!trend)
        return;
    const double percent = roundTo(trend->change * 100, 10);
    lines.push_back(lacking(
        line("strength against the first four sessions", percent, "%",
             "above " + fixedText(-day.data.rules.strengthLost * 100, 0) + (trend->levelled ? ", levelled off" : ""),
             !trend->lost, roundTo(trend->standardError * 100, 10)),
        "strength is down by " + fixedText(-percent, 1) + " % on this rung; a maintenance set is added"));
}

} // namespace

void addStrengthLines(const LadderDay& day, std::vector<EvidenceLine>& lines)
{
    const auto& rules = day.data.rules;
    if (const auto velocity = velocityProgress(day)) {
        const double floor = roundTo(-rules.stepVelocityLoss * velocity->error, 1000);
        lines.push_back(lacking(line("probe velocity against entry", velocity->change, "m/s", atLeast(floor, 3),
                                     velocity->change >= floor, velocity->error),
                                "the probe set is slower than at entry by " + fixedText(-velocity->change, 3) +
                                    " m/s: a peak that comes sooner because the bar is slower is no gain"));
    }
    addStrengthLine(day, lines);
    double valid = 0;
    const auto recent = std::min<std::size_t>(3, day.stay.size());
    for (std::size_t i = day.stay.size() - recent; i < day.stay.size(); ++i)
        valid += day.stay[i].validShare / static_cast<double>(recent);
    valid = roundTo(valid * 100, 1);
    lines.push_back(lacking(
        line("valid repetitions", valid, "%", atLeast(rules.stepValidShare * 100), valid >= rules.stepValidShare * 100),
        "only " + fixedText(valid, 0) + " % of the last repetitions kept the full range of this rung"));
    if (auto sides = sideLine(day))
        lines.push_back(std::move(*sides));
}

std::string firstUnmet(const std::vector<EvidenceLine>& lines)
{
    const auto unmet =
        std::find_if(lines.begin(), lines.end(), [](const EvidenceLine& item) { return item.gates && !item.met; });
    return unmet == lines.end() ? std::string() : unmet->lacking;
}

std::string latestText(const LadderDay& day)
{
    const auto latest = day.latest();
    return latest ? " At the latest the next step comes after " + dateText(*latest) + "." : "";
}

Decision hold(const LadderDay& day, std::vector<EvidenceLine> lines, std::string reason)
{
    auto decision = stayDecision(day, DecisionKind::Hold, "hold", std::move(reason));
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace fleetrung::season
