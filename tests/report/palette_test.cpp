#include "mobile/plot/palette.hpp"

#include <array>

#include <catch2/catch.hpp>

using namespace fleetrung::plot;

namespace
{

constexpr std::array grounds{Ground::Dark, Ground::Light, Ground::Print};
constexpr std::array roles{Role::Axis,     Role::Grid,   Role::Label,  Role::Strong,    Role::Band,  Role::Taken,
                           Role::Planned,  Role::Mark,   Role::Latest, Role::ScaleBand, Role::Phase, Role::Race,
                           Role::MainRace, Role::Second, Role::Today,  Role::Chosen};
constexpr std::array areas{Role::Band, Role::ScaleBand};

} // namespace

// Source: WCAG 2.2, 1.4.3: black on white is 21:1 by definition; #777777 on white is 4.48:1, the known near miss.
TEST_CASE("contrast is that of WCAG", "[palette]")
{
    CHECK(contrast(Qt::black, Qt::white) == Approx(21.0));
    CHECK(contrast(Qt::white, Qt::black) == Approx(21.0));
    CHECK(contrast(QColor(0x77, 0x77, 0x77), Qt::white) == Approx(4.48).margin(0.005));
}

TEST_CASE("text of every role can be read on every ground", "[palette]")
{
    for (const auto ground : grounds)
        for (const auto role : roles) {
            CAPTURE(static_cast<int>(ground), static_cast<int>(role));
            CHECK(contrast(textColour(role, ground), groundColour(ground)) >= 4.5);
        }
}

TEST_CASE("labels of marks can be read on the bands they may lie on", "[palette]")
{
    for (const auto ground : grounds)
        for (const auto area : areas)
            for (const auto role : {Role::Mark, Role::Latest, Role::Second, Role::Strong}) {
                CAPTURE(static_cast<int>(ground), static_cast<int>(area), static_cast<int>(role));
                CHECK(contrast(textColour(role, ground), shapeColour(area, ground)) >= 4.5);
            }
}

// Source: WCAG 2.2, 1.4.11: graphics that carry meaning need 3:1.
TEST_CASE("lines and marks stand out from every ground", "[palette]")
{
    for (const auto ground : grounds)
        for (const auto role : {Role::Axis, Role::Taken, Role::Planned, Role::Mark, Role::Latest, Role::Race,
                                Role::MainRace, Role::Second, Role::Today}) {
            CAPTURE(static_cast<int>(ground), static_cast<int>(role));
            CHECK(contrast(shapeColour(role, ground), groundColour(ground)) >= 3.0);
        }
}

TEST_CASE("every colour is opaque", "[palette]")
{
    for (const auto ground : grounds)
        for (const auto role : roles) {
            CHECK(shapeColour(role, ground).alpha() == 255);
            CHECK(textColour(role, ground).alpha() == 255);
        }
}
