#include "engine/importing/propose.hpp"

#include <algorithm>
#include <array>

#include "engine/base/numbers.hpp"
#include "engine/importing/cells.hpp"
#include "engine/importing/run_form.hpp"
#include "engine/importing/words.hpp"

namespace fleetrung::importing
{
namespace
{

constexpr std::size_t looked = 500; // rows by which units are told

bool isTimeOf(Meaning meaning)
{
    return meaning == Meaning::Split || meaning == Meaning::Time || meaning == Meaning::Reaction ||
           meaning == Meaning::Contact || meaning == Meaning::TimeToPeak;
}

bool isNumeric(Meaning meaning)
{
    constexpr std::array<Meaning, 12> words{Meaning::Ignore, Meaning::Athlete, Meaning::AthleteKey, Meaning::Date,
                                            Meaning::Clock,  Meaning::Note,    Meaning::Key,        Meaning::Attempt,
                                            Meaning::Timing, Meaning::Start,   Meaning::Surface,    Meaning::Shoes};
    return std::ranges::find(words, meaning) == words.end() && meaning != Meaning::Test && meaning != Meaning::Lift &&
           meaning != Meaning::Side && meaning != Meaning::Rung && meaning != Meaning::SetKind;
}

std::string_view cellAt(const CsvRow& row, std::size_t column)
{
    return column < row.cells.size() ? std::string_view(row.cells[column]) : std::string_view();
}

/// "Split 1", "Split 2", ... count gates and are no distances.
void dropCounts(std::vector<HeaderMeaning>& found)
{
    std::vector<HeaderMeaning*> bare;
    for (auto& one : found)
        if (one.meaning == Meaning::Split && one.sureness == 1)
            bare.push_back(&one);
    bool counted = !bare.empty();
    for (std::size_t i = 0; i < bare.size(); ++i)
        counted = counted && bare[i]->distance == static_cast<double>(i + 1);
    for (auto* one : bare)
        if (counted)
            one->distance = 0;
}

/// Of two columns of one meaning the surer one, else the first, has it.
void keepOne(std::vector<HeaderMeaning>& found)
{
    for (std::size_t i = 0; i < found.size(); ++i)
        for (std::size_t j = i + 1; j < found.size(); ++j) {
            if (found[i].meaning != found[j].meaning || found[i].meaning == Meaning::Split)
                continue;
            auto& lesser = found[j].sureness > found[i].sureness ? found[i] : found[j];
            lesser.meaning = Meaning::Ignore;
            lesser.unit = Unit::None;
        }
}

/// A column without a name, by what stands in it.
HeaderMeaning meaningOfCells(const Table& table, std::size_t column, Kind kind, bool& named, bool& lifted)
{
    std::size_t dates = 0, numbers = 0, texts = 0;
    for (std::size_t i = 0; i < std::min(table.rows.size(), looked); ++i) {
        const auto cell = cellAt(table.rows[i], column);
        if (isBlank(cell))
            continue;
        ++(dateCell(cell) ? dates : looksNumeric(cell) ? numbers : texts);
    }
    HeaderMeaning found;
    if (dates > numbers + texts) {
        found.meaning = Meaning::Date;
    } else if (numbers > texts && kind == Kind::Runs) {
        found.meaning = Meaning::Split;
    } else if (texts > numbers && !named) {
        found.meaning = Meaning::Athlete;
        named = true;
    } else if (texts > numbers && kind == Kind::Sets && !lifted) {
        found.meaning = Meaning::Lift;
        lifted = true;
    }
    return found;
}

std::vector<HeaderMeaning> meaningsOf(const Table& table, Kind kind)
{
    std::vector<HeaderMeaning> found;
    bool named = false, lifted = false;
    for (std::size_t column = 0; column < table.header.size(); ++column) {
        found.push_back(table.hasHeader ? headerMeaning(table.header[column], kind)
                                        : meaningOfCells(table, column, kind, named, lifted));
        if (found.back().meaning != Meaning::Ignore && !belongsTo(found.back().meaning, kind))
            found.back().meaning = Meaning::Ignore;
        if (const Unit unit = unitNamed(table.units[column]); found.back().unit == Unit::None)
            found.back().unit = unit;
    }
    dropCounts(found);
    keepOne(found);
    return found;
}

/// "Time" above clock times is the time of day.
bool holdsClock(const Table& table, std::size_t column, bool beside)
{
    std::size_t clocks = 0, others = 0;
    for (std::size_t i = 0; i < std::min(table.rows.size(), looked); ++i) {
        const auto cell = cellAt(table.rows[i], column);
        if (isBlank(cell))
            continue;
        const bool twoColons = std::ranges::count(cell, ':') == 2;
        ++(clockCell(cell) && (twoColons || beside) ? clocks : others);
    }
    return clocks > others;
}

void tellClocks(const Table& table, Mapping& mapping)
{
    const bool splits = std::ranges::any_of(mapping.columns, [](const auto& c) { return c.meaning == Meaning::Split; });
    const bool clock = std::ranges::any_of(mapping.columns, [](const auto& c) { return c.meaning == Meaning::Clock; });
    for (std::size_t i = 0; i < mapping.columns.size(); ++i)
        if (mapping.columns[i].meaning == Meaning::Time && holdsClock(table, i, splits))
            mapping.columns[i] = {clock ? Meaning::Ignore : Meaning::Clock, Unit::None, 0, 0};
}

std::optional<double> medianOf(const Table& table, std::size_t column, char decimalMark)
{
    std::vector<double> values;
    for (std::size_t i = 0; i < std::min(table.rows.size(), looked); ++i)
        if (const auto cell = numberCell(cellAt(table.rows[i], column), decimalMark); cell && cell->value > 0)
            values.push_back(cell->value);
    if (values.empty())
        return std::nullopt;
    std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
    return values[values.size() / 2];
}

/// Times that name no unit: nobody runs a split in hundreds of seconds, no bar needs ten seconds to its peak.
void tellTimeUnits(const Table& table, Proposal& proposal)
{
    if (!proposal.mapping.decimalMark) // their size is not known yet
        return;
    const char mark = *proposal.mapping.decimalMark;
    bool milliseconds = false;
    std::string example;
    for (std::size_t i = 0; i < proposal.mapping.columns.size(); ++i) {
        auto& column = proposal.mapping.columns[i];
        if (!isTimeOf(column.meaning) || column.unit != Unit::None)
            continue;
        const auto median = medianOf(table, i, mark);
        const double limit = column.meaning == Meaning::Split || column.meaning == Meaning::Time ? 200 : 10;
        column.unit = median && *median > limit ? Unit::Millisecond : Unit::Second;
        if (column.unit == Unit::Millisecond && !milliseconds) {
            milliseconds = true;
            example = shortestText(*median);
        }
    }
    if (milliseconds)
        proposal.remarks.push_back({Told::Milliseconds, example});
}

bool standsOnce(Meaning meaning)
{
    return meaning != Meaning::Ignore && meaning != Meaning::Split;
}

void tellForms(const Table& table, Proposal& proposal)
{
    auto& mapping = proposal.mapping;
    mapping.form = rowForm(table, mapping);
    if (mapping.form == RowForm::SplitPerRow)
        proposal.remarks.push_back({Told::SplitRows, {}});
    const auto found = splitForm(table, mapping);
    mapping.splits = found.form;
    if (found.rows > 0)
        proposal.remarks.push_back(
            {found.form == SplitForm::Interval ? Told::IntervalSplits : Told::CumulativeSplits, found.example});
}

} // namespace

MarkFound decimalOf(const Table& table, const Mapping& mapping)
{
    MarkFound comma, point, open;
    bool openPoint = false;
    for (std::size_t column = 0; column < mapping.columns.size(); ++column) {
        const bool used = isNumeric(mapping.columns[column].meaning);
        if (!used && mapping.columns[column].meaning != Meaning::Ignore)
            continue;
        for (const auto& row : table.rows) {
            const auto cell = cellAt(row, column);
            const auto evidence = markEvidence(cell);
            switch (used || evidence == MarkEvidence::Comma || evidence == MarkEvidence::Point ? evidence
                                                                                               : MarkEvidence::None) {
            case MarkEvidence::Comma:
                comma = {',', true, std::string(cell)};
                break;
            case MarkEvidence::Point:
                point = {'.', true, std::string(cell)};
                break;
            case MarkEvidence::OpenComma:
                open.example = cell;
                break;
            case MarkEvidence::OpenPoint:
                openPoint = true;
                break;
            case MarkEvidence::None:
                break;
            }
        }
    }
    if (comma.sure && point.sure)
        return {{}, false, comma.example + " / " + point.example};
    if (comma.sure || point.sure)
        return comma.sure ? comma : point;
    if (!open.example.empty() && !openPoint)
        return open;
    return openPoint && !open.example.empty() ? open : MarkFound{'.', false, {}};
}

OrderFound dateOrderOf(const Table& table, const Mapping& mapping)
{
    OrderFound dayFirst, monthFirst, open;
    for (std::size_t column = 0; column < mapping.columns.size(); ++column) {
        const auto meaning = mapping.columns[column].meaning;
        if (meaning != Meaning::Date && meaning != Meaning::Clock)
            continue;
        for (const auto& row : table.rows) {
            const auto cell = cellAt(row, column);
            const auto date = dateCell(cell);
            if (!date || !date->open)
                continue;
            if (date->first > 12)
                dayFirst = {DateOrder::DayMonth, true, false, std::string(cell)};
            else if (date->second > 12)
                monthFirst = {DateOrder::MonthDay, true, false, std::string(cell)};
            else
                open = {{}, false, true, std::string(cell)};
        }
    }
    if (dayFirst.sure && monthFirst.sure)
        return {{}, false, true, dayFirst.example + ", " + monthFirst.example};
    return dayFirst.sure ? dayFirst : monthFirst.sure ? monthFirst : open;
}

Proposal answered(const Table& table, Mapping mapping)
{
    Proposal proposal{std::move(mapping), {}};
    tellTimeUnits(table, proposal);
    if (proposal.mapping.kind == Kind::Runs)
        tellForms(table, proposal);
    return proposal;
}

Proposal withMeaning(const Table& table, Mapping mapping, std::size_t column, const ColumnMeaning& meaning)
{
    const bool markAnswered = !decimalOf(table, mapping).mark && mapping.decimalMark;
    const bool orderAnswered = dateOrderOf(table, mapping).open && mapping.dateOrder;
    for (auto& other : mapping.columns)
        if (standsOnce(meaning.meaning) && other.meaning == meaning.meaning)
            other = {};
    mapping.columns[column] = meaning;
    if (!markAnswered)
        mapping.decimalMark = decimalOf(table, mapping).mark;
    if (!orderAnswered)
        mapping.dateOrder = dateOrderOf(table, mapping).order;
    return answered(table, std::move(mapping));
}

Proposal propose(const Table& table, Kind kind)
{
    Proposal proposal;
    auto& mapping = proposal.mapping;
    mapping.kind = kind;
    for (const auto& found : meaningsOf(table, kind))
        mapping.columns.push_back({found.meaning, found.unit, found.distance, found.from});
    tellClocks(table, mapping);
    if (table.preamble > 0)
        proposal.remarks.push_back({Told::Preamble, integerText(table.preamble)});
    if (!table.hasHeader)
        proposal.remarks.push_back({Told::NoHeader, {}});
    const auto mark = decimalOf(table, mapping);
    mapping.decimalMark = mark.mark;
    if (mark.mark == ',')
        proposal.remarks.push_back({Told::DecimalComma, mark.example});
    const auto order = dateOrderOf(table, mapping);
    mapping.dateOrder = order.order;
    if (order.sure)
        proposal.remarks.push_back(
            {order.order == DateOrder::DayMonth ? Told::DayMonth : Told::MonthDay, order.example});
    tellTimeUnits(table, proposal);
    if (kind == Kind::Runs)
        tellForms(table, proposal);
    return proposal;
}

} // namespace fleetrung::importing
