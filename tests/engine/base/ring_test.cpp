#include <thread>
#include <vector>

#include <catch2/catch.hpp>

#include "engine/base/ring.hpp"

using fleetrung::Ring;

TEST_CASE("A ring gives back what was put in, in order, also after it has gone round")
{
    Ring<int> ring(4);
    CHECK(ring.room() == 4);
    for (int round = 0; round < 10; ++round) {
        for (int i = 0; i < 3; ++i)
            CHECK(ring.push(10 * round + i));
        for (int i = 0; i < 3; ++i)
            CHECK(ring.pop() == 10 * round + i);
    }
    CHECK_FALSE(ring.pop());
    CHECK(ring.lost() == 0);
}

TEST_CASE("A full ring drops the new item, counts it, and keeps what it has")
{
    Ring<int> ring(3);
    CHECK(ring.room() == 4);
    for (int i = 0; i < 6; ++i)
        CHECK(ring.push(i) == (i < 4));
    CHECK(ring.lost() == 2);
    for (int i = 0; i < 4; ++i)
        CHECK(ring.pop() == i);
    CHECK(ring.push(9));
    CHECK(ring.pop() == 9);
}

TEST_CASE("Between two threads a ring neither loses nor doubles nor tears an item without counting it")
{
    struct Item {
        long number = 0, same = 0;
    };
    constexpr long count = 400000;
    Ring<Item> ring(64);
    std::atomic<bool> ended{false};
    std::thread from([&] {
        for (long i = 0; i < count; ++i)
            ring.push({i, i});
        ended = true;
    });
    long taken = 0, last = -1, torn = 0, disorder = 0;
    for (bool more = true; more;) {
        more = !ended; // read before the ring is emptied
        while (const auto item = ring.pop()) {
            torn += item->number != item->same ? 1 : 0;
            disorder += item->number <= last ? 1 : 0;
            last = item->number;
            ++taken;
        }
    }
    from.join();
    CHECK(torn == 0);
    CHECK(disorder == 0);
    CHECK(taken + ring.lost() == count);
}
