// What the final analysis and the live set must agree on. Used inside reps/.
#pragma once

#include <optional>
#include <vector>

#include "engine/motion/intake.hpp"
#include "engine/motion/knowledge.hpp"
#include "engine/reps/analyse.hpp"
#include "engine/reps/strokes.hpp"

namespace fleetrung::reps
{

/// A stroke of any kind says nothing of where it ends; a lifter under a bar stays within arm's reach of one height.
[[nodiscard]] motion::Knowledge knowledgeOf(const Lift& lift);

/// Why the concentric phase of a repetition says nothing; nothing where it does.
[[nodiscard]] std::optional<RefusedRepetition> refusal(const Movement& up, const motion::Screening& screening);

/// Below this range [m] a repetition is a partial one of its set; from so many repetitions on.
inline constexpr std::size_t leastForPartials = 3;
[[nodiscard]] double leastRange(const std::vector<Repetition>& repetitions);

} // namespace fleetrung::reps
