#include "mobile/plot/painter.hpp"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "mobile/plot/layout.hpp"
#include "mobile/plot/mark_labels.hpp"

namespace fleetrung::plot
{
namespace
{

constexpr std::ptrdiff_t mostRoomyMarks = 24;

bool isCrowded(const Plot& plot)
{
    return std::count_if(plot.primitives.begin(), plot.primitives.end(), [](const Primitive& primitive) {
               return std::holds_alternative<Mark>(primitive);
           }) > mostRoomyMarks;
}

/// One painting of one plot.
class PlotPainter
{
public:
    PlotPainter(const Plot& plot, QPainter& painter, const QRectF& area, const Look& look)
        : plot_(plot), painter_(painter), area_(area), look_(look), crowded_(isCrowded(plot)),
          font_(plotFont(look, false)), strongFont_(plotFont(look, true)), metrics_(font_, painter.device()),
          layout_(plot, area, look, metrics_)
    {
    }

    void paintAll()
    {
        painter_.setRenderHint(QPainter::Antialiasing);
        if (!plot_.empty.empty()) {
            write(QString::fromStdString(plot_.empty), area_, Role::Label, false, Qt::AlignCenter | Qt::TextWordWrap);
            return;
        }
        drawStrip();
        each<Band>([this](const Band& band) { drawBand(band); });
        drawAxes();
        each<Rule>([this](const Rule& rule) { drawRule(rule); });
        each<Line>([this](const Line& line) { drawLine(line); });
        each<Mark>([this](const Mark& mark) { drawUncertainty(mark); });
        each<Mark>([this](const Mark& mark) { drawMark(layout_.at(mark.at), mark.shape, mark.role); });
        for (const auto& text : layout_.texts)
            write(text.text, text.box, text.role, text.strong);
        for (const auto& sample : layout_.samples)
            drawSample(sample);
        drawMarkLabels();
    }

private:
    template <class Kind, class Use> void each(Use use)
    {
        for (const auto& primitive : plot_.primitives)
            if (const auto* item = std::get_if<Kind>(&primitive))
                use(*item);
    }

    [[nodiscard]] double unit(double pixels) const { return pixels * look_.unit; }
    [[nodiscard]] QColor shape(Role role) const { return shapeColour(role, look_.ground); }

    [[nodiscard]] QPen pen(Role role, double width) const
    {
        return QPen(shape(role), unit(width), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    }

    void write(const QString& text, const QRectF& box, Role role, bool strong,
               int flags = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip)
    {
        painter_.setFont(strong ? strongFont_ : font_);
        painter_.setPen(textColour(role, look_.ground));
        painter_.drawText(box, flags, text);
    }

    /// Parts follow each other in tone, so that neighbours can be told apart.
    void drawStrip()
    {
        painter_.setPen(Qt::NoPen);
        const auto count = static_cast<double>(plot_.strip.size());
        for (std::size_t i = 0; i < plot_.strip.size(); ++i) {
            const double from = std::max(layout_.px(plot_.strip[i].xFrom), layout_.strip.left());
            const double to = std::min(layout_.px(plot_.strip[i].xTo), layout_.strip.right());
            painter_.setBrush(mixed(shape(Role::Phase), shape(Role::Taken), 0.55 * static_cast<double>(i) / count));
            painter_.drawRoundedRect(QRectF(QPointF(from + unit(1), layout_.strip.top()),
                                            QPointF(std::max(to - unit(1), from + unit(1.5)), layout_.strip.bottom())),
                                     unit(2), unit(2));
        }
    }

    static QColor mixed(const QColor& a, const QColor& b, double share)
    {
        const auto mix = [share](int x, int y) { return static_cast<int>(std::lround(x + (y - x) * share)); };
        return QColor(mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue()));
    }

    void drawBand(const Band& band)
    {
        const auto& frame = layout_.picture;
        const double left =
            band.xFrom ? std::clamp(layout_.px(*band.xFrom), frame.left(), frame.right()) : frame.left();
        const double right = band.xTo ? std::clamp(layout_.px(*band.xTo), frame.left(), frame.right()) : frame.right();
        const double one = band.yFrom ? std::clamp(layout_.py(*band.yFrom), frame.top(), frame.bottom()) : frame.top();
        const double other = band.yTo ? std::clamp(layout_.py(*band.yTo), frame.top(), frame.bottom()) : frame.bottom();
        painter_.setPen(Qt::NoPen);
        painter_.setBrush(shape(band.role));
        painter_.drawRoundedRect(QRectF(QPointF(left, std::min(one, other)), QPointF(right, std::max(one, other))),
                                 unit(3), unit(3));
    }

    void drawAxes()
    {
        const auto& frame = layout_.picture;
        if (plot_.y.visible && plot_.y.kind == Axis::Kind::Number) {
            painter_.setPen(pen(Role::Grid, 1));
            for (const auto& tick : plot_.y.ticks)
                painter_.drawLine(QPointF(frame.left(), layout_.py(tick.at)),
                                  QPointF(frame.right(), layout_.py(tick.at)));
        }
        painter_.setPen(pen(Role::Axis, 1.2));
        painter_.drawLine(frame.bottomLeft(), frame.bottomRight());
        for (const auto& tick : plot_.x.ticks) {
            const double x = layout_.px(tick.at);
            if (x <= frame.right() + unit(1))
                painter_.drawLine(QPointF(x, frame.bottom()), QPointF(x, frame.bottom() + unit(4)));
        }
    }

    void drawRule(const Rule& rule)
    {
        painter_.setPen(rule.role == Role::Grid ? pen(Role::Axis, 1) : linePen(rule.role, false));
        const double x = layout_.px(rule.x);
        painter_.drawLine(QPointF(x, layout_.picture.top()), QPointF(x, layout_.picture.bottom()));
    }

    void drawLine(const Line& line)
    {
        QPolygonF points;
        for (const auto& point : line.points) {
            const auto next = layout_.at(point);
            if (line.stepped && !points.isEmpty() && points.last().y() != next.y())
                points.append(QPointF(next.x(), points.last().y()));
            points.append(next);
        }
        painter_.setPen(linePen(line.role, line.stepped));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPolyline(points);
    }

    [[nodiscard]] QPen linePen(Role role, bool stepped) const
    {
        if (role == Role::Planned) {
            QPen dashed = pen(role, 2);
            dashed.setDashPattern({1.0, 2.6});
            return dashed;
        }
        if (role == Role::Today) {
            QPen dotted = pen(role, 1.3);
            dotted.setDashPattern({0.5, 3});
            return dotted;
        }
        if (role == Role::Grid || role == Role::Axis)
            return pen(role, 1);
        return pen(role, stepped ? 4.5 : 1.8);
    }

    void drawUncertainty(const Mark& mark)
    {
        if (mark.uncertainty <= 0)
            return;
        painter_.setPen(pen(mark.role == Role::Latest ? Role::Mark : mark.role, 1.1));
        const double x = mark.at.x;
        const double y = mark.at.y;
        if (plot_.valueIsX)
            painter_.drawLine(layout_.at({x - mark.uncertainty, y}), layout_.at({x + mark.uncertainty, y}));
        else
            painter_.drawLine(layout_.at({x, y - mark.uncertainty}), layout_.at({x, y + mark.uncertainty}));
    }

    [[nodiscard]] double radius(Role role) const
    {
        const double scale = std::clamp(look_.textSize / 12.0, 0.7, 1.6);
        return unit(role == Role::Chosen ? 9.5 : role == Role::Latest ? 6.5 : crowded_ ? 3.0 : 4.0) * scale;
    }

    void drawMark(const QPointF& at, Shape kind, Role role)
    {
        const double r = radius(role);
        const auto ground = groundColour(look_.ground);
        painter_.setPen(pen(role, role == Role::Chosen ? 2.6 : 1.6));
        painter_.setBrush(role == Role::Latest   ? QBrush(shape(role))
                          : role == Role::Chosen ? QBrush(Qt::NoBrush)
                                                 : QBrush(ground));
        switch (kind) {
        case Shape::Dot:
            painter_.setPen(QPen(ground, unit(2)));
            painter_.setBrush(shape(role));
            painter_.drawEllipse(at, r, r);
            break;
        case Shape::Ring:
            painter_.drawEllipse(at, r, r);
            break;
        case Shape::Diamond:
            painter_.drawPolygon(QPolygonF({at + QPointF(0, -1.25 * r), at + QPointF(1.25 * r, 0),
                                            at + QPointF(0, 1.25 * r), at + QPointF(-1.25 * r, 0)}));
            break;
        case Shape::Cross:
            painter_.setPen(pen(role, 2.2));
            painter_.drawLine(at + QPointF(-r, -r), at + QPointF(r, r));
            painter_.drawLine(at + QPointF(-r, r), at + QPointF(r, -r));
            break;
        case Shape::Flag:
            painter_.setBrush(shape(role));
            painter_.drawLine(at + QPointF(0, 1.6 * r), at + QPointF(0, -1.6 * r));
            painter_.drawPolygon(
                QPolygonF({at + QPointF(0, -1.6 * r), at + QPointF(2.1 * r, -0.7 * r), at + QPointF(0, 0.2 * r)}));
            break;
        }
    }

    void drawSample(const PlacedSample& sample)
    {
        const auto& entry = sample.entry;
        const auto middle = sample.box.center();
        switch (entry.sample) {
        case LegendEntry::Sample::Line:
            painter_.setPen(linePen(entry.role, plot_.y.kind == Axis::Kind::Category));
            painter_.drawLine(QPointF(sample.box.left() + unit(2), middle.y()),
                              QPointF(sample.box.right() - unit(2), middle.y()));
            break;
        case LegendEntry::Sample::Area:
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(shape(entry.role));
            painter_.drawRoundedRect(QRectF(sample.box.left(), middle.y() - unit(5), sample.box.width(), unit(10)),
                                     unit(2), unit(2));
            break;
        case LegendEntry::Sample::Mark:
            drawMark(middle, entry.shape, entry.role);
            break;
        }
    }

    void drawMarkLabels()
    {
        const QFontMetricsF strongMetrics(strongFont_, painter_.device());
        const auto placed =
            placeMarkLabels(plot_, layout_, area_, metrics_, strongMetrics, [this](Role role) { return radius(role); });
        for (const auto& label : placed)
            write(label.text, label.box, label.role, label.strong);
    }

    const Plot& plot_;
    QPainter& painter_;
    QRectF area_;
    const Look& look_;
    bool crowded_;
    QFont font_;
    QFont strongFont_;
    QFontMetricsF metrics_;
    Layout layout_;
};

/// Height of the data alone, in text heights.
double pictureRows(const Plot& plot, int nameLines)
{
    if (plot.y.kind == Axis::Kind::Category)
        return std::max(2.2, nameLines + 0.5) * (plot.y.to - plot.y.from);
    if (!plot.y.visible)
        return std::max(5.5, 1.1 * plot.y.to);
    return 11;
}

} // namespace

void paint(const Plot& plot, QPainter& painter, const QRectF& area, const Look& look)
{
    painter.save();
    PlotPainter(plot, painter, area, look).paintAll();
    painter.restore();
}

double suitableHeight(const Plot& plot, double width, double textSize)
{
    Look look;
    look.textSize = textSize;
    const QFontMetricsF metrics(plotFont(look, false));
    if (!plot.empty.empty())
        return 4 * metrics.height();
    const Layout layout(plot, QRectF(0, 0, std::max(width, 1.0), 1), look, metrics);
    return layout.overhead + pictureRows(plot, layout.mostNameLines()) * metrics.height();
}

Point placeAt(const Plot& plot, const QRectF& area, double textSize, const QPointF& point)
{
    Look look;
    look.textSize = textSize;
    const QFontMetricsF metrics(plotFont(look, false));
    const Layout layout(plot, area, look, metrics);
    // Both axes are linear: where two of their places are drawn tells the rest.
    const auto invert = [](double at, double from, double to, double pixelFrom, double pixelTo) {
        return pixelTo == pixelFrom ? from : from + (at - pixelFrom) / (pixelTo - pixelFrom) * (to - from);
    };
    return {invert(point.x(), plot.x.from, plot.x.to, layout.px(plot.x.from), layout.px(plot.x.to)),
            invert(point.y(), plot.y.from, plot.y.to, layout.py(plot.y.from), layout.py(plot.y.to))};
}

} // namespace fleetrung::plot
