// One lift of a session: warm-up, probe set, work sets, and why.
#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/season/session_parts.hpp"

namespace fleetrung::season
{
namespace
{

constexpr int probeRepetitions = 3;
constexpr double workShare = 0.8;     // of what a rung allows: work sets at effort 7 to 8, starting value
constexpr double cleanSetStop = 0.10; // of peak velocity, starting value
constexpr int primerSets = 2;

/// Share of the work load, repetitions: common practice, no source. The last two are done with full intent.
constexpr std::array<std::pair<double, int>, 3> warmUpSteps{{{0.4, 5}, {0.6, 3}, {0.7, 2}}};

std::string percent(double share)
{
    return fixedText(share * 100, 0) + " %";
}

/// Sets and repetitions whose product follows the day's share of the rung's volume as whole numbers can.
std::pair<int, int> scaledVolume(const Rung& rung, double share)
{
    const double total = rung.sets * rung.repetitions * share;
    const int sets = std::max(1, static_cast<int>(std::lround(rung.sets * share)));
    const int repetitions = std::clamp(static_cast<int>(std::lround(total / sets)), 1, rung.repetitions);
    return {sets, repetitions};
}

/// Drop jumps: fewer sets where the contacts would be more than allowed.
void capContacts(PlannedLift& planned, int most)
{
    planned.contactLimit = most;
    if (planned.probe && planned.probe->repetitions > most)
        planned.probe.reset();
    int contacts = planned.probe ? planned.probe->repetitions : 0;
    std::size_t kept = 0;
    for (const auto& set : planned.work) {
        if (contacts + set.repetitions > most)
            break;
        contacts += set.repetitions;
        ++kept;
    }
    planned.work.resize(kept);
    planned.contacts = contacts;
}

void addLoads(PlannedLift& planned, const LiftDay& lift, const ChosenLoad& chosen)
{
    const auto& rung = lift.rung;
    if (rung.probeShare <= 0) { // body mass only
        planned.probe = PlannedSet{probeRepetitions, 0.0};
        return;
    }
    const bool sameRung = lift.state != nullptr && lift.state->rung() == rung.key;
    std::optional<double> workKg, probeKg = sameRung ? lift.state->probeLoadKg : std::nullopt;
    if (chosen.kg) {
        workKg = toPlates(*chosen.kg * (lift.decision != nullptr ? lift.decision->loadFactor : 1));
        if (!probeKg)
            probeKg = toPlates(*chosen.kg * rung.probeShare / workShare);
        for (const auto& [share, repetitions] : warmUpSteps)
            planned.warmUp.push_back({repetitions, toPlates(*workKg * share)});
    } else {
        planned.note = "Find a load of effort 7 of 10 for " + integerText(rung.repetitions) + " repetitions; about " +
                       percent(rung.probeShare / workShare) + " of it is the probe load for the whole stay.";
        for (const auto& [share, repetitions] : warmUpSteps)
            planned.warmUp.push_back({repetitions, std::nullopt});
    }
    planned.probe = PlannedSet{probeRepetitions, probeKg};
    for (auto& set : planned.work)
        set.loadKg = workKg;
}

double setStopFor(const Rung& rung, const PhaseRule& phase)
{
    if (rung.metric == Metric::ContactTime)
        return 0;
    return rung.metric == Metric::PeakVelocity ? std::min(cleanSetStop, phase.setStop) : phase.setStop;
}

std::string rungWhy(const LiftDay& lift)
{
    if (lift.decision != nullptr)
        return lift.decision->reason;
    return rungName(lift.rung, lift.plan.setup) + " is the rung that the plan puts here, in " +
           std::string(phaseName(lift.phase.kind)) + ".";
}

std::string loadWhy(const LiftDay& lift, const ChosenLoad& chosen)
{
    if (!chosen.kg)
        return "No load is known on this ladder yet: find one of effort 7 of 10.";
    std::string text = "From " + chosen.reason + ", down to what the plates make.";
    const bool first = lift.state == nullptr || lift.state->rung() != lift.rung.key;
    if (first)
        text += " First time on this rung: stop adding at effort 7 of 10, whatever the number says.";
    if (lift.decision != nullptr && lift.decision->loadFactor < 1)
        text += " " + percent(1 - lift.decision->loadFactor) + " less today, by the decision.";
    return text;
}

std::string setsWhy(const LiftDay& lift, double share)
{
    std::string text =
        integerText(lift.rung.sets) + " sets of " + integerText(lift.rung.repetitions) + " are the rung's own";
    text += std::abs(share - 1) < 0.005 ? std::string(".")
                                        : "; " + std::string(phaseName(lift.phase.kind)) +
                                              " and the competitions near leave " + percent(share) + " of that.";
    if (lift.decision != nullptr && lift.decision->setFactor < 1)
        text += " The decision takes it down to " + percent(lift.decision->setFactor) + ".";
    return text;
}

void addReasons(PlannedLift& planned, const LiftDay& lift, const ChosenLoad& chosen, double share)
{
    planned.why.push_back({"rung", rungWhy(lift)});
    if (lift.rung.probeShare > 0)
        planned.why.push_back({"load", loadWhy(lift, chosen)});
    planned.why.push_back({"sets", setsWhy(lift, share)});
    planned.why.push_back({"probe", lift.rung.probeShare > 0
                                        ? "Three repetitions with full intent, at the same load for the whole stay on "
                                          "the rung: the only thing that counts as evidence."
                                        : "Three jumps with full intent: the only thing that counts as evidence."});
    if (planned.setStop > 0)
        planned.why.push_back({"set stop", "In " + std::string(phaseName(lift.phase.kind)) +
                                               " a set ends when velocity has fallen by " + percent(planned.setStop) +
                                               " from its fastest repetition."});
    if (planned.contactLimit > 0)
        planned.why.push_back({"contacts", "At most " + integerText(planned.contactLimit) +
                                               " drop-jump contacts today: our limits for a session and for seven "
                                               "days."});
    if (planned.maintenance)
        planned.why.push_back({"maintenance", planned.maintenance->reason});
}

PlannedLift bare(const LiftDay& lift)
{
    PlannedLift planned;
    planned.ladder = lift.ladder.key;
    planned.rung = lift.rung.key;
    planned.lift = lift.rung.lift;
    planned.restSeconds = lift.rung.restSeconds;
    planned.metric = lift.rung.metric;
    planned.targetBand = lift.rung.targetBand;
    planned.range = lift.rung.range;
    planned.cautions = lift.rung.cautions;
    if (const auto* box = boxFor(lift.rung, lift.plan.setup))
        planned.boxHeight = box->metres();
    if (isYoung(lift.plan, lift.day))
        planned.cautions.emplace_back("young");
    return planned;
}

} // namespace

PlannedLift planLift(const LiftDay& lift)
{
    auto planned = bare(lift);
    const auto& rules = lift.data.rules;
    planned.setStop = setStopFor(lift.rung, rules.phases[static_cast<std::size_t>(lift.phase.kind)]);
    const double share = volumeShare(lift.plan.setup, lift.plan.phases, rules, lift.day);
    const auto [sets, repetitions] =
        scaledVolume(lift.rung, share * (lift.decision != nullptr ? lift.decision->setFactor : 1));
    planned.work.assign(static_cast<std::size_t>(sets),
                        PlannedSet{repetitions, lift.rung.probeShare <= 0 ? std::optional(0.0) : std::nullopt});
    const auto chosen = chooseLoad(lift);
    addLoads(planned, lift, chosen);
    if (lift.rung.metric == Metric::ContactTime)
        capContacts(planned, lift.contacts);
    planned.maintenance = maintenanceFor(lift);
    addReasons(planned, lift, chosen, share);
    return planned;
}

std::optional<PlannedLift> planPrimer(const LiftDay& lift)
{
    const auto chosen = chooseLoad(lift);
    if (!chosen.kg || lift.rung.probeShare <= 0)
        return std::nullopt;
    const auto& rules = lift.data.rules;
    auto planned = bare(lift);
    double load = *chosen.kg * rules.primerLoad / workShare;
    if (lift.state != nullptr && lift.state->probeLoadKg && lift.state->rung() == lift.rung.key)
        load = std::min(load, *lift.state->probeLoadKg); // above the probe load is heavy where no maximum is known
    planned.primer = true;
    planned.work.assign(
        primerSets, PlannedSet{std::min(lift.rung.repetitions, static_cast<int>(rules.primerRepetitions) / primerSets),
                               toPlates(load)});
    planned.note = "A primer, light and fast, by choice. It is no evidence.";
    planned.why.push_back({"lift", "One or two days before a competition a primer of at most " +
                                       fixedText(rules.primerRepetitions, 0) + " repetitions at " +
                                       percent(rules.primerLoad) + " or less is allowed, nothing heavy."});
    return planned;
}

} // namespace fleetrung::season
