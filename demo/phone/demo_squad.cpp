#include "mobile/app/demo_squad.hpp"

#include <algorithm>
#include <array>
#include <exception>
#include <string>

#include "demo/squad/season_player.hpp"
#include "engine/base/numbers.hpp"

namespace fleetrung::app
{
namespace
{

/// A Wednesday with lifts, three days before a championship: most of a season lies behind, the greatest day ahead.
CivilDate shownDay()
{
    return std::chrono::sys_days{std::chrono::year{2026} / 6 / 3};
}

Identifier madeUp(std::uint64_t number)
{
    const std::string text = integerText(static_cast<std::int64_t>(number));
    const std::array<std::string_view, 2> parts{"fleetrung demo squad", text};
    return hashIdentifier(parts);
}

struct Cancelled : std::exception {
};

std::vector<squad::Performer> castUntil(CivilDate day)
{
    auto cast = squad::cast();
    for (auto& performer : cast)
        performer.playedTo = std::min(performer.playedTo, day - std::chrono::days{1});
    return cast;
}

void play(logbook::Logbook& logbook, const std::function<bool(double)>& progress)
{
    const auto cast = castUntil(shownDay());
    int days = 0;
    for (const auto& performer : cast)
        days += daysBetween(performer.setup.start, performer.playedTo) + 1;
    int played = 0;
    for (const auto& performer : cast)
        static_cast<void>(squad::playSeason(logbook, performer, [&](CivilDate) {
            if (!progress(static_cast<double>(++played) / days))
                throw Cancelled();
        }));
}

Expected<CivilDate> make(const store::StorePaths& paths, const std::function<bool(double)>& progress)
{
    std::uint64_t next = 0;
    auto logbook = logbook::Logbook::open(paths, madeUp(0), [&next] { return madeUp(++next); });
    if (!logbook)
        return tl::unexpected(logbook.error());
    try {
        play(*logbook, progress);
    } catch (const Cancelled&) {
        return fail(Code::Cancelled, "demo squad", "was cancelled");
    } catch (const std::exception& error) {
        return fail(Code::StoreFailed, "demo squad", error.what());
    }
    return shownDay();
}

} // namespace

views::DemoHand demoSquad(const QString& folder)
{
    return {folder, make};
}

} // namespace fleetrung::app
