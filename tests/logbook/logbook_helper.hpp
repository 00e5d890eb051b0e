// A logbook in a folder of its own, an athlete with a season, and recordings from the simulator. Names are invented.
#pragma once

#include <catch2/catch.hpp>

#include <filesystem>
#include <string>

#include <stdlib.h>

#include "demo/simulator/simulator.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook::test
{

class Folder
{
public:
    Folder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "fleetrung-logbook-XXXXXX").string();
        REQUIRE(mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }

    [[nodiscard]] store::StorePaths paths() const
    {
        return {(path_ / "athletes.fleetrung").string(), (path_ / "captures.fleetrung").string()};
    }

private:
    std::filesystem::path path_;
};

/// The value, or the test ends with the error's words.
template <class T> T good(Expected<T> result)
{
    if (!result)
        FAIL(describe(result.error()));
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

template <class T> std::optional<Code> codeOf(const Expected<T>& result)
{
    return result ? std::nullopt : std::optional(result.error().code);
}

inline Identifier numbered(std::uint32_t number)
{
    Identifier id;
    for (std::size_t i = 0; i < 4; ++i)
        id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

inline Logbook openLogbook(const Folder& folder, std::uint32_t firstId = 1)
{
    return good(
        Logbook::open(folder.paths(), numbered(0xB0001), [next = firstId]() mutable { return numbered(next++); }));
}

inline CivilDate date(const char* text)
{
    return *parseDate(text);
}

inline Moment at(CivilDate day, std::int64_t secondOfDay = 57600)
{
    return {day.time_since_epoch().count() * std::int64_t{86400} + secondOfDay, 60, "Europe/Vienna", day};
}

inline store::Athlete longJumper()
{
    store::Athlete athlete;
    athlete.name = "Marle Oddvik";
    athlete.event = "long jump";
    athlete.born = date("2001-05-20");
    athlete.bodyMassKg = 64;
    athlete.trainingYears = 6;
    return athlete;
}

inline season::SeasonSetup thirtyWeeks()
{
    season::SeasonSetup setup;
    setup.name = "Outdoor 2026";
    setup.start = date("2025-12-01");
    setup.competitions = {{date("2026-06-28"), "Bay meeting", season::Priority::A, true}};
    setup.trainingDays = {1, 3, 5};
    setup.sprintDays = {1, 3, 5};
    setup.boxHeights = season::boxesOf({20, 30, 40});
    setup.equipment = {"bar", "rack", "pins", "blocks"};
    setup.ladders = {"squat", "hinge"};
    return setup;
}

struct Filled {
    Identifier athlete, season;
};

inline Filled fill(Logbook& logbook)
{
    const auto athlete = good(logbook.addAthlete(longJumper()));
    return {athlete, good(logbook.addSeason(athlete, thirtyWeeks()))};
}

inline store::LiftSet squat(const Identifier& session, store::SetKind kind, double loadKg, const char* rung = "full")
{
    store::LiftSet set;
    set.session = session;
    set.lift = std::string(rung) + "-squat";
    set.ladder = "squat";
    set.rung = rung;
    set.kind = kind;
    set.loadKg = loadKg;
    return set;
}

inline simulator::SimulatedSet simulated(const std::string& lift, int repetitions, std::uint64_t seed)
{
    simulator::SetPlan plan;
    plan.lift = lift;
    plan.repetitions = repetitions;
    return good(simulator::simulateSet(plan, simulator::SensorPlan{}, seed));
}

/// One typed probe set and three typed work sets of the full squat on that day.
inline Identifier typedSession(Logbook& logbook, const Identifier& athlete, CivilDate day, double timeToPeak,
                               double meanVelocity, double probeKg = 80)
{
    const auto session = good(logbook.openSession(athlete, "strength", at(day)));
    TypedRepetitions probe;
    probe.count = 3;
    probe.timeToPeak = timeToPeak;
    probe.meanVelocity = meanVelocity;
    good(logbook.typeSet(squat(session, store::SetKind::Probe, probeKg), probe, at(day)));
    for (int i = 0; i < 3; ++i) {
        TypedRepetitions work;
        work.count = 5;
        auto set = squat(session, store::SetKind::Work, probeKg + 10);
        set.effort = 8;
        good(logbook.typeSet(set, work, at(day)));
    }
    return session;
}

} // namespace fleetrung::logbook::test
