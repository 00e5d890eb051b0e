#include "mobile/plot/mark_labels.hpp"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace fleetrung::plot
{
namespace
{

bool crosses(const QLineF& line, const QRectF& box)
{
    if (box.contains(line.p1()) || box.contains(line.p2()))
        return true;
    const QLineF sides[] = {{box.topLeft(), box.topRight()},
                            {box.topRight(), box.bottomRight()},
                            {box.bottomRight(), box.bottomLeft()},
                            {box.bottomLeft(), box.topLeft()}};
    return std::any_of(std::begin(sides), std::end(sides), [&](const QLineF& side) {
        return side.intersects(line, nullptr) == QLineF::BoundedIntersection;
    });
}

/// Straight pieces of the lines that carry values.
std::vector<QLineF> piecesOf(const Plot& plot, const Layout& layout)
{
    std::vector<QLineF> pieces;
    for (const auto& primitive : plot.primitives) {
        const auto* line = std::get_if<Line>(&primitive);
        if (line == nullptr || line->stepped || line->role == Role::Grid || line->role == Role::Axis)
            continue;
        for (std::size_t i = 1; i < line->points.size(); ++i)
            pieces.emplace_back(layout.at(line->points[i - 1]), layout.at(line->points[i]));
    }
    return pieces;
}

/// Places beside a mark, best first.
std::vector<QRectF> candidates(const Mark& mark, const Plot& plot, const Layout& layout, const QSizeF& size,
                               double radius)
{
    const auto at = layout.at(mark.at);
    const double gap = radius + 0.3 * size.height();
    const QRectF right(QPointF(at.x() + gap, at.y() - size.height() / 2), size);
    const QRectF left(QPointF(at.x() - gap - size.width(), at.y() - size.height() / 2), size);
    const QRectF above(QPointF(at.x() - size.width() / 2, at.y() - radius - 1.05 * size.height()), size);
    const QRectF below(QPointF(at.x() - size.width() / 2, at.y() + radius + 0.05 * size.height()), size);
    if (!plot.valueIsX)
        return {above, below, right, left};
    const double past = std::max(std::abs(layout.px(mark.at.x + mark.uncertainty) - at.x()) - radius, 0.0);
    if (mark.role == Role::Latest)
        return {right.translated(past, 0), left.translated(-past, 0)};
    return {left.translated(-past, 0), right.translated(past, 0)};
}

} // namespace

std::vector<PlacedText> placeMarkLabels(const Plot& plot, const Layout& layout, const QRectF& area,
                                        const QFontMetricsF& metrics, const QFontMetricsF& strongMetrics,
                                        const std::function<double(Role)>& radius)
{
    std::vector<const Mark*> marks;
    std::vector<QRectF> taken;
    for (const auto& primitive : plot.primitives)
        if (const auto* mark = std::get_if<Mark>(&primitive)) {
            marks.push_back(mark);
            const double r = radius(mark->role);
            taken.emplace_back(layout.at(mark->at) - QPointF(r, r), QSizeF(2 * r, 2 * r));
        }
    const auto isStrong = [](const Mark* mark) { return mark->role == Role::Chosen || mark->role == Role::Latest; };
    std::stable_partition(marks.begin(), marks.end(), isStrong);
    const auto frame = plot.valueIsX ? area : layout.picture;
    const auto pieces = piecesOf(plot, layout);
    const auto isFree = [&](const QRectF& box) {
        return frame.contains(box) && layout.isFree(box, 0) &&
               std::none_of(taken.begin(), taken.end(), [&](const QRectF& other) { return other.intersects(box); });
    };
    const auto isOffLines = [&](const QRectF& box) {
        return std::none_of(pieces.begin(), pieces.end(), [&](const QLineF& piece) { return crosses(piece, box); });
    };

    std::vector<PlacedText> placed;
    for (const auto* mark : marks) {
        if (mark->label.empty())
            continue;
        const bool strong = isStrong(mark);
        const auto text = QString::fromStdString(mark->label);
        const QSizeF size((strong ? strongMetrics : metrics).horizontalAdvance(text), metrics.height());
        const auto boxes = candidates(*mark, plot, layout, size, radius(mark->role));
        auto box =
            std::find_if(boxes.begin(), boxes.end(), [&](const QRectF& b) { return isFree(b) && isOffLines(b); });
        if (box == boxes.end())
            box = std::find_if(boxes.begin(), boxes.end(), isFree);
        if (box == boxes.end())
            continue;
        taken.push_back(*box);
        placed.push_back({*box, text, mark->role, strong});
    }
    return placed;
}

} // namespace fleetrung::plot
