// Whether every step was done as asked; the first that was not is named. Private to engine/sensor.
#pragma once

#include <optional>

#include "engine/sensor/teach_turns.hpp"
#include "engine/sensor/teach_words.hpp"

namespace fleetrung::sensor::teaching
{

/// Steps in seconds after the first packet. An answer where one is missing, too short, or empty.
struct CheckedSteps {
    Steps steps;
    std::optional<Taught> answer;
};
[[nodiscard]] CheckedSteps stepsOf(const TeachRecording& recording);
/// A step in which next to nothing came from any table.
[[nodiscard]] std::optional<Taught> emptyStep(const std::vector<Table>& tables, const Steps& steps);

/// Why a face does not fit the five others.
[[nodiscard]] Taught blameFace(const Gravity& gravity, const Steps& steps, std::size_t face);
/// Where no five faces fit: the face in which the bytes moved much more than in the others.
[[nodiscard]] Taught blameAnyFace(const std::vector<Table>& tables, const Steps& steps);
[[nodiscard]] std::optional<Taught> restlessFace(const Gravity& gravity, const Steps& steps);
[[nodiscard]] std::optional<Taught> wrongTurn(const Gyroscope& gyroscope, const Gravity& gravity, const Steps& steps);

struct Raises {
    std::array<Raise, 2> done;
    double off = 0; ///< the better of both, relative to the height asked: a packet lost in mid-raise spoils one
};
[[nodiscard]] Raises raisesOf(const Gravity& gravity, const Steps& steps, double gravityHere, double asked);
/// There must be two, and one of the right height.
[[nodiscard]] std::optional<Taught> wrongRaise(const Raises& raises, double asked);

} // namespace fleetrung::sensor::teaching
