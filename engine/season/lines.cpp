#include "engine/season/lines.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double meanOfThreeError = 0.82; // typical errors: standard error of baseline median minus mean of three

} // namespace

EvidenceLine line(std::string name, double value, std::string unit, std::string allowed, bool met, double uncertainty)
{
    return {std::move(name), value, uncertainty, std::move(unit), std::move(allowed), met, true};
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

void addStayLines(const LadderDay& day, std::vector<EvidenceLine>& lines)
{
    const auto& rules = day.data.rules;
    const auto sessions = static_cast<double>(day.stay.size());
    lines.push_back(line("sessions on this rung", sessions, "sessions", atLeast(rules.stepSessions),
                         sessions >= rules.stepSessions));
    lines.push_back(
        line("days on this rung", daysOnRung(day), "days", atLeast(rules.stepDays), daysOnRung(day) >= rules.stepDays));
}

void addTimeLines(const LadderDay& day, const TimeProgress& progress, std::vector<EvidenceLine>& lines)
{
    const double needed = roundTo(day.data.rules.stepGain * progress.error, 1);
    lines.push_back(line(timeName(day) + ", gain since entry", progress.gain, "ms", atLeast(needed),
                         progress.gain >= needed, roundTo(meanOfThreeError * progress.error, 1)));
    const auto& band = day.rung().targetBand;
    auto target = line(timeName(day), progress.recent, "ms",
                       fixedText(band.low * 1000, 0) + "-" + fixedText(band.high * 1000, 0) + ", for show",
                       progress.recent >= band.low * 1000 && progress.recent <= band.high * 1000, progress.error);
    target.gates = false;
    lines.push_back(std::move(target));
}

void addStrengthLines(const LadderDay& day, std::vector<EvidenceLine>& lines)
{
    const auto& rules = day.data.rules;
    if (const auto velocity = velocityProgress(day)) {
        const double floor = roundTo(-rules.stepVelocityLoss * velocity->error, 1000);
        lines.push_back(line("probe velocity against entry", velocity->change, "m/s", atLeast(floor, 3),
                             velocity->change >= floor, velocity->error));
    }
    if (const auto change = strengthChange(day))
        lines.push_back(line("strength against the first four sessions", roundTo(*change * 100, 10), "%",
                             "above " + fixedText(-rules.strengthLost * 100, 0), *change > -rules.strengthLost));
    double valid = 0;
    const auto recent = std::min<std::size_t>(3, day.stay.size());
    for (std::size_t i = day.stay.size() - recent; i < day.stay.size(); ++i)
        valid += day.stay[i].validShare / static_cast<double>(recent);
    valid = roundTo(valid * 100, 1);
    lines.push_back(line("valid repetitions", valid, "%", atLeast(rules.stepValidShare * 100),
                         valid >= rules.stepValidShare * 100));
}

std::string firstUnmet(const std::vector<EvidenceLine>& lines)
{
    for (const auto& item : lines) {
        if (!item.gates || item.met)
            continue;
        const bool counted = item.name.rfind(item.unit, 0) == 0; // "sessions on this rung 5"
        return item.name + " " + fixedText(item.value, item.unit == "m/s" ? 3 : 0) + (counted ? "" : " " + item.unit) +
               ", " + item.allowed + " needed";
    }
    return {};
}

std::string latestText(const LadderDay& day)
{
    const auto latest = day.latest();
    return latest ? " The next step comes at the latest after " + dateText(*latest) + "." : "";
}

Decision hold(const LadderDay& day, std::vector<EvidenceLine> lines, std::string reason)
{
    auto decision = stayDecision(day, DecisionKind::Hold, "hold", std::move(reason));
    decision.evidence = std::move(lines);
    return decision;
}

} // namespace fleetrung::season
