// Where in a JSON text a value stands: errors found after reading name a key path, people need a line and a column.
#pragma once

#include <string>
#include <string_view>

namespace fleetrung
{

/// "line L, column C" of the key (or the array's element) at a path such as "competitions[1].date"; where there is
/// none, of the nearest thing around it. The text must be what `parseJson` accepts.
[[nodiscard]] std::string jsonPlace(std::string_view text, std::string_view path);

/// The same of a position in any text; columns count bytes from 1.
[[nodiscard]] std::string placeInText(std::string_view text, std::size_t position);

} // namespace fleetrung
