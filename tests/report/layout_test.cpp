#include "mobile/plot/layout.hpp"

#include <QImage>

#include <catch2/catch.hpp>

#include "mobile/pdf/report_pictures.hpp"
#include "mobile/plot/lag_picture.hpp"
#include "tests/report/gui_application.hpp"
#include "tests/report/invented_season.hpp"

using namespace fleetrung;
using namespace fleetrung::plot;

namespace
{

std::vector<Plot> everyPicture()
{
    const auto report = invented::season();
    StrikeLineInput strike;
    strike.targetBand = Span{0.24, 0.30};
    for (int number = 1; number <= 12; ++number)
        strike.repetitions.push_back({.number = number,
                                      .timeToPeak = 0.25 + 0.004 * number,
                                      .uncertainty = 0.006,
                                      .side = number % 2 == 0 ? Side::Left : Side::Right,
                                      .counts = number != 3});
    VelocityTraceInput trace;
    for (int i = 0; i < 500; ++i) {
        trace.time.push_back(0.02 * i);
        trace.velocity.push_back(i % 50 < 25 ? 0.6 : -0.6);
    }
    trace.peakTimes = {0.3, 1.3, 2.3};
    const std::vector<sprint::Split> splits{{10, 1.89}, {20, 2.88}, {30, 3.78}, {40, 4.64}, {50, 5.47},
                                            {60, 6.29}, {70, 7.10}, {80, 7.92}, {90, 8.75}, {100, 9.58}};
    const auto run = sprintCurveInput(*sprint::fitSplits(splits, {.start = {.clock = sprint::Clock::Unknown}}), 0);
    std::vector<transfer::Lag> lags(5);
    for (int weeks = 0; weeks <= transfer::longestLag; ++weeks) {
        auto& lag = lags[static_cast<std::size_t>(weeks)];
        lag.weeks = weeks;
        lag.pairs = 30 - weeks;
        lag.correlation = 0.2 * weeks - 0.3;
        lag.chanceReaches = 0.5;
    }
    return {strikeLine(strike),
            sprintCurve(run),
            splitResiduals(run),
            velocityTrace(trace),
            pdf::stairOf(report, report.ladders[0]),
            pdf::stairOf(report, report.ladders[1]),
            pdf::trendOf(report, report.ladders[0]),
            pdf::trendOf(report, report.ladders[1]),
            pdf::sprintTrendOf(report, "flying 20 m"),
            lagPicture(lags)};
}

} // namespace

TEST_CASE("no text of a picture is cut or lies on another, from small print to twice the usual size", "[layout]")
{
    needGuiApplication();
    const double width = GENERATE(300.0, 360.0, 800.0);
    const double textSize = GENERATE(8.0, 12.0, 16.0, 24.0, 32.0);
    CAPTURE(width, textSize);
    for (const auto& plot : everyPicture()) {
        CAPTURE(plot.title);
        Look look;
        look.textSize = textSize;
        const QFontMetricsF metrics(plotFont(look, false));
        const QRectF area(0, 0, width, suitableHeight(plot, width, textSize));
        const Layout layout(plot, area, look, metrics);
        CHECK(layout.picture.width() >= 0.45 * width);
        CHECK(layout.picture.height() >= 4 * metrics.height());
        const auto roomy = area.adjusted(-1, -1, 1, 1);
        for (std::size_t i = 0; i < layout.texts.size(); ++i) {
            CAPTURE(layout.texts[i].text.toStdString());
            CHECK(roomy.contains(layout.texts[i].box));
            for (std::size_t j = i + 1; j < layout.texts.size(); ++j)
                CHECK_FALSE(layout.texts[i].box.intersects(layout.texts[j].box));
        }
    }
}

TEST_CASE("at twice the usual size every rung of the stair is still named", "[layout]")
{
    needGuiApplication();
    const auto report = invented::season();
    const auto plot = pdf::stairOf(report, report.ladders[0]);
    Look look;
    look.textSize = 24;
    const QFontMetricsF metrics(plotFont(look, false));
    const Layout layout(plot, QRectF(0, 0, 350, suitableHeight(plot, 350, 24)), look, metrics);
    QString all;
    for (const auto& text : layout.texts)
        all += text.text + QLatin1Char(' ');
    for (const auto& tick : plot.y.ticks)
        CHECK(all.contains(QString::fromStdString(tick.label)));
}

TEST_CASE("a picture paints without a trace of transparency and not only its ground", "[layout]")
{
    needGuiApplication();
    for (const auto& plot : everyPicture()) {
        CAPTURE(plot.title);
        QImage image(360, 300, QImage::Format_ARGB32);
        image.fill(groundColour(Ground::Dark));
        QPainter painter(&image);
        Look look;
        look.ground = Ground::Dark;
        paint(plot, painter, QRectF(0, 0, 360, 300), look);
        painter.end();
        int drawn = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                REQUIRE(qAlpha(image.pixel(x, y)) == 255);
                drawn += image.pixelColor(x, y) != groundColour(Ground::Dark) ? 1 : 0;
            }
        CHECK(drawn > 2000);
    }
}
