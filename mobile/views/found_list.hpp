// What a search found, in the order in which a person wants it: saved sensors, then those that advertise what a known
// map reads, then the strongest. All are listed; the filter is the user's own.
#pragma once

#include <vector>

#include <QList>
#include <QSet>
#include <QString>
#include <QVariantMap>

#include "mobile/ble/radio.hpp"

namespace fleetrung::views
{

class FoundList
{
public:
    void clear() { heard_.clear(); }
    void hear(const ble::FoundSensor& sensor);
    void setSaved(const QSet<QString>& addresses) { saved_ = addresses; }
    /// Services that the known maps read.
    void setLikelyServices(const QSet<QString>& services) { likely_ = services; }

    [[nodiscard]] int count() const { return static_cast<int>(heard_.size()); }
    /// Rows of key, name, detail, bars, signal and saved whose name or address holds `filter`.
    [[nodiscard]] QList<QVariantMap> rows(const QString& filter) const;
    [[nodiscard]] const ble::FoundSensor* find(const QString& address) const;

private:
    struct Heard {
        ble::FoundSensor sensor;
        double strength = 0; ///< dBm, smoothed: a row must not jump about under the finger
    };
    [[nodiscard]] bool isLikely(const ble::FoundSensor& sensor) const;

    std::vector<Heard> heard_; ///< in the order in which they were first heard
    QSet<QString> saved_;
    QSet<QString> likely_;
};

/// Its name, or "No name" and the end of its address.
[[nodiscard]] QString foundName(const ble::FoundSensor& sensor);

} // namespace fleetrung::views
