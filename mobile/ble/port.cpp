#include "mobile/ble/port.hpp"

#include <utility>

namespace fleetrung::ble
{

void Port::setState(sensor::LinkState state)
{
    state_ = state;
    wake();
}

void Port::setFit(const motion::ClockFit& fit)
{
    const std::scoped_lock lock(mutex_);
    fit_ = fit;
}

motion::ClockFit Port::fit() const
{
    const std::scoped_lock lock(mutex_);
    return fit_;
}

void Port::wake()
{
    if (woken_.exchange(true))
        return; // it is on its way
    const std::scoped_lock lock(mutex_);
    if (receiver_)
        QMetaObject::invokeMethod(
            receiver_,
            [port = shared_from_this(), onWake = onWake_] {
                port->woken_ = false; // before looking: what comes from now on wakes again
                onWake();
            },
            Qt::QueuedConnection);
}

void Port::setReceiver(QObject* receiver, std::function<void()> onWake)
{
    const std::scoped_lock lock(mutex_);
    receiver_ = receiver;
    onWake_ = std::move(onWake);
    woken_ = false;
}

} // namespace fleetrung::ble
