// A season re-analysed from its raw captures: 150 sessions of 20 sets of 40 s, read from the store, decompressed,
// analysed and written back, on two threads. Nothing is extrapolated.
#include <atomic>
#include <ctime>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <thread>
#include <vector>

#include <benchmark/benchmark.h>
#include <stdlib.h>

#include "mobile/logbook/capture_mapping.hpp"
#include "mobile/logbook/logbook.hpp"
#include "tests/benchmarks/sets.hpp"

namespace fleetrung::benchmarks
{
namespace
{

constexpr int setsASession = 20;
constexpr unsigned threads = 2;

template <class T> T good(Expected<T> result)
{
    if (!result)
        throw std::runtime_error(describe(result.error()));
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

Identifier numbered(std::uint8_t kind, std::uint64_t number)
{
    Identifier id;
    id.bytes[0] = kind;
    for (std::size_t i = 0; i < 8; ++i)
        id.bytes[15 - i] = static_cast<std::uint8_t>(number >> (8 * i));
    return id;
}

/// A store of its own that goes when the program ends.
class Folder
{
public:
    Folder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "fleetrung-season-XXXXXX").string();
        if (mkdtemp(name.data()) == nullptr)
            throw std::runtime_error("no temporary folder");
        path_ = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }
    [[nodiscard]] store::StorePaths paths() const
    {
        return {(path_ / "athletes.fleetrung").string(), (path_ / "captures.fleetrung").string()};
    }
    [[nodiscard]] double megabytes() const
    {
        return static_cast<double>(std::filesystem::file_size(paths().captures)) / 1e6;
    }

private:
    std::filesystem::path path_;
};

/// One set as an earlier version of the engine left it.
void insertSet(store::Store& store, const Identifier& session, std::uint64_t number, const TimedSet& timed)
{
    store::LiftSet set;
    set.id = numbered(3, number);
    set.session = session;
    set.ordinal = static_cast<int>(number % setsASession) + 1;
    set.done = {1767225600 + static_cast<std::int64_t>(number), 60, "Europe/Vienna", CivilDate{}};
    set.lift = timed.lift->key;
    good(store.insert(set));

    store::Capture capture;
    capture.id = numbered(4, number);
    capture.set = set.id;
    capture.sensor = "simulator";
    capture.placement = "bar";
    capture.samples = static_cast<std::int64_t>(timed.recording.samples.size());
    capture.traits = logbook::traitsText(timed.recording.sensor);
    capture.contentHash =
        good(store.putSamples(logbook::samplesOf(timed.recording), logbook::scalesOf(timed.recording.sensor)));
    good(store.insert(capture));

    store::Analysis analysis;
    analysis.id = numbered(5, number);
    analysis.set = set.id;
    analysis.capture = capture.id;
    analysis.engineVersion = "earlier";
    analysis.samplingRateHz = setRate;
    good(store.insert(analysis));
}

/// Simulated on two threads, written by one.
void fill(const store::StorePaths& paths, int sessions)
{
    auto store = good(store::Store::open(paths, numbered(9, 1)));
    store::Athlete athlete;
    athlete.id = numbered(1, 1);
    athlete.name = "Invented";
    good(store.insert(athlete));
    for (int s = 0; s < sessions; ++s) {
        std::vector<TimedSet> sets(setsASession);
        std::vector<std::thread> workers;
        for (unsigned t = 0; t < threads; ++t)
            workers.emplace_back([&, t] {
                for (std::size_t i = t; i < sets.size(); i += threads)
                    sets[i] = fortySeconds(static_cast<std::uint64_t>(s) * setsASession + i);
            });
        for (auto& worker : workers)
            worker.join();
        good(store.inTransaction([&]() -> Expected<void> {
            store::Session session;
            session.id = numbered(2, static_cast<std::uint64_t>(s));
            session.athlete = athlete.id;
            session.kind = "strength";
            good(store.insert(session));
            for (std::size_t i = 0; i < sets.size(); ++i)
                insertSet(store, session.id, static_cast<std::uint64_t>(s) * setsASession + i, sets[i]);
            return {};
        }));
    }
}

void reanalyseSome(const store::StorePaths& paths, std::uint64_t sets, std::atomic<std::uint64_t>& next)
{
    std::uint64_t made = 0;
    auto logbook = good(logbook::Logbook::open(paths, numbered(9, 1), [&made] { return numbered(8, ++made); }));
    for (std::uint64_t i = next++; i < sets; i = next++)
        if (!good(logbook.reanalyse(numbered(3, i))))
            throw std::runtime_error("a set was of this engine already");
}

void season(benchmark::State& state)
{
    const auto sessions = static_cast<int>(state.range(0));
    const auto sets = static_cast<std::uint64_t>(sessions) * setsASession;
    for (auto _ : state) {
        state.PauseTiming();
        const Folder folder;
        fill(folder.paths(), sessions);
        state.counters["captures_MB"] = folder.megabytes();
        state.ResumeTiming();
        const auto busyBefore = std::clock();
        std::atomic<std::uint64_t> next = 0;
        std::vector<std::thread> workers;
        for (unsigned t = 0; t < threads; ++t)
            workers.emplace_back([&] { reanalyseSome(folder.paths(), sets, next); });
        for (auto& worker : workers)
            worker.join();
        state.PauseTiming();
        // Of both threads; what is missing to twice the time was spent waiting for the disk.
        state.counters["busy_s"] = static_cast<double>(std::clock() - busyBefore) / CLOCKS_PER_SEC;
        state.counters["sets"] = static_cast<double>(sets);
        state.ResumeTiming();
    }
    state.counters["sets/s"] = benchmark::Counter(static_cast<double>(sets), benchmark::Counter::kIsRate);
}
BENCHMARK(season)
    ->Name("season re-analysed, sessions of 20 sets of 40 s")
    ->Arg(2)
    ->Arg(150)
    ->Unit(benchmark::kSecond)
    ->Iterations(1)
    ->UseRealTime();

} // namespace
} // namespace fleetrung::benchmarks

BENCHMARK_MAIN();
