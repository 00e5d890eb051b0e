#include "tests/accuracy/tally.hpp"

#include <algorithm>

namespace fleetrung::accuracy
{

void Errors::add(const Difference& difference)
{
    ++count;
    covered += difference.covered() ? 1 : 0;
    sum += difference.error;
    squares += difference.error * difference.error;
}

void Errors::add(const Errors& other)
{
    count += other.count;
    covered += other.covered;
    sum += other.sum;
    squares += other.squares;
}

void Flagged::add(bool truth, bool flag)
{
    rightly += truth && flag ? 1 : 0;
    wrongly += !truth && flag ? 1 : 0;
    overlooked += truth && !flag ? 1 : 0;
}

void Flagged::add(const Flagged& other)
{
    rightly += other.rightly;
    wrongly += other.wrongly;
    overlooked += other.overlooked;
}

void Live::add(const SetScore& score)
{
    announced += score.live.size();
    missed += score.liveMissed;
    for (const auto& rep : score.live) {
        longestDelay = std::max(longestDelay, rep.delay);
        for (std::size_t m = 0; m < metricCount; ++m) {
            compared[m] += rep.kept[m] ? 1 : 0;
            kept[m] += rep.kept[m].value_or(false) ? 1 : 0;
        }
    }
}

void Live::add(const Live& other)
{
    announced += other.announced;
    missed += other.missed;
    longestDelay = std::max(longestDelay, other.longestDelay);
    for (std::size_t m = 0; m < metricCount; ++m) {
        compared[m] += other.compared[m];
        kept[m] += other.kept[m];
    }
}

void Tally::add(const SetScore& score)
{
    ++sets;
    invented += score.invented.size();
    const auto withheld = [](const Judged& rep) {
        return !rep.found || reps::has(rep.flags, reps::Flag::Gap) || reps::has(rep.flags, reps::Flag::Clipped);
    };
    if (!score.refusal.empty())
        ++refusals[score.refusal];
    if (!score.refusal.empty() || std::all_of(score.repetitions.begin(), score.repetitions.end(), withheld))
        ++refusedSets;
    for (const auto& rep : score.repetitions) {
        ++repetitions;
        if (rep.refused) {
            ++refused;
            continue;
        }
        ++(rep.found ? found : missed);
        if (!rep.found)
            continue;
        for (std::size_t m = 0; m < metricCount; ++m)
            if (rep.difference[m])
                errors[m].add(*rep.difference[m]);
        if (rep.difference[timeToPeak])
            (rep.deadStop ? timeToPeakRest : timeToPeakMoving).add(*rep.difference[timeToPeak]);
        partial.add(rep.partial, rep.flaggedPartial);
        twoPeaked.add(rep.twoPeaked, rep.flaggedTwoPeaked);
    }
    live.add(score);
}

void Tally::add(const Tally& other)
{
    sets += other.sets;
    repetitions += other.repetitions;
    found += other.found;
    missed += other.missed;
    invented += other.invented;
    refused += other.refused;
    refusedSets += other.refusedSets;
    for (const auto& [message, count] : other.refusals)
        refusals[message] += count;
    for (std::size_t m = 0; m < metricCount; ++m)
        errors[m].add(other.errors[m]);
    timeToPeakRest.add(other.timeToPeakRest);
    timeToPeakMoving.add(other.timeToPeakMoving);
    partial.add(other.partial);
    twoPeaked.add(other.twoPeaked);
    live.add(other.live);
}

} // namespace fleetrung::accuracy
