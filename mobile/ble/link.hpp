// Keeps one sensor connected until it is ended: connects, waits with back-off after a failure, connects at once when
// the sensor is heard again, watches that notifications keep coming. At most one Connection at any time; the old one is
// deleted before the next is made.
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QTimer>

#include "mobile/ble/connection.hpp"
#include "mobile/ble/feed.hpp"

namespace fleetrung::ble
{

class Link : public QObject
{
public:
    struct Events {
        std::function<void(sensor::LinkState)> state;
        std::function<void(std::optional<TroubleKind>)> trouble; ///< none: it is over
        std::function<void(const SensorInfo&)> info;
        std::function<void(bool)> wantsScan;
        std::function<void()> ended; ///< after end(), the last call; may come from inside of it
    };

    Link(ConnectionPlan plan, const Timing& timing, Feed& feed, Events events);
    ~Link() override;

    void begin();
    void sighted(); ///< the sensor was heard just now
    void tryNow();
    void end();

    [[nodiscard]] const ConnectionPlan& plan() const { return plan_; }

private:
    void connectNow();
    void onStreaming(const std::vector<sensor::Notifier>& notifiers);
    void onEnded(TroubleKind kind);
    void waitAndRetry(TroubleKind kind);
    void watch();
    void setState(sensor::LinkState state);
    void setTrouble(std::optional<TroubleKind> trouble);
    void ended();
    [[nodiscard]] TroubleKind meaningOf(TroubleKind kind) const;

    ConnectionPlan plan_;
    Timing timing_;
    Feed& feed_;
    Events events_;
    std::unique_ptr<Connection> connection_;
    QTimer retry_, watch_, check_;
    sensor::LinkState state_ = sensor::LinkState::Idle;
    std::optional<TroubleKind> trouble_;
    int failures_ = 0; ///< in a row
    bool ending_ = false;
    bool dying_ = false;   ///< the last connection is about to be deleted
    bool known_ = false;   ///< it has streamed before: gone now means lost, not yet to be found
    bool flowing_ = false; ///< a packet came since the last subscription
    bool askedAgain_ = false;
    bool heard_ = false;  ///< sighted since the last failure
    bool atOnce_ = false; ///< a sighting is reason to connect without waiting
    std::int64_t lastPacket_ = 0;
};

} // namespace fleetrung::ble
