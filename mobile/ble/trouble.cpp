// What went wrong, and what to do about it: two sentences at most, each for people in a hurry.
#include "mobile/ble/radio.hpp"

#include <QCoreApplication>

namespace fleetrung::ble
{
namespace
{

struct RadioTroubleWords {
    Q_DECLARE_TR_FUNCTIONS(RadioTroubleWords)
};

QString patternOf(TroubleKind kind)
{
    switch (kind) {
    case TroubleKind::BluetoothOff:
        return RadioTroubleWords::tr("Bluetooth is off. Switch it on: the sensor then connects by itself.");
    case TroubleKind::NoAdapter:
        return RadioTroubleWords::tr("No Bluetooth was found on this device. Switch it on in the system's "
                                     "settings, or plug a Bluetooth adapter in.");
    case TroubleKind::NotAllowed:
        return RadioTroubleWords::tr("Fleetrung may not use Bluetooth. Allow it in the system's settings for "
                                     "Fleetrung; on older phones location must be on, too.");
    case TroubleKind::NotFound:
        return RadioTroubleWords::tr("%1 is not in reach. Switch it on and bring it near: it then connects "
                                     "by itself.");
    case TroubleKind::Refused:
        return RadioTroubleWords::tr("%1 is near but did not let us in. Disconnect it from any other phone, "
                                     "or switch it off and on.");
    case TroubleKind::Dropped:
        return RadioTroubleWords::tr("The connection to %1 was lost and is being made again. Keep the phone "
                                     "within a few metres of it.");
    case TroubleKind::WrongSensor:
        return RadioTroubleWords::tr("%1 answers, but it is not the kind of sensor it was saved as. Choose "
                                     "another description for it, or teach it anew.");
    case TroubleKind::BondStale:
        return RadioTroubleWords::tr("%1 asks for pairing, and the pairing with this device does not work. Open "
                                     "the system's Bluetooth settings, forget (remove) %1 there, and connect "
                                     "again.");
    case TroubleKind::Silent:
        return RadioTroubleWords::tr("%1 is connected but sends nothing; it is being asked again. If this "
                                     "stays, switch it off and on.");
    case TroubleKind::Unreadable:
        return RadioTroubleWords::tr("%1 sends data that its description does not fit. Choose another "
                                     "description for it, or teach it anew.");
    case TroubleKind::TooSlow:
        return RadioTroubleWords::tr("%1 sends more than this connection may carry, and samples can be lost. "
                                     "Set a lower rate on the sensor if you can.");
    }
    return {};
}

} // namespace

QString troubleText(TroubleKind kind, const QString& sensorName)
{
    const QString name = sensorName.isEmpty() ? RadioTroubleWords::tr("The sensor") : sensorName;
    QString text = patternOf(kind);
    return text.replace(QLatin1String("%1"), name);
}

} // namespace fleetrung::ble
