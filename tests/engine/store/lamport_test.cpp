// Counters and stamps: what a later merge of two devices will go by. Source of the counter's rule (received maximum +
// 1): L. Lamport, Time, clocks, and the ordering of events in a distributed system, CACM 1978;21(7):558-565.
#include "store_helper.hpp"

using namespace fleetrung;
using namespace fleetrung::store;
using namespace fleetrung::store::test;

TEST_CASE("each transaction takes the next counter, and all rows in it share it")
{
    const Folder folder;
    auto store = openStore(folder);
    good(store.insert(athleteRow(1)));
    good(store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(2)));
        good(store.insert(athleteRow(3)));
        return {};
    }));
    CHECK(good(store.find<Athlete>(idOf(1))).counter == 1);
    CHECK(good(store.find<Athlete>(idOf(2))).counter == 2);
    CHECK(good(store.find<Athlete>(idOf(3))).counter == 2);
}

TEST_CASE("after a row of another device was received, later writes get a larger counter than it, also after a restart")
{
    const Folder folder;
    {
        auto store = openStore(folder);
        good(store.observeCounter(41));
        good(store.observeCounter(7)); // an older one changes nothing
        good(store.insert(athleteRow(1)));
        CHECK(good(store.find<Athlete>(idOf(1))).counter == 42);
    }
    auto store = openStore(folder, idOf(0xB0002));
    good(store.insert(athleteRow(2)));
    CHECK(good(store.find<Athlete>(idOf(2))).counter == 43);
    CHECK(good(store.find<Athlete>(idOf(2))).origin == idOf(0xB0002));
}

TEST_CASE("only the fields that were changed are stamped, each with the counter and device of its last change")
{
    const Folder folder;
    {
        auto store = openStore(folder);
        good(store.insert(athleteRow(1)));
    }
    const Identifier other = idOf(0xB0002);
    auto store = openStore(folder, other);
    auto row = good(store.find<Athlete>(idOf(1)));
    row.note = "left-handed starter";
    good(store.update(row));
    CHECK(good(store.stamp<Athlete>(idOf(1), "note")) == Stamp{2, other});
    CHECK(good(store.stamp<Athlete>(idOf(1), "name")) == Stamp{1, benchDevice});

    good(store.update(row)); // nothing differs: no write, no counter
    CHECK(good(store.stamp<Athlete>(idOf(1), "note")) == Stamp{2, other});
    good(store.setDeleted<Athlete>(idOf(1), true));
    CHECK(good(store.stamp<Athlete>(idOf(1), "deleted")) == Stamp{3, other});
    const auto made = good(store.find<Athlete>(idOf(1)));
    CHECK(made.counter == 1);
    CHECK(made.origin == benchDevice);
}

TEST_CASE("a transaction that was rolled back, and a row that was there already, cost no counter")
{
    const Folder folder;
    auto store = openStore(folder);
    good(store.insert(athleteRow(1)));
    CHECK_FALSE(store.inTransaction([&]() -> Expected<void> {
        good(store.insert(athleteRow(2)));
        return fail(Code::Cancelled, "", "cancelled");
    }));
    CHECK_FALSE(good(store.insert(athleteRow(1))));
    good(store.insert(athleteRow(3)));
    CHECK(good(store.find<Athlete>(idOf(3))).counter == 2);
}
