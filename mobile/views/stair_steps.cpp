#include "mobile/views/stair_steps.hpp"

#include <algorithm>

#include <QCoreApplication>

#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{
namespace
{

using std::chrono::days;

struct StairStepsWords {
    Q_DECLARE_TR_FUNCTIONS(StairStepsWords)
};

QString phaseText(season::PhaseKind kind)
{
    return engineText(std::string(season::phaseName(kind)));
}

class Stair
{
public:
    Stair(const report::Ladder& ladder, const season::SeasonPlan& plan,
          const std::vector<logbook::DecisionRecord>& decisions, CivilDate today)
        : ladder_(ladder), plan_(plan), decisions_(decisions), today_(today),
          data_(season::ladderOf(plan.setup, season::standardSeasonData(), ladder.key)),
          ahead_(season::findLadderPlan(plan, ladder.key))
    {
    }

    [[nodiscard]] std::vector<StairStep> steps() const
    {
        std::vector<StairStep> all;
        for (const auto& stay : ladder_.taken)
            all.push_back(takenStep(stay));
        if (!all.empty())
            all.back().underWay = true;
        if (!ahead_ || !data_)
            return all;
        bool next = true;
        for (std::size_t i = 0; i < ahead_->rungs.size(); ++i) {
            if (ahead_->rungs[i].from <= today_ || goesOn(ahead_->rungs, i))
                continue;
            all.push_back(aheadStep(i, next));
            next = false;
        }
        return all;
    }

private:
    [[nodiscard]] StairStep named(std::size_t rung, CivilDate from, CivilDate to) const
    {
        StairStep step;
        step.rung = rung;
        step.rungName = ladder_.rungs[rung].name;
        step.from = from;
        step.to = to;
        step.week = season::weekOf(plan_, from);
        if (const auto* phase = season::phaseOn(plan_.phases, from))
            step.phase = phaseText(phase->kind);
        // Of two macrocycles the one nearest in time is meant.
        for (const auto& planned : ladder_.planned)
            if (planned.rung == rung && (!step.firstPlanned || std::abs(daysBetween(planned.first, from)) <
                                                                   std::abs(daysBetween(*step.firstPlanned, from))))
                step.firstPlanned = planned.first;
        return step;
    }

    [[nodiscard]] StairStep takenStep(const report::Stay& stay) const
    {
        StairStep step = named(stay.rung, stay.first, stay.last);
        step.taken = true;
        for (const auto& record : decisions_)
            if (record.decision.ladder == ladder_.key && record.decision.day == stay.first &&
                stay.first != plan_.setup.start)
                put(step, record);
        for (const auto& point : ladder_.evidence) {
            if (point.rung != stay.rung || point.day < stay.first || point.day > stay.last)
                continue;
            ++step.sessions;
            if (point.loadKg && !step.firstLoadKg)
                step.firstLoadKg = point.loadKg;
            if (point.loadKg)
                step.lastLoadKg = point.loadKg;
        }
        return step;
    }

    [[nodiscard]] StairStep aheadStep(std::size_t index, bool next) const
    {
        const auto& planned = ahead_->rungs[index];
        StairStep step =
            named(static_cast<std::size_t>(data_->indexOf(planned.rung).value_or(0)), planned.from, planned.to);
        step.next = next;
        if (next)
            for (const auto& record : decisions_)
                if (record.decision.ladder == ladder_.key && record.decision.day <= today_)
                    put(step, record); // by day: the latest stays
        // What led to the rung before says nothing of this one.
        if (step.decision && step.decision->to != step.decision->from && step.decision->to != planned.rung)
            step.decision.reset();
        step.answer.reset();
        putDates(step, planned,
                 index > 0 && ahead_->rungs[index - 1].macrocycle == planned.macrocycle ? &ahead_->rungs[index - 1]
                                                                                        : nullptr);
        if (const auto* rung = data_->find(planned.rung))
            step.cautions = cautionTexts(rung->cautions);
        return step;
    }

    void putDates(StairStep& step, const season::PlannedRung& planned, const season::PlannedRung* before) const
    {
        const auto* rung = data_->find(planned.rung);
        if (!before || !rung) {
            step.dateReason = StairStepsWords::tr("The first rung of this part of the season.");
            return;
        }
        const auto phase = std::ranges::find_if(plan_.phases, [&](const season::PhaseSpan& span) {
            return span.macrocycle == planned.macrocycle && span.kind >= rung->earliest;
        });
        const auto shortest = static_cast<int>(season::standardSeasonData().rules.stepDays);
        CivilDate since = before->from;
        for (const auto& stay : ahead_->rungs)
            if (stay.rung == before->rung && stay.macrocycle == before->macrocycle)
                since = std::min(since, stay.from);
        CivilDate earliest = since + days{shortest};
        QString why = StairStepsWords::tr("%1 days on %2 come first.")
                          .arg(shortest)
                          .arg(engineText(rungName(plan_.setup, ladder_.key, before->rung)));
        if (phase != plan_.phases.end() && phase->from > earliest) {
            earliest = phase->from;
            why = StairStepsWords::tr("Not before %1, which begins on %2.")
                      .arg(phaseText(phase->kind), QString::fromStdString(dateText(phase->from)));
        }
        step.earliest = std::min(earliest, planned.from); // the plan itself may have had to be quicker
        step.latest = std::max(before->latest + days{1}, planned.from);
        step.dateReason =
            why + QStringLiteral(" ") +
            StairStepsWords::tr("The rungs below it need the time that is left before the main competition.");
    }

    void put(StairStep& step, const logbook::DecisionRecord& record) const
    {
        step.decision = record.decision;
        step.answer = answerOf(plan_.setup, record);
        step.cautions = cautionTexts(record.decision.cautions);
    }

    const report::Ladder& ladder_;
    const season::SeasonPlan& plan_;
    const std::vector<logbook::DecisionRecord>& decisions_;
    CivilDate today_;
    const season::Ladder* data_;
    const season::LadderPlan* ahead_;
};

} // namespace

std::string rungName(const season::SeasonSetup& setup, const std::string& ladderKey, const std::string& rungKey)
{
    const auto* ladder = season::ladderOf(setup, season::standardSeasonData(), ladderKey);
    const auto* rung = ladder ? ladder->find(rungKey) : nullptr;
    return rung ? rung->name : rungKey;
}

bool goesOn(const std::vector<season::PlannedRung>& rungs, std::size_t index)
{
    return index > 0 && rungs[index - 1].rung == rungs[index].rung &&
           rungs[index - 1].macrocycle == rungs[index].macrocycle;
}

std::optional<DecisionAnswer> answerOf(const season::SeasonSetup& setup, const logbook::DecisionRecord& record)
{
    if (record.answer == store::Answer::None)
        return std::nullopt;
    DecisionAnswer answer;
    answer.followed = record.answer == store::Answer::Followed;
    answer.why = QString::fromStdString(record.why);
    answer.insteadText = engineText(rungName(setup, record.decision.ladder, record.changedTo));
    return answer;
}

std::vector<std::string> cautionTexts(const std::vector<std::string>& keys)
{
    std::vector<std::string> texts;
    for (const auto& key : keys)
        if (const auto* caution = season::findCaution(season::standardSeasonData(), key))
            texts.push_back(caution->text);
    return texts;
}

std::vector<StairStep> stairSteps(const report::Ladder& ladder, const season::SeasonPlan& plan,
                                  const std::vector<logbook::DecisionRecord>& decisions, CivilDate today)
{
    return Stair(ladder, plan, decisions, today).steps();
}

} // namespace fleetrung::views
