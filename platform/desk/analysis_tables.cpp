#include "engine/base/numbers.hpp"
#include "platform/desk/analysis_output.hpp"
#include "platform/desk/text_table.hpp"

namespace fleetrung::desk
{
namespace
{

constexpr double ms = 1e-3, cm = 1e-2;

/// One column of a table of repetitions or of their forces.
struct Column {
    std::string name, unit, cell;
};

/// Gathers one row; the first row makes the columns.
class Row
{
public:
    explicit Row(std::size_t index) { columns_.push_back({"rep", "", integerText(static_cast<std::int64_t>(index))}); }

    void add(const std::string& name, const std::string& unit, const std::optional<reps::Measured>& metric,
             double scale, int decimals)
    {
        columns_.push_back({name, unit, metric ? withUncertainty(*metric, scale, decimals) : ""});
    }
    void add(const std::string& name, const std::string& unit, const reps::EarlyMetric& metric, int decimals)
    {
        for (std::size_t i = 0; i < metric.size(); ++i)
            add(name + " " + fixedText(reps::earlyWindows[i] / ms, 0), unit, metric[i], 1, decimals);
    }
    void appendTo(TextTable& table, bool first) const
    {
        std::vector<std::string> cells;
        for (const auto& column : columns_) {
            if (first)
                table.addColumn(column.name, column.unit);
            cells.push_back(column.cell);
        }
        table.addRow(std::move(cells));
    }

private:
    std::vector<Column> columns_;
};

template <class Item, class Fill> std::string tableOf(const std::vector<Item>& items, const Fill& fill)
{
    TextTable table;
    for (std::size_t i = 0; i < items.size(); ++i) {
        Row row(i + 1);
        fill(row, items[i]);
        row.appendTo(table, i == 0);
    }
    return table.text();
}

void fillHowSoon(Row& row, const reps::Repetition& rep)
{
    row.add("mean acc", "m/s²", rep.meanAcceleration, 2);
    row.add("peak acc", "m/s²", rep.peakAcceleration, 1, 2);
    row.add("to peak", "cm", rep.displacementToPeak, cm, 1);
    row.add("second pull", "ms", rep.secondPullTime, ms, 0);
    row.add("other peak", "m/s", rep.otherPeak ? std::optional(rep.otherPeak->velocity) : std::nullopt, 1, 3);
    row.add("at", "ms", rep.otherPeak ? std::optional(rep.otherPeak->time) : std::nullopt, ms, 0);
}

void fillReversal(Row& row, const reps::Repetition& rep)
{
    row.add("lowering", "m/s", rep.eccentricPeakVelocity, 1, 3);
    row.add("lowered in", "ms", rep.eccentricDuration, ms, 0);
    row.add("reversal", "ms", rep.reversalTime, ms, 0);
    row.add("reversal acc", "m/s²", rep.peakReversalAcceleration, 1, 2);
    row.add("braking slope", "m/s³", rep.brakingSlope, 1, 1);
    row.add("stopped in", "ms", rep.dropStopTime, ms, 0);
    row.add("stop depth", "cm", rep.stopDepth, cm, 1);
}

void fillForce(Row& row, const reps::ForceMetrics& forces)
{
    row.add("peak force", "N", forces.peakForce, 1, 0);
    row.add("mean force", "N", forces.meanForce, 1, 0);
    row.add("mean to peak", "N", forces.meanForceToPeak, 1, 0);
    row.add("mean power", "W", forces.meanPower, 1, 0);
    row.add("peak power", "W", forces.peakPower, 1, 0);
    row.add("braking slope", "N/s", forces.brakingForceSlope, 1, 0);
}

void fillEarlyForce(Row& row, const reps::ForceMetrics& forces)
{
    row.add("impulse", "N s", forces.impulse, 1);
    row.add("RFD", "N/s", forces.rateOfForceDevelopment, 0);
}

} // namespace

std::string furtherTables(const reps::SetAnalysis& analysis, const SetFacts& facts)
{
    std::string text = tableOf(analysis.repetitions, fillHowSoon) + "\n";
    if (analysis.repetitions.front().reversalTime)
        text += tableOf(analysis.repetitions, fillReversal) + "\n";
    const auto forces = forcesOf(analysis, facts);
    if (!forces)
        return text + "No force and power: " + forces.error().message + ".\n";
    text += tableOf(*forces, fillForce) + "\n" + tableOf(*forces, fillEarlyForce) + "\n";
    return text + "Force is that of " + fixedText(forces->front().systemMass, 1) +
           " kg taken as one point that moves with the bar; a column's number is its window in ms.\n";
}

} // namespace fleetrung::desk
