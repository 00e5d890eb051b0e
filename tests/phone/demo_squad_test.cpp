// The squad that a new user may look at: played whole by the engine, on a day that has something to show; or not at
// all.
#include "mobile/app/demo_squad.hpp"

#include <filesystem>
#include <string>

#include <catch2/catch.hpp>

#include "mobile/logbook/logbook.hpp"

using namespace fleetrung;

namespace
{

/// An empty folder that goes with the test.
class Folder
{
public:
    explicit Folder(const std::string& name) : path_(std::filesystem::temp_directory_path() / name)
    {
        std::filesystem::remove_all(path_);
        std::filesystem::create_directories(path_);
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

} // namespace

TEST_CASE("The demo squad's day has lifts, decisions and sprints behind it, and its files are whole", "[demo]")
{
    const Folder folder("fleetrung-demo-squad-test");
    const auto hand = app::demoSquad(QString());
    double share = 0;
    bool rises = true;
    const auto day = hand.make(folder.paths(), [&](double now) {
        rises = rises && now > share;
        share = now;
        return true;
    });
    REQUIRE(day);
    CHECK(rises);
    CHECK(share == Approx(1));
    const auto book = logbook::Logbook::openReadOnly(folder.paths());
    REQUIRE(book);
    CHECK(book->verify()->empty());
    const auto squad = book->squad(*day);
    REQUIRE(squad);
    CHECK(squad->size() == 3);
    CHECK_FALSE(book->dueToday(*day)->empty());
    for (const auto& athlete : *squad) {
        CAPTURE(athlete.athlete.name);
        CHECK(athlete.sessions > 3);
        CHECK(athlete.lastDay < *day); // nothing of a day that has not come
        CHECK_FALSE(book->sprints(athlete.athlete.id)->empty());
        REQUIRE(athlete.season);
        CHECK_FALSE(book->decisions(athlete.season->id)->empty());
    }
}

TEST_CASE("Making the demo squad is given up at once when that is asked for", "[demo]")
{
    const Folder folder("fleetrung-demo-squad-cancelled-test");
    int asked = 0;
    const auto day = app::demoSquad(QString()).make(folder.paths(), [&asked](double) { return ++asked < 3; });
    REQUIRE_FALSE(day);
    CHECK(day.error().code == Code::Cancelled);
    CHECK(asked == 3);
}
