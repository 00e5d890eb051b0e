#include "tests/accuracy/limits.hpp"

#include <iostream>

#include "tests/accuracy/report.hpp"

namespace fleetrung::accuracy
{
namespace
{

class Judge
{
public:
    void atMost(std::string_view what, double rate, double value, double limit)
    {
        if (!(value <= limit))
            breach(what, rate, value, "at most", limit);
    }
    void atLeast(std::string_view what, double rate, double value, double limit)
    {
        if (!(value >= limit))
            breach(what, rate, value, "at least", limit);
    }
    [[nodiscard]] bool content() const { return content_; }

private:
    void breach(std::string_view what, double rate, double value, std::string_view bound, double limit)
    {
        content_ = false;
        std::cout << "LIMIT: " << what << " at " << rate << " Hz is " << value << ", allowed " << bound << ' ' << limit
                  << '\n';
    }
    bool content_ = true;
};

void judgeAccuracy(const Tally& tally, const Limits& limits, Judge& judge)
{
    const auto& errors = tally.errors;
    judge.atMost("mean velocity rms [m/s]", limits.rate, errors[meanVelocity].rms(), limits.meanVelocity);
    judge.atMost("peak velocity rms [m/s]", limits.rate, errors[peakVelocity].rms(), limits.peakVelocity);
    judge.atMost("TPV rms after a counter-movement [s]", limits.rate, tally.timeToPeakMoving.rms(),
                 limits.timeToPeakMoving);
    judge.atMost("TPV rms from a dead stop [s]", limits.rate, tally.timeToPeakRest.rms(), limits.timeToPeakRest);
    judge.atMost("ROM rms [m]", limits.rate, errors[range].rms(), limits.range);
    judge.atMost("TPV bias after a counter-movement [s]", limits.rate, std::abs(tally.timeToPeakMoving.bias()),
                 limits.timeToPeakBias);
}

double leastCoverageOf(const Fault& fault)
{
    if (fault.name == "near-maximum")
        return leastCoverageNearMaximum;
    return fault.quality == Class::A ? leastCoverageA : leastCoverageB;
}

void judgeFault(const Fault& fault, double rate, const Tally& tally, Judge& judge)
{
    const std::string name(fault.name);
    if (fault.quality == Class::C) {
        judge.atLeast(name + ": share of sets refused or flagged", rate,
                      static_cast<double>(tally.refusedSets) / static_cast<double>(tally.sets), leastRefused);
        return;
    }
    if (fault.quality == Class::A) {
        const auto all = static_cast<double>(tally.repetitions);
        judge.atMost(name + ": share of repetitions missed", rate, static_cast<double>(tally.missed) / all, mostMissed);
        judge.atMost(name + ": share of repetitions invented", rate, static_cast<double>(tally.invented) / all,
                     mostInvented);
        judge.atMost(name + ": repetitions refused", rate, static_cast<double>(tally.refused), 0);
    }
    for (std::size_t m = 0; m < metricCount; ++m)
        judge.atLeast(name + ": coverage of " + std::string(allMetrics()[m].name), rate, tally.errors[m].coverage(),
                      leastCoverageOf(fault));
}

} // namespace

bool keepsLimits(const std::vector<Row>& rows)
{
    Judge judge;
    for (const auto& fault : allFaults())
        for (const double rate : fault.rates) {
            Tally tally;
            for (const auto& row : rows)
                if (row.fault == &fault && row.rate == rate)
                    tally.add(row.tally);
            if (tally.sets == 0)
                continue;
            judgeFault(fault, rate, tally, judge);
            for (const auto& limits : classA)
                if (fault.quality == Class::A && limits.rate == rate)
                    judgeAccuracy(tally, fault.name == "near-maximum" ? nearMaximum : limits, judge);
        }
    return judge.content();
}

} // namespace fleetrung::accuracy
