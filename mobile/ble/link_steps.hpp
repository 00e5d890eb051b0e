// Reads, writes and subscriptions on an open connection, one after another: phone stacks take few at once. A step that
// fails or is not answered in time says so and the next one follows.
#pragma once

#include <chrono>
#include <deque>
#include <functional>

#include <QByteArray>
#include <QLowEnergyCharacteristic>
#include <QLowEnergyService>
#include <QObject>
#include <QTimer>

namespace fleetrung::ble
{

class LinkSteps : public QObject
{
public:
    /// `value`: what was read.
    using Done = std::function<void(bool good, const QByteArray& value)>;

    explicit LinkSteps(std::chrono::milliseconds patience);

    /// Steps on this service's characteristics can be added from now on.
    void serve(QLowEnergyService* service);

    void read(QLowEnergyService* service, const QLowEnergyCharacteristic& characteristic, Done done);
    void write(QLowEnergyService* service, const QLowEnergyCharacteristic& characteristic, const QByteArray& bytes,
               bool withResponse, Done done);
    /// By its client characteristic configuration: 0x0001 to notify, 0x0002 to indicate where it cannot notify, 0x0000.
    void subscribe(QLowEnergyService* service, const QLowEnergyCharacteristic& characteristic, bool on, Done done);
    /// What is waiting is never called.
    void forget();

private:
    struct Step {
        QLowEnergyService* service;
        QLowEnergyCharacteristic characteristic;
        QLowEnergyService::ServiceError failure; ///< how this kind of step fails
        std::function<bool()> begin;             ///< true: nothing will answer, it counts as done
        Done done;
    };

    void add(Step step);
    void next();
    void answered(const QLowEnergyService* service, QLowEnergyService::ServiceError kind,
                  const QLowEnergyCharacteristic& characteristic, const QByteArray& value);
    void finish(bool good, const QByteArray& value);

    std::chrono::milliseconds patience_;
    QTimer late_;
    std::deque<Step> steps_; ///< the first is under way
    bool busy_ = false;
};

} // namespace fleetrung::ble
