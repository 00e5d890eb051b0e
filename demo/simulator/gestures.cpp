#include "demo/simulator/gestures.hpp"

#include <algorithm>
#include <array>

namespace fleetrung::simulator
{
namespace
{

// Squats: mean propulsive velocity at the maximum and its slope after Conceicao et al. 2016,
// doi:10.1080/02640414.2015.1090010 (full 0.29 + 1.32, half 0.33 + 1.20); bench press 0.16 m/s at the maximum,
// Gonzalez-Badillo and Sanchez-Medina 2010, doi:10.1055/s-0030-1248333, slope from memory. Everything else: starting
// values of this project.
constexpr std::array<Gesture, 22> gestures{{
    // key, kind, range, slowest, gain, peak share, lowering, middle, dip, caught, recovered
    {"full-squat", Kind::Stand, 0.62, 0.29, 1.32, 0.60, 0.50, 0.8, 0, 0, 0},
    {"parallel-squat", Kind::Stand, 0.50, 0.31, 1.25, 0.60, 0.50, 0.8, 0, 0, 0},
    {"half-squat", Kind::Stand, 0.36, 0.33, 1.20, 0.56, 0.45, 0.85, 0, 0, 0},
    {"quarter-squat", Kind::Stand, 0.18, 0.30, 0.75, 0.51, 0.33, 0.9, 0, 0, 0},
    {"pin-quarter-squat", Kind::Pull, 0.16, 0.26, 0.70, 0.52, 0.25, 0.9, 0, 0, 0},
    {"drop-squat", Kind::Stand, 0.14, 0.25, 0.40, 0.55, 0.50, 0.9, 0, 0, 0},
    {"step-up", Kind::Step, 0.35, 0.30, 0.80, 0.60, 0.35, 0.85, 0, 0, 0},
    {"floor-clean", Kind::Clean, 1.05, 0.75, 0.80, 0.59, 0.80, -0.1, 0, 0.22, 0.45},
    {"floor-power-clean", Kind::Clean, 1.15, 0.84, 0.80, 0.59, 0.80, -0.1, 0, 0.12, 0.18},
    {"block-power-clean", Kind::Clean, 0.80, 0.92, 0.85, 0.50, 0.70, 0.5, 0, 0.12, 0.18},
    {"hang-power-clean", Kind::Hang, 0.70, 0.90, 0.85, 0.50, 0.45, 0.8, 0.18, 0.12, 0.18},
    {"drop-hang-power-clean", Kind::Hang, 0.70, 0.92, 0.85, 0.48, 0.60, 0.9, 0.20, 0.12, 0.18},
    {"hinge", Kind::Stand, 0.45, 0.26, 0.95, 0.60, 0.40, 0.85, 0, 0, 0},
    {"block-pull", Kind::Pull, 0.35, 0.22, 0.90, 0.58, 0.45, 0.8, 0, 0, 0},
    {"high-pull", Kind::Pull, 0.55, 0.75, 0.85, 0.49, 0.80, 0.9, 0, 0, 0},
    {"bench-press", Kind::Stand, 0.40, 0.16, 1.35, 0.62, 0.40, 0.8, 0, 0, 0},
    {"calf-raise", Kind::Step, 0.09, 0.14, 0.35, 0.55, 0.12, 0.9, 0, 0, 0},
    {"drop-jump", Kind::DropJump, 0.20, 0, 0, 0, 0, 0, 0, 0, 0},
    {"ankle-hop", Kind::Hop, 0.05, 0, 0, 0, 0, 0, 0, 0, 0},
    {"counter-movement-jump", Kind::CounterMovementJump, 0.30, 0, 0, 0, 0, 0, 0, 0, 0},
    {"squat-jump", Kind::SquatJump, 0.30, 0, 0, 0, 0, 0, 0, 0, 0},
    {"free", Kind::Step, 0.40, 0.50, 0.80, 0.50, 0.45, 0.9, 0, 0, 0},
}};

} // namespace

const Gesture* findGesture(std::string_view key)
{
    const auto found =
        std::find_if(gestures.begin(), gestures.end(), [&](const Gesture& gesture) { return gesture.key == key; });
    return found == gestures.end() ? nullptr : &*found;
}

} // namespace fleetrung::simulator
