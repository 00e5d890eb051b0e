// How long the radio waits for what. The defaults are for people; tests wait less.
#pragma once

#include <chrono>

namespace fleetrung::ble
{

struct Timing {
    std::chrono::milliseconds firstRetry{1000}; ///< after the first failure; doubled after each further one
    std::chrono::milliseconds longestRetry{30'000};
    std::chrono::milliseconds attempt{30'000};  ///< from asking for a connection to the last subscription
    std::chrono::milliseconds step{5000};       ///< one read or write on an open link
    std::chrono::milliseconds closing{2000};    ///< stop writes and disconnecting, also at the program's end
    std::chrono::milliseconds silence{3000};    ///< subscribed and no notification: subscribe again, then connect again
    std::chrono::milliseconds scanRetry{1000};  ///< the scan could not start: Bluetooth is off, say
    std::chrono::milliseconds scanAnew{30'000}; ///< a scan is started anew, so that signals are those of now
    std::chrono::milliseconds batch{100};       ///< raw packets and samples for pages are told this often
    std::chrono::milliseconds health{1000};
    std::chrono::milliseconds battery{60'000}; ///< read again where it does not notify
};

} // namespace fleetrung::ble
