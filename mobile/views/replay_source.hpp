// A recording played as if a sensor sent it: the same port as a radio, so that nothing behind it can tell: same
// samples, same receipts, same clock fit. Lives on the thread that starts it, which must have an event loop.
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

#include "engine/sensor/sample_source.hpp"

namespace fleetrung::views
{

class ReplaySource : public QObject, public sensor::SampleSource
{
    Q_OBJECT

public:
    /// `speed` 1 plays in real time; 0 hands over everything as fast as it is taken.
    ReplaySource(motion::Recording recording, std::string name, double speed);

    void start(sensor::SourceEvents events) override;
    void stop() override;
    [[nodiscard]] std::string name() const override { return name_; }
    [[nodiscard]] std::string clockFit() const override { return recording_.clockFit; }
    [[nodiscard]] motion::SensorTraits traits() const override { return recording_.sensor; }
    [[nodiscard]] bool hasGyroscope() const override { return recording_.hasGyroscope; }
    [[nodiscard]] std::optional<int> batteryPercent() const override { return std::nullopt; }

private:
    void play();

    motion::Recording recording_;
    std::string name_;
    double speed_;
    sensor::SourceEvents events_;
    std::size_t next_ = 0;
    QElapsedTimer since_;
    QTimer timer_;
};

} // namespace fleetrung::views
