#include "engine/season/entered_length.hpp"

#include "engine/base/numbers.hpp"

namespace fleetrung::season
{
namespace
{

std::string_view nameOf(LengthUnit unit)
{
    return unit == LengthUnit::Inch ? " in" : " cm";
}

/// Whole centimetres or half inches.
std::string roundedNumber(double metres, LengthUnit unit)
{
    return shortestText(unit == LengthUnit::Inch ? roundTo(metres / metresPerInch, 2) : roundTo(metres * 100, 1));
}

} // namespace

double EnteredLength::metres() const
{
    return unit == LengthUnit::Inch ? value * metresPerInch : value / 100;
}

EnteredLength centimetres(double value)
{
    return {value, LengthUnit::Centimetre};
}

EnteredLength inches(double value)
{
    return {value, LengthUnit::Inch};
}

std::vector<EnteredLength> boxesOf(std::initializer_list<double> heights)
{
    std::vector<EnteredLength> boxes;
    for (const double height : heights)
        boxes.push_back(centimetres(height));
    return boxes;
}

std::string lengthText(const EnteredLength& length)
{
    return shortestText(length.value).append(nameOf(length.unit));
}

std::string lengthText(const EnteredLength& length, LengthUnit wanted)
{
    return length.unit == wanted ? lengthText(length) : roundedNumber(length.metres(), wanted).append(nameOf(wanted));
}

std::string bandText(double lowMetres, double highMetres, LengthUnit unit)
{
    return (roundedNumber(lowMetres, unit) + '-' + roundedNumber(highMetres, unit)).append(nameOf(unit));
}

std::optional<EnteredLength> parseLength(std::string_view text, LengthUnit bare)
{
    auto unit = bare;
    for (const auto named : {LengthUnit::Centimetre, LengthUnit::Inch})
        if (const auto name = nameOf(named).substr(1); text.ends_with(name)) {
            unit = named;
            text.remove_suffix(name.size());
            break;
        }
    const auto value = parseNumber(text);
    if (!value || *value <= 0)
        return std::nullopt;
    return EnteredLength{*value, unit};
}

} // namespace fleetrung::season
