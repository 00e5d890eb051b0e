#include "mobile/views/import_words.hpp"

#include <array>

#include <QCoreApplication>

namespace fleetrung::views
{
namespace
{

struct ImportWords {
    Q_DECLARE_TR_FUNCTIONS(ImportWords)
};

// In the order of importing::Meaning.
constexpr std::array<const char*, importing::meaningCount> meanings{
    QT_TRANSLATE_NOOP("ImportWords", "Not read"),
    QT_TRANSLATE_NOOP("ImportWords", "Athlete"),
    QT_TRANSLATE_NOOP("ImportWords", "Athlete's identifier"),
    QT_TRANSLATE_NOOP("ImportWords", "Day"),
    QT_TRANSLATE_NOOP("ImportWords", "Time of day"),
    QT_TRANSLATE_NOOP("ImportWords", "Note"),
    QT_TRANSLATE_NOOP("ImportWords", "Effort, 1 to 10"),
    QT_TRANSLATE_NOOP("ImportWords", "Key of the row"),
    QT_TRANSLATE_NOOP("ImportWords", "Number of the run or set"),
    QT_TRANSLATE_NOOP("ImportWords", "Split"),
    QT_TRANSLATE_NOOP("ImportWords", "Distance"),
    QT_TRANSLATE_NOOP("ImportWords", "Time"),
    QT_TRANSLATE_NOOP("ImportWords", "Wind"),
    QT_TRANSLATE_NOOP("ImportWords", "Timed by"),
    QT_TRANSLATE_NOOP("ImportWords", "Start"),
    QT_TRANSLATE_NOOP("ImportWords", "Run-in"),
    QT_TRANSLATE_NOOP("ImportWords", "Reaction"),
    QT_TRANSLATE_NOOP("ImportWords", "Surface"),
    QT_TRANSLATE_NOOP("ImportWords", "Shoes"),
    QT_TRANSLATE_NOOP("ImportWords", "Name of the test"),
    QT_TRANSLATE_NOOP("ImportWords", "Temperature"),
    QT_TRANSLATE_NOOP("ImportWords", "Competition, yes or no"),
    QT_TRANSLATE_NOOP("ImportWords", "Trial of a test day, yes or no"),
    QT_TRANSLATE_NOOP("ImportWords", "Contact time"),
    QT_TRANSLATE_NOOP("ImportWords", "Step length"),
    QT_TRANSLATE_NOOP("ImportWords", "Lift"),
    QT_TRANSLATE_NOOP("ImportWords", "Load"),
    QT_TRANSLATE_NOOP("ImportWords", "Repetitions"),
    QT_TRANSLATE_NOOP("ImportWords", "Time to peak velocity"),
    QT_TRANSLATE_NOOP("ImportWords", "Mean velocity"),
    QT_TRANSLATE_NOOP("ImportWords", "Peak velocity"),
    QT_TRANSLATE_NOOP("ImportWords", "Range of motion"),
    QT_TRANSLATE_NOOP("ImportWords", "Side"),
    QT_TRANSLATE_NOOP("ImportWords", "Rung"),
    QT_TRANSLATE_NOOP("ImportWords", "Kind of set"),
    QT_TRANSLATE_NOOP("ImportWords", "Height of the box")};

} // namespace

QString meaningName(importing::Meaning meaning)
{
    return ImportWords::tr(meanings[static_cast<std::size_t>(meaning)]);
}

QString columnWords(const importing::ColumnMeaning& column, const Units& units)
{
    QString words = meaningName(column.meaning);
    if (column.meaning == importing::Meaning::Split)
        words = column.distance > 0 ? ImportWords::tr("Split at %1").arg(units.distance(column.distance))
                                    : ImportWords::tr("Split, distance not known");
    if (column.meaning != importing::Meaning::Ignore && column.unit != importing::Unit::None)
        words = ImportWords::tr("%1, in %2")
                    .arg(words, QString::fromLatin1(importing::unitKey(column.unit).data(),
                                                    static_cast<qsizetype>(importing::unitKey(column.unit).size())));
    return words;
}

QString questionWords(const importing::Question& question)
{
    const QString example = QString::fromStdString(question.example);
    switch (question.ask) {
    case importing::Ask::NothingToRead:
        return ImportWords::tr(
            "Nothing to add is known in this file yet. Tap the columns below and say what they mean.");
    case importing::Ask::DecimalMark:
        return ImportWords::tr("“%1” can be read in two ways. What is the decimal mark?").arg(example);
    case importing::Ask::DateOrder:
        return ImportWords::tr("“%1” can be read in two ways. What comes first?").arg(example);
    case importing::Ask::Day:
        return ImportWords::tr("The file has no dates. On which day was it?");
    case importing::Ask::SplitDistance:
        return ImportWords::tr("At how many metres stands the gate of “%1”? Tap the column below.").arg(example);
    case importing::Ask::MassUnit:
        return ImportWords::tr("In which unit are the loads of “%1”?").arg(example);
    }
    return {};
}

QString remarkWords(const importing::Remark& remark)
{
    const QString example = QString::fromStdString(remark.example);
    switch (remark.told) {
    case importing::Told::Preamble:
        return ImportWords::tr("Rows above the header, left out: %1.").arg(example);
    case importing::Told::NoHeader:
        return ImportWords::tr("The file has no header: its first row is read like the others.");
    case importing::Told::DecimalComma:
        return ImportWords::tr("The decimal mark is a comma, as in %1.").arg(example);
    case importing::Told::Milliseconds:
        return ImportWords::tr("Times are in milliseconds, by their size: %1.").arg(example);
    case importing::Told::IntervalSplits:
        return ImportWords::tr("The times do not rise (%1): each counts from the gate before.").arg(example);
    case importing::Told::CumulativeSplits:
        return ImportWords::tr("The times rise (%1): each counts from the start.").arg(example);
    case importing::Told::SplitRows:
        return ImportWords::tr("Several rows make one run.");
    case importing::Told::DayMonth:
        return ImportWords::tr("The day comes before the month, as in %1.").arg(example);
    case importing::Told::MonthDay:
        return ImportWords::tr("The month comes before the day, as in %1.").arg(example);
    }
    return {};
}

QString faultWords(const importing::BadRow& bad)
{
    using importing::Fault;
    const QString cell = QString::fromStdString(bad.cell);
    switch (bad.fault) {
    case Fault::TooManyCells:
        return ImportWords::tr("More cells than the header has.");
    case Fault::NotANumber:
        return ImportWords::tr("“%1” is not a number.").arg(cell);
    case Fault::OutOfRange:
        return ImportWords::tr("“%1” cannot be. Check the number and the unit.").arg(cell);
    case Fault::NoDate:
        return ImportWords::tr("The day is missing.");
    case Fault::NotADate:
        return ImportWords::tr("“%1” is not a day.").arg(cell);
    case Fault::FutureDay:
        return ImportWords::tr("“%1” has not come yet. Check the order of day and month.").arg(cell);
    case Fault::NotAClock:
        return ImportWords::tr("“%1” is not a time of day.").arg(cell);
    case Fault::NoTime:
        return ImportWords::tr("The time is missing.");
    case Fault::NoDistance:
        return ImportWords::tr("The time has no distance.");
    case Fault::TimesDoNotRise:
        return ImportWords::tr("The times do not rise with the distance.");
    case Fault::TooFast:
        return ImportWords::tr("That is faster than anyone has run. Check distance and time.");
    case Fault::GapInIntervals:
        return ImportWords::tr("A time before this one is missing.");
    case Fault::BeyondDistance:
        return ImportWords::tr("A split lies behind the end of the run.");
    case Fault::EndDisagrees:
        return ImportWords::tr("The split at the end says another time.");
    case Fault::NoLift:
        return ImportWords::tr("The lift is missing.");
    case Fault::NoRepetitions:
        return ImportWords::tr("The repetitions are missing.");
    }
    return {};
}

} // namespace fleetrung::views
