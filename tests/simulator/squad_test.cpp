#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "demo/squad/season_player.hpp"
#include "engine/base/numbers.hpp"

using namespace fleetrung;
using namespace fleetrung::squad;

namespace
{

std::string bytesOf(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// A folder of its own, gone afterwards.
struct Folder {
    std::filesystem::path path;

    explicit Folder(const std::string& name) : path(std::filesystem::temp_directory_path() / ("fleetrung-" + name))
    {
        std::filesystem::remove_all(path);
        std::filesystem::create_directories(path);
    }
    ~Folder() { std::filesystem::remove_all(path); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
};

logbook::Logbook openIn(const Folder& folder)
{
    return must(logbook::Logbook::open(
        {(folder.path / "athletes.fleetrung").string(), (folder.path / "captures.fleetrung").string()}, Identifier{},
        [next = 0]() mutable {
            const auto number = integerText(++next);
            const std::array<std::string_view, 2> parts{"squad test", number};
            return hashIdentifier(parts);
        }));
}

/// The young runner's first days.
Tally playDays(const Folder& folder, int days)
{
    auto runner = cast().at(1);
    runner.playedTo = runner.setup.start + std::chrono::days{days - 1};
    auto logbook = openIn(folder);
    return playSeason(logbook, runner, [](CivilDate) {}).tally;
}

} // namespace

TEST_CASE("The demo's days are played into the same bytes twice")
{
    const Folder first("squad-test-1");
    const Folder second("squad-test-2");
    static_cast<void>(playDays(first, 1));
    static_cast<void>(playDays(second, 1));
    for (const auto* name : {"athletes.fleetrung", "captures.fleetrung"}) {
        const auto bytes = bytesOf(first.path / name);
        CHECK(bytes.size() > 10000);
        CHECK(bytes == bytesOf(second.path / name));
    }
}

TEST_CASE("A played day leaves sessions, measured sets, decisions and captures that can be replayed")
{
    const Folder folder("squad-test-3");
    const auto tally = playDays(folder, 1);
    CHECK(tally.sessions == 2); // sprints, then lifts
    CHECK(tally.lifted == tally.found);
    CHECK(tally.decisions.at("hold") == 2); // one a ladder

    auto logbook = openIn(folder);
    const auto athlete = must(logbook.squad(cast().at(1).setup.start)).front().athlete;
    int replayable = 0;
    for (const auto& session : must(logbook.sessions(athlete.id))) {
        for (const auto& set : must(logbook.sets(session.id))) {
            if (set.measured) {
                CHECK(must(logbook.recording(set.row.id)).samples.size() > 300);
                ++replayable;
            }
        }
    }
    CHECK(replayable == tally.measuredSets);
}

TEST_CASE("The squad is as told: ages, events, and a season that every rule accepts")
{
    const auto squad = cast();
    REQUIRE(squad.size() == 3);
    const std::array<int, 3> ages{24, 17, 41};
    for (std::size_t i = 0; i < squad.size(); ++i) {
        season::AthleteFacts facts;
        facts.birthDate = squad[i].athlete.born;
        CHECK(season::ageOn(facts, squad[i].playedTo) == ages.at(i));
        CHECK(daysBetween(squad[i].setup.start, squad[i].playedTo) >= 5 * 7);
        auto setup = squad[i].setup;
        setup.athlete.birthDate = squad[i].athlete.born;
        setup.athlete.guardianConsent = squad[i].athlete.guardianConsent;
        CHECK(season::checkSetup(setup));
    }
    CHECK(daysBetween(squad[0].setup.start, squad[0].playedTo) >= 30 * 7);
}
