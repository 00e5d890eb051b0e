// The path an athlete took on each ladder of a season: the start, moved by every decision that was followed.
#pragma once

#include <vector>

#include "mobile/logbook/logbook.hpp"

namespace fleetrung::logbook
{

class LadderWalk
{
public:
    [[nodiscard]] static Expected<LadderWalk> read(const Logbook& logbook, const Identifier& season);

    /// At the beginning of the day: by what was decided and lifted before it.
    [[nodiscard]] std::vector<season::LadderState> before(CivilDate day) const { return walk(day, day); }
    /// The same, with the day's own decisions.
    [[nodiscard]] std::vector<season::LadderState> on(CivilDate day) const
    {
        return walk(day + std::chrono::days{1}, day);
    }
    /// The last decision of each ladder taken on that day: as taken, and as lived (a "changed" one leads where the
    /// athlete went).
    [[nodiscard]] std::vector<season::Decision> decisionsOn(CivilDate day) const;
    [[nodiscard]] std::vector<season::Decision> followedOn(CivilDate day) const;

    [[nodiscard]] const season::SeasonSetup& setup() const { return record_.setup; }
    [[nodiscard]] const SeasonRecord& record() const { return record_; }

private:
    [[nodiscard]] std::vector<season::LadderState> walk(CivilDate decidedBefore, CivilDate liftedBefore) const;
    [[nodiscard]] bool isEased(const std::string& ladder, CivilDate day) const;
    void findLoads(season::LadderState& state, CivilDate before) const;
    [[nodiscard]] double carried(double loadKg, const std::string& from, const season::LadderState& to,
                                 CivilDate day) const;

    struct LoadDone {
        CivilDate day;
        std::string ladder;
        std::string rung;
        store::SetKind kind;
        double loadKg;
    };

    SeasonRecord record_;
    std::vector<season::LadderState> start_;
    std::vector<DecisionRecord> decisions_; ///< by day; one a ladder and day
    std::vector<LoadDone> loads_;           ///< in the order lifted
};

} // namespace fleetrung::logbook
