#include <algorithm>

#include "mobile/plot/pictures.hpp"
#include "mobile/plot/season_axis.hpp"
#include "mobile/plot/touch.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr double millisecondsPerSecond = 1000.0;

Mark trendMark(const TrendPoint& point, const TpvTrendInput& input, const std::string& rung)
{
    Mark mark;
    mark.at = {placeOf(input.season, point.day), point.seconds * millisecondsPerSecond};
    mark.uncertainty = point.uncertainty * millisecondsPerSecond;
    mark.series = point.side == Side::Both ? rung : rung + ", " + sideText(point.side);
    if (point.side == Side::Right) {
        mark.role = Role::Second;
        mark.shape = Shape::Diamond;
    }
    return mark;
}

/// The marks of one stay and the line that joins those of one side.
void addStay(Plot& plot, const TrendStay& stay, const TpvTrendInput& input)
{
    for (const Side side : {Side::Both, Side::Left, Side::Right}) {
        Line line{side == Side::Right ? Role::Second : Role::Taken, "", {}, false};
        std::vector<Mark> marks;
        for (const auto& point : stay.points)
            if (point.side == side) {
                marks.push_back(trendMark(point, input, stay.rung));
                line.points.push_back(marks.back().at);
            }
        if (line.points.size() > 1)
            plot.primitives.push_back(line);
        plot.primitives.insert(plot.primitives.end(), marks.begin(), marks.end());
    }
}

/// A stay reaches to where the next one begins.
std::vector<StripPart> rungStrip(const TpvTrendInput& input)
{
    std::vector<StripPart> strip;
    for (const auto& stay : input.stays) {
        if (stay.points.empty())
            continue;
        const double from = weeksAt(input.season, stay.points.front().day);
        const double to = weeksAt(input.season, stay.points.back().day + std::chrono::days{1});
        if (!strip.empty())
            strip.back().xTo = std::max(strip.back().xTo, from);
        strip.push_back({stay.rung, from, to});
    }
    return strip;
}

void markLatest(Plot& plot)
{
    const auto isMark = [](const Primitive& primitive) { return std::holds_alternative<Mark>(primitive); };
    Mark* latest = nullptr;
    for (auto& primitive : plot.primitives)
        if (isMark(primitive) && (latest == nullptr || std::get<Mark>(primitive).at.x >= latest->at.x))
            latest = &std::get<Mark>(primitive);
    if (latest == nullptr)
        return;
    latest->role = Role::Latest;
    if (latest->shape == Shape::Ring)
        latest->shape = Shape::Dot;
    latest->label = numberText(latest->at.y, plot.y.decimals);
}

Extent extentOf(const TpvTrendInput& input)
{
    Extent extent;
    for (const auto& stay : input.stays) {
        for (const auto& point : stay.points)
            extent.hold((point.seconds - point.uncertainty) * millisecondsPerSecond,
                        (point.seconds + point.uncertainty) * millisecondsPerSecond);
        if (stay.targetBand && !stay.points.empty())
            extent.hold(stay.targetBand->from * millisecondsPerSecond, stay.targetBand->to * millisecondsPerSecond);
    }
    return extent;
}

std::vector<LegendEntry> trendLegend(const TpvTrendInput& input)
{
    bool band = false;
    bool sides = false;
    for (const auto& stay : input.stays) {
        band = band || stay.targetBand.has_value();
        for (const auto& point : stay.points)
            sides = sides || point.side != Side::Both;
    }
    std::vector<LegendEntry> legend;
    legend.push_back({Role::Mark, LegendEntry::Sample::Mark, Shape::Ring, sides ? "left" : "probe set"});
    if (sides)
        legend.push_back({Role::Second, LegendEntry::Sample::Mark, Shape::Diamond, "right"});
    if (band)
        legend.push_back({Role::Band, LegendEntry::Sample::Area, Shape::Ring, "target band"});
    return legend;
}

} // namespace

std::optional<TpvHit> tpvHit(const TpvTrendInput& input, Point place)
{
    std::vector<Point> points;
    std::vector<TpvHit> hits;
    for (std::size_t stay = 0; stay < input.stays.size(); ++stay)
        for (std::size_t point = 0; point < input.stays[stay].points.size(); ++point) {
            points.push_back(trendMark(input.stays[stay].points[point], input, {}).at);
            hits.push_back({stay, point});
        }
    const auto nearest = nearestPoint(tpvTrend(input), points, place);
    return nearest ? std::optional(hits[*nearest]) : std::nullopt;
}

Plot tpvTrend(const TpvTrendInput& input, std::optional<TpvHit> chosen)
{
    Plot plot;
    plot.title = input.lift + ", " + input.quantity;
    plot.x = weekAxis(input.season);
    const auto extent = extentOf(input);
    if (extent.isEmpty()) {
        plot.empty = "No probe sets yet.";
        return plot;
    }
    plot.y = valueAxis(extent, 40, 0);
    plot.y.unit = "ms";
    plot.y.spokenUnit = "milliseconds";
    plot.y.title = input.quantity;
    plot.strip = rungStrip(input);

    std::size_t part = 0;
    for (const auto& stay : input.stays) {
        if (stay.points.empty())
            continue;
        const auto& place = plot.strip[part];
        if (stay.targetBand)
            plot.primitives.push_back(Band{Role::Band, "target band of " + stay.rung, place.xFrom, place.xTo,
                                           stay.targetBand->from * millisecondsPerSecond,
                                           stay.targetBand->to * millisecondsPerSecond});
        if (part > 0)
            plot.primitives.push_back(Rule{Role::Grid, "", place.xFrom});
        ++part;
    }
    for (const auto& stay : input.stays)
        addStay(plot, stay, input);
    markLatest(plot);
    if (chosen && chosen->stay < input.stays.size() && chosen->point < input.stays[chosen->stay].points.size()) {
        const auto mark = trendMark(input.stays[chosen->stay].points[chosen->point], input, {});
        addChosen(plot, mark.at, numberText(mark.at.y, plot.y.decimals));
    }
    plot.legend = trendLegend(input);
    if (plot.strip.size() > 1)
        plot.note = "Times of different rungs are not to be compared: a shorter range is quicker anyway.";
    return plot;
}

} // namespace fleetrung::plot
