// The words of an import: what columns may mean, what is open, what was concluded, what is wrong with a row.
#pragma once

#include <QString>

#include "engine/importing/runs.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

[[nodiscard]] QString meaningName(importing::Meaning meaning);
/// "Split at 10 m", "Load, lb", "Not read".
[[nodiscard]] QString columnWords(const importing::ColumnMeaning& column, const Units& units);
[[nodiscard]] QString questionWords(const importing::Question& question);
[[nodiscard]] QString remarkWords(const importing::Remark& remark);
[[nodiscard]] QString faultWords(const importing::BadRow& bad);

} // namespace fleetrung::views
