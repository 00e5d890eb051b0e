// A kept sensor: its notifications become samples, its samples go to the sets that run, its health is told.
#pragma once

#include <functional>
#include <memory>
#include <vector>

#include <QElapsedTimer>
#include <QObject>

#include "engine/sensor/stream.hpp"
#include "mobile/ble/feed.hpp"
#include "mobile/ble/port.hpp"
#include "mobile/ble/timing.hpp"

namespace fleetrung::ble
{

class StreamFeed : public Feed
{
public:
    struct Events {
        std::function<void(const sensor::Health&)> health;
        std::function<void(const motion::Calibration&)> rezeroed;
        std::function<void(const std::vector<motion::Sample>&)> samples; ///< uncalibrated
    };

    StreamFeed(const KnownSensor& sensor, std::int64_t zero, const Timing& timing, Events events);

    /// Another map or calibration; the link stays.
    void take(const KnownSensor& sensor);
    void attach(std::shared_ptr<Port> port);
    void detach(const std::shared_ptr<Port>& port);

    void packet(std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival) override;
    void streaming(const std::vector<sensor::Notifier>&) override {}
    void state(sensor::LinkState state) override;
    void info(const SensorInfo& info) override;
    void lost() override;
    std::optional<TroubleKind> check(std::int64_t now) override;
    [[nodiscard]] bool alwaysFlows() const override { return true; }

private:
    void toSets(std::span<const sensor::StreamSample> samples);
    void toPages(std::span<const sensor::StreamSample> samples, std::int64_t arrival);
    [[nodiscard]] bool unreadable(const sensor::Health& health);
    [[nodiscard]] bool tooSlow(const sensor::Health& health) const;

    sensor::SensorMap map_;
    motion::Calibration calibration_; ///< as last told
    std::int64_t zero_;
    Timing timing_;
    Events events_;
    sensor::Stream stream_;
    std::vector<std::shared_ptr<Port>> sets_;
    sensor::LinkState state_ = sensor::LinkState::Searching;
    SensorInfo info_;
    std::vector<motion::Sample> forPages_;
    std::int64_t lastTelling_ = 0;
    double lastTime_; ///< s, of the last sample handed on
    std::int64_t packets_ = 0, packetsChecked_ = 0, samplesChecked_ = 0;
    int longest_ = 0; ///< bytes of a notification that came
    int unread_ = 0;  ///< checks in a row with packets and without samples
};

} // namespace fleetrung::ble
