#include "mobile/logbook/set_under_way.hpp"

#include <array>

#include "engine/base/json.hpp"
#include "mobile/logbook/capture_mapping.hpp"
#include "mobile/logbook/failure.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr std::array<std::string_view, 4> kinds{"warm-up", "probe", "work", "maintenance"};
constexpr std::array<std::string_view, 3> sides{"both", "left", "right"};

/// Reads fields and remembers the first that is missing or of another kind.
class Facts
{
public:
    explicit Facts(const Json& json) : json_(json) {}

    template <class Value> Value get(const char* key)
    {
        const auto found = json_.find(key);
        const bool fits = found != json_.end() && (std::is_same_v<Value, std::string> ? found->is_string()
                                                   : std::is_same_v<Value, bool>      ? found->is_boolean()
                                                   : std::is_floating_point_v<Value>  ? found->is_number()
                                                                                      : found->is_number_integer());
        if (fits)
            return found->get<Value>();
        damaged(key);
        return {};
    }
    Identifier identifier(const char* key)
    {
        const auto id = parseIdentifier(get<std::string>(key));
        if (!id)
            damaged(key);
        return id.value_or(Identifier{});
    }
    template <class Choice, std::size_t Count>
    Choice choice(const char* key, const std::array<std::string_view, Count>& names)
    {
        const auto name = get<std::string>(key);
        const auto found = std::ranges::find(names, std::string_view(name));
        if (found == names.end())
            damaged(key);
        return found == names.end() ? Choice{} : static_cast<Choice>(found - names.begin());
    }
    void damaged(const char* key)
    {
        if (wrong.empty())
            wrong = key;
    }

    std::string wrong;

private:
    const Json& json_;
};

Moment readMoment(Facts& facts)
{
    Moment moment;
    moment.utcSeconds = facts.get<std::int64_t>("begun_utc_s");
    moment.offsetMinutes = facts.get<int>("begun_offset_min");
    moment.zone = facts.get<std::string>("begun_zone");
    if (const auto day = parseDate(facts.get<std::string>("begun_day")))
        moment.trainingDay = *day;
    else
        facts.damaged("begun_day");
    return moment;
}

} // namespace

std::string setUnderWayText(const SetUnderWay& under)
{
    const auto& set = under.set;
    Json json;
    json["athlete"] = identifierText(under.athlete);
    json["session"] = identifierText(set.session);
    json["lift"] = set.lift;
    json["ladder"] = set.ladder;
    json["rung"] = set.rung;
    json["kind"] = kinds.at(static_cast<std::size_t>(set.kind));
    json["side"] = sides.at(static_cast<std::size_t>(set.side));
    json["load_kg"] = set.loadKg;
    json["repetitions_planned"] = set.repetitionsPlanned;
    if (set.boxHeightM)
        json["box_height_m"] = *set.boxHeightM;
    json["note"] = set.note;
    json["sensor"] = under.source.sensor;
    json["placement"] = under.source.placement;
    json["traits"] = traitsText(under.sensor);
    json["has_gyroscope"] = under.hasGyroscope;
    json["begun_utc_s"] = under.begun.utcSeconds;
    json["begun_offset_min"] = under.begun.offsetMinutes;
    json["begun_zone"] = under.begun.zone;
    json["begun_day"] = dateText(under.begun.trainingDay);
    return jsonText(json);
}

Expected<SetUnderWay> parseSetUnderWay(const std::string& text)
{
    const auto json = parseJson(text);
    if (!json || !json->is_object())
        return fail(Code::StoreCorrupt, "unfinished recording", "what it is a recording of is damaged; drop it");
    Facts facts(*json);
    SetUnderWay under;
    auto& set = under.set;
    under.athlete = facts.identifier("athlete");
    set.session = facts.identifier("session");
    set.lift = facts.get<std::string>("lift");
    set.ladder = facts.get<std::string>("ladder");
    set.rung = facts.get<std::string>("rung");
    set.kind = facts.choice<store::SetKind>("kind", kinds);
    set.side = facts.choice<store::Side>("side", sides);
    set.loadKg = facts.get<double>("load_kg");
    set.repetitionsPlanned = facts.get<int>("repetitions_planned");
    if (json->contains("box_height_m"))
        set.boxHeightM = facts.get<double>("box_height_m");
    set.note = facts.get<std::string>("note");
    under.source = {facts.get<std::string>("sensor"), facts.get<std::string>("placement")};
    under.hasGyroscope = facts.get<bool>("has_gyroscope");
    under.begun = readMoment(facts);
    const auto sensor = parseTraits(facts.get<std::string>("traits"));
    if (!facts.wrong.empty() || !sensor)
        return fail(Code::StoreCorrupt, "unfinished recording, " + (facts.wrong.empty() ? "traits" : facts.wrong),
                    "what it is a recording of is damaged; drop it");
    under.sensor = *sensor;
    return under;
}

} // namespace fleetrung::logbook
