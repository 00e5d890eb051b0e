#include "engine/sensor/teach_sureness.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/base/numbers.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

std::string percent(double share)
{
    return fixedText(100 * share, 1) + " %";
}

std::string placeText(const Table& table, const Triad& triad)
{
    if (table.isText()) {
        return "columns " + integerText(triad.places[0].bit + 1) + ", " + integerText(triad.places[1].bit + 1) + ", " +
               integerText(triad.places[2].bit + 1);
    }
    const auto& first = triad.places[0];
    const std::string order = bitsOf(first.type) == 8            ? ""
                              : first.order == ByteOrder::Little ? ", low byte first"
                                                                 : ", high byte first";
    return integerText(bitsOf(first.type)) + " bits from byte " + integerText(first.bit / 8) + order;
}

Sureness formSureness(const Table& table, const Triad& triad, double decoded)
{
    Sureness sureness{"packet form", sureBelow(1 - decoded, 0.03, 0.15), ""};
    if (table.isText()) {
        sureness.why = "lines of text with " + integerText(static_cast<std::int64_t>(table.width)) + " values";
    } else {
        sureness.why = (table.carrier == Carrier::ByteStream ? "a byte stream, packets of " : "packets of ") +
                       integerText(static_cast<std::int64_t>(table.width)) +
                       " bytes, samples in each: " + integerText(triad.samples);
    }
    sureness.why += "; the map reads " + percent(decoded) + " of them back";
    return sureness;
}

Sureness accelerometerSureness(const Table& table, const Accelerometer& found)
{
    const double fine = sureBelow(found.resolution, 0.05, 0.2);
    return {"accelerometer", std::min(sureBelow(found.residual, 0.03, 0.1), fine),
            placeText(table, found.triad) + "; the six faces lie on a sphere of one gravity within " +
                percent(found.residual)};
}

Sureness gyroscopeSureness(const std::vector<Table>& tables, const Findings& findings, bool somethingTurns)
{
    if (!findings.gyroscope) {
        return {"gyroscope", somethingTurns ? 0.5 : 0.9,
                somethingTurns ? "something moves when it turns, but no three numbers of it fit the turns"
                               : "nothing it sends follows the turns: it has no gyroscope"};
    }
    const auto& found = *findings.gyroscope;
    double turns = 0;
    for (const double turn : found.turns) {
        turns += turn / (6 * std::numbers::pi);
    }
    const double sure = std::min(sureBelow(found.misfit, 0.08, 0.25), sureBelow(std::abs(turns - 1), 0.05, 0.15));
    return {"gyroscope", sure,
            placeText(tables[found.table], found.triad) + "; from rest to rest it carries gravity on within " +
                fixedText(found.misfit * 180 / std::numbers::pi, 1) + " degrees, and a whole turn reads " +
                fixedText(360 * turns, 0)};
}

Sureness runningSureness(const std::string& what, const std::optional<Running>& running)
{
    if (!running) {
        return {what, 0.9, "it sends none that could be found"};
    }
    return {what, sureBelow(1 - running->steady, 0.05, 0.2),
            percent(running->steady) + " of its steps are whole ones; it says " + integerText(running->lost) +
                " packets were lost"};
}

Sureness rateSureness(const Findings& findings, const Raises& raises)
{
    const auto& running = findings.accelerometerStream.running;
    const std::string by = running.counter ? "the counter" : running.stamp ? "the time stamp" : "arrivals alone";
    return {"rate", sureBelow(raises.off, 0.15, 0.3),
            fixedText(findings.accelerometerStream.rate, 2) + " samples a second by " + by +
                "; the raises came out as " + fixedText(raises.done[0].height, 2) + " and " +
                fixedText(raises.done[1].height, 2) + " m"};
}

/// The step that says most about it.
TeachStep stepFor(const std::string& what, const Raises& raises, const Findings& findings)
{
    if (what == "rate") {
        return raises.done[0].height == 0 ? TeachStep::RaiseOne : TeachStep::RaiseTwo;
    }
    if (what == "gyroscope" && findings.gyroscope) {
        const auto& turns = findings.gyroscope->turns;
        const auto off = [&](std::size_t i) { return std::abs(turns.at(i) - 2 * std::numbers::pi); };
        return off(1) > off(0) && off(1) > off(2) ? TeachStep::TurnTwo
               : off(2) > off(0)                  ? TeachStep::TurnThree
                                                  : TeachStep::TurnOne;
    }
    return what == "gyroscope" ? TeachStep::TurnOne : TeachStep::FaceOne;
}

} // namespace

Taught judge(const std::vector<Table>& tables, const Findings& findings, bool somethingTurns, const Raises& raises,
             double decoded)
{
    const auto& table = tables[findings.accelerometer.table];
    Taught taught;
    taught.sureness = {formSureness(table, findings.accelerometer.triad, decoded),
                       accelerometerSureness(table, findings.accelerometer),
                       gyroscopeSureness(tables, findings, somethingTurns),
                       runningSureness("counter", findings.accelerometerStream.running.counter),
                       runningSureness("time stamp", findings.accelerometerStream.running.stamp),
                       rateSureness(findings, raises)};
    const auto least = std::min_element(taught.sureness.begin(), taught.sureness.end(),
                                        [](const auto& a, const auto& b) { return a.sure < b.sure; });
    taught.sure = least->sure;
    if (taught.sure < 0.8) {
        taught.repeat = stepFor(least->what, raises, findings);
        taught.why = "Not sure of the " + least->what + ": " + least->why + ".";
    }
    return taught;
}

} // namespace fleetrung::sensor::teaching
