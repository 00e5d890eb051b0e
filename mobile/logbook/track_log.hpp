// The stored rows of the track as the engine counts them: fast metres, weeks, height and RSI of jumps. Nothing of it is
// stored: it is worked out from the rows whenever it is asked for.
#pragma once

#include <functional>

#include "engine/season/training_log.hpp"
#include "engine/track/boxes.hpp"
#include "engine/track/jump_values.hpp"
#include "engine/track/weeks.hpp"
#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

[[nodiscard]] track::Run trackRun(const store::Sprint& run);
/// A kind that is not known counts as easy.
[[nodiscard]] track::Work workOf(const store::TrackWork& work);
[[nodiscard]] track::JumpValues valuesOf(const store::Jump& jump);
/// Drop jumps whose box is known. Heels that struck stand in no row: none is taken to have.
[[nodiscard]] std::vector<track::DropJump> dropJumpsOf(std::span<const store::Jump> jumps);

/// Contacts of drop jumps by day. Jumps that were measured within a session are among the repetitions of its sets: of
/// each session the larger number counts.
[[nodiscard]] std::vector<season::ContactsDone>
dropJumpContacts(std::span<const SessionView> training, std::span<const store::Jump> jumps,
                 const std::function<bool(const store::LiftSet&)>& isDropJump);
/// The same with the contacts of all other jumps: bounds by their number, any other jump is one.
[[nodiscard]] std::vector<track::Contacts> allContacts(std::span<const season::ContactsDone> dropJumps,
                                                       std::span<const store::Jump> jumps);

/// What was run, worked out once.
struct TrackLog {
    std::vector<track::KnownRun> runs; ///< a year before the first day too, for best speed
    std::vector<track::Work> work;     ///< the four weeks before the first day too
    std::vector<track::Contacts> contacts;

    [[nodiscard]] track::FastMetres fastOf(const store::Sprint& run) const;
    [[nodiscard]] track::FastMetres fastOf(const store::TrackWork& work) const;
};
[[nodiscard]] Expected<TrackLog> readTrackLog(const Logbook& logbook, const Identifier& athlete, CivilDate from,
                                              CivilDate to);

} // namespace fleetrung::logbook
