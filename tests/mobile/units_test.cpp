#include <catch2/catch.hpp>

#include "mobile/views/forms.hpp"
#include "mobile/views/units.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace
{

const QLocale english(QLocale::English, QLocale::UnitedKingdom);
const QLocale german(QLocale::German, QLocale::Germany);
const QLocale arabic(QLocale::Arabic, QLocale::Egypt);

} // namespace

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

TEST_CASE("Loads stand in kilograms without a needless decimal", "[units]")
{
    const Units units(english);
    CHECK(units.mass(140) == QStringLiteral("140 kg"));
    CHECK(units.mass(62.5) == QStringLiteral("62.5 kg"));
}

// Source: the international avoirdupois pound is 0.45359237 kg, exact (1959). 140 / 0.45359237 = 308.647...
TEST_CASE("Loads stand in pounds where the user chose pounds", "[units][closed-form]")
{
    const Units units(english, MassUnit::Pound);
    CHECK(units.mass(140) == QStringLiteral("308.6 lb"));
    CHECK(units.mass(0.45359237 * 225) == QStringLiteral("225 lb"));
    REQUIRE(units.parseMass(QStringLiteral("225")).has_value());
    CHECK(*units.parseMass(QStringLiteral("225")) == Approx(102.0582833).epsilon(1e-9));
}

// Source: the inch is 0.0254 m, exact (1959).
TEST_CASE("Ranges stand in centimetres or inches", "[units][closed-form]")
{
    CHECK(Units(english).length(0.34) == QStringLiteral("34 cm"));
    CHECK(Units(english).lengthRange(0.32, 0.38) == QStringLiteral("32–38 cm"));
    CHECK(Units(english, MassUnit::Kilogram, LengthUnit::Inch).length(0.508) == QStringLiteral("20.0 in"));
    CHECK(*Units(english, MassUnit::Kilogram, LengthUnit::Inch).parseLength(QStringLiteral("20")) == Approx(0.508));
}

TEST_CASE("Numbers are written as the user's locale writes them", "[units][locale]")
{
    CHECK(Units(german).velocity(0.624) == QStringLiteral("0,62 m/s"));
    CHECK(Units(german).sprintTime(6.84) == QStringLiteral("6,84 s"));
    CHECK(Units(english).sprintTime(6.84) == QStringLiteral("6.84 s"));
    CHECK(Units(arabic).number(286, 0) == QStringLiteral("٢٨٦"));
}

TEST_CASE("No thousands mark and no minus zero are ever written", "[units][locale]")
{
    CHECK(Units(german).number(1234.5, 1) == QStringLiteral("1234,5"));
    CHECK(Units(english).number(-0.04, 1) == QStringLiteral("0.0"));
    CHECK(Units(english).signedNumber(-0.04, 1) == QStringLiteral("0.0"));
    CHECK(Units(english).signedNumber(0.8, 1) == QStringLiteral("+0.8"));
    CHECK(Units(english).signedNumber(-0.3, 1) == QStringLiteral("−0.3"));
}

TEST_CASE("A typed number takes point or comma in every locale", "[units][locale]")
{
    CHECK(*Units::parse(QStringLiteral("7,12")) == 7.12);
    CHECK(*Units::parse(QStringLiteral("7.12")) == 7.12);
    CHECK(*Units::parse(QStringLiteral(" +0,8 ")) == 0.8);
    CHECK(*Units::parse(QStringLiteral("−1,2")) == -1.2); // the minus sign we write ourselves
    CHECK(*Units::parse(QStringLiteral("٧٫١٢")) == 7.12); // Arabic digits and decimal mark
}

TEST_CASE("What is not one number is refused rather than guessed", "[units][error]")
{
    for (const char* text : {"", "abc", "1.234,5", "1,234,567", "7.1.2", "7 12", "1e400", "nan", "inf", "12kg"}) {
        CAPTURE(text);
        CHECK_FALSE(Units::parse(QString::fromUtf8(text)).has_value());
    }
}

TEST_CASE("What is written in a field reads back as the same load", "[units][property]")
{
    for (const auto& locale : {english, german, arabic})
        for (const auto mass : {MassUnit::Kilogram, MassUnit::Pound}) {
            const Units units(locale, mass);
            for (const double kilograms : {20.0, 62.5, 100.0, 142.5}) {
                CAPTURE(locale.name().toStdString(), static_cast<int>(mass), kilograms);
                const auto read = units.parseMass(units.massNumber(kilograms));
                REQUIRE(read.has_value());
                CHECK(*read == Approx(kilograms).margin(0.03)); // half of the last decimal shown, in pounds
            }
        }
}

TEST_CASE("A form says for each field what to do", "[forms][error]")
{
    const Units units(english);
    const QVariantMap form{{QStringLiteral("load"), QStringLiteral("heavy")},
                           {QStringLiteral("repetitions"), QStringLiteral("2.5")},
                           {QStringLiteral("day"), QStringLiteral("2026-02-30")},
                           {QStringLiteral("effort"), QStringLiteral("11")}};
    FormReader reader(form, units);
    CHECK_FALSE(reader.mass(QStringLiteral("load"), 0, 600, true).has_value());
    CHECK_FALSE(reader.wholeNumber(QStringLiteral("repetitions"), 1, 50, true).has_value());
    CHECK_FALSE(reader.day(QStringLiteral("day"), true).has_value());
    CHECK_FALSE(reader.number(QStringLiteral("effort"), 1, 10, false).has_value());
    CHECK_FALSE(reader.number(QStringLiteral("name"), 1, 10, true).has_value());
    CHECK(reader.problems().size() == 5);
    CHECK(reader.problems().value(QStringLiteral("effort")).toString() == QStringLiteral("Between 1 and 10."));
}

TEST_CASE("A field left empty is no problem where it may be empty", "[forms]")
{
    const Units units(english);
    const QVariantMap form{{QStringLiteral("wind"), QStringLiteral("  ")}};
    FormReader reader(form, units);
    CHECK_FALSE(reader.number(QStringLiteral("wind"), -20, 20, false).has_value());
    CHECK(reader.sound());
}

TEST_CASE("A day is typed as the country writes it, or year-month-day", "[views][units]")
{
    const auto spring = CivilDate{std::chrono::year{2026} / 3 / 5};
    const Units german(QLocale(QLocale::German, QLocale::Germany));
    CHECK(german.dayNumber(spring) == QStringLiteral("05.03.2026"));
    CHECK(german.dayExample() == QStringLiteral("30.03.2026"));
    CHECK(german.parseDay(QStringLiteral(" 5.3.2026")) == spring);
    CHECK(german.parseDay(QStringLiteral("2026-03-05")) == spring);
    CHECK_FALSE(german.parseDay(QStringLiteral("31.02.2026")));
    CHECK_FALSE(german.parseDay(QStringLiteral("5.3.26"))); // which century?
    const Units american(QLocale(QLocale::English, QLocale::UnitedStates));
    CHECK(american.parseDay(QStringLiteral("3/5/2026")) == spring);
    CHECK_FALSE(american.parseDay(QStringLiteral("30/3/2026")));
    for (const auto language :
         {QLocale::English, QLocale::German, QLocale::Spanish, QLocale::French, QLocale::Japanese, QLocale::Arabic}) {
        const Units units{QLocale(language)};
        INFO(units.dayNumber(spring).toStdString());
        CHECK(units.parseDay(units.dayNumber(spring)) == spring); // what stands in the field is taken back
    }
}
