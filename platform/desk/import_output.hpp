// What an import says it did.
#pragma once

#include <string>
#include <vector>

#include "engine/base/json.hpp"
#include "mobile/logbook/import.hpp"

namespace fleetrung::desk
{

struct ImportSaid {
    importing::Kind kind{};
    bool dryRun = false;
    std::vector<std::string> notes; ///< what was concluded from the file
    std::vector<importing::BadRow> bad;
    logbook::ImportCount count;
};

[[nodiscard]] std::string importText(const ImportSaid& said, const std::string& file, const importing::Table& table);
[[nodiscard]] Json importJson(const ImportSaid& said, const importing::Table& table);

/// The option that answers the question: " (--decimal point or comma)".
[[nodiscard]] std::string hintFor(const importing::Question& question);

} // namespace fleetrung::desk
