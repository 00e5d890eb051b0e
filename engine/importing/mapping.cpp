#include "engine/importing/mapping.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/importing/cells.hpp"
#include "engine/importing/propose.hpp"
#include "engine/importing/row_reader.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr std::array<std::string_view, meaningCount> meaningKeys{
    "ignore",      "athlete", "athlete-key", "date",        "clock",        "note",          "effort",        "key",
    "attempt",     "split",   "distance",    "time",        "wind",         "timing",        "start",         "run-in",
    "reaction",    "surface", "shoes",       "test",        "temperature",  "competition",   "trial",         "contact",
    "step-length", "lift",    "load",        "repetitions", "time-to-peak", "mean-velocity", "peak-velocity", "range",
    "side",        "rung",    "set-kind",    "box-height"};
constexpr std::array<std::string_view, 9> unitKeys{"", "s", "ms", "m", "cm", "yd", "kg", "lb", "m/s"};
constexpr double poundInKg = 0.45359237, yardInM = 0.9144; // exact by definition, NIST SP 811 (2008), appendix B

bool has(const Mapping& mapping, Meaning meaning)
{
    return std::ranges::any_of(mapping.columns, [meaning](const auto& column) { return column.meaning == meaning; });
}

bool canBeRead(const Mapping& mapping)
{
    if (mapping.kind == Kind::Sets)
        return has(mapping, Meaning::Lift) && has(mapping, Meaning::Repetitions);
    return has(mapping, Meaning::Split) ||
           (has(mapping, Meaning::Time) && (has(mapping, Meaning::Distance) || has(mapping, Meaning::Test)));
}

} // namespace

std::string_view meaningKey(Meaning meaning)
{
    return meaningKeys[static_cast<std::size_t>(meaning)];
}

std::string_view unitKey(Unit unit)
{
    return unitKeys[static_cast<std::size_t>(unit)];
}

double siFactor(Unit unit)
{
    switch (unit) {
    case Unit::Millisecond:
        return 1e-3;
    case Unit::Centimetre:
        return 1e-2;
    case Unit::Yard:
        return yardInM;
    case Unit::Pound:
        return poundInKg;
    default:
        return 1;
    }
}

bool belongsTo(Meaning meaning, Kind kind)
{
    if (meaning < Meaning::Split)
        return true;
    return (meaning < Meaning::Lift) == (kind == Kind::Runs);
}

std::vector<Question> questions(const Table& table, const Mapping& mapping)
{
    std::vector<Question> open;
    if (!canBeRead(mapping)) {
        open.push_back({Ask::NothingToRead, -1, {}});
        return open;
    }
    for (std::size_t i = 0; i < mapping.columns.size(); ++i)
        if (mapping.columns[i].meaning == Meaning::Split && mapping.columns[i].distance <= 0)
            open.push_back({Ask::SplitDistance, static_cast<int>(i), table.header[i]});
    if (!mapping.decimalMark)
        open.push_back({Ask::DecimalMark, -1, decimalOf(table, mapping).example});
    if (!mapping.dateOrder)
        if (const auto order = dateOrderOf(table, mapping); order.open)
            open.push_back({Ask::DateOrder, -1, order.example});
    const Places places(mapping);
    const int clock = places.of(Meaning::Clock);
    const bool stamped =
        clock >= 0 && !table.rows.empty() && dateCell(table.rows.front().cells[static_cast<std::size_t>(clock)]);
    if (places.of(Meaning::Date) < 0 && !stamped && !mapping.day)
        open.push_back({Ask::Day, -1, {}});
    const int load = places.of(Meaning::Load);
    if (load >= 0 && mapping.columns[static_cast<std::size_t>(load)].unit == Unit::None && mapping.load == Unit::None)
        open.push_back({Ask::MassUnit, load, table.header[static_cast<std::size_t>(load)]});
    return open;
}

Expected<Mapping> remembered(const Table& table, Mapping kept)
{
    if (kept.columns.size() != table.header.size())
        return fail(Code::InvalidInput, "mapping",
                    "was made for " + integerText(static_cast<std::int64_t>(kept.columns.size())) +
                        " columns and the file has " + integerText(static_cast<std::int64_t>(table.header.size())) +
                        "; make a new one");
    if (const auto found = decimalOf(table, kept); found.sure)
        kept.decimalMark = found.mark;
    if (const auto found = dateOrderOf(table, kept); found.sure)
        kept.dateOrder = found.order;
    return kept;
}

std::vector<std::pair<std::string, std::string>> liftWords(const Table& table, const Mapping& mapping,
                                                           const std::vector<KnownLift>& lifts)
{
    const Places places(mapping);
    const int column = places.of(Meaning::Lift);
    std::vector<std::pair<std::string, std::string>> words;
    std::map<std::string, bool> seen;
    for (const auto& row : table.rows) {
        const auto at = static_cast<std::size_t>(column);
        if (column < 0 || at >= row.cells.size() || row.cells[at].empty() || !seen.emplace(row.cells[at], true).second)
            continue;
        const auto& word = row.cells[at];
        std::string key;
        const auto plain = folded(word);
        for (const auto& lift : lifts)
            if (plain == folded(lift.key) || plain == folded(lift.name))
                key = lift.key;
        if (const auto chosen = mapping.lifts.find(word); chosen != mapping.lifts.end())
            key = chosen->second;
        words.emplace_back(word, key);
    }
    return words;
}

} // namespace fleetrung::importing
