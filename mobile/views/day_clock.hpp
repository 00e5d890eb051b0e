// The one place of the interface that reads the clock. A training day lasts until four in the morning: a session past
// midnight still belongs to the day before.
#pragma once

#include <optional>

#include "engine/store/records.hpp"

namespace fleetrung::views
{

class DayClock
{
public:
    /// A fixed training day: for demonstrations and pictures of a stored season.
    explicit DayClock(std::optional<CivilDate> fixed = {}) : fixed_(fixed) {}

    [[nodiscard]] store::Moment now() const;
    [[nodiscard]] CivilDate today() const { return now().trainingDay; }
    void fix(CivilDate day) { fixed_ = day; }

private:
    std::optional<CivilDate> fixed_;
};

} // namespace fleetrung::views
