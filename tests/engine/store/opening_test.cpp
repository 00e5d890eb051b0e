// Opening: new files, older files, newer files, other people's files, and places where no file can be.
#include "store_helper.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include "engine/store/migrate.hpp"

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

namespace
{

// Offsets of the database header: sqlite.org/fileformat2.html, section 1.3.
constexpr std::size_t userVersionAt = 60;
constexpr std::size_t applicationIdAt = 68;

void setVersion(const std::string& path, std::uint8_t version)
{
    auto bytes = bytesOf(path);
    bytes.at(userVersionAt + 3) = static_cast<char>(version);
    write(path, bytes);
}

Folder& filled(Folder& folder)
{
    auto store = openStore(folder);
    fillOneSet(store);
    return folder;
}

} // namespace

TEST_CASE("a new store is of the newest version, in write-ahead mode, and names its program in the header")
{
    const Folder folder;
    {
        auto store = openStore(folder);
        CHECK(good(store.verify()).empty());
    }
    const auto header = bytesOf(folder.paths().rows);
    CHECK(header.substr(applicationIdAt, 4) == "FLRg");
    CHECK(bytesOf(folder.paths().captures).substr(applicationIdAt, 4) == "FLRc");
    CHECK(header.at(userVersionAt + 3) == newestRowsVersion());
    CHECK(header.at(18) == 2); // write-ahead log, same source
}

TEST_CASE("a file of a later version is refused and not one byte of it changes")
{
    Folder folder;
    const auto paths = filled(folder).paths();
    const bool captures = GENERATE(false, true);
    const auto& path = captures ? paths.captures : paths.rows;
    setVersion(path, 99);
    const auto before = bytesOf(path);
    const auto opened = Store::open(paths, benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreTooNew);
    CHECK(opened.error().place == path);
    CHECK_THAT(opened.error().message, Catch::Contains("update"));
    CHECK(bytesOf(path) == before);
}

TEST_CASE("a later version that stands only in the log is refused too, and the main file keeps its bytes")
{
    Folder folder;
    const auto paths = filled(folder).paths();
    const std::string log = paths.rows + "-wal";
    {
        // A writer that dies before it moves its log into the file.
        Connection connection(paths.rows, Access::ReadWrite);
        connection.run("PRAGMA user_version = 99");
        write(folder.file("kept-log"), bytesOf(log));
    }
    REQUIRE_FALSE(bytesOf(folder.file("kept-log")).empty());
    write(log, bytesOf(folder.file("kept-log")));
    const auto before = bytesOf(paths.rows);
    REQUIRE(before.at(userVersionAt + 3) == newestRowsVersion());
    const auto opened = Store::open(paths, benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreTooNew);
    CHECK(bytesOf(paths.rows) == before);
}

TEST_CASE("a file that is no store, or cut short, is refused by name and kept as it is")
{
    Folder folder;
    const auto paths = filled(folder).paths();
    std::string bytes;
    SECTION("text")
    {
        bytes = "time_s,acc_x_mps2\n0,0\n";
    }
    SECTION("random bytes")
    {
        bytes = std::string(5000, '\x9c');
    }
    SECTION("the first half of the header")
    {
        bytes = bytesOf(paths.rows).substr(0, 50);
    }
    write(paths.rows, bytes);
    const auto opened = Store::open(paths, benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreCorrupt);
    CHECK(opened.error().place == paths.rows);
    CHECK(bytesOf(paths.rows) == bytes);
}

TEST_CASE("a database of another program is refused and kept as it is")
{
    const Folder folder;
    {
        Connection other(folder.paths().rows, Access::ReadWrite);
        other.run("CREATE TABLE recipe (title TEXT)");
    }
    const auto before = bytesOf(folder.paths().rows);
    const auto opened = Store::open(folder.paths(), benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreCorrupt);
    CHECK_THAT(opened.error().message, Catch::Contains("another program"));
    CHECK(bytesOf(folder.paths().rows) == before);

    const StorePaths swapped{folder.file("b.fleetrung"), folder.file("a.fleetrung")};
    {
        const auto store = good(Store::open({swapped.captures, swapped.rows}, benchDevice));
    }
    CHECK(codeOf(Store::open(swapped, benchDevice)) == Code::StoreCorrupt); // each file in the other's place
}

TEST_CASE("pages overwritten in the middle of the file give an error and never an empty list, and verify says so")
{
    Folder folder;
    const auto paths = filled(folder).paths();
    auto bytes = bytesOf(paths.rows);
    REQUIRE(bytes.size() > 20 * 4096);
    for (std::size_t i = 2 * 4096; i < bytes.size(); ++i) // all but the schema's pages
        bytes[i] = static_cast<char>(i * 31);
    write(paths.rows, bytes);
    auto store = Store::open(paths, benchDevice);
    if (store) {
        const auto read = store->list<Repetition>();
        REQUIRE_FALSE(read);
        CHECK(read.error().code == Code::StoreCorrupt);
        CHECK_FALSE(good(store->verify()).empty());
    } else {
        CHECK(store.error().code == Code::StoreCorrupt);
    }
    CHECK(std::filesystem::exists(paths.rows));
}

TEST_CASE("a folder that is not there, a folder in the file's place and a place without permission are told apart from "
          "damage")
{
    const Folder folder;
    std::string path;
    SECTION("no such folder")
    {
        path = folder.file("missing/athletes.fleetrung");
    }
    SECTION("a folder stands there")
    {
        path = folder.path().string();
    }
    SECTION("nothing may be made there")
    {
        path = "/proc/athletes.fleetrung";
    } // also for the superuser
    const auto opened = Store::open({path, folder.file("c.fleetrung")}, benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreFailed);
    CHECK(opened.error().place == path);
    CHECK_FALSE(opened.error().message.empty());
    CHECK_FALSE(std::filesystem::exists(folder.file("c.fleetrung")));
}

TEST_CASE("a file without read permission is refused and kept")
{
    if (geteuid() == 0) {
        WARN("skipped: the superuser may read everything");
        return;
    }
    Folder folder;
    const auto paths = filled(folder).paths();
    chmod(paths.rows.c_str(), 0);
    const auto opened = Store::open(paths, benchDevice);
    REQUIRE_FALSE(opened);
    CHECK(opened.error().code == Code::StoreFailed);
}

TEST_CASE("a reader sees what the writer stored, is not blocked by it, and may not write")
{
    Folder folder;
    auto writer = openStore(folder);
    fillOneSet(writer);
    auto reader = good(Store::openReadOnly(folder.paths()));
    CHECK(good(reader.list<Repetition>()).size() == 3);
    good(writer.inTransaction([&]() -> Expected<void> {
        good(writer.insert(athleteRow(30, "Unfinished")));
        CHECK(good(reader.list<Athlete>()).size() == 1); // the open transaction is not seen, and does not block
        return {};
    }));
    CHECK(good(reader.list<Athlete>()).size() == 2);
    CHECK(codeOf(reader.insert(athleteRow(31))) == Code::Refused);
    CHECK(codeOf(reader.putSamples({})) == Code::StoreFailed);
}

TEST_CASE("a reader of a store that is not there does not make one")
{
    const Folder folder;
    CHECK(codeOf(Store::openReadOnly(folder.paths())) == Code::StoreFailed);
    CHECK(std::filesystem::is_empty(folder.path()));
}

TEST_CASE("a migration keeps the rows, moves the version with them, and leaves a backup of what was")
{
    Folder folder;
    const auto path = filled(folder).paths().rows;
    const auto& schema = rowsSchema();
    std::vector<std::string_view> steps(schema.steps.begin(), schema.steps.end());
    steps.push_back("ALTER TABLE athlete ADD COLUMN club TEXT NOT NULL DEFAULT ''");
    {
        Connection connection(path, Access::ReadWrite);
        good(migrate(connection, {schema.applicationId, schema.what, steps}));
        CHECK(connection.number("PRAGMA user_version") == newestRowsVersion() + 1);
        CHECK(connection.number("SELECT count(*) FROM athlete WHERE club = ''") == 1);
    }
    const auto backup = path + ".version-" + std::string(1, static_cast<char>('0' + newestRowsVersion())) + ".backup";
    REQUIRE(std::filesystem::exists(backup));
    auto old = good(Store::open({backup, folder.paths().captures}, benchDevice));
    CHECK(good(old.list<Repetition>()).size() == 3);
}

TEST_CASE("a migration step that fails is undone whole, and the file stays at its version")
{
    Folder folder;
    const auto path = filled(folder).paths().rows;
    const auto& schema = rowsSchema();
    std::vector<std::string_view> steps(schema.steps.begin(), schema.steps.end());
    steps.push_back(
        "ALTER TABLE athlete ADD COLUMN club TEXT NOT NULL DEFAULT ''; ALTER TABLE nothing ADD COLUMN x TEXT");
    {
        Connection connection(path, Access::ReadWrite);
        CHECK_FALSE(migrate(connection, {schema.applicationId, schema.what, steps}));
    }
    auto store = openStore(folder); // still this version
    CHECK(good(store.list<Repetition>()).size() == 3);
    CHECK(good(store.find<Athlete>(idOf(1))).name == "Ilka Tannhof");
}
