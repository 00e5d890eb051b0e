#include "mobile/ble/link.hpp"

#include <algorithm>
#include <utility>

namespace fleetrung::ble
{
namespace
{

using sensor::LinkState;
using std::chrono::milliseconds;

constexpr int failuresBeforeNotFound = 3; // one try and two searches: then the user is told
constexpr int watchesPerSilence = 6;

milliseconds backOff(const Timing& timing, int failures)
{
    const int doublings = std::clamp(failures - 1, 0, 20);
    return std::min(timing.firstRetry * (1 << doublings), timing.longestRetry);
}

} // namespace

Link::Link(ConnectionPlan plan, const Timing& timing, Feed& feed, Events events)
    : plan_(std::move(plan)), timing_(timing), feed_(feed), events_(std::move(events))
{
    retry_.setSingleShot(true);
    connect(&retry_, &QTimer::timeout, this, &Link::connectNow);
    connect(&watch_, &QTimer::timeout, this, &Link::watch);
    connect(&check_, &QTimer::timeout, this, [this] {
        const auto complaint = feed_.check(Radio::now());
        if (flowing_)
            setTrouble(complaint);
    });
}

Link::~Link() = default;

void Link::begin()
{
    connectNow(); // without a search: the system may know it, or the link may be up from before
}

void Link::sighted()
{
    heard_ = true;
    if (retry_.isActive() && atOnce_)
        connectNow();
}

void Link::tryNow()
{
    failures_ = 0;
    if (retry_.isActive())
        connectNow();
}

void Link::end()
{
    ending_ = true;
    retry_.stop();
    watch_.stop();
    check_.stop();
    events_.wantsScan(false);
    if (connection_)
        connection_->close(TroubleKind::Dropped);
    else if (!dying_)
        ended();
}

void Link::connectNow()
{
    if (connection_ || dying_ || ending_)
        return;
    retry_.stop();
    events_.wantsScan(false);
    setState(LinkState::Connecting);
    flowing_ = askedAgain_ = false;
    connection_ = std::make_unique<Connection>(
        plan_, timing_,
        Connection::Events{.streaming = [this](const auto& notifiers) { onStreaming(notifiers); },
                           .packet =
                               [this](std::size_t source, std::span<const std::uint8_t> bytes, std::int64_t arrival) {
                                   lastPacket_ = arrival;
                                   flowing_ = true;
                                   feed_.packet(source, bytes, arrival);
                               },
                           .info =
                               [this](const SensorInfo& info) {
                                   feed_.info(info);
                                   events_.info(info);
                               },
                           .ended = [this](TroubleKind kind) { onEnded(kind); }});
    connection_->open();
}

void Link::onStreaming(const std::vector<sensor::Notifier>& notifiers)
{
    known_ = true;
    lastPacket_ = Radio::now();
    watch_.start(timing_.silence / watchesPerSilence);
    check_.start(timing_.health);
    feed_.streaming(notifiers);
    setState(LinkState::Streaming);
}

void Link::watch()
{
    if (flowing_) {
        failures_ = 0;
        askedAgain_ = false;
        if (trouble_ && *trouble_ != TroubleKind::Unreadable && *trouble_ != TroubleKind::TooSlow)
            setTrouble(std::nullopt);
    }
    if (Radio::now() - lastPacket_ < std::chrono::nanoseconds(timing_.silence).count())
        return;
    setTrouble(TroubleKind::Silent);
    flowing_ = false;
    lastPacket_ = Radio::now();
    if (askedAgain_ && feed_.alwaysFlows())
        return connection_->close(TroubleKind::Silent);
    askedAgain_ = true;
    connection_->resubscribe();
}

void Link::onEnded(TroubleKind kind)
{
    watch_.stop();
    check_.stop();
    if (state_ == LinkState::Streaming)
        feed_.lost();
    // Gone before anything else happens.
    Connection* const dead = connection_.release();
    dying_ = true;
    connect(dead, &QObject::destroyed, this, [this, kind] {
        dying_ = false;
        if (!ending_)
            return waitAndRetry(kind);
        ended();
    });
    dead->deleteLater();
}

void Link::ended()
{
    setTrouble(std::nullopt); // nobody wants this link any more: what follows it tells its own
    setState(LinkState::Idle);
    events_.ended();
}

void Link::waitAndRetry(TroubleKind kind)
{
    if (flowing_)
        failures_ = 0;
    ++failures_;
    kind = meaningOf(kind);
    // A sensor that was lost or could not be found is welcome at any moment; one that refuses is left in peace.
    atOnce_ = kind == TroubleKind::Dropped || kind == TroubleKind::NotFound || failures_ == 1;
    heard_ = false;
    setState(known_ ? LinkState::Lost : LinkState::Searching);
    retry_.start(backOff(timing_, failures_));
    events_.wantsScan(true);
    if (kind != TroubleKind::NotFound || failures_ >= failuresBeforeNotFound)
        setTrouble(kind);
}

/// What the failure of a connection means, seen with what is known beside it.
TroubleKind Link::meaningOf(TroubleKind kind) const
{
    if (kind == TroubleKind::NotFound && heard_)
        kind = TroubleKind::Refused; // it is there
    // A sensor that is near, is paired and lets nobody in twice has most likely forgotten the pairing.
    if (kind == TroubleKind::Refused && failures_ >= 2 && isPaired(plan_.address))
        kind = TroubleKind::BondStale;
    return kind;
}

void Link::setState(LinkState state)
{
    if (state == state_)
        return;
    state_ = state;
    feed_.state(state);
    events_.state(state);
}

void Link::setTrouble(std::optional<TroubleKind> trouble)
{
    if (trouble == trouble_)
        return;
    trouble_ = trouble;
    events_.trouble(trouble);
}

} // namespace fleetrung::ble
