#include <cmath>
#include <map>
#include <tuple>

#include "engine/base/numbers.hpp"
#include "mobile/logbook/day_input.hpp"
#include "mobile/logbook/track_log.hpp"

namespace fleetrung::logbook
{
namespace
{

constexpr double longestTest = 60; // m: beyond it a run tests endurance of speed too; starting value of this project

season::WorkDone workOf(const SetView& set, CivilDate day, const LadderWalk& walk)
{
    season::WorkDone done;
    done.day = day;
    done.ladder = set.row.ladder;
    done.rung = set.row.rung;
    done.loadKg = set.row.loadKg;
    done.targetRepetitions = set.row.repetitionsPlanned;
    done.doneRepetitions = set.done;
    done.effort = set.row.effort;
    done.maintenance = set.row.kind == store::SetKind::Maintenance;
    done.eased = walk.isEased(done.ladder, day);
    return done;
}

/// Of sets at one load the one that beat its target least speaks: a target is beaten where every set beat it.
bool speaksBefore(const season::WorkDone& one, const season::WorkDone& other)
{
    const auto rank = [](const season::WorkDone& done) {
        return std::tuple(-done.loadKg, done.doneRepetitions - done.targetRepetitions, -done.effort.value_or(0));
    };
    return rank(one) < rank(other);
}

void addWork(std::vector<season::WorkDone>& into, const SessionView& session, const LadderWalk& walk)
{
    std::map<std::tuple<std::string, std::string, bool>, season::WorkDone> heaviest;
    for (const auto& set : session.sets) {
        if (set.row.ladder.empty() ||
            (set.row.kind != store::SetKind::Work && set.row.kind != store::SetKind::Maintenance))
            continue;
        auto done = workOf(set, session.row.begun.trainingDay, walk);
        const auto [place, first] = heaviest.try_emplace({done.ladder, done.rung, done.maintenance}, done);
        if (!first && speaksBefore(done, place->second))
            place->second = std::move(done);
    }
    for (auto& [place, done] : heaviest)
        into.push_back(std::move(done));
}

bool isDropJump(const store::LiftSet& set, const season::SeasonData& data)
{
    const auto* ladder = season::findLadder(data.ladders, set.ladder);
    const auto* rung = ladder == nullptr ? nullptr : ladder->find(set.rung);
    return rung != nullptr && rung->metric == season::Metric::ContactTime;
}

std::vector<season::KnownMaximum> maximaOf(const std::vector<SessionEvidence>& evidence)
{
    std::vector<season::KnownMaximum> found;
    for (const auto& [session, id] : evidence)
        if (session.estimatedMaximum)
            found.push_back({session.day, session.ladder, session.rung, session.estimatedMaximum->value});
    return found;
}

/// Runs are compared only where these words are the same; nothing for a run that is no test.
std::optional<std::string> conditionsOf(const store::Sprint& sprint, const std::map<Identifier, std::string>& kinds)
{
    const bool flying = sprint.start == "flying";
    const bool tested = sprint.session && kinds.contains(*sprint.session) && kinds.at(*sprint.session) == "test";
    if (sprint.competition || sprint.distance > longestTest || !(flying || tested))
        return std::nullopt;
    std::string text =
        (sprint.start.empty() ? "start unknown" : sprint.start) + " " + shortestText(sprint.distance) + " m";
    if (flying)
        text += ", run-in " + shortestText(sprint.runIn) + " m";
    for (const auto* word : {&sprint.timing, &sprint.surface, &sprint.shoes})
        text += ", " + (word->empty() ? std::string("unknown") : *word);
    return text;
}

std::vector<season::SpeedTest> testsOf(const SeasonHistory& history)
{
    std::map<Identifier, std::string> kinds;
    for (const auto& session : history.training)
        kinds[session.row.id] = session.row.kind;
    std::map<std::pair<CivilDate, std::string>, season::SpeedTest> best;
    for (const auto& sprint : history.sprints) {
        const auto conditions = conditionsOf(sprint, kinds);
        if (!conditions)
            continue;
        const season::SpeedTest test{sprint.run.trainingDay, *conditions, sprint.time, sprint.windMps};
        const auto [place, first] = best.try_emplace({test.day, test.conditions}, test);
        if (!first && test.seconds < place->second.seconds)
            place->second = test;
    }
    std::vector<season::SpeedTest> found;
    for (auto& [place, test] : best)
        found.push_back(std::move(test));
    return found;
}

} // namespace

season::TrainingLog trainingLogOf(const LadderWalk& walk, const SeasonHistory& history,
                                  const std::vector<SessionEvidence>& evidence, CivilDate before)
{
    season::TrainingLog log;
    for (const auto& session : history.training)
        addWork(log.work, session, walk);
    log.contacts = dropJumpContacts(history.training, history.jumps,
                                    [&](const store::LiftSet& set) { return isDropJump(set, walk.data()); });
    log.maxima = maximaOf(evidence);
    log.tests = testsOf(history);
    const auto later = [before](const auto& entry) { return entry.day >= before; };
    std::erase_if(log.work, later);
    std::erase_if(log.contacts, later);
    std::erase_if(log.maxima, later);
    std::erase_if(log.tests, later);
    return log;
}

} // namespace fleetrung::logbook
