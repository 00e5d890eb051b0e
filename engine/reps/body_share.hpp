// Which share of body mass moves with the bar: system mass = load + share * body mass.
//
// Segment masses as shares of body mass: Winter, Biomechanics and Motor Control of Human Movement, after Dempster (from
// memory): foot 0.0145, shank 0.0465, head, arms and trunk 0.678. Which segments count for which lift is a starting
// value of this project: each segment moves by another amount than the bar, and a share can only say "with it" or
// "not".
//
//   share                  lifts
//   allButShanksAndFeet    squats of every depth, pulls, cleans (there the bar goes farther than the body: the rougher)
//   allButOneShankAndFoot  step-up (the leg on the box)
//   allButFeet             calf raise
//   headArmsTrunk          hinge
//   whole                  drop jump
//   nothing                bench press (the arms are left out), free stroke
#pragma once

namespace fleetrung::reps::bodyShares
{

inline constexpr double foot = 0.0145;
inline constexpr double shank = 0.0465;

inline constexpr double nothing = 0;
inline constexpr double headArmsTrunk = 0.678;
inline constexpr double allButShanksAndFeet = 1 - 2 * (shank + foot);
inline constexpr double allButOneShankAndFoot = 1 - (shank + foot);
inline constexpr double allButFeet = 1 - 2 * foot;
inline constexpr double whole = 1;

} // namespace fleetrung::reps::bodyShares
