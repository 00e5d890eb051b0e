#include "engine/season/replay.hpp"

#include <algorithm>
#include <array>

#include "engine/season/season_files.hpp"

namespace fleetrung::season
{
namespace
{

std::string valueText(const Json& value)
{
    return value.is_string() ? value.get<std::string>() : jsonText(value);
}

void compare(const Json& stored, const Json& derived, const std::string& path, const std::string& ladder,
             std::vector<Difference>& differences)
{
    if (stored == derived)
        return;
    if (stored.is_object() && derived.is_object()) {
        for (const auto& [key, value] : stored.items())
            compare(value, derived.contains(key) ? derived[key] : Json(nullptr), path.empty() ? key : path + '.' + key,
                    ladder, differences);
        return;
    }
    if (stored.is_array() && derived.is_array() && stored.size() == derived.size()) {
        for (std::size_t i = 0; i < stored.size(); ++i)
            compare(stored[i], derived[i], path + '[' + jsonText(Json(i)) + ']', ladder, differences);
        return;
    }
    differences.push_back({ladder, path, valueText(stored), valueText(derived)});
}

/// Without its name: that is made from the program's own data too.
Json withoutId(const Decision& decision)
{
    auto json = decisionJson(decision);
    json.erase("id");
    return json;
}

const Decision* findDecision(std::span<const Decision> decisions, const std::string& ladder)
{
    const auto found =
        std::find_if(decisions.begin(), decisions.end(), [&](const Decision& item) { return item.ladder == ladder; });
    return found == decisions.end() ? nullptr : &*found;
}

} // namespace

Identifier inputId(const Json& dayInput)
{
    const auto text = jsonText(dayInput);
    return hashIdentifier(std::array<std::string_view, 2>{"day-input", text});
}

Json seasonDataJson()
{
    return {{"format", 1},
            {"ladders", std::string(laddersFile())},
            {"rules", std::string(rulesFile())},
            {"cautions", std::string(cautionsFile())}};
}

Expected<SeasonData> seasonDataFromJson(const Json& json)
{
    for (const auto* key : {"ladders", "rules", "cautions"})
        if (!json.is_object() || !json.contains(key) || !json[key].is_string())
            return fail(Code::InvalidInput, key, "the text of this file is missing");
    return parseSeasonData(json["ladders"].get<std::string>(), json["rules"].get<std::string>(),
                           json["cautions"].get<std::string>());
}

Expected<std::vector<Difference>> rederive(const Json& dayInput, std::span<const Decision> stored,
                                           const SeasonData& data)
{
    const auto input = dayInputFromJson(dayInput, data);
    if (!input)
        return tl::unexpected(input.error());
    const auto derived = decideDay(*input, dataFor(input->plan.setup, data));
    std::vector<Difference> differences;
    for (const auto& decision : stored) {
        const auto* again = findDecision(derived, decision.ladder);
        if (again == nullptr)
            differences.push_back({decision.ladder, "missing", decision.rule, ""});
        else
            compare(withoutId(decision), withoutId(*again), "", decision.ladder, differences);
    }
    return differences;
}

} // namespace fleetrung::season
