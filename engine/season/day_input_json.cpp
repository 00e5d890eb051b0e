// A day's input as a document. What is not there is left out, so that the same input gives the same text.
#include "engine/season/evidence_reader.hpp"
#include "engine/season/replay.hpp"
#include "engine/season/training_log_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double largestLoad = 2000; // kg

Json stateJson(const LadderState& state)
{
    Json json{{"ladder", state.ladder}};
    json["path"] = Json::array();
    for (const auto& stay : state.path)
        json["path"].push_back({{"rung", stay.rung}, {"from", dateText(stay.from)}});
    if (state.probeLoadKg)
        json["probe_load_kg"] = *state.probeLoadKg;
    if (state.workLoadKg)
        json["work_load_kg"] = *state.workLoadKg;
    return json;
}

LadderState readState(ObjectReader& reader)
{
    LadderState state;
    state.ladder = reader.text("ladder");
    reader.eachObject("path", [&](ObjectReader& item) {
        state.path.push_back({item.text("rung"), item.date("from")});
    });
    if (state.path.empty())
        reader.refuse("path", "a ladder's path has at least one rung");
    state.probeLoadKg = reader.optionalNumber("probe_load_kg", 0, largestLoad);
    state.workLoadKg = reader.optionalNumber("work_load_kg", 0, largestLoad);
    return state;
}

Json wellnessJson(const Wellness& wellness)
{
    Json json = Json::object();
    if (wellness.sleepHours)
        json["sleep_hours"] = *wellness.sleepHours;
    if (wellness.soreness)
        json["soreness"] = *wellness.soreness;
    if (wellness.pain)
        json["pain"] = *wellness.pain;
    if (!wellness.painRegion.empty())
        json["pain_region"] = wellness.painRegion;
    json["sharp_pain"] = wellness.sharpPain;
    json["limping"] = wellness.limping;
    json["new_hamstring_pain"] = wellness.newHamstringPain;
    json["refused"] = wellness.refused;
    return json;
}

std::optional<int> optionalScale(ObjectReader& reader, std::string_view key)
{
    return reader.has(key) ? std::optional(reader.integer(key, 0, 10)) : std::nullopt;
}

Wellness readWellness(ObjectReader& reader)
{
    Wellness wellness;
    wellness.sleepHours = reader.optionalNumber("sleep_hours", 0, 24);
    wellness.soreness = optionalScale(reader, "soreness");
    wellness.pain = optionalScale(reader, "pain");
    wellness.painRegion = reader.textOr("pain_region", "");
    wellness.sharpPain = reader.booleanOr("sharp_pain", false);
    wellness.limping = reader.booleanOr("limping", false);
    wellness.newHamstringPain = reader.booleanOr("new_hamstring_pain", false);
    wellness.refused = reader.booleanOr("refused", false);
    return wellness;
}

} // namespace

Json dayInputJson(const DayInput& input)
{
    Json json{{"format", 1}, {"today", dateText(input.today)}};
    json["setup"] = setupJson(input.plan.setup);
    json["states"] = Json::array();
    for (const auto& state : input.states)
        json["states"].push_back(stateJson(state));
    json["history"] = Json::array();
    for (const auto& session : input.history)
        json["history"].push_back(evidenceJson(session));
    json["log"] = trainingLogJson(input.log);
    json["wellness"] = wellnessJson(input.wellness);
    json["step_by_exposure"] = input.stepByExposure;
    return json;
}

Expected<DayInput> dayInputFromJson(const Json& json, const SeasonData& data)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    DayInput input;
    reader.integer("format", 1, 1);
    input.today = reader.date("today");
    const auto* setup = reader.value("setup");
    reader.eachObject("states", [&](ObjectReader& item) { input.states.push_back(readState(item)); });
    reader.eachObject("history", [&](ObjectReader& item) { input.history.push_back(readEvidence(item)); });
    reader.object("log", [&](ObjectReader& item) { input.log = readTrainingLog(item); });
    reader.object("wellness", [&](ObjectReader& item) { input.wellness = readWellness(item); });
    input.stepByExposure = reader.texts("step_by_exposure");
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    const auto read = parseSetup(jsonText(*setup), data);
    if (!read)
        return tl::unexpected(Error{read.error().code, "setup." + read.error().place, read.error().message});
    auto plan = replanSeason(*read, input.states, input.today, dataFor(*read, data));
    if (!plan)
        return tl::unexpected(plan.error());
    input.plan = std::move(*plan);
    return input;
}

} // namespace fleetrung::season
