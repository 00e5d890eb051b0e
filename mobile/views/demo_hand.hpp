// The invented squad to look at before anyone has trained: who makes it stands in demo/, and the program is put
// together with it. It lives in a logbook of its own, so that nothing invented ever stands among what was done.
#pragma once

#include <functional>

#include <QString>

#include "engine/base/civil_date.hpp"
#include "engine/base/error.hpp"
#include "engine/store/store.hpp"

namespace fleetrung::views
{

struct DemoHand {
    /// Where its logbook is kept between starts; removed when the demo is left.
    QString folder;
    /// Plays the squad into a new logbook, on any thread; gives the day on which it shows most. `progress` takes the
    /// share that is done; where it gives false the playing ends with Cancelled.
    std::function<Expected<CivilDate>(const store::StorePaths& paths, const std::function<bool(double)>& progress)>
        make;
};

} // namespace fleetrung::views
