// One set's source of samples: lives on the live set's thread and takes what the radio's thread puts into its port.
#pragma once

#include <memory>

#include <QObject>

#include "mobile/ble/board.hpp"
#include "mobile/ble/port.hpp"
#include "mobile/ble/radio.hpp"

namespace fleetrung::ble
{

class Tap : public QObject, public sensor::SampleSource
{
public:
    Tap(std::shared_ptr<Board> board, const KnownSensor& sensor);
    ~Tap() override;

    void start(sensor::SourceEvents events) override;
    void stop() override;
    [[nodiscard]] std::string name() const override { return name_; }
    [[nodiscard]] std::string clockFit() const override;
    [[nodiscard]] motion::SensorTraits traits() const override { return traits_; }
    [[nodiscard]] bool hasGyroscope() const override { return hasGyroscope_; }
    [[nodiscard]] std::optional<int> batteryPercent() const override;

private:
    void drain();

    std::shared_ptr<Board> board_;
    QString address_;
    std::string name_;
    motion::SensorTraits traits_;
    bool hasGyroscope_;
    std::shared_ptr<Port> port_;
    sensor::SourceEvents events_;
    sensor::LinkState told_ = sensor::LinkState::Idle;
    std::int64_t missed_ = 0; ///< samples that `failed` has told of
    bool running_ = false;
};

} // namespace fleetrung::ble
