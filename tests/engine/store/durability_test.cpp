// The program is killed while it writes: everything it had announced is there, and the files are whole.
#include "store_helper.hpp"

#include <chrono>
#include <random>
#include <thread>

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

namespace
{

CaptureSamples oneSecond(int second)
{
    CaptureSamples samples;
    for (int i = 0; i < 200; ++i) {
        samples.time.push_back(second + i / 200.0);
        for (auto& channel : samples.channels)
            channel.push_back(i * second % 97);
    }
    return samples;
}

/// Stores repetition after repetition and says each number into the pipe once it is stored. Never returns.
[[noreturn]] void writeUntilKilled(const StorePaths& paths, int pipe)
{
    auto store = Store::open(paths, benchDevice);
    if (!store)
        _exit(1);
    for (int i = 1;; ++i) {
        if (!store->putPiece(idOf(3), i, oneSecond(i)) || !store->insert(repetitionRow(100 + i, 4, i)))
            _exit(2);
        if (::write(pipe, &i, sizeof i) != sizeof i)
            _exit(3);
    }
}

} // namespace

TEST_CASE("killed at any instant, no announced repetition and no announced second of samples is lost")
{
    const auto seed = std::random_device{}();
    CAPTURE(seed);
    std::mt19937 random(seed);
    for (int round = 0; round < 6; ++round) {
        const Folder folder;
        {
            auto store = openStore(folder);
            fillOneSet(store);
        }
        int pipe[2];
        REQUIRE(::pipe(pipe) == 0);
        const pid_t child = fork();
        REQUIRE(child >= 0);
        if (child == 0)
            writeUntilKilled(folder.paths(), pipe[1]);
        ::close(pipe[1]);
        std::this_thread::sleep_for(std::chrono::milliseconds(60 + random() % 140));
        ::kill(child, SIGKILL);
        int announced = 0;
        for (int number = 0; ::read(pipe[0], &number, sizeof number) == sizeof number;)
            announced = number;
        ::close(pipe[0]);
        int status = 0;
        waitpid(child, &status, 0);
        REQUIRE(WIFSIGNALED(status));

        auto store = openStore(folder);
        CHECK(good(store.verify()).empty());
        const auto stored = static_cast<int>(good(store.list<Repetition>({.analysis = idOf(4)})).size()) - 3;
        CHECK(stored >= announced);
        CHECK(stored <= announced + 1); // the last may be stored and not yet announced
        const auto pieces = good(store.pieces(idOf(3)));
        REQUIRE(static_cast<int>(pieces.size()) >= announced);
        for (int i = 0; i < announced; ++i)
            REQUIRE(pieces[static_cast<std::size_t>(i)] == oneSecond(i + 1));
    }
}

TEST_CASE("a second writer waits, and is told that the store is busy")
{
    const Folder folder;
    auto first = openStore(folder);
    auto second = openStore(folder, idOf(0xB0002));
    good(first.inTransaction([&]() -> Expected<void> {
        good(first.insert(athleteRow(1)));
        const auto refused = second.insert(athleteRow(2));
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == Code::StoreBusy);
        return {};
    }));
    CHECK(good(second.insert(athleteRow(2))));
    CHECK(good(second.find<Athlete>(idOf(2))).counter == 2);
}

TEST_CASE("recordings under way are found again, in order, and go when they are dropped")
{
    const Folder folder;
    {
        auto store = openStore(folder);
        good(store.putPiece(idOf(3), 2, oneSecond(2)));
        good(store.putPiece(idOf(3), 1, oneSecond(1)));
        good(store.putPiece(idOf(9), 1, oneSecond(5)));
    }
    auto store = openStore(folder);
    good(store.beginRecording(idOf(3), "half squat"));
    good(store.keepClockFit(idOf(3), "a line"));
    good(store.keepClockFit(idOf(3), "the line"));
    CHECK(good(store.unfinishedRecordings()) ==
          std::vector<UnfinishedRecording>{{idOf(3), "half squat", "the line"}, {idOf(9), "", ""}});
    const auto pieces = good(store.pieces(idOf(3)));
    REQUIRE(pieces.size() == 2);
    CHECK(pieces[0] == oneSecond(1));
    good(store.dropPieces(idOf(3)));
    CHECK(good(store.unfinishedRecordings()) == std::vector<UnfinishedRecording>{{idOf(9), "", ""}});
}
