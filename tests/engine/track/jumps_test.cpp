#include <catch2/catch.hpp>

#include "engine/track/boxes.hpp"
#include "engine/track/jump_values.hpp"

using namespace fleetrung;
using namespace fleetrung::track;

namespace
{

const CivilDate day = *parseDate("2026-05-04");

DropJump jump(double box, double contact, double rsi, int daysLater = 0)
{
    DropJump made;
    made.day = day + std::chrono::days{daysLater};
    made.box = box;
    made.contact = contact;
    made.rsi = rsi;
    return made;
}

} // namespace

TEST_CASE("half a second of flight is a height of 30.6 cm", "[jumps][closed-form]")
{
    // g t^2 / 8 = 9.80665 x 0.25 / 8
    const auto values = jumpValues(jumps::Measured{0.2, 0}, jumps::Measured{0.5, 0.004});
    REQUIRE(values.height);
    CHECK(values.height->value == Approx(0.306458).epsilon(1e-5));
    CHECK(values.height->uncertainty == Approx(2 * 0.306458 / 0.5 * 0.004).epsilon(1e-5));
    CHECK(values.rsi->value == Approx(1.53229).epsilon(1e-5));
}

TEST_CASE("a height that was typed goes before the one of the flight", "[jumps]")
{
    const auto values = jumpValues(jumps::Measured{0.2, 0}, jumps::Measured{0.5, 0}, jumps::Measured{0.4, 0});
    CHECK(values.height->value == 0.4);
    CHECK(values.rsi->value == Approx(2.0));
}

TEST_CASE("without contact there is no RSI, without flight no height, and zero is no measurement", "[jumps]")
{
    CHECK_FALSE(jumpValues({}, jumps::Measured{0.5, 0}).rsi);
    CHECK_FALSE(jumpValues(jumps::Measured{0.2, 0}, {}).height);
    CHECK_FALSE(jumpValues(jumps::Measured{0, 0}, jumps::Measured{0.5, 0}).rsi);
    CHECK_FALSE(jumpValues(jumps::Measured{0.2, 0}, jumps::Measured{0, 0}).height);
}

TEST_CASE("each box shows the medians of its last day and its best RSI", "[boxes]")
{
    const std::vector jumps{jump(0.3, 0.20, 1.9), jump(0.3, 0.21, 1.5, 7), jump(0.3, 0.23, 1.7, 7),
                            jump(0.3, 0.22, 1.6, 7), jump(0.2, 0.19, 1.4, 7)};
    const auto boxes = byBox(jumps, 0.25);
    REQUIRE(boxes.size() == 2);
    CHECK(boxes[0].box == 0.2);
    CHECK(boxes[1].jumps == 4);
    CHECK(*boxes[1].contact == Approx(0.22));
    CHECK(*boxes[1].rsi == Approx(1.6));
    CHECK(*boxes[1].bestRsi == Approx(1.9));
    CHECK(bestBox(boxes) == &boxes[1]);
}

TEST_CASE("the box of the best RSI is one with contact of at most 0.25 s and heels that do not strike", "[boxes]")
{
    const auto best = [](const std::vector<DropJump>& jumps) {
        const auto boxes = byBox(jumps, 0.25);
        const auto* found = bestBox(boxes);
        return found == nullptr ? 0.0 : found->box;
    };
    CHECK(best({jump(0.2, 0.20, 1.5), jump(0.3, 0.25, 1.7), jump(0.4, 0.26, 2.0)}) == 0.3);
    auto heels = jump(0.3, 0.22, 1.9);
    heels.heelsStruck = true;
    CHECK(best({jump(0.2, 0.20, 1.5), heels}) == 0.2);
    CHECK(best({jump(0.4, 0.26, 2.0)}) == 0);
}
