#include "engine/base/numbers.hpp"
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

    void add(const std::string& key, const std::optional<reps::Measured>& metric, double unit = 1)
    {
        repetition_[key] = metric ? Json(metric->value / unit) : Json();
        uncertainty_[key] = metric ? Json(metric->uncertainty / unit) : Json();
    }
    /// One key a window: "before_50ms_after".
    void add(const std::string& before, const reps::EarlyMetric& metric, const std::string& after)
    {
        for (std::size_t i = 0; i < metric.size(); ++i)
            add(before + "_" + fixedText(reps::earlyWindows[i] / millisecond, 0) + "ms_" + after, metric[i]);
    }
    Json takeUncertainty() { return std::move(uncertainty_); }

private:
    Json& repetition_;
    Json uncertainty_ = Json::object();
};

void addMotion(MetricWriter& metrics, const reps::Repetition& repetition)
{
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
    metrics.add("mean_acceleration", repetition.meanAcceleration, "mps2");
    metrics.add("peak_acceleration_mps2", repetition.peakAcceleration);
    metrics.add("peak_reversal_acceleration_mps2", repetition.peakReversalAcceleration);
    metrics.add("braking_slope_mps3", repetition.brakingSlope);
    metrics.add("drop_stop_time_ms", repetition.dropStopTime, millisecond);
    metrics.add("stop_depth_m", repetition.stopDepth);
    metrics.add("second_pull_time_ms", repetition.secondPullTime, millisecond);
    const auto& other = repetition.otherPeak;
    metrics.add("other_peak_velocity_mps", other ? std::optional(other->velocity) : std::nullopt);
    metrics.add("other_peak_time_ms", other ? std::optional(other->time) : std::nullopt, millisecond);
}

/// All null without `forces`.
void addForces(MetricWriter& metrics, const reps::ForceMetrics* forces)
{
    using Forces = reps::ForceMetrics;
    const auto always = [&](const char* key, reps::Measured Forces::*metric) {
        metrics.add(key, forces ? std::optional(forces->*metric) : std::nullopt);
    };
    const auto sometimes = [&](const char* key, std::optional<reps::Measured> Forces::*metric) {
        metrics.add(key, forces ? forces->*metric : std::nullopt);
    };
    const auto early = [&](const char* key, reps::EarlyMetric Forces::*metric, const char* unit) {
        metrics.add(key, forces ? forces->*metric : reps::EarlyMetric{}, unit);
    };
    sometimes("peak_force_n", &Forces::peakForce);
    always("mean_force_n", &Forces::meanForce);
    always("mean_force_to_peak_n", &Forces::meanForceToPeak);
    early("impulse", &Forces::impulse, "n_s");
    early("net_impulse", &Forces::netImpulse, "n_s");
    early("rfd", &Forces::rateOfForceDevelopment, "n_per_s");
    always("mean_power_w", &Forces::meanPower);
    sometimes("peak_power_w", &Forces::peakPower);
    sometimes("braking_force_slope_n_per_s", &Forces::brakingForceSlope);
}

Json repetitionJson(const reps::Repetition& repetition, const reps::ForceMetrics* forces, std::size_t index)
{
    Json json;
    json["index"] = index;
    json["eccentric_start_s"] = repetition.eccentricStart;
    json["concentric_start_s"] = repetition.concentricStart;
    json["peak_velocity_at_s"] = repetition.peakTime;
    json["concentric_end_s"] = repetition.concentricEnd;

    MetricWriter metrics(json);
    addMotion(metrics, repetition);
    addForces(metrics, forces);
    json["uncertainty"] = metrics.takeUncertainty();

    json["flags"] = Json::array();
    for (const auto name : reps::flagNames(repetition.flags))
        json["flags"].push_back(std::string(name));
    return json;
}

Json findingsJson(const std::vector<motion::Finding>& findings)
{
    Json all = Json::array();
    for (const auto& finding : findings) {
        Json json;
        json["fault"] = std::string(motion::faultName(finding.fault));
        json["class"] = std::string(motion::qualityName(finding.quality));
        json["place"] = finding.place;
        json["message"] = finding.message;
        json["from_s"] = finding.from;
        json["to_s"] = finding.to;
        all.push_back(std::move(json));
    }
    return all;
}

Json refusedJson(const std::vector<reps::RefusedRepetition>& refused)
{
    Json all = Json::array();
    for (const auto& repetition : refused) {
        Json json;
        json["concentric_start_s"] = repetition.concentricStart;
        json["concentric_end_s"] = repetition.concentricEnd;
        json["fault"] = std::string(motion::faultName(repetition.fault));
        json["reason"] = repetition.reason;
        all.push_back(std::move(json));
    }
    return all;
}

Json summaryJson(const reps::SetAnalysis& analysis)
{
    const auto& summary = analysis.summary;
    const bool any = !analysis.repetitions.empty();
    const auto orNull = [](const std::optional<double>& value, double unit) {
        return value ? Json(*value / unit) : Json();
    };
    Json json, uncertainty;
    json["velocity_loss_share"] = any ? Json(summary.velocityLoss) : Json();
    json["velocity_cv_share"] = orNull(summary.velocityVariation, 1);
    json["time_to_peak_drift_share"] = summary.timeToPeakDrift ? Json(summary.timeToPeakDrift->value) : Json();
    json["mean_time_to_peak_velocity_ms"] = orNull(summary.meanTimeToPeak, millisecond);
    json["time_to_peak_velocity_sd_ms"] = orNull(summary.spreadTimeToPeak, millisecond);
    json["time_to_peak_velocity_cv_share"] = orNull(summary.timeToPeakVariation, 1);
    uncertainty["velocity_loss_share"] = any ? Json(summary.velocityLossUncertainty) : Json();
    uncertainty["time_to_peak_drift_share"] =
        summary.timeToPeakDrift ? Json(summary.timeToPeakDrift->uncertainty) : Json();
    json["uncertainty"] = std::move(uncertainty);
    return json;
}

} // namespace

Expected<std::vector<reps::ForceMetrics>> forcesOf(const reps::SetAnalysis& analysis, const SetFacts& facts)
{
    if (!facts.loadKg)
        return fail(Code::InvalidArgument, "load", "force and power need the load: give it with --load");
    const reps::Loading loading{*facts.loadKg, facts.bodyMassKg.value_or(0)};
    std::vector<reps::ForceMetrics> all;
    for (const auto& repetition : analysis.repetitions) {
        auto forces = reps::forceMetrics(analysis.trace, repetition, *facts.lift, loading);
        if (!forces)
            return tl::unexpected(std::move(forces.error()));
        all.push_back(*forces);
    }
    return all;
}

Json analysisJson(const reps::SetAnalysis& analysis, const SetFacts& facts)
{
    const auto forces = forcesOf(analysis, facts);
    Json json;
    json["lift"] = std::string(facts.lift->key);
    json["load_kg"] = facts.loadKg ? Json(*facts.loadKg) : Json();
    json["body_mass_kg"] = facts.bodyMassKg ? Json(*facts.bodyMassKg) : Json();
    json["system_mass_kg"] = forces && !forces->empty() ? Json(forces->front().systemMass) : Json();
    json["rate_hz"] = analysis.samplingRate;
    json["class"] = std::string(motion::qualityName(analysis.quality));
    json["findings"] = findingsJson(analysis.findings);
    json["refused"] = refusedJson(analysis.refused);
    json["analysis_version"] = std::string(reps::analysisVersion);
    json["reps"] = Json::array();
    for (std::size_t i = 0; i < analysis.repetitions.size(); ++i)
        json["reps"].push_back(repetitionJson(analysis.repetitions[i], forces ? &(*forces)[i] : nullptr, i + 1));
    json["set"] = summaryJson(analysis);
    return json;
}

} // namespace fleetrung::desk
