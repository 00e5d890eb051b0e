#include "mobile/views/units.hpp"

#include <cmath>

#include <QCoreApplication>
#include <QDate>
#include <QRegularExpression>

#include "engine/base/numbers.hpp"

namespace fleetrung::views
{
namespace
{

constexpr double kilogramsPerPound = 0.45359237; // international avoirdupois pound, exact by definition (1959)
constexpr double metresPerInch = 0.0254;         // exact by definition (1959)

struct UnitsWords {
    Q_DECLARE_TR_FUNCTIONS(UnitsWords)
};

bool isWhole(double value)
{
    return std::abs(value - std::round(value)) < 0.05;
}

QDate toQDate(CivilDate date)
{
    const std::chrono::year_month_day day{date};
    return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
            static_cast<int>(static_cast<unsigned>(day.day()))};
}

/// The locale's short form with the whole year, without marks of direction, which nobody types.
QString typedForm(const QLocale& locale)
{
    static const QRegularExpression year(QStringLiteral("y+"));
    static const QRegularExpression unseen(QStringLiteral("[\\x{200e}\\x{200f}]"));
    const QString form = locale.dateFormat(QLocale::ShortFormat);
    if (form.contains(QStringLiteral("MMM"))) // a month's name is no number to type
        return QStringLiteral("yyyy-MM-dd");
    return QString(form).replace(year, QStringLiteral("yyyy")).remove(unseen);
}

} // namespace

Units::Units(QLocale locale, MassUnit mass, LengthUnit length, DecimalMark mark, WeekStart weekStart)
    : locale_(std::move(locale)), mass_(mass), length_(length), mark_(mark), weekStart_(weekStart)
{
    // Thousands marks make "1.234" read as one and a bit in half of the world's hands; no number here needs them.
    locale_.setNumberOptions(QLocale::OmitGroupSeparator);
}

QString Units::number(double value, int decimals) const
{
    const double rounded = roundTo(value, std::pow(10, decimals));
    QString text = locale_.toString(rounded == 0 ? 0.0 : rounded, 'f', decimals); // never "-0.0"
    if (mark_ != DecimalMark::AsLanguage)
        text.replace(locale_.decimalPoint(), mark_ == DecimalMark::Comma ? QStringLiteral(",") : QStringLiteral("."));
    return text;
}

QString Units::signedNumber(double value, int decimals) const
{
    const QString size = number(std::abs(value), decimals);
    if (size == number(0, decimals))
        return size;
    return (value > 0 ? QStringLiteral("+") : QStringLiteral("−")) + size;
}

QString Units::decimalMark() const
{
    return number(0.5, 1).mid(1, 1);
}

QString Units::massUnit() const
{
    return mass_ == MassUnit::Pound ? UnitsWords::tr("lb") : UnitsWords::tr("kg");
}

double Units::massValue(double kilograms) const
{
    return mass_ == MassUnit::Pound ? kilograms / kilogramsPerPound : kilograms;
}

QString Units::massNumber(double kilograms) const
{
    const double value = massValue(kilograms);
    return number(value, isWhole(value) ? 0 : 1);
}

QString Units::mass(double kilograms) const
{
    return massNumber(kilograms) + QStringLiteral(" ") + massUnit();
}

QString Units::lengthUnit() const
{
    return length_ == LengthUnit::Inch ? UnitsWords::tr("in") : UnitsWords::tr("cm");
}

QString Units::lengthNumber(double metres) const
{
    return length_ == LengthUnit::Inch ? number(metres / metresPerInch, 1) : number(metres * 100, 0);
}

QString Units::length(double metres) const
{
    return lengthNumber(metres) + QStringLiteral(" ") + lengthUnit();
}

QString Units::entered(const season::EnteredLength& length) const
{
    const auto wanted = typedInInches() ? season::LengthUnit::Inch : season::LengthUnit::Centimetre;
    QString text = QString::fromStdString(season::lengthText(length, wanted));
    return text.replace(QLatin1Char('.'), locale_.decimalPoint());
}

std::optional<season::EnteredLength> Units::parseEntered(const QString& text) const
{
    const auto value = parse(text);
    if (!value || *value <= 0)
        return std::nullopt;
    return typedInInches() ? season::inches(*value) : season::centimetres(*value);
}

QString Units::lengthRange(double fromMetres, double toMetres) const
{
    return lengthNumber(fromMetres) + QStringLiteral("–") + length(toMetres);
}

QString Units::milliseconds(double seconds) const
{
    return number(seconds * 1000, 0) + QStringLiteral(" ") + UnitsWords::tr("ms");
}

QString Units::millisecondRange(double fromSeconds, double toSeconds) const
{
    return number(fromSeconds * 1000, 0) + QStringLiteral("–") + milliseconds(toSeconds);
}

QString Units::velocity(double metresPerSecond) const
{
    return number(metresPerSecond, 2) + QStringLiteral(" ") + UnitsWords::tr("m/s");
}

QString Units::percent(double share) const
{
    return number(share * 100, 0) + QStringLiteral(" %");
}

QString Units::sprintTime(double seconds) const
{
    return number(seconds, 2) + QStringLiteral(" ") + UnitsWords::tr("s");
}

QString Units::distance(double metres) const
{
    return number(metres, isWhole(metres) ? 0 : 1) + QStringLiteral(" ") + UnitsWords::tr("m");
}

QString Units::day(CivilDate date) const
{
    return locale_.toString(toQDate(date), QLocale::ShortFormat);
}

QString Units::dayNumber(CivilDate date) const
{
    return locale_.toString(toQDate(date), typedForm(locale_));
}

QString Units::dayExample() const
{
    return dayNumber(CivilDate{std::chrono::year{2026} / 3 / 30});
}

std::optional<CivilDate> Units::parseDay(const QString& text) const
{
    if (const auto iso = parseDate(text.trimmed().toStdString()))
        return iso;
    const QString form = typedForm(locale_)
                             .replace(QStringLiteral("dd"), QStringLiteral("d"))
                             .replace(QStringLiteral("MM"), QStringLiteral("M")); // 3 as well as 03
    const QDate day = locale_.toDate(text.trimmed(), form);
    if (!day.isValid() || day.year() < 1900) // two digits of a year are no year
        return std::nullopt;
    return CivilDate{std::chrono::year{day.year()} / day.month() / day.day()};
}

QString Units::dayAndMonth(CivilDate date) const
{
    const auto language = locale_.language();
    return locale_.toString(toQDate(date), language == QLocale::Japanese ? QStringLiteral("M月d日")
                                           : language == QLocale::German ? QStringLiteral("d. MMM")
                                                                         : QStringLiteral("d MMM"));
}

QString Units::dayWithWeekday(CivilDate date) const
{
    const QDate day = toQDate(date);
    // The locale's long form without its year: "Montag, 23. Februar", "2月23日月曜日".
    static const QRegularExpression year(QStringLiteral("(,? (de|'de'))? ?,?\\s*y+年?"));
    return locale_.toString(day, locale_.dateFormat(QLocale::LongFormat).remove(year).trimmed());
}

QString Units::withLocalDates(const QString& text) const
{
    static const QRegularExpression isoDay(QStringLiteral("\\b\\d{4}-\\d{2}-\\d{2}\\b"));
    QString local;
    qsizetype end = 0;
    for (auto match = isoDay.globalMatch(text); match.hasNext();) {
        const auto found = match.next();
        const auto date = parseDate(found.captured().toStdString());
        local += text.mid(end, found.capturedStart() - end) + (date ? day(*date) : found.captured());
        end = found.capturedEnd();
    }
    return local + text.mid(end);
}

QString Units::monthAndYear(CivilDate date) const
{
    const QDate day = toQDate(date);
    return locale_.standaloneMonthName(day.month()) + QStringLiteral(" ") + QString::number(day.year());
}

int Units::firstWeekday() const
{
    if (weekStart_ != WeekStart::AsLanguage)
        return weekStart_ == WeekStart::Monday ? 1 : 7;
    return locale_.firstDayOfWeek();
}

QString Units::weekday(int isoWeekday) const
{
    return locale_.dayName(isoWeekday, QLocale::ShortFormat);
}

std::optional<double> Units::parse(const QString& text)
{
    std::string plain;
    int marks = 0;
    for (const QChar character : text.trimmed()) {
        if (character == u'.' || character == u',' || character == QChar(0x066B)) { // U+066B: Arabic decimal mark
            plain += '.';
            ++marks;
        } else if (character == QChar(0x2212)) { // the minus sign we write ourselves
            plain += '-';
        } else if (character.isDigit()) {
            plain += static_cast<char>('0' + character.digitValue());
        } else {
            plain += character.toLatin1() == 0 ? '?' : character.toLatin1();
        }
    }
    if (marks > 1)
        return std::nullopt;
    if (plain.starts_with('+'))
        plain.erase(0, 1);
    return parseNumber(plain);
}

std::optional<double> Units::parseMass(const QString& text) const
{
    const auto value = parse(text);
    if (!value)
        return std::nullopt;
    return mass_ == MassUnit::Pound ? *value * kilogramsPerPound : *value;
}

std::optional<double> Units::parseLength(const QString& text) const
{
    const auto value = parse(text);
    if (!value)
        return std::nullopt;
    return length_ == LengthUnit::Inch ? *value * metresPerInch : *value / 100;
}

} // namespace fleetrung::views
