// Share of 1RM from velocity by published equations of groups. General equations for the squat differ from each other
// by more than 10 % of 1RM: the athlete's own line (load_velocity.hpp) is always preferred, and what is shown from here
// is called general.
#pragma once

#include <string_view>

#include "engine/base/error.hpp"

namespace fleetrung::strength
{

struct GeneralShare {
    double share = 0; ///< of 1RM
    double low = 0;   ///< one standard error of estimate below
    double high = 0;  ///< and above
    std::string_view source;
};

/// `velocity`: mean propulsive velocity of full squat and bench press, mean velocity of the parallel squat [m/s].
/// Full squat: -5.961 v^2 - 50.71 v + 117.0 % (Sanchez-Medina et al. 2017, Sports Med Int Open 1(2):E80-E88; SEE 0.06
/// m/s; coefficients from memory). Parallel squat: 120.15 - 83.54 v % (Naclerio & Larumbe-Zabala; its error is not
/// known here, 10 % of 1RM is taken). Bench press: 8.4326 v^2 - 73.501 v + 112.33 % (Gonzalez-Badillo & Sanchez-Medina
/// 2010, Int J Sports Med 31(5):347-352; SEE 3.56 %; from memory). NotAvailable for other lifts and where the equation
/// leaves 30 to 105 % of 1RM; InvalidInput for a velocity that is not above zero.
[[nodiscard]] Expected<GeneralShare> generalShare(std::string_view lift, double velocity);

} // namespace fleetrung::strength
