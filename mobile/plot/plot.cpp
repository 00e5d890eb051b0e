#include "mobile/plot/plot.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "mobile/plot/words.hpp"

namespace fleetrung::plot
{

double niceStep(double from, double to, int most)
{
    const double raw = (to - from) / std::max(most, 1);
    if (!(raw > 0) || !std::isfinite(raw))
        return 1.0;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= raw * (1 - 1e-9))
            return factor * power;
    return 10.0 * power;
}

std::vector<Tick> niceTicks(double from, double to, int most)
{
    const double step = niceStep(from, to, most);
    const int decimals = std::max(0, static_cast<int>(-std::floor(std::log10(step) + 1e-9)));
    std::vector<Tick> ticks;
    const auto first = static_cast<long long>(std::ceil(from / step - 1e-9));
    const auto last = static_cast<long long>(std::floor(to / step + 1e-9));
    for (auto i = first; i <= last; ++i)
        ticks.push_back({static_cast<double>(i) * step, numberText(static_cast<double>(i) * step, decimals)});
    return ticks;
}

void roundOut(double& from, double& to, double least, int mostTicks)
{
    const double middle = (from + to) / 2;
    if (to - from < least) {
        from = middle - least / 2;
        to = middle + least / 2;
    }
    const double step = niceStep(from, to, mostTicks);
    from = std::floor(from / step + 1e-9) * step;
    to = std::ceil(to / step - 1e-9) * step;
}

} // namespace fleetrung::plot
