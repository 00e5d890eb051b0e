#include "engine/report/moment.hpp"

#include <chrono>
#include <cstdlib>

#include "engine/base/civil_date.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::report
{
namespace
{

std::string padded(std::int64_t value, std::size_t width)
{
    auto digits = integerText(value);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

std::string offsetText(int minutes)
{
    if (minutes == 0)
        return "Z";
    const int size = std::abs(minutes);
    return (minutes < 0 ? "-" : "+") + padded(size / 60, 2) + ":" + padded(size % 60, 2);
}

} // namespace

std::string momentText(const Moment& moment)
{
    using namespace std::chrono;
    const sys_time<milliseconds> local{milliseconds(moment.utcMilliseconds) + minutes(moment.offsetMinutes)};
    const auto day = floor<days>(local);
    const auto ofDay = (local - day).count();
    std::string text = dateText(day) + "T" + padded(ofDay / 3'600'000, 2) + ":" + padded(ofDay / 60'000 % 60, 2) + ":" +
                       padded(ofDay / 1000 % 60, 2);
    if (ofDay % 1000 != 0)
        text += "." + padded(ofDay % 1000, 3);
    return text + offsetText(moment.offsetMinutes);
}

} // namespace fleetrung::report
