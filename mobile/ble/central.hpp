// All of the radio that lives on its own thread: the scan and the links. One place an address, so that a sensor has one
// link at any time, be it kept or taught.
#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>

#include <QObject>

#include "mobile/ble/link.hpp"
#include "mobile/ble/listener.hpp"
#include "mobile/ble/port.hpp"
#include "mobile/ble/scanner.hpp"
#include "mobile/ble/stream_feed.hpp"

namespace fleetrung::ble
{

class Central : public QObject
{
public:
    /// Brings a call to the interface's thread.
    using Tell = std::function<void(std::function<void(Radio&)>)>;

    Central(const Timing& timing, Tell tell);
    ~Central() override;

    void scan(bool on) { scanner_.userWants(on); }
    void keep(const KnownSensor& sensor);
    void release(const QString& address);
    void tryNow(const QString& address);
    void listen(const QString& address); ///< empty: no more
    void attach(const QString& address, const std::shared_ptr<Port>& port);
    void detach(const QString& address, const std::shared_ptr<Port>& port);
    /// Ends everything; `ended` is called once, perhaps at once.
    void end(std::function<void()> ended);

private:
    enum class Use { None, Kept, Taught };
    struct Place {
        std::optional<KnownSensor> kept;
        Use use = Use::None; ///< of the link that is there
        bool ending = false;
        std::unique_ptr<Feed> feed;
        std::unique_ptr<Link> link;
        std::vector<std::shared_ptr<Port>> sets;
    };

    void tryAll();
    void settle(const QString& address);
    [[nodiscard]] Use wantedUse(const QString& address, const Place& place) const;
    void makeLink(const QString& address, Place& place, Use use);
    void takeOver(Place& place);
    void onLinkEnded(const QString& address);
    [[nodiscard]] std::unique_ptr<StreamFeed> makeStreamFeed(const KnownSensor& sensor);
    [[nodiscard]] std::unique_ptr<Listener> makeListener(const QString& address);
    [[nodiscard]] Link::Events linkEvents(const QString& address);
    [[nodiscard]] Scanner::Events scannerEvents();
    void tellTrouble(const QString& address, const QString& name, std::optional<TroubleKind> kind);

    Timing timing_;
    Tell tell_;
    std::int64_t zero_; ///< ns: time 0 of all sensors
    Scanner scanner_;
    std::map<QString, Place> places_;
    QString taught_;
    bool ending_ = false;
    std::function<void()> ended_;
};

} // namespace fleetrung::ble
