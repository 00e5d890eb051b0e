#include "engine/statistics/linear_fit.hpp"

#include <cmath>

#include "engine/statistics/robust.hpp"

namespace fleetrung::statistics
{

Expected<LinearFit> fitLine(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size() || x.size() < 2)
        return fail(Code::InvalidInput, "", "a line needs at least two points, each with both numbers");
    const double meanX = mean(x), meanY = mean(y);
    double sumXX = 0, sumXY = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        sumXX += (x[i] - meanX) * (x[i] - meanX); // centred sums keep the digits that raw sums of squares lose
        sumXY += (x[i] - meanX) * (y[i] - meanY);
    }
    if (!(sumXX > 0))
        return fail(Code::InvalidInput, "",
                    "a line needs points at different places; all of these stand at the same one");

    LinearFit fit;
    fit.meanX = meanX;
    fit.count = static_cast<int>(x.size());
    fit.slope = sumXY / sumXX;
    fit.intercept = meanY - fit.slope * meanX;
    if (fit.count == 2)
        return fit;
    double residuals = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double residual = (y[i] - meanY) - fit.slope * (x[i] - meanX);
        residuals += residual * residual;
    }
    fit.residualDeviation = std::sqrt(residuals / (fit.count - 2));
    fit.slopeError = fit.residualDeviation / std::sqrt(sumXX);
    fit.interceptError = fit.residualDeviation * std::sqrt(1.0 / fit.count + meanX * meanX / sumXX);
    return fit;
}

} // namespace fleetrung::statistics
