// The season report as PDF. It is drawn with Qt, so a build without the phone interface has none and says so.
#pragma once

#include <string>

#include "engine/report/season_report.hpp"
#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

struct PdfStyle {
    bool letter = false; ///< US Letter instead of A4
    bool pounds = false; ///< pounds and inches instead of kilograms and centimetres, for loads, bodies and boxes
};

/// False in a build without the phone interface: `writePdf` then always fails.
[[nodiscard]] bool canWritePdf();

[[nodiscard]] Result<void> writePdf(const report::SeasonReport& report, const std::string& path, PdfStyle style);

} // namespace fleetrung::desk
