#include <thread>

#include <catch2/catch.hpp>

#include "engine/base/ring.hpp"

using fleetrung::Ring;

TEST_CASE("a ring holds as much as it was made for and refuses the rest")
{
    Ring<int> ring(3);
    int value = 0;
    CHECK_FALSE(ring.pop(value));
    CHECK((ring.push(1) && ring.push(2) && ring.push(3)));
    CHECK_FALSE(ring.push(4));
    CHECK((ring.pop(value) && value == 1));
    CHECK(ring.push(5));
    for (const int expected : {2, 3, 5})
        CHECK((ring.pop(value) && value == expected));
    CHECK_FALSE(ring.pop(value));
}

TEST_CASE("what one thread puts into a ring another takes out in the same order, nothing lost or twice")
{
    constexpr int count = 200000;
    Ring<int> ring(64);
    std::thread filler([&ring] {
        for (int i = 0; i < count; ++i)
            while (!ring.push(i))
                std::this_thread::yield();
    });
    int wrong = 0;
    for (int expected = 0; expected < count;) {
        int value = -1;
        if (!ring.pop(value)) {
            std::this_thread::yield();
            continue;
        }
        wrong += value != expected++;
    }
    filler.join();
    CHECK(wrong == 0);
}
