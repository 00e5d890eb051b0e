#include "mobile/ble/tap.hpp"

#include <utility>

#include "mobile/ble/central.hpp"

namespace fleetrung::ble
{

Tap::Tap(std::shared_ptr<Board> board, const KnownSensor& sensor)
    : board_(std::move(board)), address_(sensor.address), name_(sensor.name.toStdString()), traits_(sensor.map.traits),
      hasGyroscope_(sensor.map.hasGyroscope()), port_(std::make_shared<Port>())
{
}

Tap::~Tap()
{
    stop();
}

void Tap::start(sensor::SourceEvents events)
{
    stop();
    events_ = std::move(events);
    running_ = true;
    told_ = sensor::LinkState::Idle;
    missed_ = 0;
    port_ = std::make_shared<Port>(); // nothing of an earlier set is left in it
    port_->setReceiver(this, [this] { drain(); });
    board_->post([address = address_, port = port_](Central& central) { central.attach(address, port); });
}

void Tap::stop()
{
    if (!std::exchange(running_, false))
        return;
    port_->setReceiver(nullptr, {});
    events_ = {};
    board_->post([address = address_, port = port_](Central& central) { central.detach(address, port); });
}

void Tap::drain()
{
    // Any of these calls may stop us: then the port is another one's or nobody's.
    const auto port = port_;
    const auto ours = [this, &port] { return running_ && port_ == port; };
    while (ours()) {
        const auto next = port->pop();
        if (!next)
            break;
        events_.sample(next->sample, next->receipt);
    }
    if (const auto missed = port->missed(); ours() && missed > missed_)
        events_.failed({Code::NotAvailable, name_,
                        std::to_string(missed - std::exchange(missed_, missed)) +
                            " samples were lost because this device was too busy; close other programs"});
    if (const auto state = port->state(); ours() && state != told_) {
        told_ = state;
        events_.stateChanged(state);
    }
}

std::string Tap::clockFit() const
{
    return motion::clockFitText(port_->fit());
}

std::optional<int> Tap::batteryPercent() const
{
    const int percent = port_->battery();
    return percent < 0 ? std::nullopt : std::optional(percent);
}

} // namespace fleetrung::ble
