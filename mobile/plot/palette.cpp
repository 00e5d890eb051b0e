#include "mobile/plot/palette.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::plot
{
namespace
{

struct Colours {
    QRgb darkShape, darkText, lightShape, lightText;
};

// Okabe-Ito: orange E69F00, sky blue 56B4E9, bluish green 009E73, blue 0072B2, vermillion D55E00, reddish purple
// CC79A7.
Colours coloursOf(Role role)
{
    switch (role) {
    case Role::Axis:
        return {0x9BA5AD, 0x9BA5AD, 0x6B7178, 0x565C63};
    case Role::Grid:
        return {0x343D44, 0x9BA5AD, 0xD8D4CB, 0x565C63};
    case Role::Label:
        return {0x9BA5AD, 0xA6AFB7, 0x6B7178, 0x565C63};
    case Role::Strong:
        return {0xF3EFE8, 0xF3EFE8, 0x1C1E20, 0x1C1E20};
    case Role::Band:
        return {0x24404F, 0x56B4E9, 0xCDE4F2, 0x00588C};
    case Role::Taken:
        return {0x56B4E9, 0x56B4E9, 0x0072B2, 0x00588C};
    case Role::Planned:
        return {0x9BA5AD, 0xA6AFB7, 0x6B7178, 0x565C63};
    case Role::Mark:
        return {0xF3EFE8, 0xF3EFE8, 0x1C1E20, 0x1C1E20};
    case Role::Latest:
        return {0x56B4E9, 0xF3EFE8, 0x0072B2, 0x1C1E20};
    case Role::ScaleBand:
        return {0x42361C, 0xE69F00, 0xF8E8C8, 0x7A5200};
    case Role::Phase:
        return {0x2F4652, 0xA6AFB7, 0xD3DEE4, 0x565C63};
    case Role::Race:
        return {0x9BA5AD, 0xA6AFB7, 0x6B7178, 0x565C63};
    case Role::MainRace:
        return {0xE69F00, 0xE69F00, 0xD55E00, 0x9C4400};
    case Role::Second:
        return {0xCC79A7, 0xE3A3C7, 0xA8457F, 0x8F3C6D};
    case Role::Today:
        return {0xF3EFE8, 0xF3EFE8, 0x1C1E20, 0x1C1E20};
    case Role::Chosen:
        return {0xE69F00, 0xE69F00, 0xD55E00, 0x9C4400};
    }
    return {};
}

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

QColor groundColour(Ground ground)
{
    switch (ground) {
    case Ground::Dark:
        return QColor(0x1A, 0x1F, 0x23);
    case Ground::Light:
        return QColor(0xFD, 0xFB, 0xF7);
    case Ground::Print:
        break;
    }
    return QColor(0xFF, 0xFF, 0xFF);
}

QColor shapeColour(Role role, Ground ground)
{
    const auto colours = coloursOf(role);
    return QColor::fromRgb(ground == Ground::Dark ? colours.darkShape : colours.lightShape);
}

QColor textColour(Role role, Ground ground)
{
    const auto colours = coloursOf(role);
    return QColor::fromRgb(ground == Ground::Dark ? colours.darkText : colours.lightText);
}

double contrast(const QColor& a, const QColor& b)
{
    const auto [dark, light] = std::minmax({luminance(a), luminance(b)}); // of a list: by value, nothing dangles
    return (light + 0.05) / (dark + 0.05);
}

} // namespace fleetrung::plot
