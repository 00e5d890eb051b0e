#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/motion/intake.hpp"

namespace fleetrung::motion
{
namespace
{

constexpr double latest = 2.0;          // s that a packet may be late
constexpr double patience = 0.5;        // s of samples within which a stream of late ones returns to its line
constexpr double patientPeriods = 32;   // and so many samples at least
constexpr std::size_t mostSteps = 5;    // a clock that steps more often is none
constexpr std::size_t enoughTaken = 16; // samples on taken times that settle the question
constexpr double shortConflict = 0.061; // s; shorter than this, equal times with other readings are no clock step

bool isIncreasing(const std::vector<Sample>& samples)
{
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (!(samples[i].time > samples[i - 1].time))
            return false;
    return true;
}

/// Median of the steps forward.
double usualPeriod(const std::vector<Sample>& samples)
{
    std::vector<double> steps;
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (const double step = samples[i].time - samples[i - 1].time; step > 0)
            steps.push_back(step);
    if (steps.empty())
        return 0;
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return *middle;
}

bool sameReadings(const Sample& a, const Sample& b)
{
    return a.specificForce == b.specificForce && a.angularRate == b.angularRate;
}

std::string countText(std::size_t count)
{
    return integerText(static_cast<std::int64_t>(count));
}

/// Receives samples one by one and keeps them in order.
class Sorter
{
public:
    Sorter(const std::vector<Sample>& received, const PlaceOf& placeOf)
        : received_(received), placeOf_(placeOf), period_(usualPeriod(received))
    {
        sorted_.reserve(received.size());
    }

    Expected<Ordered> run()
    {
        for (std::size_t i = 0; i < received_.size(); ++i)
            if (auto taken = take(i); !taken)
                return tl::unexpected(std::move(taken.error()));
        nameMended(Fault::Doubled, doubled_, " that came twice were dropped");
        nameMended(Fault::Late, late_, " that came late were put back in order");
        return Ordered{std::move(sorted_), std::move(findings_)};
    }

private:
    struct Mended {
        std::size_t count = 0;
        double first = 0, last = 0;

        void add(double time)
        {
            first = count == 0 ? time : first;
            last = time;
            ++count;
        }
    };

    /// Where samples behind the newest time fall.
    struct Return {
        std::size_t behind = 0; ///< samples until the stream is ahead again
        std::size_t free = 0;   ///< in holes
        std::size_t taken = 0;  ///< on times that have a sample with other readings
        std::size_t equal = 0;  ///< of these, on the very time
        bool returns = true;    ///< within the patience
    };

    [[nodiscard]] double newest() const { return sorted_.back().time; }
    [[nodiscard]] double timeOf(std::size_t i) const { return received_[i].time + shift_; }
    [[nodiscard]] auto placeFor(double time)
    {
        return std::lower_bound(sorted_.begin(), sorted_.end(), time,
                                [](const Sample& sample, double instant) { return sample.time < instant; });
    }

    Expected<void> take(std::size_t i)
    {
        Sample sample = received_[i];
        sample.time += shift_;
        if (!std::isfinite(sample.time))
            return fail(Code::InvalidInput, place(i), "the time is no number; remove the sample");
        if (sorted_.empty() || sample.time > newest()) {
            sorted_.push_back(sample);
            return {};
        }
        const auto spot = placeFor(sample.time);
        const bool equal = spot->time == sample.time;
        if (equal && sameReadings(*spot, sample)) {
            doubled_.add(sample.time);
            return {};
        }
        if (i >= lateUntil_ && hasStepped(i))
            return step(i);
        if (equal)
            return contradiction(i);
        late_.add(sample.time);
        sorted_.insert(spot, sample);
        return {};
    }

    Return lookAhead(std::size_t i)
    {
        Return ahead;
        const double limit = timeOf(i) + std::max(patience, patientPeriods * period_);
        for (std::size_t k = i; k < received_.size() && timeOf(k) <= newest(); ++k) {
            const double time = timeOf(k);
            if (time > limit || (ahead.taken >= enoughTaken && ahead.taken > 2 * ahead.free)) {
                ahead.returns = false;
                break;
            }
            ++ahead.behind;
            const auto after = placeFor(time);
            if (after->time == time && sameReadings(*after, received_[k]))
                continue;
            const bool near = after->time - time < 0.5 * period_ ||
                              (after != sorted_.begin() && time - std::prev(after)->time < 0.5 * period_);
            const bool beforeAll = after == sorted_.begin() && after->time - time > patience;
            ++(near || beforeAll ? ahead.taken : ahead.free);
            ahead.equal += after->time == time ? 1U : 0U;
        }
        return ahead;
    }

    /// True where the clock stepped back here for good; else the samples up to `lateUntil_` came late.
    bool hasStepped(std::size_t i)
    {
        const double behind = newest() - timeOf(i);
        if (behind > latest)
            return true;
        const auto ahead = lookAhead(i);
        // One stamp that lies beside its neighbour's jitters; equal ones of other readings contradict each other,
        // unless there are so many that only a step explains them.
        const bool jitter = ahead.behind == 1 && ahead.equal == 0;
        const bool conflict = ahead.equal > 0 && ahead.equal == ahead.taken && ahead.returns && behind < shortConflict;
        const bool stepped = !jitter && !conflict && (!ahead.returns || ahead.taken > ahead.free);
        if (!stepped)
            lateUntil_ = i + ahead.behind;
        return stepped;
    }

    Expected<void> step(std::size_t i)
    {
        if (++steps_ > mostSteps)
            return fail(Code::InvalidInput, place(i),
                        "time runs back again and again; sort the samples by time, or mend the sensor's clock");
        const double back = newest() + period_ - timeOf(i);
        findings_.push_back({Fault::ClockStep, Quality::B, "clock",
                             "the clock stepped back by " + fixedText(back, 3) + " s at " + fixedText(newest(), 3) +
                                 " s; later times are shifted so that time goes on",
                             newest(), newest() + period_});
        shift_ += back;
        Sample sample = received_[i];
        sample.time = newest() + period_;
        sorted_.push_back(sample);
        return {};
    }

    [[nodiscard]] tl::unexpected<Error> contradiction(std::size_t i) const
    {
        return fail(Code::InvalidInput, place(i),
                    "an earlier sample has this very time and other readings; keep the right one of the two");
    }

    [[nodiscard]] std::string place(std::size_t i) const { return placeOf_ ? placeOf_(i) : "sample " + countText(i); }

    void nameMended(Fault fault, const Mended& mended, std::string_view what)
    {
        if (mended.count > 0)
            findings_.push_back(
                {fault, Quality::A, "clock",
                 countText(mended.count) + (mended.count == 1 ? " sample" : " samples") + std::string(what),
                 mended.first, mended.last});
    }

    const std::vector<Sample>& received_;
    const PlaceOf& placeOf_;
    double period_;
    std::vector<Sample> sorted_;
    std::vector<Finding> findings_;
    Mended doubled_, late_;
    double shift_ = 0;
    std::size_t lateUntil_ = 0;
    std::size_t steps_ = 0;
};

} // namespace

Expected<Ordered> putInOrder(std::vector<Sample> received, const PlaceOf& placeOf)
{
    if (isIncreasing(received))
        return Ordered{std::move(received), {}};
    return Sorter(received, placeOf).run();
}

} // namespace fleetrung::motion
