// A calibration to and from its JSON text.
#include "engine/motion/calibration.hpp"

#include "engine/base/json.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double smallestScale = 0.5, largestScale = 2; // beyond it the map is wrong, not the sensor
constexpr double largestOffset = 20;                    // m/s2
constexpr double largestBias = 1;                       // rad/s

Json array(const Eigen::Vector3d& value)
{
    return Json::array({value.x(), value.y(), value.z()});
}

Expected<Eigen::Vector3d> readVector(const Json& json, const char* key, double low, double high)
{
    const auto refuse = [key](const std::string& cause) {
        return fail(Code::InvalidInput, "calibration, " + std::string(key), cause);
    };
    const auto found = json.find(key);
    if (found == json.end() || !found->is_array() || found->size() != 3)
        return refuse("three numbers are needed here");
    Eigen::Vector3d value;
    for (std::size_t i = 0; i < 3; ++i) {
        if (!(*found)[i].is_number())
            return refuse("three numbers are needed here");
        value[static_cast<int>(i)] = (*found)[i].get<double>();
    }
    if (!(value.minCoeff() >= low && value.maxCoeff() <= high))
        return refuse("no sensor is that far off; calibrate it anew");
    return value;
}

} // namespace

std::string calibrationText(const Calibration& calibration)
{
    Json json;
    json["scale"] = array(calibration.scale);
    json["offset_mps2"] = array(calibration.offset);
    json["gyroscope_bias_radps"] = array(calibration.gyroscopeBias);
    json["six_faces"] = calibration.sixFaces;
    return jsonText(json);
}

Expected<Calibration> parseCalibration(const std::string& text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    if (!json->is_object())
        return fail(Code::InvalidInput, "calibration", "a JSON object is needed here");
    const auto scale = readVector(*json, "scale", smallestScale, largestScale);
    if (!scale)
        return tl::unexpected(scale.error());
    const auto offset = readVector(*json, "offset_mps2", -largestOffset, largestOffset);
    if (!offset)
        return tl::unexpected(offset.error());
    const auto bias = readVector(*json, "gyroscope_bias_radps", -largestBias, largestBias);
    if (!bias)
        return tl::unexpected(bias.error());
    const auto faces = json->find("six_faces");
    if (faces == json->end() || !faces->is_boolean())
        return fail(Code::InvalidInput, "calibration, six_faces", "true or false is needed here");
    return Calibration{*scale, *offset, *bias, faces->get<bool>()};
}

} // namespace fleetrung::motion
