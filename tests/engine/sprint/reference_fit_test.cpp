// Fits of the same splits by R 4.2.2's nls: tests/reference/make_sprint_fits.R.
#include <vector>

#include <catch2/catch.hpp>

#include "engine/sprint/splits.hpp"

using namespace fleetrung;
using namespace fleetrung::sprint;

namespace
{

const std::vector<Split> six{{5, 1.318}, {10, 2.037}, {15, 2.654}, {20, 3.228}, {30, 4.309}, {40, 5.349}}; // invented

// Men's 100 m final, Berlin 2009: Graubner R, Nixdorf E, New Stud Athl 2011;26(1/2):19-53.
const std::vector<Split> berlin{{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                                {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};

struct Expect {
    double vmax, vmaxError, tau, tauError, deviation;
};

void checkAgainst(const Expected<SprintFit>& fit, const Expect& r)
{
    REQUIRE(fit);
    CHECK(fit->model.vmax == Approx(r.vmax).epsilon(1e-6));
    CHECK(fit->model.tau == Approx(r.tau).epsilon(1e-6));
    CHECK(fit->vmaxError == Approx(r.vmaxError).epsilon(1e-4));
    CHECK(fit->tauError == Approx(r.tauError).epsilon(1e-4));
    CHECK(fit->residualDeviation == Approx(r.deviation).epsilon(1e-4));
}

} // namespace

TEST_CASE("Top speed, tau and their errors are those of R, the clock started by the first movement", "[published]")
{
    checkAgainst(fitSplits(six, {.keepAfterPeak = true, .keepSuspects = true}),
                 {9.71388400679, 0.0742184736863, 1.25645623207, 0.0257661165495, 0.0123844326829});
}

TEST_CASE("Top speed, tau, offset and their errors are those of R, the start of the clock unknown", "[published]")
{
    const auto fit = fitSplits(six, {.start = {Clock::Unknown, {}, 0}, .keepAfterPeak = true, .keepSuspects = true});
    checkAgainst(fit, {9.9650172226435, 0.01116856123722, 1.4497191982390, 0.00735951268862, 0.000848957579898});
    CHECK(fit->startOffset == Approx(-0.0807436816474).epsilon(1e-5));
    CHECK(fit->offsetError == Approx(0.00276311198654).epsilon(1e-4));
}

TEST_CASE("The final's fit and its errors are those of R, with the reaction known and free", "[published]")
{
    checkAgainst(fitSplits(berlin, {.start = {Clock::Gun, 0.146, 0}, .keepAfterPeak = true, .keepSuspects = true}),
                 {12.213881744, 0.0240262722466, 1.238304361, 0.0112087419737, 0.0104816400579});
    const auto free = fitSplits(berlin, {.start = {Clock::Gun, {}, 0}, .keepAfterPeak = true, .keepSuspects = true});
    checkAgainst(free, {12.251160217540, 0.0330302481150, 1.303653160087, 0.0425092051565, 0.00958355765991});
    CHECK(free->startOffset == Approx(0.101714762948).epsilon(1e-5));
    CHECK(free->offsetError == Approx(0.0275317252164).epsilon(1e-4));
}
