#include "demo/squad/season_player.hpp"

#include <algorithm>
#include <cmath>

#include "demo/squad/gym.hpp"
#include "demo/squad/track.hpp"
#include "engine/season/session_plan.hpp"

namespace fleetrung::squad
{
namespace
{

constexpr int testEvery = 21; // days
constexpr int saturday = 6;

class SeasonPlayer
{
public:
    SeasonPlayer(logbook::Logbook& logbook, const Performer& performer)
        : diary{logbook, performer, must(logbook.addAthlete(performer.athlete)), {}, Body(performer, performer.seed),
                {}}
    {
        diary.season = must(logbook.addSeason(diary.athlete, performer.setup));
        plan = must(logbook.plan(diary.season, performer.setup.start));
    }

    void play(const std::function<void(CivilDate)>& progress);
    [[nodiscard]] Played played();

private:
    void live(CivilDate day);
    void trainingDay(CivilDate day);
    void wakeUp(CivilDate day);
    void decide(CivilDate day);
    void answer(const season::Decision& decision);
    [[nodiscard]] const season::Competition* competitionOn(CivilDate day) const;
    [[nodiscard]] const Away* awayOn(CivilDate day) const;
    [[nodiscard]] bool isTestDay(CivilDate day) const;

    Diary diary;
    season::SeasonPlan plan;
    bool saidNoOnce = false;
    std::vector<std::string> exposure; // ladders to step on without evidence of a gain
};

const season::Competition* SeasonPlayer::competitionOn(CivilDate day) const
{
    const auto& all = diary.who.setup.competitions;
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const season::Competition& each) { return each.date == day; });
    return found == all.end() ? nullptr : &*found;
}

const Away* SeasonPlayer::awayOn(CivilDate day) const
{
    const auto& all = diary.who.away;
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Away& each) { return each.from <= day && day <= each.to; });
    return found == all.end() ? nullptr : &*found;
}

/// A Saturday every three weeks, unless a competition is near.
bool SeasonPlayer::isTestDay(CivilDate day) const
{
    const int days = daysBetween(diary.who.setup.start, day);
    const bool due = isoWeekday(day) == saturday && (days / 7) % (testEvery / 7) == 1;
    const auto& all = diary.who.setup.competitions;
    return due && std::none_of(all.begin(), all.end(), [&](const season::Competition& each) {
               return std::abs(daysBetween(day, each.date)) < 3;
           });
}

void SeasonPlayer::wakeUp(CivilDate day)
{
    store::Wellness entry;
    entry.athlete = diary.athlete;
    entry.asked = Diary::at(day, 15 * 60 + 30);
    entry.sleepHours = std::round(2 * diary.body.sleepHours()) / 2;
    entry.soreness = std::clamp(std::round(2 + 60 * (1 - diary.body.form())), 0.0, 7.0);
    entry.pain = 0;
    for (const auto& complaint : diary.who.complaints) {
        if (complaint.day == day) {
            entry.pain = complaint.pain;
            entry.painWhere = complaint.where;
        }
    }
    if (isoWeekday(day) <= 2) { // the scales stand in the gym on the week's first training day
        const double mass = diary.who.athlete.bodyMassKg.value_or(70);
        entry.bodyMassKg = std::round(10 * (mass + diary.body.random.normal(0, 0.3))) / 10;
    }
    static_cast<void>(must(diary.logbook.addWellness(std::move(entry))));
}

/// Decisions are followed, but for the first ease: that one is answered with what was done instead.
void SeasonPlayer::answer(const season::Decision& decision)
{
    ++diary.tally.decisions[std::string(season::decisionName(decision.kind))];
    if (decision.kind == season::DecisionKind::Hold) {
        return;
    }
    if (decision.kind == season::DecisionKind::Ease && decision.rule == "ease" && !saidNoOnce) {
        saidNoOnce = true;
        must(diary.logbook.answerDecision(decision.id, store::Answer::Changed, "the load as planned",
                                          "the warm-up felt quick"));
        return;
    }
    must(diary.logbook.answerDecision(decision.id, store::Answer::Followed));
    if (decision.from != decision.to) {
        diary.tally.steps.push_back(dateText(decision.day) + "  " + decision.ladder + ": " + decision.from + " -> " +
                                    decision.to + " (" + std::string(season::ruleTitle(decision.rule)) + ")");
    }
}

/// Where no response was told the coach chooses, by the next session, to step by exposure.
void SeasonPlayer::decide(CivilDate day)
{
    for (const auto& decision : must(diary.logbook.decide(diary.season, Diary::at(day, 15 * 60 + 45), exposure))) {
        if (decision.asks) {
            exposure.push_back(decision.ladder);
        } else if (decision.from != decision.to) {
            std::erase(exposure, decision.ladder);
        }
        answer(decision);
    }
}

void SeasonPlayer::trainingDay(CivilDate day)
{
    wakeUp(day);
    decide(day);
    const auto view = must(diary.logbook.day(diary.season, day));
    if (view.session.sprintDay) {
        sprintSession(diary, day);
    }
    if (!view.session.lifts.empty()) {
        liftSession(diary, view.session, day);
    }
}

void SeasonPlayer::live(CivilDate day)
{
    diary.body.wake(day);
    const bool lifts = season::isLiftingDay(plan, day);
    if (const auto* away = awayOn(day)) {
        if (lifts) {
            store::LostDay lost;
            lost.athlete = diary.athlete;
            lost.day = day;
            lost.why = away->why;
            static_cast<void>(must(diary.logbook.addLostDay(std::move(lost))));
            ++diary.tally.daysLost;
        }
        return;
    }
    if (const auto* competition = competitionOn(day)) {
        compete(diary, *competition);
    } else if (isTestDay(day)) {
        testDay(diary, day);
    }
    if (lifts && competitionOn(day) == nullptr) {
        trainingDay(day);
    }
}

void SeasonPlayer::play(const std::function<void(CivilDate)>& progress)
{
    for (CivilDate day = diary.who.setup.start; day <= diary.who.playedTo; day += std::chrono::days{1}) {
        must(diary.logbook.inTransaction([&]() -> Expected<void> {
            live(day);
            return {};
        }));
        progress(day);
    }
}

Played SeasonPlayer::played()
{
    Played all{diary.tally, {}, {}};
    const auto day = diary.who.playedTo + std::chrono::days{1};
    diary.body.wake(day);
    const auto session = must(diary.logbook.day(diary.season, day)).session;
    const auto bar = std::find_if(session.lifts.begin(), session.lifts.end(), [](const season::PlannedLift& lift) {
        return lift.metric != season::Metric::ContactTime && !lift.work.empty() && lift.work.front().loadKg;
    });
    if (bar == session.lifts.end()) {
        return all;
    }
    const auto& ladder = *season::ladderOf(diary.who.setup, season::standardSeasonData(), bar->ladder);
    const auto& set = bar->work.front();
    const auto motion = diary.body.set(ladder, *ladder.find(bar->rung), *set.loadKg, set.repetitions, false);
    simulator::SensorPlan sensor;
    sensor.part = "C";
    sensor.randomMounting = true;
    const auto simulated = must(simulator::simulateSet(motion, sensor, diary.body.random.seed()));
    all.nextLift = bar->lift;
    all.nextRecording = simulator::recordingCsv(simulated.recording, bar->lift, *set.loadKg);
    return all;
}

} // namespace

Played playSeason(logbook::Logbook& logbook, const Performer& performer, const std::function<void(CivilDate)>& progress)
{
    SeasonPlayer player(logbook, performer);
    player.play(progress);
    return player.played();
}

} // namespace fleetrung::squad
