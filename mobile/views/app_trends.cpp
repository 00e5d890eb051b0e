// The part of the program behind Trends: seasons before the shown one are read when they are asked for.
#include "mobile/views/app_view_model.hpp"
#include "mobile/views/season_trends.hpp"

namespace fleetrung::views
{

void AppViewModel::connectTrends()
{
    connect(&trends_, &TrendsViewModel::earlierAsked, this, [this] {
        const auto id = athlete();
        if (!id)
            return;
        log_->run(
            this,
            [id, today = clock_.today()](const logbook::Logbook& logbook) {
                return earlierTrends(logbook, *id, today);
            },
            [this, id](Expected<std::vector<SeasonTrends>> earlier) {
                if (athlete() != id) // another one is shown by now
                    return;
                if (!earlier)
                    return sayProblem(earlier.error());
                trends_.showEarlier(std::move(*earlier));
            });
    });
}

} // namespace fleetrung::views
