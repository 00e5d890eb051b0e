// What goes wrong with a sensor's link. As it stands, nothing does.
#pragma once

namespace fleetrung::demo
{

enum class PairingFault {
    None,     ///< not needed
    Demanded, ///< attributes cannot be used before
    Fails     ///< not needed, and where it is tried it fails and the link is lost
};

struct LinkFaults {
    int refuse = 0; ///< connections not accepted from now on; -1: all
    PairingFault pairing = PairingFault::None;
    bool staleBond = false;     ///< the system keeps a bond that the sensor has forgotten
    int connecting = 120;       ///< ms until a link is up
    int outOfReach = 2000;      ///< ms until the system gives up on a device that is not there
    int discovering = 80;       ///< ms until the services are known
    int forgottenAfter = 30000; ///< ms unheard after which the system forgets a device never connected (BlueZ:
                                ///< TemporaryTimeout 30 s [memory])
};

} // namespace fleetrung::demo
