#include "engine/report/moment.hpp"

#include <catch2/catch.hpp>

using namespace fleetrung::report;

// Source: RFC 3339, 5.8: 1985-04-12T23:20:50.52Z, 1996-12-19T16:39:57-08:00 (the same instant as 1996-12-20T00:39:57Z)
// and 1937-01-01T12:00:27.87+00:20. Seconds since 1970 from `date -u -d ... +%s`.
TEST_CASE("an instant is written as local time with its offset", "[moment]")
{
    CHECK(momentText({482'196'050'520, 0}) == "1985-04-12T23:20:50.520Z");
    CHECK(momentText({851'042'397'000, -480}) == "1996-12-19T16:39:57-08:00");
    CHECK(momentText({-1'041'337'172'130, 20}) == "1937-01-01T12:00:27.870+00:20");
}

TEST_CASE("the offset carries an instant over midnight into the next day", "[moment]")
{
    CHECK(momentText({0, 0}) == "1970-01-01T00:00:00Z");
    CHECK(momentText({0, -1}) == "1969-12-31T23:59:00-00:01");
    CHECK(momentText({23 * 3'600'000LL, 330}) == "1970-01-02T04:30:00+05:30");
}
