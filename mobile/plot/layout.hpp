// Where the parts of a picture go: the frame round the data, texts that do not collide, the wrapped legend and note.
// Internal to this folder.
#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <vector>

#include "mobile/plot/painter.hpp"

namespace fleetrung::plot
{

struct PlacedText {
    QRectF box; ///< as wide as the text
    QString text;
    Role role = Role::Label;
    bool strong = false;
};

struct PlacedSample {
    QRectF box;
    LegendEntry entry;
};

class Layout
{
public:
    /// `metrics` must belong to the look's font on the device drawn on.
    Layout(const Plot& plot, const QRectF& area, const Look& look, const QFontMetricsF& metrics);

    QRectF picture; ///< where the data go
    QRectF strip;   ///< empty where there is none
    std::vector<PlacedText> texts;
    std::vector<PlacedSample> samples;
    double overhead = 0; ///< height of everything but the picture

    [[nodiscard]] double px(double x) const;
    [[nodiscard]] double py(double y) const;
    [[nodiscard]] QPointF at(const Point& point) const { return {px(point.x), py(point.y)}; }
    /// Lines of the longest name of a category.
    [[nodiscard]] int mostNameLines() const;
    /// True where `box`, widened by `apart`, meets no text placed so far.
    [[nodiscard]] bool isFree(const QRectF& box, double apart) const;

private:
    [[nodiscard]] double line() const { return metrics_.height(); }
    [[nodiscard]] double unit(double pixels) const { return pixels * look_.unit; }
    [[nodiscard]] double widthOf(const QString& text, bool strong = false) const;
    [[nodiscard]] double labelColumn() const;
    [[nodiscard]] double unitRoom() const;
    [[nodiscard]] double sample() const;
    [[nodiscard]] double footLeft() const;
    [[nodiscard]] std::vector<std::vector<const LegendEntry*>> legendRows() const;
    [[nodiscard]] double legendWidth(const LegendEntry& entry) const;
    [[nodiscard]] QStringList noteLines() const;

    int placeStripNames();             ///< gives the rows they take
    double placeBandNames(double top); ///< gives the bottom of the last row
    void placeXTicks();
    void placeYTicks();
    void placeYTick(const Tick& tick);
    [[nodiscard]] QStringList nameLines(const Tick& tick, double column) const;
    double placeLegend(double top);
    void placeNote(double top);
    bool place(const QString& text, double left, double top, Role role, bool strong = false);

    const Plot& plot_;
    QRectF area_;
    const Look& look_;
    const QFontMetricsF& metrics_;
};

[[nodiscard]] QFont plotFont(const Look& look, bool strong);

} // namespace fleetrung::plot
