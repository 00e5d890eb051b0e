#include "mobile/plot/spoken_summary.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>

#include "engine/base/numbers.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr std::size_t mostSpokenOneByOne = 10; // the splits of a 100 m

/// The phrase with its places filled in.
std::string filled(const std::string& phrase, std::initializer_list<std::string> parts)
{
    std::string text;
    for (std::size_t i = 0; i < phrase.size(); ++i) {
        const auto place =
            phrase[i] == '%' && i + 1 < phrase.size() ? static_cast<std::size_t>(phrase[i + 1] - '1') : parts.size();
        if (place < parts.size()) {
            text += parts.begin()[place];
            ++i;
        } else {
            text += phrase[i];
        }
    }
    return text;
}

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

std::string wholeText(double number)
{
    return integerText(static_cast<std::int64_t>(number));
}

using Marks = std::vector<const Mark*>;

class Speaker
{
public:
    Speaker(const Plot& plot, const SpokenPhrases& phrases) : plot_(plot), phrases_(phrases) {}

    [[nodiscard]] std::string all() const;

private:
    [[nodiscard]] std::string placeText(const Axis& axis, double at) const;
    [[nodiscard]] std::string rangeText(const Axis& axis) const;
    [[nodiscard]] std::string axesText() const;
    [[nodiscard]] std::string bandText(const Band& band) const;
    [[nodiscard]] std::string lineText(const Line& line) const;
    [[nodiscard]] std::string markText(const Mark& mark) const;
    [[nodiscard]] std::string seriesText(const std::string& series, const Marks& marks) const;
    [[nodiscard]] std::string latestText(const Mark& mark) const;
    [[nodiscard]] std::vector<std::pair<std::string, Marks>> series() const;

    [[nodiscard]] const Axis& valueAxis() const { return plot_.valueIsX ? plot_.x : plot_.y; }
    [[nodiscard]] double valueOf(const Mark& mark) const { return plot_.valueIsX ? mark.at.x : mark.at.y; }
    [[nodiscard]] std::string valueText(const Mark& mark) const { return placeText(valueAxis(), valueOf(mark)); }

    const Plot& plot_;
    const SpokenPhrases& phrases_;
};

/// A place on an axis in words: "week 17", "Half", "286".
std::string Speaker::placeText(const Axis& axis, double at) const
{
    switch (axis.kind) {
    case Axis::Kind::Week: {
        const double last = std::max(std::ceil(axis.to), 1.0);
        return filled(phrases_.week, {wholeText(std::clamp(std::floor(at) + 1, 1.0, last))});
    }
    case Axis::Kind::Category:
        for (const auto& tick : axis.ticks)
            if (std::abs(tick.at - at) < 0.25)
                return tick.label;
        return {};
    case Axis::Kind::Number:
        break;
    }
    auto text = numberText(at, axis.decimals);
    if (const auto mark = text.find('.'); mark != std::string::npos)
        text.replace(mark, 1, phrases_.decimalMark);
    return text;
}

std::string Speaker::rangeText(const Axis& axis) const
{
    if (axis.kind == Axis::Kind::Week) {
        const double last = std::max(std::ceil(axis.to), 1.0);
        return filled(phrases_.weeks,
                      {wholeText(std::clamp(std::floor(axis.from) + 1, 1.0, last)), wholeText(std::ceil(axis.to))});
    }
    return filled(phrases_.range, {axis.title, placeText(axis, axis.from), withUnit(placeText(axis, axis.to), axis)});
}

std::string Speaker::axesText() const
{
    std::string text = filled(phrases_.across, {rangeText(plot_.x)});
    if (plot_.y.visible && plot_.y.kind == Axis::Kind::Number)
        text += " " + filled(phrases_.up, {rangeText(plot_.y)});
    return text;
}

std::string Speaker::bandText(const Band& band) const
{
    const auto ends = [&](const Axis& axis, double from, double to) {
        return filled(phrases_.band, {band.name, placeText(axis, from), withUnit(placeText(axis, to), axis)});
    };
    if (band.yFrom && band.yTo)
        return ends(plot_.y, *band.yFrom, *band.yTo);
    if (band.xFrom && band.xTo)
        return ends(plot_.x, *band.xFrom, *band.xTo);
    return band.name + ".";
}

/// A stair: where each tread begins. Any other line: its extremes.
std::string Speaker::lineText(const Line& line) const
{
    if (line.stepped) {
        std::string treads;
        for (std::size_t i = 0; i + 1 < line.points.size(); ++i)
            treads += (i == 0 ? "" : ", ") + filled(phrases_.tread, {placeText(plot_.y, line.points[i].y),
                                                                     placeText(plot_.x, line.points[i].x)});
        return filled(phrases_.stair, {line.name, treads});
    }
    const auto [low, high] = std::minmax_element(line.points.begin(), line.points.end(),
                                                 [](const Point& a, const Point& b) { return a.y < b.y; });
    return filled(phrases_.extremes, {line.name, withUnit(placeText(plot_.y, low->y), plot_.y),
                                      withUnit(placeText(plot_.y, high->y), plot_.y)});
}

/// One mark in a list: "3 at 281", "30 to 40 m at 11.63", "Spring meeting, week 25", "288 in week 12".
std::string Speaker::markText(const Mark& mark) const
{
    if (!mark.name.empty() && plot_.x.kind != Axis::Kind::Number)
        return mark.name + ", " + placeText(plot_.x, mark.at.x);
    const bool named = plot_.valueIsX || plot_.x.kind == Axis::Kind::Number;
    const auto text = named ? filled(phrases_.markAt, {mark.name.empty() ? mark.label : mark.name, valueText(mark)})
                            : filled(phrases_.markIn, {valueText(mark), placeText(plot_.x, mark.at.x)});
    return mark.shape == Shape::Cross ? filled(phrases_.noEvidence, {text}) : text;
}

std::string Speaker::seriesText(const std::string& series, const Marks& marks) const
{
    std::string told;
    if (marks.size() <= mostSpokenOneByOne) {
        for (std::size_t i = 0; i < marks.size(); ++i)
            told += (i == 0 ? "" : "; ") + markText(*marks[i]);
    } else {
        const auto [low, high] = std::minmax_element(
            marks.begin(), marks.end(), [this](const Mark* a, const Mark* b) { return valueOf(*a) < valueOf(*b); });
        told = filled(phrases_.ends,
                      {markText(*marks.front()), markText(*marks.back()), valueText(**low), valueText(**high)});
    }
    return marks.size() == 1 ? filled(phrases_.oneMark, {series, told})
                             : filled(phrases_.marks, {series, wholeText(static_cast<double>(marks.size())), told});
}

bool holds(const Band& band, const Mark& mark)
{
    const auto within = [](double at, const std::optional<double>& from, const std::optional<double>& to) {
        return (!from || at >= *from) && (!to || at <= *to);
    };
    return within(mark.at.x, band.xFrom, band.xTo) && within(mark.at.y, band.yFrom, band.yTo);
}

/// "Latest: 286 milliseconds, inside the target band."
std::string Speaker::latestText(const Mark& mark) const
{
    if (valueAxis().kind == Axis::Kind::Category)
        return filled(phrases_.nowOn, {valueText(mark)});
    bool asked = false;
    bool inside = false;
    for (const auto& primitive : plot_.primitives) {
        const auto* band = std::get_if<Band>(&primitive);
        if (band == nullptr || band->role != Role::Band)
            continue;
        const bool concerns =
            plot_.valueIsX || ((!band->xFrom || mark.at.x >= *band->xFrom) && (!band->xTo || mark.at.x <= *band->xTo));
        asked = asked || concerns;
        inside = inside || (concerns && holds(*band, mark));
    }
    const auto& phrase = !asked ? phrases_.latest : inside ? phrases_.latestInside : phrases_.latestOutside;
    return filled(phrase, {withUnit(valueText(mark), valueAxis())});
}

/// Marks by series, in the order in which the series first appear.
std::vector<std::pair<std::string, Marks>> Speaker::series() const
{
    std::vector<std::pair<std::string, Marks>> all;
    for (const auto& primitive : plot_.primitives) {
        const auto* mark = std::get_if<Mark>(&primitive);
        if (mark == nullptr || mark->role == Role::Chosen ||
            (mark->role == Role::Latest && plot_.y.kind == Axis::Kind::Category))
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

std::string Speaker::all() const
{
    std::string text = plot_.title + ".";
    const auto say = [&text](const std::string& sentence) { text += " " + capitalised(sentence); };
    if (!plot_.empty.empty()) {
        say(plot_.empty);
        return text;
    }
    say(axesText());
    const Mark *latest = nullptr, *chosen = nullptr;
    for (const auto& primitive : plot_.primitives) {
        if (const auto* band = std::get_if<Band>(&primitive); band != nullptr && !band->name.empty())
            say(bandText(*band));
        if (const auto* line = std::get_if<Line>(&primitive);
            line != nullptr && !line->name.empty() && !line->points.empty())
            say(lineText(*line));
        if (const auto* rule = std::get_if<Rule>(&primitive); rule != nullptr && !rule->name.empty())
            say(filled(phrases_.inWeek, {placeText(plot_.x, rule->x), rule->name}));
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Latest)
            latest = mark;
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Chosen)
            chosen = mark;
    }
    for (const auto& [name, marks] : series())
        say(seriesText(name, marks));
    if (latest != nullptr)
        say(latestText(*latest));
    if (chosen != nullptr)
        say(filled(phrases_.chosen, {withUnit(valueText(*chosen), valueAxis()), placeText(plot_.x, chosen->at.x)}));
    if (!plot_.note.empty())
        say(plot_.note);
    return text;
}

} // namespace

std::string spokenSummary(const Plot& plot, const SpokenPhrases& phrases)
{
    return Speaker(plot, phrases).all();
}

} // namespace fleetrung::plot
