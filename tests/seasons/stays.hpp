// Planted stays: sessions on one rung with a known change, looked at by the engine after each of them.
#pragma once

#include <cstdint>
#include <vector>

namespace fleetrung::seasons
{

inline constexpr int stayLength = 14;    ///< sessions
inline constexpr int sessionsBefore = 8; ///< the change comes after so many
inline constexpr int sessionsAfter = stayLength - sessionsBefore;

struct Stay {
    int seen = 0;    ///< first look (sessions done) at which a change that way is told, 0 = none; before the change too
    int stepped = 0; ///< first look at which the engine steps for evidence
    int looks = 0;   ///< looks at which a change could be told
    int told = 0;    ///< looks at which one was told
};

/// Noise of one typical error, the rules' prior. `change` in typical errors, negative is sooner; 0 plants none, and
/// changes for the worse are looked for.
[[nodiscard]] Stay playStay(std::uint64_t seed, double change);

} // namespace fleetrung::seasons
