// The lines of evidence that several rules show. Private to engine/season.
#pragma once

#include "engine/season/object_reader.hpp"
#include "engine/season/progress.hpp"

namespace fleetrung::season
{

[[nodiscard]] EvidenceLine line(std::string name, double value, std::string unit, std::string allowed, bool met,
                                double uncertainty = 0);
/// The same line with words for what is missing where it is not met.
[[nodiscard]] EvidenceLine lacking(EvidenceLine line, std::string words);
[[nodiscard]] EvidenceLine readEvidenceLine(ObjectReader& reader);
/// "1 day", "3 days".
[[nodiscard]] std::string counted(int count, const std::string& thing);
[[nodiscard]] std::string atLeast(double value, int decimals = 0);

/// "time to peak", "drop time" or "contact time", by the rung's metric.
[[nodiscard]] std::string timeName(const LadderDay& day);
[[nodiscard]] int daysOnRung(const LadderDay& day);
/// Days until the next rung's earliest phase begins; 0 when it has.
[[nodiscard]] int daysUntilOpen(const LadderDay& day);

/// `exposed`: sessions and days count as done, whatever they are.
void addStayLines(const LadderDay& day, std::vector<EvidenceLine>& lines, bool exposed = false);
void addTimeLines(const LadderDay& day, const TimeProgress& progress, std::vector<EvidenceLine>& lines);
void addStrengthLines(const LadderDay& day, std::vector<EvidenceLine>& lines);

/// The first turn of this ladder between the two days, both left out, that the plan had and that was not taken: rest
/// around competitions and the turns of other ladders are no layoff, illness and travel are.
[[nodiscard]] std::optional<CivilDate> firstMissedTurn(const LadderDay& day, CivilDate after, CivilDate before);
/// A competition stands on that day or within the days of rest after it.
[[nodiscard]] bool restsForCompetition(const SeasonSetup& setup, CivilDate day, const Rules& rules);

/// Nothing where the ladder is not one-sided or fewer than three sessions had both sides.
[[nodiscard]] std::optional<EvidenceLine> sideLine(const LadderDay& day);
/// The line that says so; nothing where speed has followed, or too little is known.
[[nodiscard]] std::optional<EvidenceLine> speedNotFollowing(const LadderDay& day);

/// What the first gating line that is not met lacks, in words; empty where all are met.
[[nodiscard]] std::string firstUnmet(const std::vector<EvidenceLine>& lines);
/// " The next step comes at the latest after 2026-03-30."; empty on the last rung.
[[nodiscard]] std::string latestText(const LadderDay& day);
[[nodiscard]] Decision hold(const LadderDay& day, std::vector<EvidenceLine> lines, std::string reason);

} // namespace fleetrung::season
