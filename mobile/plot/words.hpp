// Numbers and sides as the pictures write and say them. Internal to this folder.
#pragma once

#include <string>

#include "mobile/plot/pictures.hpp"

namespace fleetrung::plot
{

/// Fixed decimals, with a true minus.
[[nodiscard]] std::string numberText(double value, int decimals);
/// The same, with a plus before what is above zero.
[[nodiscard]] std::string signedText(double value, int decimals);
/// "left", "right", "".
[[nodiscard]] std::string sideText(Side side);

} // namespace fleetrung::plot
