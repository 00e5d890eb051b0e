// One real pair of files a schema version, frozen: what was once written must always be readable. Made by the hidden
// test at the end (`store_tests "[.freeze]"`) when the version was new; never made again.
#include "store_helper.hpp"

#include "engine/store/migrate.hpp"

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

namespace
{

const std::string fixtures = FLEETRUNG_SOURCE "/tests/engine/store/fixtures/";

CaptureSamples fewSamples()
{
    CaptureSamples samples;
    for (int i = 0; i < 400; ++i) {
        samples.time.push_back(i / 200.0);
        for (std::size_t channel = 0; channel < 6; ++channel)
            samples.channels[channel].push_back((i * 37 % 101 + 11 * static_cast<int>(channel)) / 64.0);
    }
    return samples;
}

Document keptDocument()
{
    Document document;
    document.athlete = idOf(1);
    document.day = parseDate("2026-03-30");
    document.kind = DocumentKind::DayInput;
    for (int i = 0; i < 100; ++i)
        document.content.text += "{\"load_kg\":82.5}";
    document.id = documentId(document);
    return document;
}

} // namespace

TEST_CASE("a store of schema version 1 opens and holds what was put into it")
{
    const Folder folder;
    std::filesystem::copy_file(fixtures + "athletes-version-1.fleetrung", folder.paths().rows);
    std::filesystem::copy_file(fixtures + "captures-version-1.fleetrung", folder.paths().captures);
    auto store = openStore(folder);
    const auto athlete = good(store.find<Athlete>(idOf(1)));
    CHECK(athlete.name == "Ilka Tannhof");
    CHECK(athlete.counter == 1);
    CHECK(good(store.list<Repetition>({.athlete = idOf(1)})).at(2).timeToPeakVelocity == Metric{0.281, 0.004});
    const auto capture = good(store.list<Capture>({.set = idOf(3)})).at(0);
    CHECK(good(store.samples(capture.contentHash)) == fewSamples());
    CHECK(good(store.verify()).empty());
}

TEST_CASE("a store of schema version 1 gets what came after it: no group, no kept inputs, decisions without an ordinal")
{
    const Folder folder;
    {
        const auto steps = rowsSchema().steps.first(1);
        const auto file =
            good(openFile(folder.paths().rows, Access::ReadWrite, {rowsSchema().applicationId, "store", steps}));
        file->run("INSERT INTO athlete VALUES (x'000000000000000000000000000000aa', "
                  "x'000000000000000000000000000000dd', 1, 0, 'Ilka Tannhof', '', NULL,"
                  " NULL, NULL, NULL, 0, '')");
        file->run(
            "INSERT INTO season VALUES (x'000000000000000000000000000000bb', x'000000000000000000000000000000dd', 1, 0,"
            " x'000000000000000000000000000000aa', 'Outdoor', '2026-01-05', '2026-08-02', '{}')");
        for (const auto* values : {"1, '{\"load_factor\":0.9}'", "2, '{\"load_factor\":1.0}'", "3, 'no JSON'"})
            file->run("INSERT INTO decision SELECT randomblob(16), x'000000000000000000000000000000dd', 1, 0, "
                      "x'000000000000000000000000000000aa',"
                      " x'000000000000000000000000000000bb', '2026-02-0' || column1, 0, 0, '', '2026-02-01', 'squat',"
                      " 'ease', 'ease', 'full', 'full', column2, '', 'none', '', '' FROM (VALUES (" +
                      std::string(values) + "))");
    }
    auto store = openStore(folder);
    CHECK(good(store.find<Athlete>(idOf(0xaa))).group.empty());
    const auto decisions = good(store.list<Decision>({.season = idOf(0xbb)}));
    REQUIRE(decisions.size() == 3);
    CHECK(decisions[0].loadFactor == 0.9);
    CHECK(decisions[1].loadFactor == 1.0);
    CHECK(decisions[2].loadFactor == 1.0);
    CHECK(decisions[0].ordinal == 0);
    CHECK_FALSE(decisions[0].input);
    CHECK_FALSE(decisions[0].rules);
    CHECK(good(store.list<DecisionOutline>({.season = idOf(0xbb)})).at(0).loadFactor == 0.9);
    CHECK(good(store.verify()).empty());
}

TEST_CASE("a store of schema version 2 opens and holds what was put into it")
{
    const Folder folder;
    std::filesystem::copy_file(fixtures + "athletes-version-2.fleetrung", folder.paths().rows);
    std::filesystem::copy_file(fixtures + "captures-version-2.fleetrung", folder.paths().captures);
    auto store = openStore(folder);
    CHECK(good(store.find<Athlete>(idOf(1))).name == "Ilka Tannhof");
    const auto decision = good(store.find<Decision>(idOf(10)));
    CHECK(decision.loadFactor == 0.95);
    CHECK(decision.ordinal == 2);
    const auto document = good(store.find<Document>(*decision.input));
    CHECK(document.content == keptDocument().content);
    CHECK(document.id == keptDocument().id);
    CHECK(good(store.verify()).empty());
}

TEST_CASE("a store of schema version 3 opens and holds what was put into it")
{
    const Folder folder;
    std::filesystem::copy_file(fixtures + "athletes-version-3.fleetrung", folder.paths().rows);
    std::filesystem::copy_file(fixtures + "captures-version-3.fleetrung", folder.paths().captures);
    auto store = openStore(folder);
    CHECK(good(store.find<Athlete>(idOf(1))).name == "Ilka Tannhof");
    const auto sensor = good(store.find<Sensor>(idOf(11)));
    CHECK(sensor.placement == "shoe");
    CHECK(sensor.lastUsedUtcSeconds == 1774890000);
    CHECK(good(store.list<SensorMap>()).at(0).key == "invented");
    CHECK(good(store.unfinishedRecordings()) == std::vector<UnfinishedRecording>{{idOf(13), "{}", "{\"pace\":1}"}});
    CHECK(good(store.pieces(idOf(13))).at(0) == fewSamples());
    CHECK(good(store.verify()).empty());
}

TEST_CASE("a run of schema version 3 is no test and knows no reaction; a jump is one jump")
{
    const Folder folder;
    {
        const auto steps = rowsSchema().steps.first(3);
        const auto file =
            good(openFile(folder.paths().rows, Access::ReadWrite, {rowsSchema().applicationId, "store", steps}));
        file->run("INSERT INTO athlete VALUES (x'000000000000000000000000000000aa', "
                  "x'000000000000000000000000000000dd', 1, 0, 'Ilka Tannhof', '', NULL, NULL, NULL, NULL, 0, '', '')");
        file->run("INSERT INTO sprint VALUES (x'000000000000000000000000000000bb', "
                  "x'000000000000000000000000000000dd', 1, 0, x'000000000000000000000000000000aa', NULL, 0, 0, '', "
                  "'2026-02-01', 30, 4.2, '[]', 'block', 0, 'gates', 'track', 'spikes', NULL, NULL, NULL, 0, '')");
        file->run("INSERT INTO jump VALUES (x'000000000000000000000000000000cc', "
                  "x'000000000000000000000000000000dd', 1, 0, x'000000000000000000000000000000aa', NULL, 0, 0, '', "
                  "'2026-02-01', 'bounds', 'both', NULL, NULL, NULL, NULL, NULL, NULL, NULL, 9.1, NULL, '')");
    }
    auto store = openStore(folder);
    const auto sprint = good(store.find<Sprint>(idOf(0xbb)));
    CHECK(sprint.time == 4.2);
    CHECK_FALSE(sprint.test);
    CHECK_FALSE(sprint.reactionS);
    const auto jump = good(store.find<Jump>(idOf(0xcc)));
    CHECK(jump.distance.value == 9.1);
    CHECK(jump.repetitions == 1);
    CHECK(good(store.list<TrackWork>()).empty());
    CHECK(good(store.verify()).empty());
}

TEST_CASE("a store of schema version 4 opens and holds what was put into it")
{
    const Folder folder;
    std::filesystem::copy_file(fixtures + "athletes-version-4.fleetrung", folder.paths().rows);
    std::filesystem::copy_file(fixtures + "captures-version-4.fleetrung", folder.paths().captures);
    auto store = openStore(folder);
    CHECK(good(store.find<Athlete>(idOf(1))).name == "Ilka Tannhof");
    const auto work = good(store.find<TrackWork>(idOf(14)));
    CHECK(work.repetitions == 6);
    CHECK(work.loadKg == 12.5);
    CHECK_FALSE(work.bestTimeS);
    CHECK(good(store.find<Sprint>(idOf(15))).reactionS == 0.16);
    CHECK(good(store.find<Jump>(idOf(16))).repetitions == 3);
    CHECK(good(store.verify()).empty());
}

TEST_CASE("freeze the files of the newest schema version", "[.freeze]")
{
    const std::string version(1, static_cast<char>('0' + newestRowsVersion()));
    const StorePaths paths{fixtures + "athletes-version-" + version + ".fleetrung",
                           fixtures + "captures-version-" + version + ".fleetrung"};
    REQUIRE_FALSE(std::filesystem::exists(paths.rows));
    auto store = good(Store::open(paths, benchDevice));
    fillOneSet(store);
    Capture capture;
    capture.id = idOf(8);
    capture.set = idOf(3);
    capture.sensor = "file";
    capture.placement = "bar";
    capture.contentHash = good(store.putSamples(fewSamples()));
    capture.samples = 400;
    good(store.insert(capture));
    good(store.insert(keptDocument()));
    Season season;
    season.id = idOf(9);
    season.athlete = idOf(1);
    season.name = "Outdoor";
    season.start = *parseDate("2026-01-05");
    season.finish = *parseDate("2026-08-02");
    good(store.insert(season));
    Decision decision;
    decision.id = idOf(10);
    decision.athlete = idOf(1);
    decision.season = idOf(9);
    decision.day = *parseDate("2026-03-30");
    decision.made = at("2026-03-30");
    decision.input = keptDocument().id;
    decision.ordinal = 2;
    decision.loadFactor = 0.95;
    good(store.insert(decision));
    Sensor sensor;
    sensor.id = idOf(11);
    sensor.address = "C0:FF:EE:00:00:01";
    sensor.name = "Platform 2";
    sensor.placement = "shoe";
    sensor.map = "{}";
    sensor.lastUsedUtcSeconds = 1774890000;
    good(store.insert(sensor));
    SensorMap map;
    map.id = idOf(12);
    map.key = "invented";
    map.name = "Invented";
    map.text = "{}";
    good(store.insert(map));
    TrackWork work;
    work.id = idOf(14);
    work.athlete = idOf(1);
    work.done = at("2026-03-31");
    work.kind = "resisted";
    work.distance = 20;
    work.repetitions = 6;
    work.loadKg = 12.5;
    good(store.insert(work));
    Sprint sprint;
    sprint.id = idOf(15);
    sprint.athlete = idOf(1);
    sprint.run = at("2026-03-31");
    sprint.distance = 30;
    sprint.time = 4.21;
    sprint.test = true;
    sprint.reactionS = 0.16;
    good(store.insert(sprint));
    Jump jump;
    jump.id = idOf(16);
    jump.athlete = idOf(1);
    jump.done = at("2026-03-31");
    jump.kind = "bounds";
    jump.distance.value = 9.4;
    jump.repetitions = 3;
    good(store.insert(jump));
    good(store.beginRecording(idOf(13), "{}"));
    good(store.keepClockFit(idOf(13), "{\"pace\":1}"));
    good(store.putPiece(idOf(13), 0, fewSamples()));
}
