#include "engine/base/numbers.hpp"
#include "engine/season/session_plan.hpp"

namespace fleetrung::season
{
namespace
{

Json setJson(const PlannedSet& set)
{
    Json json{{"repetitions", set.repetitions}};
    json["load_kg"] = set.loadKg ? Json(*set.loadKg) : Json(nullptr);
    return json;
}

Json setsJson(const std::vector<PlannedSet>& sets)
{
    Json list = Json::array();
    for (const auto& set : sets)
        list.push_back(setJson(set));
    return list;
}

Json liftJson(const PlannedLift& lift)
{
    Json json{{"ladder", lift.ladder}, {"rung", lift.rung}, {"lift", lift.lift}};
    json["warm_up"] = setsJson(lift.warmUp);
    json["probe"] = lift.probe ? setJson(*lift.probe) : Json(nullptr);
    json["work"] = setsJson(lift.work);
    json["rest_s"] = lift.restSeconds;
    json["set_stop_share"] = lift.setStop;
    json["metric"] = metricKey(lift.metric);
    json["target_ms"] = {roundTo(lift.targetBand.low * 1000, 1), roundTo(lift.targetBand.high * 1000, 1)};
    json["range_m"] = {lift.range.low, lift.range.high};
    json["cautions"] = lift.cautions;
    json["note"] = lift.note;
    json["primer"] = lift.primer;
    json["box_m"] = lift.boxHeight ? Json(*lift.boxHeight) : Json(nullptr);
    json["contacts"] = lift.contacts;
    json["contact_limit"] = lift.contactLimit;
    json["maintenance"] = lift.maintenance ? Json{{"rung", lift.maintenance->rung},
                                                  {"sets", setsJson(lift.maintenance->sets)},
                                                  {"reason", lift.maintenance->reason}}
                                           : Json(nullptr);
    json["why"] = Json::array();
    for (const auto& why : lift.why)
        json["why"].push_back({{"about", why.about}, {"text", why.text}});
    return json;
}

} // namespace

Json sessionJson(const SessionPlan& session, const SeasonData& data)
{
    Json json{{"day", dateText(session.day)},
              {"phase", phaseKey(session.phase)},
              {"sprint_day", session.sprintDay},
              {"sprints_forbidden", session.sprintsForbidden}};
    json["lifts"] = Json::array();
    for (const auto& lift : session.lifts) {
        auto item = liftJson(lift);
        if (const auto* ladder = findLadder(data.ladders, lift.ladder))
            item["name"] = ladder->find(lift.rung)->name;
        json["lifts"].push_back(std::move(item));
    }
    json["secondary"] = Json::array();
    for (const auto& lift : session.secondary)
        json["secondary"].push_back({{"name", lift.name}, {"sets", lift.sets}, {"repetitions", lift.repetitions}});
    json["notes"] = session.notes;
    return json;
}

} // namespace fleetrung::season
