#include "platform/desk/sprint_output.hpp"

namespace fleetrung::desk
{

Json sprintJson(const SprintResult& result)
{
    const auto& fit = result.fit;
    const auto& profile = result.profile;
    const auto ofProfile = [&profile](double sprint::ForceVelocity::*value) {
        return profile ? Json((*profile).*value) : Json();
    };
    Json json;
    json["vmax_mps"] = fit.model.vmax;
    json["tau_s"] = fit.model.tau;
    json["start_offset_s"] = fit.startOffset;
    json["start_offset_fitted"] = fit.offsetFree;
    json["f0_n"] = ofProfile(&sprint::ForceVelocity::f0);
    json["v0_mps"] = ofProfile(&sprint::ForceVelocity::v0);
    json["pmax_w"] = ofProfile(&sprint::ForceVelocity::pmax);
    json["rf_max"] = ofProfile(&sprint::ForceVelocity::rfMax);
    json["drf_per_mps"] = ofProfile(&sprint::ForceVelocity::drf);
    json["residual_rms_s"] = fit.residualRms;
    json["standard_error"] = {{"vmax_mps", fit.vmaxError},
                              {"tau_s", fit.tauError},
                              {"start_offset_s", fit.offsetFree ? Json(fit.offsetError) : Json()}};
    json["splits"] = Json::array();
    for (const auto& s : fit.residuals)
        json["splits"].push_back(
            {{"distance_m", s.split.distance}, {"time_s", s.split.time}, {"residual_s", s.residual}, {"used", s.used}});
    json["notes"] = fit.notes;
    return json;
}

} // namespace fleetrung::desk
