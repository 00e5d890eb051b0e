#include "mobile/views/forms.hpp"

#include <cmath>

#include <QCoreApplication>

namespace fleetrung::views
{
namespace
{

struct FormsWords {
    Q_DECLARE_TR_FUNCTIONS(FormsWords)
};

} // namespace

void FormReader::problem(const QString& field, const QString& sentence)
{
    problems_.insert(field, sentence);
}

std::optional<double> FormReader::checked(const QString& field, std::optional<double> value, double low, double high,
                                          bool required, const QString& lowText, const QString& highText)
{
    if (isEmpty(field)) {
        if (required)
            problem(field, FormsWords::tr("Type a number."));
        return std::nullopt;
    }
    if (!value) {
        problem(field, FormsWords::tr("This is not a number. Digits, with a point or a comma."));
        return std::nullopt;
    }
    // The bounds as shown are rounded to the user's unit; what was typed as the bound itself is allowed.
    const double slack = 1e-3 * (high - low);
    if (*value < low - slack || *value > high + slack) {
        problem(field, FormsWords::tr("Between %1 and %2.").arg(lowText, highText));
        return std::nullopt;
    }
    return value;
}

std::optional<double> FormReader::number(const QString& field, double low, double high, bool required)
{
    const auto text = [this](double bound) { return units_.number(bound, bound == std::floor(bound) ? 0 : 2); };
    return checked(field, Units::parse(form_.value(field).toString()), low, high, required, text(low), text(high));
}

std::optional<double> FormReader::mass(const QString& field, double lowKg, double highKg, bool required)
{
    return checked(field, units_.parseMass(form_.value(field).toString()), lowKg, highKg, required, units_.mass(lowKg),
                   units_.mass(highKg));
}

std::optional<double> FormReader::length(const QString& field, double lowMetres, double highMetres, bool required)
{
    return checked(field, units_.parseLength(form_.value(field).toString()), lowMetres, highMetres, required,
                   units_.length(lowMetres), units_.length(highMetres));
}

std::optional<double> FormReader::milliseconds(const QString& field, double lowMs, double highMs, bool required)
{
    const auto value = number(field, lowMs, highMs, required);
    return value ? std::optional(*value / 1000) : std::nullopt;
}

std::optional<int> FormReader::wholeNumber(const QString& field, int low, int high, bool required)
{
    const auto value = number(field, low, high, required);
    if (!value)
        return std::nullopt;
    if (*value != std::floor(*value)) {
        problem(field, FormsWords::tr("A whole number."));
        return std::nullopt;
    }
    return static_cast<int>(*value);
}

std::optional<CivilDate> FormReader::day(const QString& field, bool required)
{
    if (isEmpty(field)) {
        if (required)
            problem(field, FormsWords::tr("Type a day, like %1.").arg(units_.dayExample()));
        return std::nullopt;
    }
    const auto date = units_.parseDay(form_.value(field).toString());
    if (!date)
        problem(field, FormsWords::tr("There is no such day. Type it like %1.").arg(units_.dayExample()));
    return date;
}

QString FormReader::text(const QString& field, bool required)
{
    const QString text = form_.value(field).toString().simplified();
    if (required && text.isEmpty())
        problem(field, FormsWords::tr("This cannot stay empty."));
    return text;
}

} // namespace fleetrung::views
