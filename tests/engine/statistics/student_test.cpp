#include <cmath>

#include <catch2/catch.hpp>

#include "engine/statistics/student.hpp"

using namespace fleetrung::statistics;

TEST_CASE("The 95 percent point of Student's t is SciPy's", "[statistics]")
{
    // SciPy 1.10.1, stats.t.ppf(0.975, n): tests/reference/make_statistics.py.
    CHECK(studentT95(1) == Approx(12.706205).margin(1e-6));
    CHECK(studentT95(4) == Approx(2.776445).margin(1e-6));
    CHECK(studentT95(30) == Approx(2.042272).margin(1e-6));
    CHECK(studentT95(31) == Approx(2.0395134464).margin(3e-6));
    CHECK(studentT95(40) == Approx(2.0210753830).margin(1e-6));
    CHECK(studentT95(120) == Approx(1.9799304051).margin(1e-6));
    CHECK(studentT95(1000) == Approx(1.9623390808).margin(1e-8));
    CHECK(std::isnan(studentT95(0)));
}
