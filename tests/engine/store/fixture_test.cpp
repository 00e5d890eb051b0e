// One real pair of files a schema version, frozen: what was once written must always be readable. Made by the hidden
// test at the end (`store_tests "[.freeze]"`) when the version was new; never made again.
#include "store_helper.hpp"

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
}
