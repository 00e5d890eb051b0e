#include "mobile/plot/layout.hpp"

#include <algorithm>
#include <cmath>

#include "mobile/plot/measures.hpp"

namespace fleetrung::plot
{

using namespace measures;

namespace
{

constexpr double widestColumn = 0.36; // share of the width that names may take

} // namespace

QStringList measures::wrapped(const QString& note, double width, const QFontMetricsF& metrics)
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

QFont plotFont(const Look& look, bool strong)
{
    QFont font;
    if (!look.family.isEmpty())
        font.setFamily(look.family);
    font.setPixelSize(std::max(1, static_cast<int>(std::lround(look.textSize * look.unit))));
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Some fonts swap a minus or a colon between figures for a glyph that stands for no character: copied out of the
    // PDF, the sign would be gone.
    if (look.ground == Ground::Print)
        font.setStyleStrategy(QFont::PreferNoShaping);
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
        top = strip.bottom() + placeStripNames() * line() + unit(rowGap);
    }
    const double namesBottom = placeBandNames(top);
    top = std::max(top, namesBottom + (namesBottom > top ? unit(rowGap) : 0));
    if (plot.y.visible && !plot.y.unit.empty())
        top = std::max(top, area.top() + unitRoom()); // the unit stands above the highest label

    const double below = unit(rowGap) + line() + (legendRows().empty() ? 0 : unit(rowGap)) +
                         (static_cast<double>(legendRows().size()) + static_cast<double>(noteLines().size())) * line() +
                         (noteLines().isEmpty() ? 0 : unit(rowGap));
    overhead = top - area.top() + below;
    picture = QRectF(QPointF(left, top), QPointF(right, std::max(area.bottom() - below, top + 1)));
    placeYTicks();
    placeXTicks();
    placeNote(placeLegend(picture.bottom() + unit(rowGap) + line()));
}

double Layout::unitRoom() const
{
    return 1.5 * line() + unit(rowGap);
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

/// Samples grow with the text they stand beside.
double Layout::sample() const
{
    return unit(sampleWidth) * std::clamp(look_.textSize / 12.0, 1.0, 1.6);
}

/// Under the picture; under the names too, where these take much of the width.
double Layout::footLeft() const
{
    double widest = 0;
    for (const auto& entry : plot_.legend)
        widest = std::max(widest, legendWidth(entry));
    const bool fits = widest <= area_.right() - picture.left();
    return plot_.y.kind == Axis::Kind::Category || !fits ? area_.left() : picture.left();
}

double Layout::legendWidth(const LegendEntry& entry) const
{
    return sample() + unit(sampleGap) + widthOf(qtText(entry.text));
}

std::vector<std::vector<const LegendEntry*>> Layout::legendRows() const
{
    std::vector<std::vector<const LegendEntry*>> rows;
    double used = 0;
    for (const auto& entry : plot_.legend) {
        const double width = legendWidth(entry) + unit(entryGap);
        if (rows.empty() || used + width > area_.right() - footLeft() + unit(entryGap)) {
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
        double left = footLeft();
        for (const auto* entry : row) {
            samples.push_back({QRectF(left, top, sample(), line()), *entry});
            place(qtText(entry->text), left + sample() + unit(sampleGap), top, Role::Label);
            left += legendWidth(*entry) + unit(entryGap);
        }
        top += line();
    }
    return top;
}

QStringList Layout::noteLines() const
{
    return wrapped(qtText(plot_.note), area_.right() - footLeft(), metrics_);
}

void Layout::placeNote(double top)
{
    top += unit(rowGap);
    for (const auto& text : noteLines()) {
        place(text, footLeft(), top, Role::Label);
        top += line();
    }
}

} // namespace fleetrung::plot
