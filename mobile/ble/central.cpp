#include "mobile/ble/central.hpp"

#include <utility>

namespace fleetrung::ble
{
namespace
{

ConnectionPlan planOf(const KnownSensor& sensor)
{
    ConnectionPlan plan{.address = sensor.address,
                        .name = sensor.name,
                        .streams = {},
                        .start = sensor.map.start,
                        .stop = sensor.map.stop};
    for (const auto& stream : sensor.map.streams)
        plan.streams.push_back({stream.service, stream.characteristic});
    return plan;
}

} // namespace

Central::Central(const Timing& timing, Tell tell)
    : timing_(timing), tell_(std::move(tell)), zero_(Radio::now()), scanner_(timing, scannerEvents())
{
}

Central::~Central() = default;

void Central::keep(const KnownSensor& sensor)
{
    places_[sensor.address].kept = sensor;
    settle(sensor.address);
}

void Central::release(const QString& address)
{
    places_[address].kept.reset();
    settle(address);
}

void Central::tryNow(const QString& address)
{
    if (const auto place = places_.find(address); place != places_.end() && place->second.link)
        place->second.link->tryNow();
}

void Central::tryAll()
{
    for (const auto& [address, place] : places_)
        if (place.link)
            place.link->tryNow();
}

void Central::listen(const QString& address)
{
    const QString before = std::exchange(taught_, address);
    if (!before.isEmpty())
        settle(before);
    if (!address.isEmpty())
        settle(address);
}

void Central::attach(const QString& address, const std::shared_ptr<Port>& port)
{
    auto& place = places_[address];
    place.sets.push_back(port);
    if (place.use == Use::Kept)
        static_cast<StreamFeed&>(*place.feed).attach(port);
}

void Central::detach(const QString& address, const std::shared_ptr<Port>& port)
{
    auto& place = places_[address];
    std::erase(place.sets, port);
    if (place.use == Use::Kept)
        static_cast<StreamFeed&>(*place.feed).detach(port);
}

void Central::end(std::function<void()> ended)
{
    ending_ = true;
    ended_ = std::move(ended);
    scanner_.userWants(false);
    for (auto& [address, place] : places_)
        settle(address);
    onLinkEnded({});
}

Central::Use Central::wantedUse(const QString& address, const Place& place) const
{
    if (ending_)
        return Use::None;
    if (address == taught_)
        return Use::Taught;
    return place.kept ? Use::Kept : Use::None;
}

/// Brings the link of an address to what is wanted of it now; an old one ends first.
void Central::settle(const QString& address)
{
    auto& place = places_[address];
    const Use wanted = wantedUse(address, place);
    if (place.link && wanted == Use::Kept && place.use == wanted && !place.ending)
        takeOver(place);
    else if (place.link && (place.use != wanted) && !place.ending) {
        place.ending = true;
        place.link->end();
    } else if (!place.link && wanted != Use::None)
        makeLink(address, place, wanted);
}

void Central::takeOver(Place& place)
{
    if (planOf(*place.kept).sameAs(place.link->plan())) {
        static_cast<StreamFeed&>(*place.feed).take(*place.kept);
        return;
    }
    place.ending = true; // other characteristics: another connection
    place.link->end();
}

void Central::makeLink(const QString& address, Place& place, Use use)
{
    place.use = use;
    place.ending = false;
    ConnectionPlan plan{.address = address, .name = {}, .streams = {}, .start = {}, .stop = {}};
    if (use == Use::Kept) {
        auto feed = makeStreamFeed(*place.kept);
        for (const auto& port : place.sets)
            feed->attach(port);
        place.feed = std::move(feed);
        plan = planOf(*place.kept);
    } else {
        place.feed = makeListener(address);
    }
    place.link = std::make_unique<Link>(std::move(plan), timing_, *place.feed, linkEvents(address));
    place.link->begin();
}

void Central::onLinkEnded(const QString& address)
{
    if (const auto found = places_.find(address); found != places_.end()) {
        auto& place = found->second;
        place.link.reset();
        place.feed.reset();
        place.use = Use::None;
        place.ending = false;
        settle(address);
        if (!place.link && !place.kept && place.sets.empty())
            places_.erase(found);
    }
    if (!ending_)
        return;
    for (const auto& [other, place] : places_)
        if (place.link)
            return;
    if (const auto ended = std::exchange(ended_, {}))
        ended();
}

std::unique_ptr<StreamFeed> Central::makeStreamFeed(const KnownSensor& sensor)
{
    const QString address = sensor.address;
    return std::make_unique<StreamFeed>(
        sensor, zero_, timing_,
        StreamFeed::Events{.health =
                               [this, address](const auto& health) {
                                   tell_([=](Radio& radio) { emit radio.health(address, health); });
                               },
                           .rezeroed =
                               [this, address](const auto& calibration) {
                                   if (auto& kept = places_[address].kept)
                                       kept->calibration = calibration;
                                   tell_([=](Radio& radio) { emit radio.rezeroed(address, calibration); });
                               },
                           .samples =
                               [this, address](const auto& samples) {
                                   tell_([=](Radio& radio) { emit radio.samples(address, samples); });
                               }});
}

std::unique_ptr<Listener> Central::makeListener(const QString& address)
{
    return std::make_unique<Listener>(
        timing_, Listener::Events{.learning =
                                      [this, address](const auto& notifiers) {
                                          tell_([=](Radio& radio) { emit radio.learning(address, notifiers); });
                                      },
                                  .raw =
                                      [this, address](const auto& packets) {
                                          tell_([=](Radio& radio) { emit radio.raw(address, packets); });
                                      }});
}

Link::Events Central::linkEvents(const QString& address)
{
    return {.state =
                [this, address](sensor::LinkState state) {
                    tell_([=](Radio& radio) { emit radio.stateChanged(address, state); });
                },
            .trouble =
                [this, address](std::optional<TroubleKind> kind) {
                    // While Bluetooth itself is off, that is what the user needs to know.
                    const bool ofTheRadio = kind == TroubleKind::NoAdapter || kind == TroubleKind::NotAllowed;
                    if (kind && (ofTheRadio || scanner_.inTrouble()))
                        kind.reset();
                    const auto& kept = places_[address].kept;
                    tellTrouble(address, kept ? kept->name : QString(), kind);
                },
            .info = [this,
                     address](const SensorInfo& info) { tell_([=](Radio& radio) { emit radio.info(address, info); }); },
            .wantsScan = [this, address](bool scan) { scanner_.linkWants(address, scan); },
            .ended =
                [this, address] {
                    QMetaObject::invokeMethod(
                        this, [this, address] { onLinkEnded(address); }, Qt::QueuedConnection);
                }};
}

Scanner::Events Central::scannerEvents()
{
    return {.found = [this](const FoundSensor& sensor) { tell_([=](Radio& radio) { emit radio.found(sensor); }); },
            .sighted =
                [this](const QString& address) {
                    if (const auto place = places_.find(address); place != places_.end() && place->second.link)
                        place->second.link->sighted();
                },
            .userScan = [this](bool on) { tell_([=](Radio& radio) { emit radio.scanningChanged(on); }); },
            .trouble = [this](TroubleKind kind) { tellTrouble({}, {}, kind); },
            .troubleOver =
                [this] {
                    tellTrouble({}, {}, std::nullopt);
                    // Queued: the scan is just being started, perhaps by a link.
                    QMetaObject::invokeMethod(
                        this, [this] { tryAll(); }, Qt::QueuedConnection);
                }};
}

void Central::tellTrouble(const QString& address, const QString& name, std::optional<TroubleKind> kind)
{
    tell_([=](Radio& radio) {
        if (kind)
            emit radio.trouble(address, Trouble{*kind, troubleText(*kind, name)});
        else
            emit radio.troubleOver(address);
    });
}

} // namespace fleetrung::ble
