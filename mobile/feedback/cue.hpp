// What the bench tells ears and skin while the eyes are on the bar.
#pragma once

#include <cstdint>
#include <vector>

namespace fleetrung::feedback
{

enum class Cue {
    Inside,     ///< time inside the band: two notes rising
    Sooner,     ///< before the band: one high note
    Later,      ///< after the band: two notes falling
    NoEvidence, ///< counted, but no evidence: a dull knock
    Stop,       ///< the set ends: three low notes
    Begun,      ///< the set may begin: one short note
    Lost        ///< the sensor is gone: a note that falls
};

inline constexpr int toneRate = 44100; ///< samples a second

/// The cue as 16-bit samples, one channel, at `toneRate`: below 0.7 s, starts and ends in silence. Cues differ by
/// number and direction of their notes, not by pitch alone, so that they are told apart in a loud room.
[[nodiscard]] std::vector<std::int16_t> tone(Cue cue);

/// For the hand: lengths of shakes in ms with pauses between, beginning with a shake.
[[nodiscard]] std::vector<int> shakes(Cue cue);

} // namespace fleetrung::feedback
