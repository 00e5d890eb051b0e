// Bench for ears and skin: a cue for each repetition, the stop, a lost sensor; the screen stays on while a lift is
// open.
#pragma once

#include <memory>

#include <QObject>

#include "mobile/feedback/device_body.hpp"
#include "mobile/feedback/speaker.hpp"
#include "mobile/views/bench_view_model.hpp"

namespace fleetrung::views
{

class BenchFeedback : public QObject
{
    Q_OBJECT

public:
    BenchFeedback(const BenchViewModel* bench, const Preferences* preferences,
                  std::unique_ptr<feedback::Speaker> speaker, std::unique_ptr<feedback::DeviceBody> body,
                  QObject* parent = nullptr);

private:
    void tellRepetition();
    void watchSensor();
    void give(feedback::Cue cue, const QString& words);

    const BenchViewModel* bench_;
    const Preferences* preferences_;
    std::unique_ptr<feedback::Speaker> speaker_;
    std::unique_ptr<feedback::DeviceBody> body_;
    BenchViewModel::Sensor before_;
};

} // namespace fleetrung::views
