// The season report, whose pages are written in English, in the language, the numbers and the days of the user.
#pragma once

#include "mobile/pdf/season_pdf.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

/// May be used on any thread; the language is the one that the program speaks when it is used.
[[nodiscard]] pdf::Wording reportWording(const Units& units);

} // namespace fleetrung::views
