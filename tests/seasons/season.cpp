#include "tests/seasons/season.hpp"

#include <algorithm>
#include <cmath>

#include "engine/season/load.hpp"
#include "tests/seasons/body.hpp"

namespace fleetrung::seasons
{
namespace
{

using season::DecisionKind;
using season::Rung;
using std::chrono::days;

constexpr double plate = 2.5;           // kg
constexpr int testDays = 24;            // between speed tests
constexpr double firstLoadShare = 0.75; // of the maximum: what an athlete finds for effort 7

const season::SeasonData& data()
{
    return season::standardSeasonData();
}

double toPlates(double loadKg)
{
    return std::floor(loadKg / plate + 1e-9) * plate;
}

bool moves(const Decision& decision)
{
    return decision.kind == DecisionKind::Step || decision.kind == DecisionKind::StepBack;
}

class Player
{
public:
    explicit Player(std::uint64_t seed) : random_(seed ^ 0x5ea5011ULL), body_(played_.athlete, seed ^ 0xb0d7ULL)
    {
        played_.athlete = inventAthlete(seed);
    }

    Played play()
    {
        auto plan = season::planSeason(played_.athlete.setup);
        if (!plan) {
            played_.failure = describe(plan.error());
            return std::move(played_);
        }
        played_.first = *plan;
        states_ = season::startStates(*plan);
        for (CivilDate day = plan->setup.start; day <= plan->end && played_.failure.empty(); day += days(1)) {
            testSpeed(day);
            if (!season::isLiftingDay(*plan, day) || absenceOn(played_.athlete, day) != nullptr ||
                random_.chance(played_.athlete.missed))
                continue;
            playDay(day);
        }
        played_.last = states_;
        played_.log = log_;
        return std::move(played_);
    }

private:
    void testSpeed(CivilDate day)
    {
        const int since = daysBetween(played_.athlete.setup.start, day);
        if (since % testDays != 0 || absenceOn(played_.athlete, day) != nullptr)
            return;
        log_.tests.push_back({day, "flying 20 m, 30 m run-in", body_.flyingTime(since), {}});
    }

    season::Wellness wellnessOn(CivilDate day)
    {
        season::Wellness wellness;
        wellness.sleepHours = random_.chance(played_.athlete.poorNights) ? 4.0 : random_.uniform(6, 9);
        wellness.refused = random_.chance(played_.athlete.refuses);
        if (const auto* pain = painOn(played_.athlete, day)) {
            wellness.pain = pain->level;
            wellness.painRegion = pain->region;
            wellness.newHamstringPain = pain->region == "hamstring" && pain->level >= 4;
            wellness.limping = pain->level >= 7;
        }
        return wellness;
    }

    /// What the athlete makes of it: mostly the same; at times a step is not taken, or a light day is not kept.
    Decision liveWith(const Decision& decision)
    {
        auto lived = decision;
        if (moves(decision) && !random_.chance(played_.athlete.follows)) {
            lived.kind = DecisionKind::Hold;
            lived.to = lived.from;
        }
        return lived;
    }

    /// What was lifted on one rung says what may be lifted on another, by the ladder's ratios: as the phone does it.
    void carryLoad(LadderState& state, const std::string& from, CivilDate day) const
    {
        const auto& ladder = *findLadder(data().ladders, state.ladder);
        const int begin = *ladder.indexOf(from), end = *ladder.indexOf(state.rung());
        if (!state.workLoadKg)
            return;
        for (int i = begin + 1; i <= end; ++i)
            state.workLoadKg = season::firstLoadOn(ladder.rungs[static_cast<std::size_t>(i)], *state.workLoadKg, {}, {},
                                                   played_.athlete.setup.athlete, day, data().rules)
                                   .maximumKg;
        for (int i = begin; i > end; --i)
            *state.workLoadKg /= std::max(1.0, ladder.rungs[static_cast<std::size_t>(i)].loadRatio);
    }

    LadderState* stateOf(const std::string& ladder)
    {
        const auto found =
            std::find_if(states_.begin(), states_.end(), [&](const auto& state) { return state.ladder == ladder; });
        return found == states_.end() ? nullptr : &*found;
    }

    void playDay(CivilDate date)
    {
        Day day;
        day.date = date;
        day.before = states_;
        auto plan = season::replanSeason(played_.athlete.setup, states_, date);
        if (!plan) {
            played_.failure = dateText(date) + ": " + describe(plan.error());
            return;
        }
        day.plan = std::move(*plan);
        season::DayInput input{day.plan, states_, history_, log_, wellnessOn(date), date, exposures_};
        day.wellness = input.wellness;
        day.decisions = season::decideDay(input);
        exposures_.clear();
        for (const auto& decision : day.decisions) {
            day.lived.push_back(liveWith(decision));
            if (decision.asks && random_.chance(played_.athlete.exposes))
                exposures_.push_back(decision.ladder);
            noteTrueGain(day, decision.ladder);
        }
        day.session = season::planSession(day.plan, states_, day.lived, date, data(), log_);
        for (const auto& decision : day.lived)
            if (auto* state = stateOf(decision.ladder); state != nullptr) {
                const auto from = state->rung();
                *state = season::afterDecision(std::move(*state), decision);
                carryLoad(*state, from, date);
            }
        if (lastTrained_)
            body_.rest(daysBetween(*lastTrained_, date));
        for (const auto& lift : day.session.lifts)
            train(lift, day, date);
        if (!day.session.lifts.empty())
            lastTrained_ = date;
        played_.days.push_back(std::move(day));
    }

    void noteTrueGain(Day& day, const std::string& key)
    {
        const auto& stay = fresh_[key];
        if (stay.size() >= 2)
            day.trueGain[key] = (stay.front() - stay.back()) / noise_[key];
    }

    void train(const season::PlannedLift& lift, const Day& day, CivilDate date)
    {
        const auto& ladder = *findLadder(data().ladders, lift.ladder);
        const Rung& rung = *ladder.find(lift.rung);
        auto& state = *stateOf(lift.ladder);
        const auto decision = std::find_if(day.lived.begin(), day.lived.end(),
                                           [&](const Decision& d) { return d.ladder == lift.ladder; });
        const bool eased = decision != day.lived.end() && (decision->loadFactor < 1 || decision->setFactor < 1);
        const double work = workLoad(lift, ladder, rung);
        if (!lift.primer && lift.probe)
            probe(lift, ladder, rung, state, work, date);
        logWork(lift, rung, work, eased || lift.primer, date);
        if (work > 0 && !lift.primer && !(eased && state.workLoadKg))
            state.workLoadKg = work;
        body_.train(lift, work);
    }

    double workLoad(const season::PlannedLift& lift, const season::Ladder& ladder, const Rung& rung) const
    {
        if (rung.probeShare <= 0)
            return 0;
        if (!lift.work.empty() && lift.work.front().loadKg)
            return *lift.work.front().loadKg;
        return std::max(plate, toPlates(firstLoadShare * body_.maximumOn(ladder.key, rung.key)));
    }

    void probe(const season::PlannedLift& lift, const season::Ladder& ladder, const Rung& rung, LadderState& state,
               double work, CivilDate date)
    {
        double load = 0;
        if (rung.probeShare > 0)
            load = lift.probe->loadKg ? *lift.probe->loadKg : std::max(plate, toPlates(work * rung.probeShare / 0.8));
        const auto found = body_.probe(ladder, rung, date, load, state.probeLoadKg);
        history_.insert(history_.end(), found.begin(), found.end());
        if (load > 0 && !state.probeLoadKg)
            state.probeLoadKg = load;
        auto& stay = fresh_[ladder.key];
        auto& since = stayOf_[ladder.key];
        if (since != state.since()) {
            stay.clear();
            since = state.since();
        }
        if (found.empty() || !found.front().timeToPeak)
            return;
        stay.push_back(body_.freshTime(ladder, rung, load));
        noise_[ladder.key] = body_.sessionNoise(ladder, rung);
        for (const auto& evidence : found)
            if (evidence.estimatedMaximum)
                log_.maxima.push_back({date, ladder.key, rung.key, evidence.estimatedMaximum->value});
    }

    void logWork(const season::PlannedLift& lift, const Rung& rung, double work, bool light, CivilDate date)
    {
        if (lift.contacts > 0)
            log_.contacts.push_back({date, lift.contacts});
        if (work > 0 && !lift.work.empty()) {
            const int target = lift.work.front().repetitions;
            const int most = body_.mostRepetitions(lift.ladder, lift.rung, work);
            const int done = std::clamp(most - 1 - random_.below(3), std::max(1, target - 1), target + 2);
            log_.work.push_back({date, lift.ladder, rung.key, work, target, done,
                                 std::clamp(10.0 - (most - done), 4.0, 10.0), light, false});
        }
        if (lift.maintenance && !lift.maintenance->sets.empty() && lift.maintenance->sets.front().loadKg) {
            const auto& set = lift.maintenance->sets.front();
            log_.work.push_back({date,
                                 lift.ladder,
                                 lift.maintenance->rung,
                                 *set.loadKg,
                                 set.repetitions,
                                 set.repetitions,
                                 {},
                                 false,
                                 true});
        }
    }

    Played played_;
    Random random_;
    Body body_;
    std::vector<LadderState> states_;
    std::vector<season::SessionEvidence> history_;
    season::TrainingLog log_;
    std::vector<std::string> exposures_;
    std::optional<CivilDate> lastTrained_;
    std::map<std::string, std::vector<double>> fresh_; ///< true times of the stay's evidence
    std::map<std::string, CivilDate> stayOf_;
    std::map<std::string, double> noise_;
};

} // namespace

Played playSeason(std::uint64_t seed)
{
    return Player(seed).play();
}

} // namespace fleetrung::seasons
