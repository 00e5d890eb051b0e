#include "mobile/plot/spoken_summary.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr std::size_t mostSpokenOneByOne = 10; // the splits of a 100 m

std::string withUnit(const std::string& number, const Axis& axis)
{
    return axis.spokenUnit.empty() ? number : number + " " + axis.spokenUnit;
}

std::string capitalised(std::string sentence)
{
    if (!sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z')
        sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
    return sentence;
}

/// A place on an axis in words: "week 17", "Half", "286".
std::string placeText(const Axis& axis, double at)
{
    switch (axis.kind) {
    case Axis::Kind::Week: {
        const double last = std::max(std::ceil(axis.to), 1.0);
        return "week " + integerText(static_cast<std::int64_t>(std::clamp(std::floor(at) + 1, 1.0, last)));
    }
    case Axis::Kind::Category:
        for (const auto& tick : axis.ticks)
            if (std::abs(tick.at - at) < 0.25)
                return tick.label;
        return {};
    case Axis::Kind::Number:
        break;
    }
    return numberText(at, axis.decimals);
}

std::string rangeText(const Axis& axis)
{
    if (axis.kind == Axis::Kind::Week)
        return placeText(axis, axis.from) + " to " + integerText(static_cast<std::int64_t>(std::ceil(axis.to)));
    return axis.title + " from " + placeText(axis, axis.from) + " to " + withUnit(placeText(axis, axis.to), axis);
}

std::string axesText(const Plot& plot)
{
    std::string text = "Across: " + rangeText(plot.x) + ".";
    if (plot.y.visible && plot.y.kind == Axis::Kind::Number)
        text += " Up: " + rangeText(plot.y) + ".";
    return text;
}

std::string bandText(const Band& band, const Plot& plot)
{
    std::string text = band.name;
    if (band.yFrom && band.yTo)
        text += ": " + placeText(plot.y, *band.yFrom) + " to " + withUnit(placeText(plot.y, *band.yTo), plot.y);
    else if (band.xFrom && band.xTo)
        text += ": " + placeText(plot.x, *band.xFrom) + " to " + withUnit(placeText(plot.x, *band.xTo), plot.x);
    return text + ".";
}

/// A stair: where each tread begins. Any other line: its ends and its extremes.
std::string lineText(const Line& line, const Plot& plot)
{
    std::string text = line.name + ":";
    if (line.stepped) {
        for (std::size_t i = 0; i + 1 < line.points.size(); ++i)
            text += (i == 0 ? " " : ", ") + placeText(plot.y, line.points[i].y) + " from " +
                    placeText(plot.x, line.points[i].x);
        return text + ".";
    }
    const auto [low, high] = std::minmax_element(line.points.begin(), line.points.end(),
                                                 [](const Point& a, const Point& b) { return a.y < b.y; });
    return text + " lowest " + withUnit(placeText(plot.y, low->y), plot.y) + ", highest " +
           withUnit(placeText(plot.y, high->y), plot.y) + ".";
}

double valueOf(const Mark& mark, const Plot& plot)
{
    return plot.valueIsX ? mark.at.x : mark.at.y;
}

const Axis& valueAxis(const Plot& plot)
{
    return plot.valueIsX ? plot.x : plot.y;
}

std::string valueText(const Mark& mark, const Plot& plot)
{
    return placeText(valueAxis(plot), valueOf(mark, plot));
}

/// One mark in a list: "3 at 281", "30 to 40 m at 11.63", "Spring meeting, week 25", "288 in week 12".
std::string markText(const Mark& mark, const Plot& plot)
{
    if (!mark.name.empty() && plot.x.kind != Axis::Kind::Number)
        return mark.name + ", " + placeText(plot.x, mark.at.x);
    const std::string end = mark.shape == Shape::Cross ? " (no evidence)" : "";
    if (plot.valueIsX || plot.x.kind == Axis::Kind::Number)
        return (mark.name.empty() ? mark.label : mark.name) + " at " + valueText(mark, plot) + end;
    return valueText(mark, plot) + " in " + placeText(plot.x, mark.at.x) + end;
}

std::string seriesText(const std::string& series, const std::vector<const Mark*>& marks, const Plot& plot)
{
    std::string text = series + ", " + integerText(static_cast<std::int64_t>(marks.size())) +
                       (marks.size() == 1 ? " mark: " : " marks: ");
    if (marks.size() <= mostSpokenOneByOne) {
        for (std::size_t i = 0; i < marks.size(); ++i)
            text += (i == 0 ? "" : "; ") + markText(*marks[i], plot);
        return text + ".";
    }
    const auto [low, high] = std::minmax_element(marks.begin(), marks.end(), [&](const Mark* a, const Mark* b) {
        return valueOf(*a, plot) < valueOf(*b, plot);
    });
    return text + "first " + markText(*marks.front(), plot) + "; last " + markText(*marks.back(), plot) + "; lowest " +
           valueText(**low, plot) + ", highest " + valueText(**high, plot) + ".";
}

bool holds(const Band& band, const Mark& mark)
{
    const auto within = [](double at, const std::optional<double>& from, const std::optional<double>& to) {
        return (!from || at >= *from) && (!to || at <= *to);
    };
    return within(mark.at.x, band.xFrom, band.xTo) && within(mark.at.y, band.yFrom, band.yTo);
}

/// "Latest: 286 milliseconds, inside the target band."
std::string latestText(const Mark& mark, const Plot& plot)
{
    if (valueAxis(plot).kind == Axis::Kind::Category)
        return "Now on " + valueText(mark, plot) + ".";
    std::string text = "Latest: " + withUnit(valueText(mark, plot), valueAxis(plot));
    bool asked = false;
    bool inside = false;
    for (const auto& primitive : plot.primitives) {
        const auto* band = std::get_if<Band>(&primitive);
        if (band == nullptr || band->role != Role::Band)
            continue;
        const bool concerns =
            plot.valueIsX || ((!band->xFrom || mark.at.x >= *band->xFrom) && (!band->xTo || mark.at.x <= *band->xTo));
        asked = asked || concerns;
        inside = inside || (concerns && holds(*band, mark));
    }
    if (asked)
        text += inside ? ", inside the target band" : ", outside the target band";
    return text + ".";
}

/// Marks by series, in the order in which the series first appear.
std::vector<std::pair<std::string, std::vector<const Mark*>>> seriesOf(const Plot& plot)
{
    std::vector<std::pair<std::string, std::vector<const Mark*>>> all;
    for (const auto& primitive : plot.primitives) {
        const auto* mark = std::get_if<Mark>(&primitive);
        if (mark == nullptr || mark->role == Role::Chosen ||
            (mark->role == Role::Latest && plot.y.kind == Axis::Kind::Category))
            continue;
        const auto known =
            std::find_if(all.begin(), all.end(), [&](const auto& entry) { return entry.first == mark->series; });
        if (known == all.end())
            all.push_back({mark->series, {mark}});
        else
            known->second.push_back(mark);
    }
    return all;
}

} // namespace

std::string spokenSummary(const Plot& plot)
{
    std::string text = plot.title + ".";
    const auto say = [&text](const std::string& sentence) { text += " " + capitalised(sentence); };
    if (!plot.empty.empty()) {
        say(plot.empty);
        return text;
    }
    say(axesText(plot));
    const Mark *latest = nullptr, *chosen = nullptr;
    for (const auto& primitive : plot.primitives) {
        if (const auto* band = std::get_if<Band>(&primitive); band != nullptr && !band->name.empty())
            say(bandText(*band, plot));
        if (const auto* line = std::get_if<Line>(&primitive);
            line != nullptr && !line->name.empty() && !line->points.empty())
            say(lineText(*line, plot));
        if (const auto* rule = std::get_if<Rule>(&primitive); rule != nullptr && !rule->name.empty())
            say("In " + placeText(plot.x, rule->x) + ": " + rule->name + ".");
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Latest)
            latest = mark;
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Chosen)
            chosen = mark;
    }
    for (const auto& [series, marks] : seriesOf(plot))
        say(seriesText(series, marks, plot));
    if (latest != nullptr)
        say(latestText(*latest, plot));
    if (chosen != nullptr)
        say("Chosen: " + withUnit(valueText(*chosen, plot), valueAxis(plot)) + " in " +
            placeText(plot.x, chosen->at.x) + ".");
    if (!plot.note.empty())
        say(plot.note);
    return text;
}

} // namespace fleetrung::plot
