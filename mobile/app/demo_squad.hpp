// The invented squad that a new user may look at. Implemented in demo/, where everything invented stands.
#pragma once

#include "mobile/views/demo_hand.hpp"

namespace fleetrung::app
{

[[nodiscard]] views::DemoHand demoSquad(const QString& folder);

} // namespace fleetrung::app
