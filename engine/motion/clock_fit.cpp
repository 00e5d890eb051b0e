// A clock fit to and from its JSON text.
#include <array>
#include <cmath>
#include <string_view>

#include "engine/base/json.hpp"
#include "engine/motion/stream_clock.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr std::array<std::string_view, 3> byNames{"stamp", "counter", "arrival"};

tl::unexpected<Error> notAFit(const std::string& key, const std::string& cause)
{
    return fail(Code::InvalidInput, "clock fit, " + key, cause);
}

Expected<double> number(const Json& json, const char* key)
{
    const auto found = json.find(key);
    if (found == json.end() || !found->is_number())
        return notAFit(key, "a number is needed here");
    return found->get<double>();
}

Expected<std::int64_t> whole(const Json& json, const char* key)
{
    const auto found = json.find(key);
    if (found == json.end() || !found->is_number_integer())
        return notAFit(key, "a whole number is needed here");
    return found->get<std::int64_t>();
}

Expected<ClockFit::By> readBy(const Json& json)
{
    const auto found = json.find("by");
    if (found != json.end() && found->is_string())
        for (std::size_t i = 0; i < byNames.size(); ++i)
            if (found->get<std::string>() == byNames[i])
                return static_cast<ClockFit::By>(i);
    return notAFit("by", "stamp, counter or arrival is needed here");
}

} // namespace

std::string clockFitText(const ClockFit& fit)
{
    Json json;
    json["by"] = std::string(byNames.at(static_cast<std::size_t>(fit.by)));
    json["period_s"] = fit.period;
    json["offset_s"] = fit.offset;
    json["pace"] = fit.pace;
    json["tick_zero"] = fit.tickZero;
    json["spread_s"] = fit.spread;
    json["arrival_zero_ns"] = fit.arrivalZero;
    return jsonText(json);
}

Expected<ClockFit> parseClockFit(const std::string& text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    if (!json->is_object())
        return fail(Code::InvalidInput, "clock fit", "a JSON object is needed here");
    const auto by = readBy(*json);
    const auto period = number(*json, "period_s"), offset = number(*json, "offset_s"), pace = number(*json, "pace"),
               spread = number(*json, "spread_s");
    const auto tickZero = whole(*json, "tick_zero"), arrivalZero = whole(*json, "arrival_zero_ns");
    if (!by)
        return tl::unexpected(by.error());
    for (const auto* value : {&period, &offset, &pace, &spread})
        if (!*value)
            return tl::unexpected(value->error());
    for (const auto* value : {&tickZero, &arrivalZero})
        if (!*value)
            return tl::unexpected(value->error());
    if (!(*period > 0) || !(*pace > 0))
        return notAFit(*period > 0 ? "pace" : "period_s", "a number above zero is needed here");
    return ClockFit{*by, *period, *offset, *pace, *tickZero, *spread, *arrivalZero};
}

} // namespace fleetrung::motion
