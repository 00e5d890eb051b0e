// Draws a Plot with QPainter: the same code on screen and in the PDF. Opaque colours, no effects, real text.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>

#include "mobile/plot/palette.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

struct Look {
    Ground ground = Ground::Light;
    double unit = 1.0;      ///< device units of one layout pixel (1/96 inch); 1 on screen
    double textSize = 12.0; ///< layout pixels; the picture makes room, thins ticks and wraps its legend as text grows
    QString family;         ///< empty: the application's font
};

/// Draws into `area`; the ground itself is left to the caller.
void paint(const Plot& plot, QPainter& painter, const QRectF& area, const Look& look);

/// A height (layout pixels) at which the picture reads well with this text size and width.
[[nodiscard]] double suitableHeight(const Plot& plot, double width, double textSize);

/// The data coordinates of a point of the picture as drawn into `area` on a screen.
[[nodiscard]] Point placeAt(const Plot& plot, const QRectF& area, double textSize, const QPointF& point);

} // namespace fleetrung::plot
