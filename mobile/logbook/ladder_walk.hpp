// The path an athlete took on each ladder of a season: the start, moved by every decision that was followed.
#pragma once

#include <span>
#include <vector>

#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

/// The decision as it was lived: where the athlete chose another rung it leads there; where something else, nowhere.
[[nodiscard]] season::Decision asFollowed(const DecisionRecord& record, const season::SeasonData& data);

/// The day's, as lived. `decisions` one a ladder and day.
[[nodiscard]] std::vector<season::Decision> followedOn(std::span<const DecisionRecord> decisions, CivilDate day,
                                                       const season::SeasonData& data);

class LadderWalk
{
public:
    [[nodiscard]] static Expected<LadderWalk> read(const Logbook& logbook, const Identifier& season);
    /// With sets that were read already; `training` by day, of the season.
    [[nodiscard]] static Expected<LadderWalk> read(const Logbook& logbook, SeasonRecord record,
                                                   std::span<const SessionView> training);

    /// What was decided and lifted of one season, in any other way of reading it. `decisions` in the order taken.
    struct Facts {
        SeasonRecord record;
        std::vector<store::DecisionOutline> decisions;
    };
    [[nodiscard]] static Expected<LadderWalk> of(Facts facts);
    /// In the order lifted.
    void addLoad(const store::LiftSet& set, CivilDate day);

    /// At the beginning of the day: by what was decided and lifted before it.
    [[nodiscard]] std::vector<season::LadderState> before(CivilDate day) const { return walk(day, day); }
    /// The same, with the day's own decisions.
    [[nodiscard]] std::vector<season::LadderState> on(CivilDate day) const
    {
        return walk(day + std::chrono::days{1}, day);
    }
    /// A lighter day by decision: what was lifted on it says nothing of what a full day may carry.
    [[nodiscard]] bool isEased(const std::string& ladder, CivilDate day) const;

    [[nodiscard]] const season::SeasonSetup& setup() const { return record_.setup; }
    [[nodiscard]] const SeasonRecord& record() const { return record_; }
    /// Rules and ladders of this season, the athlete's own among them.
    [[nodiscard]] const season::SeasonData& data() const { return own_ ? *own_ : season::standardSeasonData(); }
    /// The plan before the first session.
    [[nodiscard]] const season::SeasonPlan& firstPlan() const { return firstPlan_; }

private:
    [[nodiscard]] std::vector<season::LadderState> walk(CivilDate decidedBefore, CivilDate liftedBefore) const;
    void findLoads(season::LadderState& state, CivilDate before) const;
    [[nodiscard]] double carried(double loadKg, const std::string& from, const season::LadderState& to,
                                 CivilDate day) const;

    struct LoadDone {
        CivilDate day;
        std::string ladder;
        std::string rung;
        store::SetKind kind;
        double loadKg;
        bool eased;
    };

    SeasonRecord record_;
    std::optional<season::SeasonData> own_; ///< only where there are own ladders
    season::SeasonPlan firstPlan_;
    std::vector<store::DecisionOutline> decisions_; ///< by day; one a ladder and day
    std::vector<LoadDone> loads_;                   ///< in the order lifted
};

} // namespace fleetrung::logbook
