#include "mobile/plot/layout.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::plot
{
namespace
{

// Layout pixels.
constexpr double edge = 8;      // right of the picture, left of one without labels
constexpr double columnGap = 8; // between labels and picture
constexpr double rowGap = 5;    // between rows of text and picture
constexpr double stripHeight = 9;
constexpr double sampleWidth = 20;
constexpr double sampleGap = 6;
constexpr double entryGap = 16;
constexpr double textGap = 6; // the least between two texts

constexpr double widestColumn = 0.38; // share of the width that names may take
constexpr double strongWider = 1.08;  // demi-bold text against normal text
constexpr int mostBandRows = 3;

QString qtText(const std::string& utf8)
{
    return QString::fromStdString(utf8);
}

/// Words gathered into lines no wider than `width`.
QStringList wrapped(const QString& note, double width, const QFontMetricsF& metrics)
{
    QStringList lines;
    for (const QString& word : note.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (!lines.isEmpty() && metrics.horizontalAdvance(lines.last() + QLatin1Char(' ') + word) <= width)
            lines.last() += QLatin1Char(' ') + word;
        else
            lines.append(word);
    }
    return lines;
}

} // namespace

QFont plotFont(const Look& look, bool strong)
{
    QFont font;
    if (!look.family.isEmpty())
        font.setFamily(look.family);
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(look.textSize * look.unit))));
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

Layout::Layout(const Plot& plot, const QRectF& area, const Look& look, const QFontMetricsF& metrics)
    : plot_(plot), area_(area), look_(look), metrics_(metrics)
{
    const double left = area.left() + labelColumn();
    const double right = std::max(area.right() - unit(edge), left + 1);
    picture = QRectF(left, area.top(), right - left, 0); // the width is known before the height

    double top = area.top();
    if (!plot.strip.empty()) {
        strip = QRectF(left, top, right - left, unit(stripHeight));
        placeStripNames();
        top = strip.bottom() + line() + unit(rowGap);
    }
    const double namesBottom = placeBandNames(top);
    if (plot.y.visible && !plot.y.unit.empty() && namesBottom == area.top())
        top += line() + unit(rowGap); // for the unit of the axis
    top = std::max(top, namesBottom + (namesBottom > top ? unit(rowGap) : 0));

    const double below = unit(rowGap) + line() + (legendRows().empty() ? 0 : unit(rowGap)) +
                         (static_cast<double>(legendRows().size()) + static_cast<double>(noteLines().size())) * line() +
                         (noteLines().isEmpty() ? 0 : unit(rowGap));
    overhead = top - area.top() + below;
    picture = QRectF(QPointF(left, top), QPointF(right, std::max(area.bottom() - below, top + 1)));
    placeYTicks();
    placeXTicks();
    placeNote(placeLegend(picture.bottom() + unit(rowGap) + line()));
}

double Layout::px(double x) const
{
    return picture.left() + (x - plot_.x.from) / (plot_.x.to - plot_.x.from) * picture.width();
}

double Layout::py(double y) const
{
    const double share = (y - plot_.y.from) / (plot_.y.to - plot_.y.from);
    return plot_.y.downwards ? picture.top() + share * picture.height() : picture.bottom() - share * picture.height();
}

bool Layout::isFree(const QRectF& box, double apart) const
{
    const auto wide = box.adjusted(-apart, 0, apart, 0);
    return std::none_of(texts.begin(), texts.end(),
                        [&](const PlacedText& placed) { return placed.box.intersects(wide); });
}

double Layout::widthOf(const QString& text, bool strong) const
{
    return metrics_.horizontalAdvance(text) * (strong ? strongWider : 1.0);
}

bool Layout::place(const QString& text, double left, double top, Role role, bool strong)
{
    const QRectF box(left, top, widthOf(text, strong), line());
    if (text.isEmpty() || !isFree(box, unit(textGap)))
        return false;
    texts.push_back({box, text, role, strong});
    return true;
}

double Layout::labelColumn() const
{
    if (!plot_.y.visible)
        return unit(edge);
    double widest = widthOf(qtText(plot_.y.unit));
    for (const auto& tick : plot_.y.ticks)
        widest = std::max(widest, widthOf(qtText(tick.label), tick.strong));
    return std::min(widest, area_.width() * widestColumn) + unit(columnGap);
}

/// In full where it fits, else its first word, else not at all: the summary still says it.
void Layout::placeStripNames()
{
    for (const auto& part : plot_.strip) {
        const double from = std::max(px(part.xFrom), picture.left());
        const double to = std::min(px(part.xTo), picture.right());
        const auto name = qtText(part.name);
        for (const auto& candidate : {name, name.section(QLatin1Char(' '), 0, 0)}) {
            const double width = widthOf(candidate);
            if (width > to - from + unit(textGap))
                continue;
            const double left =
                std::clamp((from + to - width) / 2, picture.left(), std::max(picture.right() - width, picture.left()));
            if (place(candidate, left, strip.bottom() + unit(2), Role::Label))
                break;
        }
    }
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

void Layout::placeYTicks()
{
    if (!plot_.y.visible)
        return;
    const double column = picture.left() - area_.left() - unit(columnGap);
    const bool names = plot_.y.kind == Axis::Kind::Category;
    const auto put = [&](const Tick& tick) {
        const auto label =
            metrics_.elidedText(qtText(tick.label), Qt::ElideRight, tick.strong ? column / strongWider : column);
        const double left = names ? area_.left() : picture.left() - unit(columnGap) - widthOf(label, tick.strong);
        place(label, left, py(tick.at) - line() / 2, tick.strong ? Role::Strong : Role::Label, tick.strong);
    };
    if (!plot_.y.unit.empty()) {
        const auto unitText = qtText(plot_.y.unit);
        place(unitText, picture.left() - unit(columnGap) - widthOf(unitText),
              picture.top() - unit(rowGap) - 1.5 * line(), Role::Label);
    }
    for (const auto& tick : plot_.y.ticks)
        if (tick.strong)
            put(tick);
    for (const auto& tick : plot_.y.ticks)
        if (!tick.strong)
            put(tick);
}

double Layout::legendWidth(const LegendEntry& entry) const
{
    return unit(sampleWidth + sampleGap) + widthOf(qtText(entry.text));
}

std::vector<std::vector<const LegendEntry*>> Layout::legendRows() const
{
    std::vector<std::vector<const LegendEntry*>> rows;
    double used = 0;
    for (const auto& entry : plot_.legend) {
        const double width = legendWidth(entry) + unit(entryGap);
        if (rows.empty() || used + width > area_.right() - picture.left() + unit(entryGap)) {
            rows.emplace_back();
            used = 0;
        }
        rows.back().push_back(&entry);
        used += width;
    }
    return rows;
}

double Layout::placeLegend(double top)
{
    const auto rows = legendRows();
    if (!rows.empty())
        top += unit(rowGap);
    for (const auto& row : rows) {
        double left = picture.left();
        for (const auto* entry : row) {
            samples.push_back({QRectF(left, top, unit(sampleWidth), line()), *entry});
            place(qtText(entry->text), left + unit(sampleWidth + sampleGap), top, Role::Label);
            left += legendWidth(*entry) + unit(entryGap);
        }
        top += line();
    }
    return top;
}

QStringList Layout::noteLines() const
{
    return wrapped(qtText(plot_.note), area_.right() - picture.left(), metrics_);
}

void Layout::placeNote(double top)
{
    top += unit(rowGap);
    for (const auto& text : noteLines()) {
        place(text, picture.left(), top, Role::Label);
        top += line();
    }
}

} // namespace fleetrung::plot
