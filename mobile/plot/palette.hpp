// Colours of the roles: Okabe-Ito hues (Okabe M, Ito K. Color universal design, 2002/2008; from memory) on near-black,
// warm white, and paper. Opaque only. A hue too pale to read as text on a light ground is darkened for text.
#pragma once

#include <QColor>

#include "mobile/plot/plot.hpp"

namespace fleetrung::plot
{

enum class Ground { Dark, Light, Print };

/// What the picture stands on: a card on the page; paper.
[[nodiscard]] QColor groundColour(Ground ground);

/// Lines and areas. Areas that carry text (bands, phases) keep it readable.
[[nodiscard]] QColor shapeColour(Role role, Ground ground);

/// Text in the role's hue: contrast with the ground at least 4.5:1 (WCAG 2.2, 1.4.3).
[[nodiscard]] QColor textColour(Role role, Ground ground);

/// (L1 + 0.05) / (L2 + 0.05) of WCAG 2.2.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace fleetrung::plot
