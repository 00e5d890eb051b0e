#include <catch2/catch.hpp>

#include "engine/strength/general_equations.hpp"

using namespace fleetrung;
using namespace fleetrung::strength;

TEST_CASE("The published curve of the full squat reaches 100 percent at 0.32 m/s and 60 at 1.00",
          "[strength][published]")
{
    // Sanchez-Medina et al. 2017, Sports Med Int Open 1(2):E80-E88: mean velocity at 1RM 0.32 m/s (found), 1.00 m/s at
    // 60 % (from memory).
    CHECK(generalShare("full-squat", 0.32)->share == Approx(1.00).margin(0.02));
    CHECK(generalShare("full-squat", 1.00)->share == Approx(0.60).margin(0.02));
    const auto share = generalShare("full-squat", 0.5);
    CHECK(share->low < share->share);
    CHECK(share->high > share->share);
}

TEST_CASE("Two published equations of the squat differ by more than a tenth of 1RM, so own lines are preferred",
          "[strength][published]")
{
    // At 0.5 m/s: 78.4 % (Naclerio & Larumbe-Zabala) against 90.2 % (Sanchez-Medina et al. 2017).
    const double parallel = generalShare("parallel-squat", 0.5)->share, full = generalShare("full-squat", 0.5)->share;
    CHECK(parallel == Approx(0.784).margin(0.001));
    CHECK(full == Approx(0.902).margin(0.001));
    CHECK(full - parallel > 0.10);
}

TEST_CASE("The bench press table and its equation agree to two percent of 1RM", "[strength][published]")
{
    // Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31(5):347-352; table from memory.
    CHECK(generalShare("bench-press", 0.80)->share == Approx(0.60).margin(0.02));
    CHECK(generalShare("bench-press", 0.48)->share == Approx(0.80).margin(0.02));
    CHECK(generalShare("bench-press", 0.19)->share == Approx(1.00).margin(0.02));
}

TEST_CASE("No share is made up where no equation was published", "[strength][error]")
{
    CHECK(generalShare("floor-clean", 1.0).error().code == Code::NotAvailable);
    CHECK(generalShare("full-squat", 1.9).error().code == Code::NotAvailable);
    CHECK(generalShare("full-squat", 0.0).error().code == Code::InvalidInput);
}
