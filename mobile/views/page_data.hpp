// From the logbook to what the pages show. Runs on the thread of the logbook; gives plain values.
#pragma once

#include <vector>

#include "mobile/logbook/logbook.hpp"
#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/done_sets_view_model.hpp"
#include "mobile/views/ladder_view_model.hpp"
#include "mobile/views/season_view_model.hpp"
#include "mobile/views/squad_view_model.hpp"
#include "mobile/views/track_view_model.hpp"
#include "mobile/views/trends_view_model.hpp"

namespace fleetrung::views
{

/// Everything the pages show of one athlete.
struct AthletePages {
    QString name;
    BenchDay bench;
    std::vector<DoneSet> done; ///< today
    LadderPageData ladder;
    std::optional<SeasonShown> season;
    std::optional<Identifier> seasonId;
    std::vector<store::Sprint> runs;
    std::vector<store::Jump> jumps;
    TrendsData trends;
};

struct SquadData {
    std::vector<AthleteShown> athletes;
    std::vector<AthleteShown> archived;
    std::string current; ///< the one asked for where it is still there, else the first
};

[[nodiscard]] Expected<SquadData> squadData(const logbook::Logbook& logbook, const std::string& wanted,
                                            CivilDate today);

/// Takes the decisions of the day first, where lifts are planned on it.
[[nodiscard]] Expected<AthletePages> athletePages(logbook::Logbook& logbook, const Identifier& athlete,
                                                  const logbook::Moment& now);

/// Where there is no athlete yet.
[[nodiscard]] AthletePages emptyPages();

} // namespace fleetrung::views
