// Distances of the layout, and text as Qt sees it. Internal to this folder.
#pragma once

#include <QFontMetricsF>
#include <QString>
#include <QStringList>
#include <string>

namespace fleetrung::plot::measures
{

// Layout pixels.
inline constexpr double edge = 8;      // right of the picture, left of one without labels
inline constexpr double columnGap = 8; // between labels and picture
inline constexpr double rowGap = 5;    // between rows of text and picture
inline constexpr double stripHeight = 9;
inline constexpr double sampleWidth = 20;
inline constexpr double sampleGap = 6;
inline constexpr double entryGap = 16;
inline constexpr double textGap = 6; // the least between two texts

inline constexpr double strongWider = 1.08; // demi-bold text against normal text

inline QString qtText(const std::string& utf8)
{
    return QString::fromStdString(utf8);
}

/// Words gathered into lines no wider than `width`.
[[nodiscard]] QStringList wrapped(const QString& note, double width, const QFontMetricsF& metrics);

} // namespace fleetrung::plot::measures
