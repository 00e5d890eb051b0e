// Sizes and colours of the page. Internal to this folder.
#pragma once

#include "mobile/plot/palette.hpp"

namespace fleetrung::pdf::measures
{

// Points.
inline constexpr double titleSize = 25;
inline constexpr double sectionSize = 15;
inline constexpr double subsectionSize = 10.5;
inline constexpr double bodySize = 9.5;
inline constexpr double smallSize = 8.2;
inline constexpr double figureSize = 17;
inline constexpr double pictureText = 8.2;
inline constexpr double footerRoom = 26;
inline constexpr double cellGap = 9;
inline constexpr double rowGap = 2.8;
inline constexpr double shortTable = 0.35; // share of the page: shorter ones are kept whole

inline constexpr double pixelsPerPoint = 96.0 / 72.0; // the layout pixels of plot::Look

inline QColor paper(plot::Role role)
{
    return plot::shapeColour(role, plot::Ground::Print);
}

inline QColor textInk(plot::Role role)
{
    return plot::textColour(role, plot::Ground::Print);
}

} // namespace fleetrung::pdf::measures
