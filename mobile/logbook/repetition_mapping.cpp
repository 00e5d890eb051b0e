#include "mobile/logbook/repetition_mapping.hpp"

#include <limits>

namespace fleetrung::logbook
{
namespace
{

struct Always {
    reps::Measured reps::Repetition::*engine;
    store::Metric store::Repetition::*row;
};
struct Sometimes {
    std::optional<reps::Measured> reps::Repetition::*engine;
    store::Metric store::Repetition::*row;
};

constexpr std::array<Always, 7> always{{
    {&reps::Repetition::meanVelocity, &store::Repetition::meanVelocity},
    {&reps::Repetition::meanPropulsiveVelocity, &store::Repetition::meanPropulsiveVelocity},
    {&reps::Repetition::peakVelocity, &store::Repetition::peakVelocity},
    {&reps::Repetition::timeToPeakVelocity, &store::Repetition::timeToPeakVelocity},
    {&reps::Repetition::range, &store::Repetition::range},
    {&reps::Repetition::displacementToPeak, &store::Repetition::displacementToPeak},
    {&reps::Repetition::concentricDuration, &store::Repetition::concentricDuration},
}};

constexpr std::array<Sometimes, 5> sometimes{{
    {&reps::Repetition::velocityAt100ms, &store::Repetition::velocityAt100ms},
    {&reps::Repetition::velocityAt200ms, &store::Repetition::velocityAt200ms},
    {&reps::Repetition::eccentricPeakVelocity, &store::Repetition::eccentricPeakVelocity},
    {&reps::Repetition::eccentricDuration, &store::Repetition::eccentricDuration},
    {&reps::Repetition::reversalTime, &store::Repetition::reversalTime},
}};

/// A value that is not there, or has no finite size, is no measurement.
store::Metric metricOf(const reps::Measured& measured)
{
    const auto finite = [](double value) { return std::isfinite(value) ? std::optional(value) : std::nullopt; };
    if (!finite(measured.value))
        return {};
    return {measured.value, finite(measured.uncertainty)};
}

reps::Measured measuredOf(const store::Metric& metric)
{
    return {metric.value.value_or(0),
            metric.value ? metric.uncertainty.value_or(0) : std::numeric_limits<double>::infinity()};
}

} // namespace

store::Repetition rowOf(const reps::Repetition& repetition)
{
    store::Repetition row;
    row.eccentricStart = repetition.eccentricStart;
    row.concentricStart = repetition.concentricStart;
    row.peakTime = repetition.peakTime;
    row.concentricEnd = repetition.concentricEnd;
    row.flags = repetition.flags;
    for (const auto& metric : always)
        row.*metric.row = metricOf(repetition.*metric.engine);
    for (const auto& metric : sometimes)
        if (repetition.*metric.engine)
            row.*metric.row = metricOf(*(repetition.*metric.engine));
    return row;
}

store::Repetition typedRow(const TypedRepetitions& typed, int ordinal)
{
    store::Repetition row;
    row.ordinal = ordinal;
    row.eccentricStart = row.concentricStart = row.peakTime = row.concentricEnd = ordinal;
    row.meanVelocity.value = typed.meanVelocity;
    row.peakVelocity.value = typed.peakVelocity;
    row.timeToPeakVelocity.value = typed.timeToPeak;
    row.range.value = typed.range;
    return row;
}

reps::Repetition engineRepetition(const store::Repetition& row)
{
    reps::Repetition repetition;
    repetition.eccentricStart = row.eccentricStart;
    repetition.concentricStart = row.concentricStart;
    repetition.peakTime = row.peakTime;
    repetition.concentricEnd = row.concentricEnd;
    repetition.flags = static_cast<reps::Flags>(row.flags);
    for (const auto& metric : always)
        repetition.*metric.engine = measuredOf(row.*metric.row);
    for (const auto& metric : sometimes)
        if ((row.*metric.row).value)
            repetition.*metric.engine = measuredOf(row.*metric.row);
    return repetition;
}

} // namespace fleetrung::logbook
