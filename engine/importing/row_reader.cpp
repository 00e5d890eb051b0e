#include "engine/importing/row_reader.hpp"

#include <algorithm>
#include <cmath>

#include "engine/importing/cells.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{

Places::Places(const Mapping& mapping)
{
    column.fill(-1);
    for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
        const auto meaning = mapping.columns[i].meaning;
        auto& place = column[static_cast<std::size_t>(meaning)];
        if (meaning == Meaning::Split)
            splits.push_back(static_cast<int>(i));
        else if (place < 0)
            place = static_cast<int>(i);
    }
    std::ranges::stable_sort(
        splits, {}, [&mapping](int split) { return mapping.columns[static_cast<std::size_t>(split)].distance; });
}

RowReader::RowReader(const Table& table, const Mapping& mapping, const Places& places, const CsvRow& row)
    : table_(table), mapping_(mapping), places_(places), row_(row)
{
    for (std::size_t i = table_.header.size(); i < row_.cells.size(); ++i)
        if (!isBlank(row_.cells[i]))
            blame(Fault::TooManyCells);
}

void RowReader::blame(Fault fault, int column)
{
    if (!bad_)
        bad_ = BadRow{row_.line, column, fault, column >= 0 ? std::string(textAt(column)) : std::string()};
}

std::string_view RowReader::textAt(int column) const
{
    const auto at = static_cast<std::size_t>(column);
    return column < 0 || at >= row_.cells.size() ? std::string_view() : trimmed(row_.cells[at]);
}

std::string_view RowReader::text(Meaning meaning) const
{
    return textAt(places_.of(meaning));
}

std::optional<double> RowReader::number(Meaning meaning, double low, double high)
{
    return numberAt(places_.of(meaning), low, high);
}

std::optional<double> RowReader::numberAt(int column, double low, double high)
{
    const auto cell = textAt(column);
    if (column < 0 || isBlank(cell))
        return std::nullopt;
    const auto found = numberCell(cell, mapping_.decimalMark.value_or('.'));
    if (!found) {
        blame(Fault::NotANumber, column);
        return std::nullopt;
    }
    const auto& meaning = mapping_.columns[static_cast<std::size_t>(column)];
    Unit unit = found->unit != Unit::None ? found->unit : meaning.unit;
    if (unit == Unit::None && meaning.meaning == Meaning::Load)
        unit = mapping_.load;
    const double value = found->value * siFactor(unit);
    if (value < low || value > high) {
        blame(Fault::OutOfRange, column);
        return std::nullopt;
    }
    return value;
}

std::optional<int> RowReader::wholeNumber(Meaning meaning, int low, int high)
{
    const auto value = number(meaning, low, high);
    if (!value)
        return std::nullopt;
    if (*value != std::floor(*value)) {
        blame(Fault::NotANumber, meaning);
        return std::nullopt;
    }
    return static_cast<int>(*value);
}

void RowReader::readDay(ReadRow& into, CivilDate today)
{
    auto clock = text(Meaning::Clock);
    auto place = Meaning::Date;
    std::optional<DateCell> date;
    int pastMidnight = 0; // s
    if (const auto cell = text(Meaning::Date); !isBlank(cell)) {
        date = dateCell(cell);
        if (!date)
            return blame(Fault::NotADate, Meaning::Date);
        if (clock.empty())
            clock = date->rest;
    }
    if (const auto stamp = dateCell(clock)) { // a clock column that holds the day too
        if (!date) {
            date = stamp;
            place = Meaning::Clock;
        } else if (const auto civil = dayOf(*stamp, mapping_.dateOrder), own = dayOf(*date, mapping_.dateOrder);
                   civil && own && daysBetween(*own, *civil) == 1)
            pastMidnight = 24 * 3600; // the training day lasts into the night
        clock = stamp->rest;
    }
    if (!date && !mapping_.day)
        return blame(Fault::NoDate, Meaning::Date);
    const auto day = date ? dayOf(*date, mapping_.dateOrder) : mapping_.day;
    if (!day)
        return blame(Fault::NotADate, place);
    if (*day > today || *day < CivilDate(std::chrono::year(1950) / 1 / 1))
        return blame(*day > today ? Fault::FutureDay : Fault::NotADate, place);
    into.day = *day;
    if (isBlank(clock))
        return;
    const auto at = clockCell(clock);
    if (!at)
        return blame(Fault::NotAClock, places_.of(Meaning::Clock) >= 0 ? Meaning::Clock : place);
    into.clock = pastMidnight + at->second;
    into.offsetMinutes = at->offsetMinutes;
}

void RowReader::readShared(ReadRow& into, CivilDate today)
{
    into.line = row_.line;
    into.athlete = text(Meaning::Athlete);
    into.athleteKey = parseIdentifier(text(Meaning::AthleteKey));
    if (into.athlete.empty())
        into.athlete = text(Meaning::AthleteKey);
    readDay(into, today);
    into.attempt = text(Meaning::Attempt);
    into.effort = number(Meaning::Effort, 0, 10);
    into.note = text(Meaning::Note);
}

std::string RowReader::word(Meaning meaning, std::string (*keyOf)(std::string_view), std::string standard,
                            ReadRow& into)
{
    const auto cell = text(meaning);
    if (isBlank(cell))
        return standard;
    auto key = keyOf(cell);
    if (!key.empty())
        return key;
    into.note += (into.note.empty() ? "" : "; ") + table_.header[static_cast<std::size_t>(places_.of(meaning))] + ": " +
                 std::string(cell);
    return standard;
}

bool RowReader::yes(Meaning meaning) const
{
    return yesOrNo(text(meaning)).value_or(false);
}

Expected<void> checkReadable(const Table& table, const Mapping& mapping, Kind kind)
{
    if (mapping.kind != kind || mapping.columns.size() != table.header.size())
        return fail(Code::InvalidArgument, "mapping", "does not belong to this table; propose a new one");
    if (const auto open = questions(table, mapping); !open.empty())
        return fail(Code::Refused, "mapping", describe(open.front(), table));
    return {};
}

Expected<void> report(const Reading& reading, std::size_t done, std::size_t all)
{
    constexpr std::size_t often = 500;
    if (reading.progress && done % often == 0 && !reading.progress(static_cast<int>(done), static_cast<int>(all)))
        return fail(Code::Cancelled, "", "the import was stopped; nothing was added");
    return {};
}

} // namespace fleetrung::importing
