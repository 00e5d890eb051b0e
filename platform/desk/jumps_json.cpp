#include "platform/desk/jumps_output.hpp"

namespace fleetrung::desk
{
namespace
{

Json jumpJson(const jumps::Jump& jump, std::size_t index)
{
    Json json;
    Json uncertainty = Json::object();
    const auto add = [&](const char* key, const std::optional<jumps::Measured>& value) {
        json[key] = value ? Json(value->value) : Json();
        uncertainty[key] = value ? Json(value->uncertainty) : Json();
    };
    json["index"] = index;
    json["kind"] = std::string(nameOf(jump.kind));
    add("landing_s", jump.landing);
    add("takeoff_s", jump.takeoff);
    add("second_landing_s", jump.secondLanding);
    add("contact_s", jump.contact);
    add("flight_s", jump.flight);
    add("height_m", jump.height);
    add("rsi_mps", jump.rsi);
    add("flight_contact_ratio", jump.flightContactRatio);
    add("takeoff_velocity_mps", jump.takeoffVelocity);
    add("height_from_velocity_m", jump.heightFromVelocity);
    add("effective_drop_m", jump.effectiveDrop);
    json["stretch_shortening"] =
        jump.contact ? Json(std::string(nameOf(jumps::stretchShortening(jump.contact->value)))) : Json();
    json["uncertainty"] = std::move(uncertainty);
    json["flags"] = Json::array();
    for (const auto name : jumps::flagNames(jump.flags))
        json["flags"].push_back(std::string(name));
    return json;
}

} // namespace

Json jumpsJson(const jumps::JumpAnalysis& analysis, bool gravityGiven)
{
    Json json;
    json["rate_hz"] = analysis.samplingRate;
    json["gravity_mps2"] = analysis.gravity;
    json["gravity_source"] = gravityGiven ? "given" : "standard";
    json["rest_force_mps2"] = analysis.restForce ? Json(analysis.restForce->value) : Json();
    json["jumps"] = Json::array();
    for (const auto& jump : analysis.jumps)
        json["jumps"].push_back(jumpJson(jump, json["jumps"].size() + 1));
    return json;
}

} // namespace fleetrung::desk
