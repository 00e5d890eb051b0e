// Names and ticks round the picture.
#include <algorithm>
#include <optional>

#include "mobile/plot/layout.hpp"
#include "mobile/plot/measures.hpp"

namespace fleetrung::plot
{

using namespace measures;

namespace
{

constexpr int mostBandRows = 3;

/// Where we are in the season: today, or the newest value.
std::optional<double> todayOf(const Plot& plot)
{
    for (const auto& primitive : plot.primitives)
        if (const auto* rule = std::get_if<Rule>(&primitive); rule != nullptr && rule->role == Role::Today)
            return rule->x;
    for (const auto& primitive : plot.primitives)
        if (const auto* mark = std::get_if<Mark>(&primitive); mark != nullptr && mark->role == Role::Latest)
            return mark->at.x;
    return std::nullopt;
}

QString firstWord(const QString& name)
{
    return name.section(QLatin1Char(' '), 0, 0);
}

} // namespace

/// The part of today comes first and is named in full wherever it fits; the others in full or by their first word where
/// their part is wide enough, else under the first row, as far as there is room: the summary says them all.
int Layout::placeStripNames()
{
    const auto today = todayOf(plot_);
    int rows = 1;
    const auto put = [&](const StripPart& part, const QString& name, Role role, int row) {
        const double width = widthOf(name);
        const double middle = (std::max(px(part.xFrom), picture.left()) + std::min(px(part.xTo), picture.right())) / 2;
        const double last = std::max(area_.right() - width, area_.left());
        const bool placed = place(name, std::clamp(middle - width / 2, area_.left(), last),
                                  strip.bottom() + unit(2) + row * line(), role);
        rows = std::max(rows, placed ? row + 1 : 1);
        return placed;
    };
    const auto isNow = [&](const StripPart& part) { return today && *today >= part.xFrom && *today < part.xTo; };
    for (const auto& part : plot_.strip)
        if (isNow(part))
            put(part, qtText(part.name), Role::Strong, 0);
    std::vector<const StripPart*> narrow;
    for (const auto& part : plot_.strip) {
        const auto fits = [&](const QString& name) {
            return widthOf(name) <= px(part.xTo) - px(part.xFrom) + unit(textGap) && put(part, name, Role::Label, 0);
        };
        const auto name = qtText(part.name);
        if (!isNow(part) && !fits(name) && !fits(firstWord(name)))
            narrow.push_back(&part);
    }
    for (const auto* part : narrow)
        for (const auto& name : {qtText(part->name), firstWord(qtText(part->name))})
            if (put(*part, name, Role::Label, 1))
                break;
    return rows;
}

/// Names of bands that span the height, each above its band in the first row with room.
double Layout::placeBandNames(double top)
{
    double bottom = top;
    for (const auto& primitive : plot_.primitives) {
        const auto* band = std::get_if<Band>(&primitive);
        if (band == nullptr || band->name.empty() || band->yFrom || !band->xFrom || !band->xTo)
            continue;
        const auto name = qtText(band->name);
        const double width = widthOf(name);
        const double middle = (px(*band->xFrom) + px(*band->xTo)) / 2;
        const double left = std::clamp(middle - width / 2, area_.left(), std::max(area_.right() - width, area_.left()));
        for (int row = 0; row < mostBandRows; ++row) {
            if (!place(name, left, top + row * line(), band->role))
                continue;
            bottom = std::max(bottom, top + (row + 1) * line());
            break;
        }
    }
    return bottom;
}

/// The last label carries the unit and is placed first; then the first one; the others where there is room.
void Layout::placeXTicks()
{
    const auto& ticks = plot_.x.ticks;
    const double top = picture.bottom() + unit(rowGap);
    const auto put = [&](std::size_t i) {
        auto label = qtText(ticks[i].label);
        if (i + 1 == ticks.size() && !plot_.x.unit.empty())
            label += QLatin1Char(' ') + qtText(plot_.x.unit);
        const double width = widthOf(label);
        const bool named = plot_.x.kind == Axis::Kind::Week && i == 0;
        const double left = named ? px(ticks[i].at) : px(ticks[i].at) - width / 2;
        place(label, std::clamp(left, area_.left(), std::max(area_.right() - width, area_.left())), top, Role::Label);
    };
    if (ticks.empty())
        return;
    put(ticks.size() - 1);
    for (std::size_t i = 0; i + 1 < ticks.size(); ++i)
        put(i);
}

QStringList Layout::nameLines(const Tick& tick, double column) const
{
    const double width = tick.strong ? column / strongWider : column;
    auto lines = wrapped(qtText(tick.label), width, metrics_);
    for (auto& text : lines)
        text = metrics_.elidedText(text, Qt::ElideRight, width);
    return lines;
}

int Layout::mostNameLines() const
{
    qsizetype most = 1;
    if (plot_.y.kind == Axis::Kind::Category)
        for (const auto& tick : plot_.y.ticks)
            most = std::max(most, nameLines(tick, labelColumn() - unit(columnGap)).size());
    return static_cast<int>(most);
}

void Layout::placeYTick(const Tick& tick)
{
    const double column = labelColumn() - unit(columnGap);
    const Role role = tick.strong ? Role::Strong : Role::Label;
    if (plot_.y.kind != Axis::Kind::Category) {
        const auto label = qtText(tick.label);
        place(label, picture.left() - unit(columnGap) - widthOf(label), py(tick.at) - line() / 2, role);
        return;
    }
    const auto lines = nameLines(tick, column);
    double top = py(tick.at) - static_cast<double>(lines.size()) * line() / 2;
    for (const auto& text : lines) {
        place(text, area_.left(), top, role, tick.strong);
        top += line();
    }
}

void Layout::placeYTicks()
{
    if (!plot_.y.visible)
        return;
    if (!plot_.y.unit.empty()) {
        const auto unitText = qtText(plot_.y.unit);
        place(unitText, picture.left() - unit(columnGap) - widthOf(unitText), picture.top() - unitRoom(), Role::Label);
    }
    for (const auto& tick : plot_.y.ticks)
        if (tick.strong)
            placeYTick(tick);
    for (const auto& tick : plot_.y.ticks)
        if (!tick.strong)
            placeYTick(tick);
}

} // namespace fleetrung::plot
