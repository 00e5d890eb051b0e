// Invented seasons: the bar gets quicker within each rung by adaptation and by leaps where the range gets shorter, the
// sprint gets faster towards summer, and both have better and worse weeks. Whether the weeks of one tell of the weeks
// of the other is what the season is asked for.
#pragma once

#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "engine/transfer/transfer.hpp"

namespace fleetrung::transfer::simulated
{

struct Recipe {
    int weeksFrom = 20, weeksTo = 44;
    double weeklyTests = 0.8;          ///< share of seasons with a test every week; the others every third
    double barForm = 0.04;             ///< share of TPV that weeks differ by: half a typical error
    double sprintForm = 0.008;         ///< share of the time
    double following = 0;              ///< share of the sprint's form that follows the bar's, 0 ... 1
    int lagWeeks = 2;                  ///< how much later
    double holdFrom = 0, holdTo = 0.7; ///< how much of a week's form is left a week later, drawn evenly
    double errors = 1;                 ///< times the typical errors of the season rules
    double adaptingFrom = 0.05;        ///< least share of TPV gained within a rung, to 0.3
    double bendFrom = -1.5;            ///< of the season's trend, to 1.5: it comes early
};

struct Season {
    std::vector<BarResult> bar;
    std::vector<SprintResult> sprints;
};

class Maker
{
public:
    Maker(const Recipe& recipe, unsigned seed) : recipe_(recipe), draw_(seed) {}

    Season make()
    {
        weeks_ = whole(recipe_.weeksFrom, recipe_.weeksTo);
        barForm_ = form(weeks_ + recipe_.lagWeeks);
        sprintForm_ = form(weeks_);
        for (int week = 0; week < weeks_; ++week) {
            const auto at = static_cast<std::size_t>(week);
            // The sprint's week follows the bar's of some weeks before; before the first there was form, too.
            sprintForm_[at] = recipe_.following * barForm_[at] +
                              std::sqrt(1 - recipe_.following * recipe_.following) * sprintForm_[at];
        }
        barForm_.erase(barForm_.begin(), barForm_.begin() + recipe_.lagWeeks);
        away_.clear();
        for (int week = 0; week < weeks_; ++week)
            away_.push_back(chance(0.08));
        Season season;
        const int ladders = whole(1, 2);
        for (int ladder = 0; ladder < ladders; ++ladder)
            addBar(season, ladder);
        addSprints(season);
        return season;
    }

private:
    double even(double from, double to) { return from + (to - from) * std::uniform_real_distribution<>()(draw_); }
    double normal() { return std::normal_distribution<>()(draw_); }
    bool chance(double share) { return even(0, 1) < share; }
    int whole(int from, int to) { return std::uniform_int_distribution<>(from, to)(draw_); }

    /// Deviation 1, each week keeping a part of the last.
    std::vector<double> form(int weeks)
    {
        const double held = even(recipe_.holdFrom, recipe_.holdTo);
        std::vector<double> all{normal()};
        while (static_cast<int>(all.size()) < weeks)
            all.push_back(held * all.back() + std::sqrt(1 - held * held) * normal());
        return all;
    }

    void addBar(Season& season, int ladder)
    {
        constexpr int rungs = 4;
        double level = even(0.35, 0.5);
        int from = 0;
        const int sessions = whole(1, 3);
        for (int rung = 0; rung < rungs; ++rung) {
            const int to = rung == rungs - 1 ? weeks_ : (rung + 1) * weeks_ / rungs + whole(-2, 2);
            const double gain = even(recipe_.adaptingFrom, 0.3), settling = even(1.5, 5);
            for (int week = from; week < to; ++week) {
                if (away_[static_cast<std::size_t>(week)])
                    continue;
                for (int session = 0; session < sessions; ++session) {
                    const int day = 2 * session + ladder % 2;
                    const double since = week - from + day / 7.0;
                    const double adapted = 1 - gain * (1 - std::exp(-since / settling));
                    const double share = 1 - recipe_.barForm * barForm_[static_cast<std::size_t>(week)] +
                                         recipe_.errors * barError * normal();
                    season.bar.push_back({first + std::chrono::days{7 * week + day}, "ladder " + std::to_string(ladder),
                                          "rung " + std::to_string(rung), level * adapted * share, 100.0, 0.08});
                }
            }
            level *= (1 - gain) * even(0.75, 0.9);
            from = to;
        }
    }

    void addSprints(Season& season)
    {
        const int every = chance(recipe_.weeklyTests) ? 1 : 3;
        const double gain = even(0.01, 0.06), bend = even(recipe_.bendFrom, 1.5);
        const int indoorsUntil = chance(0.3) ? weeks_ / 3 : 0; // then another surface, another time
        for (int week = whole(0, every - 1); week < weeks_; week += every) {
            if (away_[static_cast<std::size_t>(week)] || chance(0.08))
                continue;
            const double along = static_cast<double>(week) / weeks_;
            const double trend = gain * (along + bend * along * (1 - along));
            const bool indoors = week < indoorsUntil;
            const double seconds =
                (indoors ? 2.9 : 2.8) * (1 - trend - recipe_.sprintForm * sprintForm_[static_cast<std::size_t>(week)]) +
                recipe_.errors * sprintError * normal();
            season.sprints.push_back({first + std::chrono::days{7 * week + 5},
                                      indoors ? "flying 30 m, hall" : "flying 30 m, track", seconds});
        }
    }

    static constexpr double barError = 0.08;    // typical error of TPV, season rules
    static constexpr double sprintError = 0.02; // s, season rules
    static constexpr CivilDate first = std::chrono::sys_days{std::chrono::year{2025} / 11 / 3};

    Recipe recipe_;
    std::mt19937 draw_;
    int weeks_ = 0;
    std::vector<double> barForm_, sprintForm_;
    std::vector<bool> away_;
};

inline Season season(const Recipe& recipe, unsigned seed)
{
    return Maker(recipe, seed).make();
}

} // namespace fleetrung::transfer::simulated
