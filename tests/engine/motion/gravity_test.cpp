#include <catch2/catch.hpp>

#include "engine/motion/gravity.hpp"

using fleetrung::motion::normalGravity;

// Source: WGS84 constants of NGA.STND.0036; values worked out from the closed formula in extended precision.
TEST_CASE("Gravity on the ellipsoid is least at the equator and greatest at the pole", "[motion][published]")
{
    CHECK(normalGravity(0) == Approx(9.7803253359).margin(1e-8));
    CHECK(normalGravity(45) == Approx(9.8061977694).margin(1e-8));
    CHECK(normalGravity(90) == Approx(9.8321849378).margin(2e-8));
}

TEST_CASE("Gravity falls with height", "[motion][published]")
{
    CHECK(normalGravity(45, 1000) == Approx(9.803112944).margin(1e-6));
    CHECK(normalGravity(40, 1609) == Approx(9.796733485).margin(1e-6));
}
