// The lines of evidence that several rules show. Private to engine/season.
#pragma once

#include "engine/season/progress.hpp"

namespace fleetrung::season
{

[[nodiscard]] EvidenceLine line(std::string name, double value, std::string unit, std::string allowed, bool met,
                                double uncertainty = 0);
[[nodiscard]] std::string atLeast(double value, int decimals = 0);

/// "time to peak", "drop time" or "contact time", by the rung's metric.
[[nodiscard]] std::string timeName(const LadderDay& day);
[[nodiscard]] int daysOnRung(const LadderDay& day);
/// Days until the next rung's earliest phase begins; 0 when it has.
[[nodiscard]] int daysUntilOpen(const LadderDay& day);

void addStayLines(const LadderDay& day, std::vector<EvidenceLine>& lines);
void addTimeLines(const LadderDay& day, const TimeProgress& progress, std::vector<EvidenceLine>& lines);
void addStrengthLines(const LadderDay& day, std::vector<EvidenceLine>& lines);

/// The first gating line that is not met, in words; empty where all are.
[[nodiscard]] std::string firstUnmet(const std::vector<EvidenceLine>& lines);
/// " The next step comes at the latest after 2026-03-30."; empty on the last rung.
[[nodiscard]] std::string latestText(const LadderDay& day);
[[nodiscard]] Decision hold(const LadderDay& day, std::vector<EvidenceLine> lines, std::string reason);

} // namespace fleetrung::season
