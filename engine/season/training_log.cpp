#include "engine/season/training_log.hpp"

#include "engine/season/training_log_reader.hpp"

namespace fleetrung::season
{
namespace
{

constexpr double largestLoad = 2000; // kg
constexpr int mostRepetitions = 1000;

Json workJson(const WorkDone& done)
{
    Json json{{"day", dateText(done.day)},
              {"ladder", done.ladder},
              {"rung", done.rung},
              {"load_kg", done.loadKg},
              {"target", done.targetRepetitions},
              {"done", done.doneRepetitions}};
    if (done.effort)
        json["effort"] = *done.effort;
    if (done.eased)
        json["eased"] = true;
    if (done.maintenance)
        json["maintenance"] = true;
    return json;
}

WorkDone readWork(ObjectReader& reader)
{
    WorkDone done;
    done.day = reader.date("day");
    done.ladder = reader.text("ladder");
    done.rung = reader.text("rung");
    done.loadKg = reader.number("load_kg", 0, largestLoad);
    done.targetRepetitions = reader.integer("target", 0, mostRepetitions);
    done.doneRepetitions = reader.integer("done", 0, mostRepetitions);
    done.effort = reader.optionalNumber("effort", 0, 10);
    done.eased = reader.booleanOr("eased", false);
    done.maintenance = reader.booleanOr("maintenance", false);
    return done;
}

SpeedTest readTest(ObjectReader& reader)
{
    SpeedTest test;
    test.day = reader.date("day");
    test.conditions = reader.textOr("conditions", "");
    test.seconds = reader.number("seconds", 0, 10000);
    test.windMps = reader.optionalNumber("wind_mps", -100, 100);
    return test;
}

} // namespace

Json trainingLogJson(const TrainingLog& log)
{
    Json json = Json::object();
    json["work"] = Json::array();
    for (const auto& done : log.work)
        json["work"].push_back(workJson(done));
    json["contacts"] = Json::array();
    for (const auto& done : log.contacts)
        json["contacts"].push_back({{"day", dateText(done.day)}, {"contacts", done.contacts}});
    json["maxima"] = Json::array();
    for (const auto& known : log.maxima)
        json["maxima"].push_back(
            {{"day", dateText(known.day)}, {"ladder", known.ladder}, {"rung", known.rung}, {"load_kg", known.loadKg}});
    json["tests"] = Json::array();
    for (const auto& test : log.tests) {
        Json item{{"day", dateText(test.day)}, {"conditions", test.conditions}, {"seconds", test.seconds}};
        if (test.windMps)
            item["wind_mps"] = *test.windMps;
        json["tests"].push_back(std::move(item));
    }
    return json;
}

TrainingLog readTrainingLog(ObjectReader& reader)
{
    TrainingLog log;
    reader.eachObject("work", [&](ObjectReader& item) { log.work.push_back(readWork(item)); });
    reader.eachObject("contacts", [&](ObjectReader& item) {
        log.contacts.push_back({item.date("day"), item.integer("contacts", 0, mostRepetitions)});
    });
    reader.eachObject("maxima", [&](ObjectReader& item) {
        log.maxima.push_back(
            {item.date("day"), item.text("ladder"), item.text("rung"), item.number("load_kg", 0, largestLoad)});
    });
    reader.eachObject("tests", [&](ObjectReader& item) { log.tests.push_back(readTest(item)); });
    return log;
}

Expected<TrainingLog> trainingLogFromJson(const Json& json)
{
    ReadProblem problem;
    ObjectReader reader(json, "", problem);
    auto log = readTrainingLog(reader);
    reader.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return log;
}

} // namespace fleetrung::season
