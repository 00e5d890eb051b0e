#include "platform/desk/analysis_output.hpp"

#include "engine/base/numbers.hpp"
#include "platform/desk/text_table.hpp"

namespace fleetrung::desk
{
namespace
{

std::string headLine(const reps::SetAnalysis& analysis, const SetFacts& facts)
{
    const auto count = analysis.repetitions.size();
    return std::string(facts.lift->name) + (facts.loadKg ? ", " + shortestText(*facts.loadKg) + " kg" : "") + ", " +
           fixedText(analysis.samplingRate, 1) + " Hz: " + integerText(static_cast<std::int64_t>(count)) +
           (count == 1 ? " repetition" : " repetitions") + "\n";
}

std::string orEmpty(const std::optional<reps::Measured>& metric, int decimals)
{
    return metric ? fixedText(metric->value, decimals) : "";
}

std::string repetitionTable(const std::vector<reps::Repetition>& repetitions)
{
    constexpr double ms = 1e-3, cm = 1e-2;
    TextTable table;
    table.addColumn("rep", "");
    table.addColumn("start", "s");
    table.addColumn("mean", "m/s");
    table.addColumn("propulsive", "m/s");
    table.addColumn("peak", "m/s");
    table.addColumn("time to peak", "ms");
    table.addColumn("range", "cm");
    table.addColumn("v100", "m/s");
    table.addColumn("v200", "m/s");
    table.addColumn("lowering", "m/s");
    table.addColumn("flags", "", TextTable::Align::Left);
    int index = 0;
    for (const auto& rep : repetitions) {
        std::string flags;
        for (const auto name : reps::flagNames(rep.flags))
            flags += (flags.empty() ? "" : ", ") + std::string(name);
        table.addRow({integerText(++index), fixedText(rep.concentricStart, 2), withUncertainty(rep.meanVelocity, 1, 3),
                      fixedText(rep.meanPropulsiveVelocity.value, 3), withUncertainty(rep.peakVelocity, 1, 3),
                      withUncertainty(rep.timeToPeakVelocity, ms, 0), withUncertainty(rep.range, cm, 1),
                      orEmpty(rep.velocityAt100ms, 2), orEmpty(rep.velocityAt200ms, 2),
                      orEmpty(rep.eccentricPeakVelocity, 2), flags});
    }
    return table.text();
}

std::string summaryLines(const reps::SetSummary& summary)
{
    const auto share = [](double value) { return fixedText(100 * value, 0) + " %"; };
    std::string text = "velocity loss " + share(summary.velocityLoss) + " from the fastest repetition";
    if (summary.velocityVariation)
        text += ", variation (CV) " + share(*summary.velocityVariation);
    if (!summary.meanTimeToPeak)
        return text + "; no repetition tells a time to peak\n";
    text += "; time to peak " + fixedText(1000 * *summary.meanTimeToPeak, 0) + " ms on average";
    if (summary.spreadTimeToPeak)
        text += ", spread " + fixedText(1000 * *summary.spreadTimeToPeak, 0) + " ms (CV " +
                share(*summary.timeToPeakVariation) + ")";
    return text + ", drift " + share(summary.timeToPeakDrift->value) + "\n";
}

} // namespace

std::vector<std::string> analysisNotes(const reps::SetAnalysis& analysis)
{
    std::vector<std::string> notes;
    for (const auto& finding : analysis.findings)
        notes.push_back((finding.place.empty() ? "" : finding.place + ": ") + finding.message + " (class " +
                        std::string(motion::qualityName(finding.quality)) + ")");
    for (const auto& refused : analysis.refused)
        notes.push_back("the repetition from " + fixedText(refused.concentricStart, 2) + " to " +
                        fixedText(refused.concentricEnd, 2) + " s is refused: " + refused.reason + " (class C)");
    return notes;
}

std::string withUncertainty(const reps::Measured& metric, double unit, int decimals)
{
    return fixedText(metric.value / unit, decimals) + " ±" + fixedText(metric.uncertainty / unit, decimals);
}

std::string analysisText(const reps::SetAnalysis& analysis, const SetFacts& facts, bool all)
{
    std::string text = headLine(analysis, facts);
    if (analysis.repetitions.empty())
        return text + "No upward stroke of " + fixedText(100 * facts.lift->minimumRange, 0) + " to " +
               fixedText(100 * facts.lift->maximumRange, 0) +
               " cm was found. Check the lift (--lift), or try --lift free, which takes any stroke of 5 cm or more.\n";
    text += "\n" + repetitionTable(analysis.repetitions) + "\n" + summaryLines(analysis.summary);
    if (all)
        text += "\n" + furtherTables(analysis, facts);
    return text + "± is the standard uncertainty; the motion is that of the sensor.\n";
}

} // namespace fleetrung::desk
