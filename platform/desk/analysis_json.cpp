#include "platform/desk/analysis_output.hpp"

namespace fleetrung::desk
{
namespace
{

constexpr double millisecond = 1e-3;

/// Writes a metric and its uncertainty under one key, in the unit that the key names.
class MetricWriter
{
public:
    explicit MetricWriter(Json& repetition) : repetition_(repetition) {}

    void add(const char* key, const std::optional<reps::Measured>& metric, double unit = 1)
    {
        repetition_[key] = metric ? Json(metric->value / unit) : Json();
        uncertainty_[key] = metric ? Json(metric->uncertainty / unit) : Json();
    }
    Json takeUncertainty() { return std::move(uncertainty_); }

private:
    Json& repetition_;
    Json uncertainty_ = Json::object();
};

Json repetitionJson(const reps::Repetition& repetition, std::size_t index)
{
    Json json;
    json["index"] = index;
    json["eccentric_start_s"] = repetition.eccentricStart;
    json["concentric_start_s"] = repetition.concentricStart;
    json["peak_velocity_at_s"] = repetition.peakTime;
    json["concentric_end_s"] = repetition.concentricEnd;

    MetricWriter metrics(json);
    metrics.add("mean_velocity_mps", repetition.meanVelocity);
    metrics.add("mean_propulsive_velocity_mps", repetition.meanPropulsiveVelocity);
    metrics.add("peak_velocity_mps", repetition.peakVelocity);
    metrics.add("time_to_peak_velocity_ms", repetition.timeToPeakVelocity, millisecond);
    metrics.add("range_m", repetition.range);
    metrics.add("displacement_to_peak_m", repetition.displacementToPeak);
    metrics.add("concentric_duration_ms", repetition.concentricDuration, millisecond);
    metrics.add("v100_mps", repetition.velocityAt100ms);
    metrics.add("v200_mps", repetition.velocityAt200ms);
    metrics.add("eccentric_peak_velocity_mps", repetition.eccentricPeakVelocity);
    metrics.add("eccentric_duration_ms", repetition.eccentricDuration, millisecond);
    metrics.add("reversal_time_ms", repetition.reversalTime, millisecond);
    json["uncertainty"] = metrics.takeUncertainty();

    json["flags"] = Json::array();
    for (const auto name : reps::flagNames(repetition.flags))
        json["flags"].push_back(std::string(name));
    return json;
}

} // namespace

Json analysisJson(const reps::SetAnalysis& analysis, const SetFacts& facts)
{
    Json json;
    json["lift"] = std::string(facts.lift->key);
    json["load_kg"] = facts.loadKg ? Json(*facts.loadKg) : Json();
    json["rate_hz"] = analysis.samplingRate;
    json["analysis_version"] = std::string(reps::analysisVersion);
    json["reps"] = Json::array();
    for (const auto& repetition : analysis.repetitions)
        json["reps"].push_back(repetitionJson(repetition, json["reps"].size() + 1));

    Json set;
    const auto& summary = analysis.summary;
    const bool any = !analysis.repetitions.empty();
    set["velocity_loss_share"] = any ? Json(summary.velocityLoss) : Json();
    set["time_to_peak_drift_share"] = any ? Json(summary.timeToPeakDrift) : Json();
    set["mean_time_to_peak_velocity_ms"] = any ? Json(summary.meanTimeToPeak / millisecond) : Json();
    set["time_to_peak_velocity_sd_ms"] = any ? Json(summary.spreadTimeToPeak / millisecond) : Json();
    json["set"] = std::move(set);
    return json;
}

} // namespace fleetrung::desk
