// What one ladder's decision of one day looks at, and the groups of rules in their precedence. Private to
// engine/season.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/season/decision.hpp"
#include "engine/season/stair.hpp"

namespace fleetrung::season
{

struct LadderDay {
    const DayInput& input;
    const SeasonData& data;
    const Ladder& ladder;
    LadderState state;
    UsableRungs usable;
    std::size_t place = 0;                 ///< of the current rung among the usable ones
    const PhaseSpan* phase = nullptr;      ///< of today; null outside the season
    std::optional<Window> window;          ///< macrocycle of today; none in transition and outside the season
    std::vector<SessionEvidence> sessions; ///< this ladder's, before today, one a day, rounded to printed steps
    std::vector<SessionEvidence> stay;     ///< those on the current rung since it was entered, at the stay's probe load
    std::vector<SessionEvidence> sided;    ///< left and right apart, as they came

    [[nodiscard]] const Rung& rung() const { return *usable.rungs[place]; }
    [[nodiscard]] std::string nameOf(const Rung& named) const { return rungName(named, input.plan.setup); }
    [[nodiscard]] std::string name() const { return nameOf(rung()); }
    [[nodiscard]] std::string nextName() const { return nameOf(*next()); } ///< only where there is a next rung
    [[nodiscard]] const Rung* next() const
    {
        return place + 1 < usable.rungs.size() ? usable.rungs[place + 1] : nullptr;
    }
    [[nodiscard]] std::optional<CivilDate> latest() const; ///< last day on the current rung
    [[nodiscard]] bool putOffTooLong() const; ///< a step that must be taken is overdue beyond what may be put off
};

/// Nothing where the ladder has no usable rung.
[[nodiscard]] std::optional<LadderDay> lookAt(const Ladder& ladder, const DayInput& input, const SeasonData& data);

/// A decision that stays on the rung.
[[nodiscard]] Decision stayDecision(const LadderDay& day, DecisionKind kind, std::string rule, std::string reason);
/// A decision that moves to the usable rung at `place`.
[[nodiscard]] Decision moveDecision(const LadderDay& day, DecisionKind kind, std::string rule, std::size_t place,
                                    std::string reason);

// Each group gives nothing where none of its rules applies. In order of precedence:
[[nodiscard]] std::optional<Decision> decidePain(const LadderDay& day);
[[nodiscard]] std::optional<Decision> decideCalendar(const LadderDay& day);  ///< transition, a new macrocycle
[[nodiscard]] std::optional<Decision> decideRestBlock(const LadderDay& day); ///< travel, illness, injury
[[nodiscard]] std::optional<Decision> decideLayoff(const LadderDay& day);
[[nodiscard]] std::optional<Decision> decideCompetitionRest(const LadderDay& day);
[[nodiscard]] std::optional<Decision> decideEase(const LadderDay& day);
[[nodiscard]] std::optional<Decision> decideExams(const LadderDay& day); ///< days without steps
[[nodiscard]] std::optional<Decision> decideMustStep(const LadderDay& day);
[[nodiscard]] std::optional<Decision> decideClimb(const LadderDay& day); ///< drop jumps on the way up
[[nodiscard]] Decision decideByEvidence(const LadderDay& day);           ///< step, no response, hold

} // namespace fleetrung::season
