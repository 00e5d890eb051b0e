// A length as it was entered: 14 in stays 14 in for who entered it, and reads 36 cm for others.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace fleetrung::season
{

enum class LengthUnit { Centimetre, Inch };

inline constexpr double metresPerInch = 0.0254; ///< exact: international inch of 1959

struct EnteredLength {
    double value = 0; ///< in `unit`
    LengthUnit unit = LengthUnit::Centimetre;

    [[nodiscard]] double metres() const;
    auto operator<=>(const EnteredLength&) const = default;
};

[[nodiscard]] EnteredLength centimetres(double value);
[[nodiscard]] EnteredLength inches(double value);
[[nodiscard]] std::vector<EnteredLength> boxesOf(std::initializer_list<double> centimetres);

/// As entered: "14 in", "25.5 cm".
[[nodiscard]] std::string lengthText(const EnteredLength& length);
/// As entered where that is the unit wanted; else rounded to whole centimetres or to half inches: "36 cm", "17.5 in".
[[nodiscard]] std::string lengthText(const EnteredLength& length, LengthUnit wanted);
/// A band of metres: "28-42 cm", "11-16.5 in", rounded in the same way.
[[nodiscard]] std::string bandText(double lowMetres, double highMetres, LengthUnit unit);

/// "14 in", "36 cm", "25.5cm"; a number alone is of `bare`. Nothing for any other text, and for what is not above 0.
[[nodiscard]] std::optional<EnteredLength> parseLength(std::string_view text, LengthUnit bare = LengthUnit::Centimetre);

} // namespace fleetrung::season
