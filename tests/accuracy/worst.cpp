#include <algorithm>
#include <iomanip>
#include <iostream>

#include "tests/accuracy/report.hpp"

namespace fleetrung::accuracy
{
namespace
{

struct Found {
    const SetScore* set;
    std::size_t index;
    double badness;
};

/// Of one metric its error; of all together the largest error in stated sigmas.
double badnessOf(const Judged& rep, std::string_view byMetric)
{
    double worst = 0;
    for (std::size_t m = 0; m < metricCount; ++m) {
        const auto& difference = rep.difference[m];
        if (difference && byMetric.empty())
            worst = std::max(worst, difference->sigmas());
        else if (difference && byMetric == allMetrics()[m].name)
            worst = std::abs(difference->error);
    }
    return worst;
}

/// Options that draw the same set again.
void printSituation(const Situation& situation)
{
    std::cout << "--set " << situation.seed << " --lift " << situation.lift->key << " --rate " << situation.rate
              << " --fault " << situation.fault->name;
}

void printErrors(const Judged& rep)
{
    for (std::size_t m = 0; m < metricCount; ++m)
        if (const auto& difference = rep.difference[m])
            std::cout << "  " << allMetrics()[m].name << ' ' << std::setprecision(3)
                      << difference->error * allMetrics()[m].scale << ' ' << allMetrics()[m].unit << " ("
                      << difference->sigmas() << ')';
}

} // namespace

void printWorst(const std::vector<SetScore>& scores, std::size_t count, std::string_view byMetric)
{
    std::cout << "\nMissed and invented\n";
    std::vector<Found> all;
    std::size_t shown = 0;
    for (const auto& score : scores) {
        for (std::size_t i = 0; i < score.repetitions.size(); ++i) {
            const auto& rep = score.repetitions[i];
            if (rep.found && !rep.refused)
                all.push_back({&score, i, badnessOf(rep, byMetric)});
            if (!rep.found && !rep.refused && score.situation.fault->quality != Class::C && shown++ < count) {
                printSituation(score.situation);
                std::cout << " repetition " << i << " of " << score.repetitions.size() << " missed"
                          << (rep.partial ? " (partial)" : "") << ' ' << score.refusal << '\n';
            }
        }
        for (const double peak : score.invented)
            if (shown++ < count) {
                printSituation(score.situation);
                std::cout << " invented at " << peak << " s\n";
            }
    }
    std::cout << "\nWorst repetitions by " << (byMetric.empty() ? "error in stated sigmas" : byMetric)
              << " (errors, sigmas in brackets)\n";
    std::stable_sort(all.begin(), all.end(), [](const Found& a, const Found& b) { return a.badness > b.badness; });
    for (std::size_t i = 0; i < std::min(count, all.size()); ++i) {
        printSituation(all[i].set->situation);
        std::cout << " repetition " << all[i].index << " of " << all[i].set->repetitions.size();
        printErrors(all[i].set->repetitions[all[i].index]);
        std::cout << '\n';
    }
}

} // namespace fleetrung::accuracy
