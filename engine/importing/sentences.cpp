// What the file leaves open, what was concluded, and what is wrong with a row, in English.
#include "engine/base/numbers.hpp"
#include "engine/importing/runs.hpp"

namespace fleetrung::importing
{
namespace
{

std::string inQuotes(const std::string& text)
{
    return "\"" + text + "\"";
}

std::string sentence(const BadRow& bad)
{
    const auto cell = inQuotes(bad.cell);
    switch (bad.fault) {
    case Fault::TooManyCells:
        return "the row has more cells than the header; quote cells that hold the delimiter";
    case Fault::NotANumber:
        return cell + " is no number";
    case Fault::OutOfRange:
        return cell + " is beyond what can be; check the number and the column's unit";
    case Fault::NoDate:
        return "there is no date; fill it in, or say one day for all rows";
    case Fault::NotADate:
        return cell + " is no day; write it as 2026-03-30";
    case Fault::FutureDay:
        return cell + " has not come yet; check the order of day and month";
    case Fault::NotAClock:
        return cell + " is no time of day; write it as 17:05";
    case Fault::NoTime:
        return "there is no time";
    case Fault::NoDistance:
        return "the time has no distance; say at which distance the column's gate stands";
    case Fault::TimesDoNotRise:
        return "the times do not rise with the distance; check the gates, or whether each time counts from the gate "
               "before";
    case Fault::TooFast:
        return "that is faster than anyone has run; check distances and units";
    case Fault::GapInIntervals:
        return "a time before this one is missing, and each counts from the gate before; fill it in";
    case Fault::BeyondDistance:
        return "a split stands behind the end of the run; check the distances";
    case Fault::EndDisagrees:
        return "the split at the end says another time than " + cell + "; take one of them out";
    case Fault::NoLift:
        return "no lift is named";
    case Fault::NoRepetitions:
        return "the repetitions are missing";
    }
    return {};
}

} // namespace

std::string describe(const BadRow& bad, const Table& table)
{
    std::string place = "line " + integerText(bad.line);
    if (bad.column >= 0 && static_cast<std::size_t>(bad.column) < table.header.size())
        place += ", column " + table.header[static_cast<std::size_t>(bad.column)];
    return place + ": " + sentence(bad);
}

std::string describe(const Question& question, const Table& table)
{
    switch (question.ask) {
    case Ask::NothingToRead:
        return "no column is known to hold times at a distance, or lifts with repetitions; say what the columns mean";
    case Ask::DecimalMark:
        return inQuotes(question.example) +
               " may be read in two ways; say whether the decimal mark is a point or a comma";
    case Ask::DateOrder:
        return inQuotes(question.example) + " may be read in two ways; say whether the day or the month comes first";
    case Ask::Day:
        return "no column holds a date; say on which day it was";
    case Ask::SplitDistance:
        return "column " + inQuotes(table.header[static_cast<std::size_t>(question.column)]) +
               ": say at how many metres its gate stands";
    case Ask::MassUnit:
        return "column " + inQuotes(question.example) + ": say whether its loads are kilograms or pounds";
    }
    return {};
}

std::string describe(const Remark& remark)
{
    switch (remark.told) {
    case Told::Preamble:
        return "rows above the header left out: " + remark.example;
    case Told::NoHeader:
        return "no header: the first row is read as the others";
    case Told::DecimalComma:
        return "decimal comma, as in " + inQuotes(remark.example);
    case Told::Milliseconds:
        return "times are read as milliseconds, by their size: " + remark.example;
    case Told::IntervalSplits:
        return "the times do not rise (" + remark.example + "): each is counted from the gate before";
    case Told::CumulativeSplits:
        return "the times rise (" + remark.example + "): each is counted from the start";
    case Told::SplitRows:
        return "several rows make one run";
    case Told::DayMonth:
        return "the day comes before the month, as in " + inQuotes(remark.example);
    case Told::MonthDay:
        return "the month comes before the day, as in " + inQuotes(remark.example);
    }
    return {};
}

} // namespace fleetrung::importing
