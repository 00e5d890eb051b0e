// Who of the squad lifts today, and what: from few rows, whatever the length of the seasons behind.
#include <map>
#include <set>

#include "engine/season/load.hpp"
#include "mobile/logbook/day_input.hpp"
#include "mobile/logbook/decision_record.hpp"
#include "mobile/logbook/facts.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/training.hpp"
#include "mobile/logbook/warm_up.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr std::size_t countedDays = 2; // work days of a ladder whose repetitions the next load asks for

/// One athlete's share of the squad's rows.
struct Share {
    std::vector<store::DecisionOutline> decisions;
    std::vector<DecisionRecord> today; ///< one a ladder
    std::vector<store::SetLifted> sets;
    std::vector<store::Jump> jumps;
    std::vector<store::Document> checks;
};

SetView viewOf(const store::SetLifted& set)
{
    SetView view;
    view.row.id = set.set;
    view.row.session = set.session;
    view.row.ladder = set.ladder;
    view.row.rung = set.rung;
    view.row.kind = set.kind;
    view.row.loadKg = set.loadKg;
    view.row.repetitionsPlanned = set.repetitionsPlanned;
    view.row.effort = set.effort;
    view.done = set.repetitionsDone.value_or(set.repetitionsPlanned);
    return view;
}

std::vector<SessionView> sessionsOf(const std::vector<store::SetLifted>& sets)
{
    std::vector<SessionView> sessions;
    for (const auto& set : sets) {
        if (sessions.empty() || sessions.back().row.id != set.session) {
            auto& session = sessions.emplace_back();
            session.row.id = set.session;
            session.row.begun.trainingDay = set.day;
        }
        sessions.back().sets.push_back(viewOf(set));
    }
    return sessions;
}

class DueMaker
{
public:
    DueMaker(const Logbook& logbook, CivilDate today) : logbook_(logbook), today_(today) {}

    /// Nothing where the athlete has no lifts today.
    Expected<std::optional<season::DueAthlete>> make(const store::Athlete& athlete, const store::Season& row,
                                                     Share share) const
    {
        auto record = seasonRecord(row, athlete);
        if (!record)
            return failure(record);
        const auto& days = record->setup.trainingDays;
        if (std::ranges::find(days, isoWeekday(today_)) == days.end())
            return std::nullopt;
        auto walk = LadderWalk::of({std::move(*record), std::move(share.decisions)});
        if (!walk)
            return failure(walk);
        if (auto done = addOlderWork(walk->before(today_), row, share.sets); !done)
            return failure(done);
        if (auto done = countRepetitions(share.sets); !done)
            return failure(done);
        const SeasonHistory history{sessionsOf(share.sets), std::move(share.jumps), {}};
        for (const auto& session : history.training)
            for (const auto& set : session.sets)
                walk->addLoad(set.row, session.row.begun.trainingDay);

        const auto before = walk->before(today_);
        const auto followed = followedOn(share.today, today_, walk->data());
        auto after = before;
        for (auto& state : after)
            for (const auto& decision : followed)
                if (decision.ladder == state.ladder)
                    state = season::afterDecision(std::move(state), decision);
        const auto plan = season::replanSeason(walk->setup(), after, today_, walk->data());
        if (!plan)
            return failure(plan);
        auto log = trainingLogOf(*walk, history, {}, today_);
        if (auto done = addMaxima(after, *walk, log.maxima); !done)
            return failure(done);
        const auto adjustments = adjustmentsOf(share.checks);
        if (!adjustments)
            return failure(adjustments);
        auto session = season::planSession(*plan, before, followed, today_, walk->data(), log);
        for (const auto& adjustment : *adjustments)
            session = season::adjusted(std::move(session), adjustment);
        if (session.lifts.empty())
            return std::nullopt;
        return season::DueAthlete{athlete.id, athlete.name, athlete.group, std::move(session)};
    }

private:
    /// Of rungs that were left, and of ladders not lifted lately, the last time they were: what is carried on rests on
    /// it, and maintenance.
    Expected<void> addOlderWork(const std::vector<season::LadderState>& states, const store::Season& season,
                                std::vector<store::SetLifted>& sets) const
    {
        std::set<std::pair<std::string, std::string>> known;
        for (const auto& set : sets)
            if (set.kind != store::SetKind::Probe)
                known.insert({set.ladder, set.rung});
        std::vector<store::SetLifted> older;
        for (const auto& state : states)
            for (const auto& stay : state.path) {
                if (!known.insert({state.ladder, stay.rung}).second)
                    continue;
                const auto last =
                    logbook_.rows().lastWork(season.athlete, season.start, today_, state.ladder, stay.rung);
                if (!last)
                    return failure(last);
                if (*last)
                    older.push_back(**last);
            }
        std::ranges::stable_sort(older, {}, &store::SetLifted::day);
        sets.insert(sets.begin(), older.begin(), older.end());
        return {};
    }

    /// Sets with a sensor were not typed: only the last ones are asked for.
    Expected<void> countRepetitions(std::vector<store::SetLifted>& sets) const
    {
        std::map<std::string, std::set<CivilDate>> lastDays;
        for (auto set = sets.rbegin(); set != sets.rend(); ++set) {
            if (set->kind == store::SetKind::Probe)
                continue;
            auto& days = lastDays[set->ladder];
            if (!days.contains(set->day) && days.size() == countedDays)
                continue;
            days.insert(set->day);
            const auto counted = logbook_.rows().countedRepetitions(set->set);
            if (!counted)
                return failure(counted);
            if (set->repetitionsDone && *counted)
                continue; // typed, and nothing was said of it since
            set->repetitionsDone = *counted;
            if (!*counted) {
                const auto whole = logbook_.set(set->set);
                if (!whole)
                    return failure(whole);
                set->repetitionsDone = whole->done;
            }
        }
        return {};
    }

    /// Short ranges are held against the longest one's maximum, as its last session tells it.
    Expected<void> addMaxima(const std::vector<season::LadderState>& states, const LadderWalk& walk,
                             std::vector<season::KnownMaximum>& maxima) const
    {
        const auto& row = walk.record().row;
        for (const auto& state : states) {
            const auto* ladder = season::findLadder(walk.data().ladders, state.ladder);
            const auto* rung = ladder == nullptr ? nullptr : ladder->find(state.rung());
            if (rung == nullptr || !season::shortRangeLimit(*rung, 1, walk.setup().athlete, today_, walk.data().rules))
                continue;
            const auto& longest = ladder->rungs.front().key;
            const auto last = logbook_.rows().lastWork(row.athlete, row.start, today_, ladder->key, longest);
            if (!last)
                return failure(last);
            if (!*last)
                continue;
            const auto session = logbook_.session((*last)->session);
            if (!session)
                return failure(session);
            if (const auto maximum = maximumOf(*session, ladder->key, longest))
                maxima.push_back({(*last)->day, ladder->key, longest, maximum->value});
        }
        return {};
    }

    const Logbook& logbook_;
    CivilDate today_;
};

} // namespace

Expected<std::vector<season::DueAthlete>> Logbook::dueToday(CivilDate today) const
{
    auto rows = store_->squadRows(today);
    if (!rows)
        return failure(rows);
    std::map<Identifier, Share> shares; // by athlete
    std::map<Identifier, Identifier> athleteOf;
    for (const auto& season : rows->seasons)
        athleteOf[season.id] = season.athlete;
    for (auto& row : rows->decisions)
        shares[athleteOf.at(row.season)].decisions.push_back(std::move(row));
    for (const auto& row : lastOfEachDay(std::move(rows->today))) {
        auto record = recordOf(row);
        if (!record)
            return failure(record);
        shares[athleteOf.at(row.season)].today.push_back(std::move(*record));
    }
    for (auto& row : rows->sets)
        shares[row.athlete].sets.push_back(std::move(row));
    for (auto& row : rows->jumps)
        shares[row.athlete].jumps.push_back(std::move(row));
    for (auto& row : rows->checks)
        shares[*row.athlete].checks.push_back(std::move(row));

    std::vector<season::DueAthlete> due;
    const DueMaker maker(*this, today);
    for (std::size_t i = 0; i < rows->athletes.size(); ++i) {
        const auto& athlete = rows->athletes[i];
        auto made = maker.make(athlete, rows->seasons[i], std::move(shares[athlete.id]));
        if (!made)
            return failure(made);
        if (*made)
            due.push_back(std::move(**made));
    }
    return due;
}

} // namespace fleetrung::logbook
