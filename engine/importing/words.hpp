// Words of headers and cells in English, German, Spanish and French (common practice, no source). Internal to this
// folder.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/importing/mapping.hpp"

namespace fleetrung::importing
{

/// Lower case, accents taken off, anything but letters and digits a single space: "Zwischenzeit_10 (s)" ->
/// "zwischenzeit 10 s".
[[nodiscard]] std::string folded(std::string_view text);
/// The same in words.
[[nodiscard]] std::vector<std::string> foldedWords(std::string_view text);
[[nodiscard]] std::string_view trimmed(std::string_view text);

struct HeaderMeaning {
    Meaning meaning = Meaning::Ignore;
    Unit unit = Unit::None;
    int sureness = 0;    ///< 3 the whole header, 2 words of it, 1 a distance without its unit; 0 not known
    double distance = 0; ///< m, of a split; 0: it has none that makes sense ("Split 1")
    double from = 0;     ///< m, of a split "10-20"
};
[[nodiscard]] HeaderMeaning headerMeaning(std::string_view header, Kind kind);

/// "(ms)", "kg", "m/s" as of a row of units; None where it is no unit.
[[nodiscard]] Unit unitNamed(std::string_view text);

/// The store's key for a word of a cell: "block" for "Startblock", "gates" for "Lichtschranke"; empty where unknown.
[[nodiscard]] std::string startKey(std::string_view cell);
[[nodiscard]] std::string timingKey(std::string_view cell);
[[nodiscard]] std::string surfaceKey(std::string_view cell);
[[nodiscard]] std::string shoesKey(std::string_view cell);
[[nodiscard]] std::string sideKey(std::string_view cell);    ///< "both", "left", "right"
[[nodiscard]] std::string setKindKey(std::string_view cell); ///< "warm-up", "probe", "work", "maintenance"
[[nodiscard]] std::optional<bool> yesOrNo(std::string_view cell);

/// "30 m", "flying 20 m", "60 m block start" as a distance and a kind of start.
struct TestWords {
    std::optional<double> distance; ///< m
    std::string start;
};
[[nodiscard]] TestWords testWords(std::string_view cell);

} // namespace fleetrung::importing
