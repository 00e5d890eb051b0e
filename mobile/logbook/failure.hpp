// Handing an error on (private to mobile/logbook).
#pragma once

#include "engine/base/error.hpp"

namespace fleetrung::logbook
{

/// `return failure(x);` where `x` is an Expected without a value.
template <class T> [[nodiscard]] tl::unexpected<Error> failure(const Expected<T>& failed)
{
    return tl::unexpected<Error>(failed.error());
}

/// Success or failure alone of a call whose value is not needed.
template <class T> [[nodiscard]] Expected<void> outcome(const Expected<T>& result)
{
    if (!result)
        return failure(result);
    return {};
}

} // namespace fleetrung::logbook
