#include "engine/sensor/teach_checks.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "engine/base/numbers.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

using Eigen::Vector3d;

// Starting values of this project.
constexpr double stillWithin = 0.08;  // gravities: a hand that holds moves more, a table less
constexpr double wholeWithin = 40;    // degrees of a turn
constexpr double heightWithin = 0.22; // of the height asked: a hand is off by 4 %, the check by 5 % (one deviation)
constexpr double leastPush = 0.6;     // m/s2: half a metre in one and a half seconds takes 1.3
constexpr double shortest = 0.5;      // of a step's time
constexpr std::size_t fewestInStep = 3;

std::string degrees(double radians)
{
    return integerText(std::llround(radians * 180 / std::numbers::pi));
}

} // namespace

CheckedSteps stepsOf(const TeachRecording& recording)
{
    CheckedSteps checked;
    const auto zero = recording.packets.empty() ? 0 : recording.packets.front().arrival;
    for (const auto& span : recording.spans) {
        const auto index = static_cast<std::size_t>(span.step);
        if (index < teachSteps) {
            checked.steps.spans.at(index) = {static_cast<double>(span.from - zero) * 1e-9,
                                             static_cast<double>(span.to - zero) * 1e-9};
        }
    }
    for (std::size_t step = 0; step < teachSteps; ++step) {
        const auto& span = checked.steps.spans.at(step);
        if (!span) {
            checked.answer = repeatStep(step, "Nothing was recorded for " + nameOf(stepOf(step)) + ".");
            return checked;
        }
        const double length = span->to - span->from;
        if (!(length >= shortest * secondsOf(stepOf(step))) || !(length < 600)) {
            checked.answer =
                repeatStep(step, "The recording of " + nameOf(stepOf(step)) + " is too short or has no end.");
            return checked;
        }
    }
    return checked;
}

std::optional<Taught> emptyStep(const std::vector<Table>& tables, const Steps& steps)
{
    for (std::size_t step = 0; step < teachSteps; ++step) {
        std::size_t most = 0;
        for (const auto& table : tables) {
            most = std::max(most, recordsOfStep(table, steps, step).size());
        }
        if (most < fewestInStep) {
            return repeatStep(step, "The sensor sent next to nothing during " + nameOf(stepOf(step)) +
                                        ": keep it close to the phone.");
        }
    }
    return std::nullopt;
}

Taught blameFace(const Gravity& gravity, const Steps& steps, std::size_t face)
{
    const auto rest = restIn(gravity, steps.of(face));
    const auto name = nameOf(stepOf(face));
    if (rest.wander > stillWithin) {
        return repeatStep(face, "The sensor did not lie still during " + name + ".");
    }
    for (std::size_t other = 0; other < faces; ++other) {
        if (other == face) {
            continue;
        }
        const Vector3d direction = gravity.mean(steps.of(other).from + 0.2, steps.of(other).to).normalized();
        if (rest.mean.normalized().dot(direction) > 0.8) {
            const auto later = steps.of(other).from > steps.of(face).from ? other : face;
            const auto earlier = later == other ? face : other;
            return repeatStep(later, "During " + nameOf(stepOf(later)) + " the same side was up as during " +
                                         nameOf(stepOf(earlier)) + ": lay it on a side that has not been down yet.");
        }
    }
    return repeatStep(face, "During " + name + " the sensor lay slanted: lay it flat on that side.");
}

Taught blameAnyFace(const std::vector<Table>& tables, const Steps& steps)
{
    std::array<double, faces> restless{};
    for (const auto& table : tables) {
        std::array<Records, faces> records;
        for (std::size_t face = 0; face < faces; ++face) {
            records.at(face) = recordsOfStep(table, steps, face);
        }
        for (const auto& group : placesOf(table)) {
            for (const auto& place : group) {
                const auto values = overFaces(table, records, place, {true, true, true, true, true, true});
                for (std::size_t face = 0; values && values->noise > 0 && face < faces; ++face) {
                    restless.at(face) += std::min(10.0, values->spread.at(face) / values->noise);
                }
            }
        }
    }
    const auto worst = static_cast<std::size_t>(std::max_element(restless.begin(), restless.end()) - restless.begin());
    auto sorted = restless;
    std::sort(sorted.begin(), sorted.end());
    if (sorted[faces - 1] > 1.5 * sorted[faces - 2] && sorted[faces - 2] > 0) {
        return repeatStep(worst, "The sensor did not lie still during " + nameOf(stepOf(worst)) + ".");
    }
    return notTeachable("No three of the numbers it sends follow gravity over the six faces: if every face lay still "
                        "and a different side was up each time, it sends no acceleration in a form that can be found.");
}

std::optional<Taught> restlessFace(const Gravity& gravity, const Steps& steps)
{
    for (std::size_t face = 0; face < faces; ++face) {
        if (restIn(gravity, steps.of(face)).wander > stillWithin) {
            return repeatStep(face, "The sensor did not lie still during " + nameOf(stepOf(face)) + ".");
        }
    }
    return std::nullopt;
}

std::optional<Taught> wrongTurn(const Gyroscope& gyroscope, const Gravity& gravity, const Steps& steps)
{
    constexpr double whole = 2 * std::numbers::pi;
    std::array<Vector3d, 3> up;
    for (std::size_t turn = 0; turn < 3; ++turn) {
        const auto name = nameOf(stepOf(faces + turn));
        const auto& span = steps.of(faces + turn);
        up.at(turn) = gravity.mean(span.from, span.to).normalized();
        const double angle = gyroscope.turns.at(turn);
        if (std::abs(angle - whole) * 180 / std::numbers::pi > wholeWithin) {
            const bool other = std::abs(angle + whole) * 180 / std::numbers::pi < wholeWithin;
            return repeatStep(faces + turn,
                              other ? name + " went the other way round than the others: counter-clockwise, seen from "
                                             "above."
                                    : name + " was " + degrees(angle) + " degrees and not one whole turn of 360.");
        }
        for (std::size_t before = 0; before < turn; ++before) {
            if (std::abs(up.at(turn).dot(up.at(before))) > 0.5) {
                return repeatStep(faces + turn, name + " was about the same axis as " + nameOf(stepOf(faces + before)) +
                                                    ": lay it on another side first.");
            }
        }
    }
    return std::nullopt;
}

Raises raisesOf(const Gravity& gravity, const Steps& steps, double gravityHere, double asked)
{
    Raises raises;
    raises.off = 1;
    for (std::size_t raise = 0; raise < 2; ++raise) {
        raises.done.at(raise) = raiseIn(gravity, steps.of(faces + 3 + raise), gravityHere);
        raises.off = std::min(raises.off, std::abs(raises.done.at(raise).height / asked - 1));
    }
    return raises;
}

std::optional<Taught> wrongRaise(const Raises& raises, double asked)
{
    const auto off = [&](std::size_t raise) { return std::abs(raises.done.at(raise).height / asked - 1); };
    const std::size_t worse = off(1) > off(0) ? 1 : 0;
    for (std::size_t raise = 0; raise < 2; ++raise) {
        const bool none = raises.done.at(raise).push < leastPush ||
                          (raises.off > heightWithin && raises.done.at(raise).height < asked / 3);
        if (none) {
            return repeatStep(faces + 3 + raise, "There was no raise of " + fixedText(asked, 2) + " m in " +
                                                     nameOf(stepOf(faces + 3 + raise)) + ".");
        }
    }
    if (raises.off > heightWithin) {
        return repeatStep(faces + 3 + worse, nameOf(stepOf(faces + 3 + worse)) + " came out as " +
                                                 fixedText(raises.done.at(worse).height, 2) + " m and not as " +
                                                 fixedText(asked, 2) +
                                                 " m: begin still, raise it straight up by that much, hold it still.");
    }
    return std::nullopt;
}

} // namespace fleetrung::sensor::teaching
