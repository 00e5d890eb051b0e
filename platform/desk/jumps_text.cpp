#include "engine/base/numbers.hpp"
#include "platform/desk/jumps_output.hpp"
#include "platform/desk/text_table.hpp"

namespace fleetrung::desk
{
namespace
{

std::string cell(const std::optional<jumps::Measured>& value, double unit, int decimals)
{
    if (!value)
        return "";
    return fixedText(value->value / unit, decimals) + " ±" + fixedText(value->uncertainty / unit, decimals);
}

std::string jumpTable(const std::vector<jumps::Jump>& jumps)
{
    constexpr double ms = 1e-3, cm = 1e-2;
    TextTable table;
    table.addColumn("jump", "");
    table.addColumn("kind", "", TextTable::Align::Left);
    table.addColumn("take-off", "s");
    table.addColumn("contact", "ms");
    table.addColumn("", "", TextTable::Align::Left);
    table.addColumn("flight", "ms");
    table.addColumn("height", "cm");
    table.addColumn("height/contact", "m/s");
    table.addColumn("flight/contact", "");
    table.addColumn("take-off", "m/s");
    table.addColumn("drop", "cm");
    table.addColumn("flags", "", TextTable::Align::Left);
    int index = 0;
    for (const auto& jump : jumps) {
        std::string flags;
        for (const auto name : jumps::flagNames(jump.flags))
            flags += (flags.empty() ? "" : ", ") + std::string(name);
        const auto cycle = jump.contact ? std::string(nameOf(jumps::stretchShortening(jump.contact->value))) : "";
        table.addRow({integerText(++index), std::string(nameOf(jump.kind)), fixedText(jump.takeoff.value, 2),
                      cell(jump.contact, ms, 0), cycle, cell(jump.flight, ms, 0), cell(jump.height, cm, 1),
                      cell(jump.rsi, 1, 2), cell(jump.flightContactRatio, 1, 2), cell(jump.takeoffVelocity, 1, 2),
                      cell(jump.effectiveDrop, cm, 0), flags});
    }
    return table.text();
}

} // namespace

std::string jumpsText(const jumps::JumpAnalysis& analysis, bool gravityGiven)
{
    const auto count = analysis.jumps.size();
    std::string text = fixedText(analysis.samplingRate, 1) + " Hz: " + integerText(static_cast<std::int64_t>(count)) +
                       (count == 1 ? " jump" : " jumps") + "\n";
    if (count == 0)
        return text +
               "No jump was found. Check where the sensor was worn (--worn waist or shoe) and the kind (--kind); "
               "without --kind every jump in the recording is shown.\n";
    return text + "\n" + jumpTable(analysis.jumps) + "\nheight = g t^2 / 8 from the flight, with " +
           (gravityGiven ? "the given" : "the standard") + " g of " + shortestText(analysis.gravity) +
           " m/s2; ± is the standard uncertainty; contact up to 250 ms is fast.\n";
}

} // namespace fleetrung::desk
