#include "mobile/logbook/report_parts.hpp"

#include <map>

namespace fleetrung::logbook
{
namespace
{

using std::chrono::days;

report::Measurement measurement(const std::optional<season::Measured>& measured)
{
    if (!measured)
        return {};
    return {measured->value, measured->uncertainty};
}

report::EvidencePoint pointOf(const SessionEvidence& evidence, std::size_t rung, season::Metric metric)
{
    report::EvidencePoint point;
    point.session = evidence.session;
    point.day = evidence.value.day;
    point.rung = rung;
    point.side = static_cast<report::Side>(evidence.value.side);
    point.time = measurement(evidence.value.timeToPeak);
    point.velocity =
        measurement(metric == season::Metric::PeakVelocity ? evidence.value.peakVelocity : evidence.value.meanVelocity);
    if (evidence.value.loadKg > 0)
        point.loadKg = evidence.value.loadKg;
    return point;
}

std::string evidenceName(const season::Ladder& ladder)
{
    return ladder.rungs.front().metric == season::Metric::ContactTime ? "contact time" : "time to peak velocity";
}

/// Work sets by day and ladder; the rungs they were on.
struct Done {
    int sets = 0;
    std::string rung;
};
using DoneByDay = std::map<std::pair<CivilDate, std::string>, Done>;

DoneByDay doneOf(const std::vector<SessionView>& training)
{
    DoneByDay all;
    for (const auto& session : training)
        for (const auto& set : session.sets)
            if (set.row.kind == store::SetKind::Work || set.row.kind == store::SetKind::Maintenance) {
                auto& done = all[{session.row.begun.trainingDay, set.row.ladder}];
                ++done.sets;
                done.rung = set.row.rung;
            }
    return all;
}

/// On a day to come the athlete stands where the plan says; loads are known for the rung of today only.
std::vector<season::LadderState> plannedStates(const season::SeasonPlan& plan,
                                               const std::vector<season::LadderState>& today, CivilDate day)
{
    std::vector<season::LadderState> states;
    for (const auto& ladder : plan.ladders) {
        const auto* rung = season::rungOn(ladder, day);
        if (rung == nullptr)
            continue;
        const auto now = std::ranges::find(today, ladder.ladder, &season::LadderState::ladder);
        if (now != today.end() && now->rung() == rung->rung)
            states.push_back(*now);
        else
            states.push_back({ladder.ladder, {{rung->rung, rung->from}}, {}, {}});
    }
    return states;
}

report::PlanLine lineOf(const season::PlannedLift& lift, CivilDate day, const season::SeasonPlan& plan,
                        const season::SeasonData& data)
{
    const auto* ladder = season::findLadder(data.ladders, lift.ladder);
    const auto* rung = ladder == nullptr ? nullptr : ladder->find(lift.rung);
    report::PlanLine line;
    line.day = day;
    if (const auto* phase = season::phaseOn(plan.phases, day))
        line.phase = season::phaseName(phase->kind);
    line.ladder = ladder == nullptr ? lift.ladder : ladder->name;
    line.rung = rung == nullptr ? lift.rung : rung->name;
    line.sets = static_cast<int>(lift.work.size());
    if (!lift.work.empty()) {
        line.repetitions = lift.work.front().repetitions;
        line.loadKg = lift.work.front().loadKg;
    }
    return line;
}

void judge(report::PlanLine& line, const season::PlannedLift& lift, const DoneByDay& done, CivilDate today,
           const std::string& whyLost, const std::string& whyChanged)
{
    const auto found = done.find({line.day, lift.ladder});
    line.setsDone = found == done.end() ? 0 : found->second.sets;
    if (line.setsDone == 0) {
        line.state = line.day >= today ? report::PlanState::Ahead : report::PlanState::Lost;
        line.why = line.state == report::PlanState::Lost ? whyLost : "";
    } else if (line.setsDone >= line.sets && found->second.rung == lift.rung) {
        line.state = report::PlanState::Done;
    } else {
        line.state = report::PlanState::Changed;
        line.why = whyChanged;
    }
}

} // namespace

report::Ladder reportLadder(const season::LadderPlan& first, const season::LadderState& state,
                            const std::vector<SessionEvidence>& evidence, const std::vector<SessionLoads>& loads,
                            CivilDate today, const season::SeasonData& seasonData)
{
    const auto* data = season::findLadder(seasonData.ladders, first.ladder);
    report::Ladder ladder;
    ladder.key = data->key;
    ladder.name = data->name;
    ladder.evidenceName = evidenceName(*data);
    ladder.typicalErrorShare = data->typicalErrorShare;
    for (const auto& rung : data->rungs)
        ladder.rungs.push_back({rung.key, rung.name, report::Band{rung.targetBand.low, rung.targetBand.high}});
    const auto place = [&](const std::string& rung) {
        return static_cast<std::size_t>(data->indexOf(rung).value_or(0));
    };
    for (const auto& planned : first.rungs)
        ladder.planned.push_back({place(planned.rung), planned.from, planned.to});
    for (std::size_t i = 0; i < state.path.size() && state.path[i].from <= today; ++i) {
        const bool last = i + 1 == state.path.size() || state.path[i + 1].from > today;
        ladder.taken.push_back(
            {place(state.path[i].rung), state.path[i].from, last ? today : state.path[i + 1].from - days{1}});
    }
    for (const auto& session : evidence)
        if (session.value.ladder == ladder.key)
            ladder.evidence.push_back(
                pointOf(session, place(session.value.rung), data->rungs[place(session.value.rung)].metric));
    for (const auto& session : loads)
        if (session.ladder == ladder.key && session.day <= today)
            ladder.loads.push_back({session.day, place(session.rung), static_cast<report::Side>(session.side),
                                    session.lift, session.points});
    return ladder;
}

std::vector<report::PlanLine> planLines(const LadderWalk& walk, const season::SeasonPlan& plan,
                                        const std::vector<SessionView>& training,
                                        const std::vector<store::LostDay>& lostDays,
                                        const std::vector<DecisionRecord>& decisions, const season::TrainingLog& log,
                                        CivilDate today)
{
    const auto done = doneOf(training);
    const auto now = walk.on(today);
    std::map<CivilDate, std::string> lost;
    for (const auto& day : lostDays)
        lost[day.day] = day.why;
    std::map<std::pair<CivilDate, std::string>, std::string> changed;
    for (const auto& record : decisions)
        if (record.answer == store::Answer::Changed)
            changed[{record.decision.day, record.decision.ladder}] = record.why;

    std::vector<report::PlanLine> lines;
    for (auto day = plan.setup.start; day <= plan.end; day += days{1}) {
        if (!season::isLiftingDay(plan, day))
            continue;
        const auto session = day > today
                                 ? season::planSession(plan, plannedStates(plan, now, day), {}, day, walk.data())
                                 : season::planSession(plan, walk.before(day), followedOn(decisions, day, walk.data()),
                                                       day, walk.data(), log);
        for (const auto& lift : session.lifts) {
            auto line = lineOf(lift, day, plan, walk.data());
            judge(line, lift, done, today, lost[day], changed[{day, lift.ladder}]);
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

} // namespace fleetrung::logbook
