// JSON in and out through nlohmann-json, with its exceptions caught here and duplicate keys refused (it takes them
// silently).
#pragma once

#include <string>
#include <string_view>

#include <nlohmann/json.hpp>

#include "engine/base/error.hpp"

namespace fleetrung
{

/// Objects keep the order in which keys were written: the same value gives the same bytes.
using Json = nlohmann::ordered_json;

/// Fails with InvalidInput; the place is "line L, column C". Nesting deeper than 64 and duplicate keys are refused.
[[nodiscard]] Expected<Json> parseJson(std::string_view text);

/// UTF-8, doubles as their shortest round-trip text, no locale. `indent` < 0 gives one line.
[[nodiscard]] std::string jsonText(const Json& value, int indent = -1);

} // namespace fleetrung
