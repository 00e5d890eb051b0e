// Numbers as the athlete reads and types them: the user's locale, kilograms or pounds, centimetres or inches.
// Everything that comes in or goes out is SI (masses in kg, as the trade has it).
#pragma once

#include <optional>

#include <QLocale>
#include <QString>

#include "engine/base/civil_date.hpp"
#include "engine/season/entered_length.hpp"

namespace fleetrung::views
{

/// What the locale says, or the user's own choice.
enum class DecimalMark { AsLanguage, Point, Comma };
enum class WeekStart { AsLanguage, Monday, Sunday };
enum class MassUnit { Kilogram, Pound };
enum class LengthUnit { Centimetre, Inch };

class Units
{
public:
    explicit Units(QLocale locale = QLocale(), MassUnit mass = MassUnit::Kilogram,
                   LengthUnit length = LengthUnit::Centimetre, DecimalMark mark = DecimalMark::AsLanguage,
                   WeekStart weekStart = WeekStart::AsLanguage);

    [[nodiscard]] QLocale::Language language() const { return locale_.language(); }

    [[nodiscard]] QString number(double value, int decimals) const;
    /// "+0.8", "−0.3", "0.0": with the sign written out.
    [[nodiscard]] QString signedNumber(double value, int decimals) const;

    [[nodiscard]] QString decimalMark() const;

    [[nodiscard]] QString massUnit() const;
    [[nodiscard]] QString mass(double kilograms) const;       ///< "140 kg", "62.5 kg", "308.6 lb"
    [[nodiscard]] QString massNumber(double kilograms) const; ///< without the unit, for a field
    [[nodiscard]] double massValue(double kilograms) const;   ///< in the chosen unit

    [[nodiscard]] QString lengthUnit() const;
    [[nodiscard]] bool typedInPounds() const { return mass_ == MassUnit::Pound; }
    [[nodiscard]] bool typedInInches() const { return length_ == LengthUnit::Inch; }
    [[nodiscard]] QString length(double metres) const;                           ///< "34 cm", "13.4 in"
    [[nodiscard]] QString lengthRange(double fromMetres, double toMetres) const; ///< "32–38 cm"
    [[nodiscard]] QString lengthNumber(double metres) const;
    /// As it was entered where that is the chosen unit: 14 in stays 14 in, and is 36 cm elsewhere.
    [[nodiscard]] QString entered(const season::EnteredLength& length) const;
    [[nodiscard]] std::optional<season::EnteredLength> parseEntered(const QString& text) const; ///< in the chosen unit

    [[nodiscard]] QString milliseconds(double seconds) const;                           ///< "286 ms"
    [[nodiscard]] QString millisecondRange(double fromSeconds, double toSeconds) const; ///< "240–300 ms"
    [[nodiscard]] QString velocity(double metresPerSecond) const;                       ///< "0.62 m/s"
    [[nodiscard]] QString percent(double share) const;                                  ///< 0.09 -> "9 %"
    [[nodiscard]] QString sprintTime(double seconds) const;                             ///< "6.84 s"
    [[nodiscard]] QString distance(double metres) const;                                ///< "60 m"
    [[nodiscard]] QString day(CivilDate date) const;                                    ///< in the locale's short form
    [[nodiscard]] QString dayNumber(CivilDate date) const; ///< the same with the whole year, for a field
    [[nodiscard]] QString dayExample() const;              ///< what to type: a day after the twelfth
    /// In the locale's own order, or year-month-day.
    [[nodiscard]] std::optional<CivilDate> parseDay(const QString& text) const;
    [[nodiscard]] QString dayAndMonth(CivilDate date) const; ///< "5 Jan", "5. Jan.", "1月5日"
    [[nodiscard]] QString dayWithWeekday(CivilDate date) const;
    /// Days written as 2026-03-30 within a text, each in the locale's short form; the engine knows no other.
    [[nodiscard]] QString withLocalDates(const QString& text) const;
    [[nodiscard]] QString monthAndYear(CivilDate date) const;
    [[nodiscard]] int firstWeekday() const;              ///< of the week: Monday 1 ... Sunday 7
    [[nodiscard]] QString weekday(int isoWeekday) const; ///< Monday 1 ... Sunday 7, short

    /// A typed number. Point or comma stands for the decimal mark, digits of any script; nothing where it is not one
    /// number: "1.234,5" has two marks and is refused rather than guessed.
    [[nodiscard]] static std::optional<double> parse(const QString& text);
    [[nodiscard]] std::optional<double> parseMass(const QString& text) const;   ///< -> kg
    [[nodiscard]] std::optional<double> parseLength(const QString& text) const; ///< -> m

private:
    QLocale locale_;
    MassUnit mass_;
    LengthUnit length_;
    DecimalMark mark_;
    WeekStart weekStart_;
};

} // namespace fleetrung::views
