// Reading what was typed into a form: each field gives a value or a sentence that says what to do.
#pragma once

#include <optional>

#include <QString>
#include <QVariantMap>

#include "engine/base/civil_date.hpp"
#include "mobile/views/units.hpp"

namespace fleetrung::views
{

class FormReader
{
public:
    FormReader(const QVariantMap& form, const Units& units) : form_(form), units_(units) {}

    /// A number between low and high (SI); a field left empty is a problem only where `required`.
    std::optional<double> number(const QString& field, double low, double high, bool required);
    std::optional<double> mass(const QString& field, double lowKg, double highKg, bool required);
    std::optional<double> length(const QString& field, double lowMetres, double highMetres, bool required);
    /// Typed in ms, given in s.
    std::optional<double> milliseconds(const QString& field, double lowMs, double highMs, bool required);
    std::optional<int> wholeNumber(const QString& field, int low, int high, bool required);
    std::optional<CivilDate> day(const QString& field, bool required);
    QString text(const QString& field, bool required);
    [[nodiscard]] int choice(const QString& field) const { return form_.value(field).toInt(); }
    [[nodiscard]] bool isEmpty(const QString& field) const { return form_.value(field).toString().trimmed().isEmpty(); }

    void problem(const QString& field, const QString& sentence);
    [[nodiscard]] bool sound() const { return problems_.isEmpty(); }
    [[nodiscard]] const QVariantMap& problems() const { return problems_; }

private:
    std::optional<double> checked(const QString& field, std::optional<double> value, double low, double high,
                                  bool required, const QString& lowText, const QString& highText);

    const QVariantMap& form_;
    const Units& units_;
    QVariantMap problems_;
};

} // namespace fleetrung::views
