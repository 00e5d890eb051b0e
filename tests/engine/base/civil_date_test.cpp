#include "engine/base/civil_date.hpp"

#include <catch2/catch.hpp>

using namespace fleetrung;

TEST_CASE("a date is read in its ISO form and written back", "[date]")
{
    for (const auto* text : {"2026-03-30", "2024-02-29", "2000-02-29", "1999-12-31", "0001-01-01"}) {
        CAPTURE(text);
        const auto date = parseDate(text);
        REQUIRE(date);
        CHECK(dateText(*date) == text);
    }
}

TEST_CASE("days that do not exist, and other forms, are no dates", "[date]")
{
    // 1900 and 2100 are no leap years: Gregorian rule of 1582 (Inter gravissimas).
    for (const auto* text :
         {"2026-02-29", "1900-02-29", "2100-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "2026-1-1", "26-01-01",
          "2026/01/01", "01.02.2026", "2026-01-01T00:00", "+026-01-01", "2026-01- 1", "", "2026-01-0a"}) {
        CAPTURE(text);
        CHECK_FALSE(parseDate(text));
    }
}

TEST_CASE("a week runs over leap day and year end", "[date]")
{
    using std::chrono::days;
    CHECK(dateText(*parseDate("2028-02-26") + days{7}) == "2028-03-04");
    CHECK(dateText(*parseDate("2026-02-26") + days{7}) == "2026-03-05");
    CHECK(dateText(*parseDate("2026-12-28") + days{7}) == "2027-01-04");
    CHECK(daysBetween(*parseDate("2027-12-31"), *parseDate("2028-03-01")) == 61);
    CHECK(daysBetween(*parseDate("2028-03-01"), *parseDate("2027-12-31")) == -61);
}

TEST_CASE("Monday is the first day of the week", "[date]")
{
    // Python: datetime.date(2026, 3, 30).isoweekday() == 1, (2026, 1, 1) -> 4, (2025, 3, 30) -> 7, (2024, 2, 29) -> 4.
    CHECK(isoWeekday(*parseDate("2026-03-30")) == 1);
    CHECK(isoWeekday(*parseDate("2026-01-01")) == 4);
    CHECK(isoWeekday(*parseDate("2025-03-30")) == 7);
    CHECK(isoWeekday(*parseDate("2024-02-29")) == 4);
}
