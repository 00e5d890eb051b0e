// What the centrals did to a simulated sensor: tests ask for it.
#pragma once

#include <cstdint>

#include <QMap>
#include <QString>

namespace fleetrung::demo
{

struct Counts {
    qint64 connectCalls = 0; ///< calls of Connect, those that fail included
    qint64 connections = 0;  ///< links that came about
    qint64 disconnectCalls = 0;
    qint64 linksLost = 0; ///< ended by the sensor or the air
    qint64 startNotify = 0;
    qint64 stopNotify = 0;
    qint64 pairCalls = 0;
    qint64 reads = 0;
    qint64 writes = 0;
    qint64 notifications = 0; ///< that went to the bus: lost ones not, doubled ones twice

    [[nodiscard]] QMap<QString, qint64> byName() const
    {
        return {{"connectCalls", connectCalls},
                {"connections", connections},
                {"disconnectCalls", disconnectCalls},
                {"linksLost", linksLost},
                {"startNotify", startNotify},
                {"stopNotify", stopNotify},
                {"pairCalls", pairCalls},
                {"reads", reads},
                {"writes", writes},
                {"notifications", notifications}};
    }
};

} // namespace fleetrung::demo
