// Names and sentences of the engine, which is English, in the language of the user. The engine stays free of languages:
// what it writes is recognised here, whole or sentence by sentence; what is not known stays as it is.
#pragma once

#include <optional>
#include <string>

#include <QString>

namespace fleetrung::views
{

[[nodiscard]] QString engineText(const std::string& english);
[[nodiscard]] QString engineText(const QString& english);

} // namespace fleetrung::views
