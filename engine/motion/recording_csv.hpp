// Recording CSV to a recording. Takes bytes, not paths.
//
// A header row names the columns in any order: time_s | time_ms | time_us, or none of them and a comment "# rate_hz:
// N"; acc_{x,y,z}_mps2 | acc_{x,y,z}_g; gyr_{x,y,z}_radps | gyr_{x,y,z}_dps (may be absent). Other columns are left
// alone. Comment lines before the header may carry lift, load_kg, athlete, started (ISO 8601). Comma, tab, or semicolon
// (then decimal commas are read).
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "engine/base/error.hpp"
#include "engine/motion/intake.hpp"
#include "engine/motion/sample.hpp"

namespace fleetrung::motion
{

/// Our column name -> the name it has in the file, for files of other programs: {"acc_x_mps2", "ax"}.
using ColumnMap = std::map<std::string, std::string>;

/// "acc_x_mps2=ax,acc_y_mps2=ay" -> map. Fails with InvalidInput where a name on the left is none of ours.
[[nodiscard]] Expected<ColumnMap> parseColumnMap(std::string_view text);

struct ImportedRecording {
    Recording recording;                ///< in order of time
    std::vector<Finding> findings;      ///< what had to be mended for that: doubled and late rows, a clock that stepped
    std::optional<std::string> lift;    ///< lift key, as written
    std::optional<double> loadKg;       ///< kg
    std::optional<std::string> athlete; ///< as written
    std::optional<std::string> started; ///< ISO 8601, as written
};

/// One clear error: InvalidInput with place "line N, column NAME". A missing column, text where a number stands, NaN,
/// two rows of one time with different readings, and a file without rows are refused; nothing is guessed. Rows as they
/// came off the air (doubled, late, after a step of the clock) are put in order: see putInOrder.
[[nodiscard]] Expected<ImportedRecording> importRecording(std::string_view bytes, const ColumnMap& columns = {});

} // namespace fleetrung::motion
