// The text of ladders.json, rules.json and cautions.json, put into the library when it is built.
#pragma once

#include <string_view>

namespace fleetrung::season
{

[[nodiscard]] std::string_view laddersFile();
[[nodiscard]] std::string_view rulesFile();
[[nodiscard]] std::string_view cautionsFile();

} // namespace fleetrung::season
