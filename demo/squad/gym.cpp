#include "demo/squad/gym.hpp"

#include <algorithm>
#include <cmath>

#include "demo/simulator/simulator.hpp"

namespace fleetrung::squad
{
namespace
{

constexpr double plates = 2.5; // kg
constexpr double workShare = 0.80;
constexpr int measuredWorkSets = 2; // the sensor is put on for these; the rest are typed
constexpr int videoError = 4;       // ms, ground contact typed from 240 frames a second

double downToPlates(double load)
{
    return std::max(20.0, std::floor(load / plates + 1e-9) * plates);
}

class Lifting
{
public:
    Lifting(Diary& theDiary, const season::PlannedLift& planned, const Identifier& sessionId, CivilDate today,
            int minutesAfterMidnight)
        : diary(theDiary), lift(planned), session(sessionId), day(today), minutes(minutesAfterMidnight),
          ladder(*season::ladderOf(theDiary.who.setup, season::standardSeasonData(), planned.ladder)),
          rung(*ladder.find(planned.rung))
    {
    }

    /// Gives the time of day when it is done.
    int perform();

private:
    [[nodiscard]] store::LiftSet row(store::SetKind kind, double loadKg, int repetitions, store::Side side);
    [[nodiscard]] double workLoad() const;
    [[nodiscard]] double effortOf(double loadKg, int repetitions) const;
    void measure(store::SetKind kind, double loadKg, int repetitions, store::Side side);
    void type(store::SetKind kind, double loadKg, int repetitions, store::Side side);
    void dropJumps();

    Diary& diary;
    const season::PlannedLift& lift;
    Identifier session;
    CivilDate day;
    int minutes;
    const season::Ladder& ladder;
    const season::Rung& rung;
};

store::LiftSet Lifting::row(store::SetKind kind, double loadKg, int repetitions, store::Side side)
{
    store::LiftSet set;
    set.session = session;
    set.done = Diary::at(day, minutes);
    set.lift = rung.lift;
    set.ladder = ladder.key;
    set.rung = rung.key;
    set.kind = kind;
    set.side = side;
    set.loadKg = loadKg;
    set.repetitionsPlanned = repetitions;
    set.boxHeightM = rung.boxHeight();
    if (kind == store::SetKind::Work && loadKg > 0) {
        set.effort = effortOf(loadKg, repetitions);
    }
    ++diary.tally.sets;
    minutes += kind == store::SetKind::WarmUp ? 2 : std::max(2, static_cast<int>(lift.restSeconds / 60));
    return set;
}

/// Repetitions left by the formula of Epley (1985): load = maximum / (1 + repetitions / 30).
double Lifting::effortOf(double loadKg, int repetitions) const
{
    const double possible = 30 * (diary.body.maximum(ladder, rung) / loadKg - 1);
    return std::clamp(std::round(2 * (10 - (possible - repetitions))) / 2, 5.0, 10.0);
}

/// As planned, or found by feel where nothing is known yet; a little more where it has become easy.
double Lifting::workLoad() const
{
    const double easy = downToPlates(workShare * diary.body.maximum(ladder, rung));
    if (lift.work.empty() || !lift.work.front().loadKg) {
        return easy;
    }
    const double planned = std::max(20.0, *lift.work.front().loadKg);
    if (easy >= planned + plates) {
        return planned + downToPlates(20 + std::min(easy - planned, std::max(plates, 0.035 * planned))) - 20;
    }
    return easy < 0.92 * planned ? easy : planned;
}

void Lifting::measure(store::SetKind kind, double loadKg, int repetitions, store::Side side)
{
    const auto plan = diary.body.set(ladder, rung, loadKg, repetitions, kind == store::SetKind::Probe);
    simulator::SensorPlan sensor;
    sensor.part = "C";
    sensor.rate = 100;
    sensor.randomMounting = true;
    sensor.lever = {0.02, 0.35, 0.0};
    sensor.wobble = 0.1;
    sensor.clockSkew = 40e-6;
    const auto seed = diary.body.random.seed();
    const auto set = must(simulator::simulateSet(plan, sensor, seed));
    auto wanted = row(kind, loadKg, repetitions, side);
    const auto now = wanted.done;
    const auto stored = must(diary.logbook.recordSet(std::move(wanted), set.recording, {"simulator", "bar"}, now));
    ++diary.tally.measuredSets;
    diary.tally.lifted += static_cast<int>(set.truth.size());
    diary.tally.found += static_cast<int>(stored.analysis.repetitions.size());
}

void Lifting::type(store::SetKind kind, double loadKg, int repetitions, store::Side side)
{
    auto set = row(kind, loadKg, repetitions, side);
    set.repetitionsDone = repetitions;
    const auto now = set.done;
    static_cast<void>(must(diary.logbook.typeSet(std::move(set), {repetitions, {}, {}, {}, {}}, now)));
}

/// Contact and flight of the first three jumps are typed from video; the sensor is for the bar.
void Lifting::dropJumps()
{
    auto& random = diary.body.random;
    const double shorter = 1 - 0.08 * diary.body.progress();
    for (int i = 0; i < 3; ++i) {
        store::Jump jump;
        jump.athlete = diary.athlete;
        jump.session = session;
        jump.done = Diary::at(day, minutes);
        jump.kind = "drop-jump";
        jump.boxHeightM = rung.boxHeight();
        const double higher = rung.boxHeight().value_or(0.2) - 0.2;
        jump.contact = {diary.who.dropContact * shorter * (1 + 0.1 * higher) * random.normal(1, 0.02),
                        videoError * 1e-3};
        jump.flight = {diary.who.dropFlight * (1 + 0.04 * diary.body.progress()) * random.normal(1, 0.012),
                       videoError * 1e-3};
        jump.note = "from video, 240 frames a second";
        static_cast<void>(must(diary.logbook.addJump(std::move(jump))));
    }
    for (const auto& set : lift.work) {
        type(store::SetKind::Work, 0, set.repetitions, store::Side::Both);
    }
}

int Lifting::perform()
{
    if (rung.metric == season::Metric::ContactTime && rung.boxHeight()) {
        dropJumps();
        return minutes;
    }
    const double work = workLoad();
    const double usualProbe = downToPlates(work * rung.probeShare / workShare);
    const double probe = lift.probe && lift.probe->loadKg ? *lift.probe->loadKg : usualProbe;
    for (const auto& set : lift.warmUp) {
        type(store::SetKind::WarmUp, set.loadKg.value_or(downToPlates(0.5 * work)), set.repetitions, store::Side::Both);
    }
    const auto sides =
        ladder.oneSided ? std::vector{store::Side::Left, store::Side::Right} : std::vector{store::Side::Both};
    for (const auto side : sides) {
        measure(store::SetKind::Probe, std::max(20.0, probe), 3, side);
    }
    int ordinal = 0;
    for (const auto& set : lift.work) {
        for (const auto side : sides) {
            if (ordinal < measuredWorkSets) {
                measure(store::SetKind::Work, work, set.repetitions, side);
            } else {
                type(store::SetKind::Work, work, set.repetitions, side);
            }
        }
        ++ordinal;
    }
    diary.body.adapt(ladder.key, rung.key);
    return minutes;
}

} // namespace

void liftSession(Diary& diary, const season::SessionPlan& plan, CivilDate day)
{
    int minutes = 17 * 60 + 30;
    const auto session = must(diary.logbook.openSession(diary.athlete, "strength", Diary::at(day, minutes)));
    for (const auto& lift : plan.lifts) {
        minutes = Lifting(diary, lift, session, day, minutes + 5).perform();
    }
    auto row = must(diary.logbook.session(session)).row;
    row.effort =
        std::clamp(std::round(7 + 12 * (1 - diary.body.form()) + diary.body.random.uniform(-0.6, 0.6)), 4.0, 9.0);
    must(diary.logbook.changeSession(row));
    ++diary.tally.sessions;
}

} // namespace fleetrung::squad
