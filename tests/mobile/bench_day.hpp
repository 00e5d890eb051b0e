// A day with one lift, and repetitions of it.
#pragma once

#include <catch2/catch.hpp>

#include "mobile/views/bench_view_model.hpp"

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace fleetrung::views
{

inline reps::Repetition repetition(double timeToPeak, double meanVelocity)
{
    reps::Repetition r;
    r.timeToPeakVelocity = {timeToPeak, 0.004};
    r.meanVelocity = {meanVelocity, 0.012};
    r.peakVelocity = {meanVelocity * 1.6, 0.02};
    r.range = {0.341, 0.004};
    return r;
}

inline BenchDay dayWithHalfSquat()
{
    BenchLift lift;
    lift.plan.ladder = "squat";
    lift.plan.rung = "half";
    lift.plan.lift = "half-squat";
    lift.plan.work = {{.repetitions = 5, .loadKg = 140.0}, {.repetitions = 5, .loadKg = 140.0}};
    lift.plan.setStop = 0.15;
    lift.plan.targetBand = {0.240, 0.300};
    lift.plan.range = {0.32, 0.38};
    lift.name = "Half squat";
    lift.ladder = "Squat";
    lift.rungNumber = 3;
    lift.rungCount = 6;
    BenchDay day;
    day.lifts = {lift};
    return day;
}

struct Bench {
    Preferences preferences;
    BenchViewModel view{&preferences};

    Bench()
    {
        preferences.setLocale(QLocale(QLocale::English, QLocale::UnitedKingdom));
        view.showDay(dayWithHalfSquat());
        view.openLift(QStringLiteral("squat"));
    }
};

} // namespace fleetrung::views
