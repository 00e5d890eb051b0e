// Plays a recording through the live set and compares what it announced with the final analysis.
#pragma once

#include "tests/accuracy/score.hpp"

namespace fleetrung::accuracy
{

void judgeLive(const simulator::SimulatedSet& set, const reps::SetAnalysis& final, const reps::Lift& lift,
               SetScore& score);

} // namespace fleetrung::accuracy
