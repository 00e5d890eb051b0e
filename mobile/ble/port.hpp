// Between one running set and the radio's thread: samples one way through a bounded ring, and what else the set asks
// for. The radio's thread never waits for the set: what does not fit is counted as missed.
#pragma once

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>

#include <QMetaObject>
#include <QObject>

#include "engine/base/ring.hpp"
#include "engine/motion/stream_clock.hpp"
#include "engine/sensor/sample_source.hpp"
#include "engine/sensor/stream.hpp"

namespace fleetrung::ble
{

class Port : public std::enable_shared_from_this<Port>
{
public:
    Port() : ring_(capacity) {}

    // On the radio's thread.
    void push(const sensor::StreamSample& sample) { ring_.push(sample); }
    void setState(sensor::LinkState state);
    void setFit(const motion::ClockFit& fit);
    void setBattery(int percent) { battery_ = percent; }
    void wake(); ///< after the pushes of one notification

    // On the set's thread.
    void setReceiver(QObject* receiver, std::function<void()> onWake);
    [[nodiscard]] std::optional<sensor::StreamSample> pop() { return ring_.pop(); }
    [[nodiscard]] std::int64_t missed() const { return ring_.lost(); } ///< samples, since the start
    [[nodiscard]] sensor::LinkState state() const { return state_; }
    [[nodiscard]] motion::ClockFit fit() const;
    [[nodiscard]] int battery() const { return battery_; } ///< percent; -1: not told

private:
    static constexpr std::size_t capacity = 8192; // 4 s of the fastest sensor

    Ring<sensor::StreamSample> ring_;
    std::atomic<sensor::LinkState> state_ = sensor::LinkState::Searching;
    std::atomic<int> battery_ = -1;
    std::atomic<bool> woken_ = false;
    mutable std::mutex mutex_; ///< of what follows
    QObject* receiver_ = nullptr;
    std::function<void()> onWake_;
    motion::ClockFit fit_;
};

} // namespace fleetrung::ble
