#include "engine/jumps/analyse.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/numbers.hpp"
#include "engine/jumps/edges.hpp"
#include "engine/jumps/landing.hpp"
#include "engine/jumps/vertical_speed.hpp"

namespace fleetrung::jumps
{
namespace
{

constexpr double shortestRecording = 0.5; // s
constexpr double lowestRate = 80.0;       // Hz
constexpr double longestContact = 0.8;    // s: longer, and it is a new jump from standing
constexpr double bounceShare = 0.6;       // of the jump's flight: a shorter one beside it is a bounce

std::optional<Error> refusal(const motion::Recording& recording)
{
    const auto& samples = recording.samples;
    if (samples.size() < 8 || samples.back().time - samples.front().time < shortestRecording)
        return Error{Code::InvalidInput, "", "the recording is shorter than half a second; record the whole set"};
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const auto place = "sample " + integerText(static_cast<std::int64_t>(i));
        if (!samples[i].specificForce.allFinite() || !samples[i].angularRate.allFinite() ||
            !std::isfinite(samples[i].time))
            return Error{Code::InvalidInput, place, "a reading is no number"};
        if (i > 0 && samples[i].time <= samples[i - 1].time)
            return Error{Code::InvalidInput, place, "time does not increase"};
    }
    const double rate = motion::samplingRate(recording);
    if (rate < lowestRate)
        return Error{Code::NotAvailable, "",
                     "the sensor sends " + fixedText(rate, 1) +
                         " samples a second; a contact of 0.2 s needs 80 or more"};
    return std::nullopt;
}

/// A flight with its exact ends.
struct Air {
    Flight flight;
    Measured takeoff;
    std::optional<Measured> landing;

    [[nodiscard]] double duration() const { return landing ? landing->value - takeoff.value : longestFlight; }
};

using Chain = std::vector<Air>; ///< flights with contacts between them

std::vector<Air> airs(const Signal& signal, Worn worn)
{
    std::vector<Air> all;
    if (worn == Worn::Waist) {
        for (const auto& flight : waistFlights(signal))
            all.push_back({flight, waistTakeoff(signal, flight),
                           flight.landed ? std::optional(waistLanding(signal, flight)) : std::nullopt});
        return all;
    }
    const auto rate = heelRate(signal);
    for (const auto& flight : shoeFlights(signal))
        all.push_back({flight, shoeTakeoff(signal, flight, rate),
                       flight.landed ? std::optional(shoeLanding(signal, flight)) : std::nullopt});
    return all;
}

std::vector<Chain> chains(const std::vector<Air>& all)
{
    std::vector<Chain> found;
    for (const auto& air : all) {
        const bool linked = air.flight.pushed && !found.empty() && found.back().back().landing &&
                            air.takeoff.value - found.back().back().landing->value < longestContact;
        if (linked)
            found.back().push_back(air);
        else
            found.push_back({air});
    }
    return found;
}

class Assembler
{
public:
    Assembler(const Signal& theSignal, const Request& theRequest) : signal(theSignal), request(theRequest) {}

    void add(const Chain& chain, std::vector<Jump>& jumps) const
    {
        const bool fall = !chain.front().flight.pushed;
        const std::size_t main = mainOf(chain);
        const bool reactive = fall || request.kind == Kind::Hop;
        const bool alone = chain.size() - main <= 3 && bouncesAfter(chain, main);
        if (!reactive && (alone || isStanding(request.kind))) {
            keep(fromStanding(chain.front(), chain.size() > 1), jumps);
            return;
        }
        if (fall && chain.size() > main && main > 0 && request.kind != Kind::Hop) {
            Jump jump = fromContact(chain.front(), chain[main], Kind::Drop);
            if (main > 1 || (alone && chain.size() > main + 1))
                jump.flags = jump.flags | Flag::DoubleBounce;
            keep(jump, jumps);
            if (alone)
                return;
        }
        for (std::size_t i = fall ? main + 1 : 1; i < chain.size(); ++i)
            keep(fromContact(chain[i - 1], chain[i], Kind::Hop), jumps);
    }

private:
    static bool isStanding(std::optional<Kind> kind) { return kind == Kind::CounterMovement || kind == Kind::Squat; }

    /// The jump itself: after a fall the longest of what follows, as a bounce may stand before it; else the first.
    static std::size_t mainOf(const Chain& chain)
    {
        if (chain.front().flight.pushed || chain.size() == 1)
            return 0;
        for (std::size_t i = 1; i + 1 < chain.size(); ++i)
            if (chain[i].duration() >= bounceShare * chain[i + 1].duration())
                return i;
        return chain.size() - 1;
    }

    static bool bouncesAfter(const Chain& chain, std::size_t main)
    {
        for (std::size_t i = main + 1; i < chain.size(); ++i)
            if (chain[i].duration() >= bounceShare * chain[main].duration())
                return false;
        return true;
    }

    void keep(const Jump& jump, std::vector<Jump>& jumps) const
    {
        if (!request.kind || *request.kind == jump.kind || (isStanding(request.kind) && isStanding(jump.kind)))
            jumps.push_back(jump);
    }

    [[nodiscard]] Jump fromStanding(const Air& air, bool bounces) const
    {
        Jump jump;
        jump.takeoff = air.takeoff;
        measureFlight(air, jump);
        if (request.worn == Worn::Shoe) { // a foot stands through either: what was asked for is believed
            jump.kind = request.kind.value_or(Kind::CounterMovement);
        } else if (const auto speed = verticalSpeed(signal, air.takeoff.value)) {
            constexpr double slow = 0.25; // m/s: a body that only settles in its squat stays below it
            jump.kind = speed->sinking < -slow ? Kind::CounterMovement : Kind::Squat;
        } else {
            jump.kind = Kind::CounterMovement;
            jump.flags = jump.flags | Flag::NoStillness;
        }
        if (bounces)
            jump.flags = jump.flags | Flag::DoubleBounce;
        if (air.landing && heelsStrike(signal, air.landing->value, request.worn))
            jump.flags = jump.flags | Flag::FlatLanding;
        flagSamples(jump, air.takeoff.value - 0.3, jump);
        return jump;
    }

    [[nodiscard]] Jump fromContact(const Air& before, const Air& air, Kind kind) const
    {
        Jump jump;
        jump.kind = kind;
        jump.landing = before.landing;
        jump.takeoff = air.takeoff;
        const double contact = air.takeoff.value - before.landing->value;
        jump.contact = Measured{contact, std::hypot(air.takeoff.uncertainty, before.landing->uncertainty)};
        measureFlight(air, jump);
        measureReactive(jump);
        if (kind == Kind::Drop)
            measureDrop(before.landing->value, jump);
        if (heelsStrike(signal, before.landing->value, request.worn))
            jump.flags = jump.flags | Flag::FlatLanding;
        flagSamples(jump, before.landing->value - 0.02, jump);
        return jump;
    }

    void measureFlight(const Air& air, Jump& jump) const
    {
        const double g = request.gravity;
        std::optional<VerticalSpeed> speed;
        if (request.worn == Worn::Waist)
            speed = verticalSpeed(signal, air.takeoff.value);
        if (speed && speed->speed.value > 0) {
            const double v = speed->speed.value;
            jump.takeoffVelocity = speed->speed;
            jump.heightFromVelocity =
                Measured{heightFromSpeed(v, g), std::hypot(v / g * speed->speed.uncertainty,
                                                           heightFromSpeed(v, g) / g * request.gravityUncertainty)};
        }
        if (!air.landing) {
            jump.flags = jump.flags | Flag::NoSecondLanding;
            return;
        }
        const double t = air.landing->value - air.takeoff.value;
        jump.secondLanding = air.landing;
        jump.flight = Measured{t, std::hypot(air.landing->uncertainty, air.takeoff.uncertainty)};
        if (jump.takeoffVelocity)
            flagUnequalLanding(t, *jump.takeoffVelocity, jump);
        if (has(jump.flags, Flag::RaisedLanding))
            return;
        jump.height = Measured{heightFromFlight(t, g), std::hypot(g * t / 4 * jump.flight->uncertainty,
                                                                  t * t / 8 * request.gravityUncertainty)};
    }

    /// How much lower than at take-off the body is at its landing: g t^2 / 2 - v t.
    void flagUnequalLanding(double t, const Measured& takeoff, Jump& jump) const
    {
        const double lower = request.gravity * t * t / 2 - takeoff.value * t;
        const double uncertainty = t * takeoff.uncertainty;
        if (lower > std::max(0.04, 2 * uncertainty))
            jump.flags = jump.flags | Flag::BentLanding;
        if (lower < -std::max(0.09, 3 * uncertainty))
            jump.flags = jump.flags | Flag::RaisedLanding;
    }

    /// Take-off ends the contact and begins the flight: its error enters both, with opposite signs.
    static void measureReactive(Jump& jump)
    {
        if (!jump.flight)
            return;
        const double c = jump.contact->value;
        const double t = jump.flight->value;
        const double first = jump.landing->uncertainty;
        const double takeoff = jump.takeoff.uncertainty;
        const double second = jump.secondLanding->uncertainty;
        const auto combined = [&](double byFlight, double byContact) {
            return std::hypot(byContact * first, (byFlight - byContact) * takeoff, byFlight * second);
        };
        jump.flightContactRatio = Measured{t / c, combined(1 / c, -t / (c * c))};
        if (jump.height) {
            const double rsi = jump.height->value / c;
            jump.rsi = Measured{rsi, combined(2 * rsi / t, -rsi / c)};
        }
    }

    void measureDrop(double landing, Jump& jump) const
    {
        if (request.worn == Worn::Shoe)
            return;
        const auto speed = verticalSpeed(signal, landing);
        if (!speed) {
            jump.flags = jump.flags | Flag::NoStillness;
            return;
        }
        const double v = speed->speed.value;
        jump.effectiveDrop =
            Measured{heightFromSpeed(v, request.gravity), std::abs(v) / request.gravity * speed->speed.uncertainty};
        if (request.box && std::abs(jump.effectiveDrop->value - *request.box) > 0.15 * *request.box)
            jump.flags = jump.flags | Flag::DropHeightOff;
    }

    void flagSamples(const Jump& span, double from, Jump& jump) const
    {
        const auto& recording = *signal.recording;
        const double to = span.secondLanding ? span.secondLanding->value + 0.05 : signal.time.back();
        if (!recording.hasGyroscope)
            jump.flags = jump.flags | Flag::NoGyroscope;
        for (std::size_t i = std::max<std::size_t>(1, signal.at(from)); i < signal.size() && signal.time[i] <= to;
             ++i) {
            if (signal.time[i] - signal.time[i - 1] > 0.060)
                jump.flags = jump.flags | Flag::Gap;
            if (signal.force(i).cwiseAbs().maxCoeff() >= 0.995 * recording.sensor.accelerometerRange)
                jump.flags = jump.flags | Flag::Clipped;
        }
    }

    const Signal& signal;
    const Request& request;
};

} // namespace

Expected<JumpAnalysis> analyseJumps(const motion::Recording& recording, const Request& request)
{
    if (const auto refused = refusal(recording))
        return tl::unexpected<Error>(*refused);
    if (request.worn == Worn::Shoe && !recording.hasGyroscope)
        return fail(
            Code::NotAvailable, "",
            "on a shoe the take-off is told by the foot's turning; record with a gyroscope, or wear the sensor on "
            "the waist");
    const auto signal = readSignal(recording);
    if (request.worn == Worn::Shoe && signal.rests.empty())
        return fail(Code::NotAvailable, "",
                    "the foot never rests on the ground; stand still for half a second before the first jump");
    JumpAnalysis analysis;
    analysis.samplingRate = signal.rate;
    analysis.gravity = request.gravity;
    if (!signal.rests.empty())
        analysis.restForce = Measured{signal.rests.front().force, recording.sensor.accelerometerBias};
    const Assembler assembler(signal, request);
    for (const auto& chain : chains(airs(signal, request.worn)))
        assembler.add(chain, analysis.jumps);
    return analysis;
}

} // namespace fleetrung::jumps
