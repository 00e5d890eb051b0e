#include "platform/desk/import_output.hpp"

#include <algorithm>

#include "engine/base/numbers.hpp"

namespace fleetrung::desk
{
namespace
{

constexpr std::size_t mostShown = 20;

std::string countOf(int number, const std::string& one)
{
    return integerText(number) + " " + one + (number == 1 ? "" : "s");
}

} // namespace

std::string importText(const ImportSaid& said, const std::string& file, const importing::Table& table)
{
    const std::string row = said.kind == importing::Kind::Runs ? "run" : "set";
    std::string text;
    for (const auto& note : said.notes)
        text += note + "\n";
    for (std::size_t i = 0; i < std::min(said.bad.size(), mostShown); ++i)
        text += file + ":" + importing::describe(said.bad[i], table) + "\n";
    if (said.bad.size() > mostShown)
        text += "and " + integerText(static_cast<std::int64_t>(said.bad.size() - mostShown)) + " bad rows more\n";
    text += countOf(said.count.added, row) + (said.dryRun ? " would be added, " : " added, ");
    text += countOf(said.count.duplicates, "duplicate") + " skipped, ";
    text += countOf(said.count.skipped, row) + " left out, ";
    text += countOf(static_cast<int>(said.bad.size()), "bad row") + "\n";
    return text;
}

Json importJson(const ImportSaid& said, const importing::Table& table)
{
    Json json{{"kind", said.kind == importing::Kind::Runs ? "runs" : "sets"},
              {"dry_run", said.dryRun},
              {"added", said.count.added},
              {"duplicates", said.count.duplicates},
              {"left_out", said.count.skipped}};
    json["notes"] = said.notes;
    json["bad"] = Json::array();
    for (const auto& bad : said.bad)
        json["bad"].push_back({{"line", bad.line},
                               {"column", bad.column < 0 ? "" : table.header[static_cast<std::size_t>(bad.column)]},
                               {"cell", bad.cell},
                               {"message", importing::describe(bad, table)}});
    return json;
}

std::string hintFor(const importing::Question& question)
{
    switch (question.ask) {
    case importing::Ask::DecimalMark:
        return " (--decimal point or --decimal comma)";
    case importing::Ask::DateOrder:
        return " (--dates day-month or --dates month-day)";
    case importing::Ask::Day:
        return " (--day 2026-03-30)";
    case importing::Ask::MassUnit:
        return " (--load kg or --load lb)";
    case importing::Ask::NothingToRead:
    case importing::Ask::SplitDistance:
        return " (write the mapping with --print-map, change it, and give it with --map)";
    }
    return {};
}

} // namespace fleetrung::desk
