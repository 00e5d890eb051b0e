// A store in a folder of its own that goes with the test, and rows to put into it.
#pragma once

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <string>

#include <stdlib.h>

#include "engine/store/store.hpp"

namespace fleetrung::store::test
{

inline Identifier idOf(int number)
{
    Identifier id;
    for (std::size_t i = 0; i < 4; ++i)
        id.bytes[15 - i] = static_cast<std::uint8_t>(static_cast<unsigned>(number) >> (8 * i));
    return id;
}

class Folder
{
public:
    Folder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "fleetrung-store-XXXXXX").string();
        REQUIRE(mkdtemp(name.data()) != nullptr);
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }

    [[nodiscard]] std::string file(const std::string& name) const { return (path_ / name).string(); }
    [[nodiscard]] StorePaths paths() const { return {file("athletes.fleetrung"), file("captures.fleetrung")}; }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

inline std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline void write(const std::string& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

/// The value, or the test ends with the error's words.
template <class T> T good(Expected<T> result)
{
    if (!result)
        FAIL(describe(result.error()));
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

/// What kind of failure; nothing where it succeeded.
template <class T> std::optional<Code> codeOf(const Expected<T>& result)
{
    return result ? std::nullopt : std::optional(result.error().code);
}

inline const Identifier benchDevice = idOf(0xB0001);

inline Store openStore(const Folder& folder, const Identifier& device = benchDevice)
{
    return good(Store::open(folder.paths(), device));
}

inline Moment at(const char* day, std::int64_t secondOfDay = 61200)
{
    const auto date = *parseDate(day);
    return {date.time_since_epoch().count() * std::int64_t{86400} + secondOfDay, 120, "Europe/Vienna", date};
}

inline Athlete athleteRow(int id, const std::string& name = "Ilka Tannhof")
{
    Athlete row;
    row.id = idOf(id);
    row.name = name;
    row.event = "200 m";
    row.born = parseDate("2009-02-11");
    row.bodyMassKg = 61.5;
    row.trainingYears = 1.5;
    return row;
}

inline Session sessionRow(int id, int athlete, const char* day)
{
    Session row;
    row.id = idOf(id);
    row.athlete = idOf(athlete);
    row.begun = at(day);
    row.kind = "strength";
    return row;
}

inline LiftSet setRow(int id, int session, int ordinal, const char* day)
{
    LiftSet row;
    row.id = idOf(id);
    row.session = idOf(session);
    row.ordinal = ordinal;
    row.done = at(day, 61200 + 300 * ordinal);
    row.lift = "half-squat";
    row.ladder = "squat";
    row.rung = "half";
    row.kind = SetKind::Probe;
    row.loadKg = 82.5;
    return row;
}

inline Analysis analysisRow(int id, int set, bool accepted = true)
{
    Analysis row;
    row.id = idOf(id);
    row.set = idOf(set);
    row.engineVersion = "1";
    row.settingsHash = "a";
    row.accepted = accepted;
    row.samplingRateHz = 200;
    return row;
}

inline Repetition repetitionRow(int id, int analysis, int ordinal)
{
    Repetition row;
    row.id = idOf(id);
    row.analysis = idOf(analysis);
    row.ordinal = ordinal;
    row.concentricStart = 2.0 * ordinal;
    row.peakTime = row.concentricStart + 0.281;
    row.concentricEnd = row.concentricStart + 0.55;
    row.timeToPeakVelocity = {0.281, 0.004};
    row.meanVelocity = {0.612, 0.006};
    return row;
}

/// Athlete 1, session 2, set 3, analysis 4, repetitions 5 to 7.
inline void fillOneSet(Store& store, const char* day = "2026-03-30")
{
    good(store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(1)));
        good(store.insert(sessionRow(2, 1, day)));
        good(store.insert(setRow(3, 2, 1, day)));
        good(store.insert(analysisRow(4, 3)));
        for (int i = 1; i <= 3; ++i)
            good(store.insert(repetitionRow(4 + i, 4, i)));
        return {};
    }));
}

} // namespace fleetrung::store::test
