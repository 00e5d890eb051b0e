// Pictures of the pages of sensors, with staged sensors: there is no radio where pictures are made.
#pragma once

#include "mobile/app/photographer.hpp"

namespace fleetrung::app
{

void takeSensors(Photographer& photographer, views::AppViewModel& app);

} // namespace fleetrung::app
