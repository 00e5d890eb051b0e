// The part of the program behind the day: how the athlete is, and the warm-up check.
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

namespace
{

/// Decisions taken anew, with what the athlete has said since.
Expected<void> decideAnew(Logbook& logbook, const Identifier& athlete, const logbook::Moment& now)
{
    const auto season = logbook.seasonOn(athlete, now.trainingDay);
    if (!season)
        return season.error().code == Code::NotFound ? Expected<void>{} : tl::unexpected(season.error());
    return logbook.decide(season->row.id, now).map([](const auto&) {});
}

} // namespace

void AppViewModel::connectDay()
{
    connect(&bench_, &BenchViewModel::wellnessSaid, this, [this](const store::Wellness& said) {
        const auto id = athlete();
        if (!id)
            return;
        store::Wellness wellness = said;
        wellness.athlete = *id;
        wellness.asked = clock_.now();
        write(
            [wellness, now = clock_.now()](Logbook& logbook) -> Expected<Identifier> {
                const auto added = logbook.addWellness(wellness);
                if (!added)
                    return added;
                return decideAnew(logbook, wellness.athlete, now).map([&added] { return *added; });
            },
            tr("Kept. The day is decided anew."),
            [who = *id, now = clock_.now()](const Identifier& added) -> Undo {
                return [added, who, now](Logbook& logbook) -> Expected<void> {
                    if (const auto gone = logbook.rows().setDeleted<store::Wellness>(added, true); !gone)
                        return gone;
                    return decideAnew(logbook, who, now);
                };
            });
    });
}

void AppViewModel::connectOtherLifts()
{
    connect(&bench_, &BenchViewModel::checkAnswered, this,
            [this](const QString& ladder, bool accepted, const QString& why) {
                if (!shownSeason_)
                    return;
                write(
                    [season = *shownSeason_, ladder = ladder.toStdString(), accepted, why = why.toStdString(),
                     now = clock_.now()](Logbook& logbook) {
                        return logbook.answerWarmUpCheck(season, ladder, accepted, why, now).map([season](const auto&) {
                            return season;
                        });
                    },
                    accepted ? tr("The lift is lighter today.") : tr("Kept: you keep the plan."));
            });
    connect(&bench_, &BenchViewModel::otherTyped, this, [this](const store::LiftSet& typed, int repetitions) {
        const auto who = athlete();
        if (!who)
            return;
        write(
            [who = *who, set = typed, repetitions,
             now = clock_.now()](Logbook& logbook) mutable -> Expected<Identifier> {
                const auto session = logbook.openSession(who, "strength", now);
                if (!session)
                    return tl::unexpected(session.error());
                set.session = *session;
                set.done = now;
                logbook::TypedRepetitions done;
                done.count = repetitions;
                return logbook.typeSet(set, done, now);
            },
            tr("The set is saved."),
            [](const Identifier& id) -> Undo { return [id](Logbook& logbook) { return logbook.deleteSet(id); }; });
    });
}

void AppViewModel::handOutCalendar()
{
    if (!shownSeason_ || !files_.hand)
        return;
    const QString name = fileName(seasonWords(), QStringLiteral("ics"));
    const std::chrono::sys_seconds stamp{std::chrono::seconds{clock_.now().utcSeconds}};
    log_->run(
        this,
        [id = *shownSeason_, today = clock_.today(), stamp, last = files_.last(name).toStdString()](Logbook& logbook) {
            return logbook.seasonCalendar(id, today, stamp, last);
        },
        [this, name](const Expected<std::string>& calendar) {
            if (!calendar)
                return sayProblem(calendar.error());
            const auto place = files_.hand(name, QByteArray::fromStdString(*calendar));
            if (!place)
                return sayProblem(place.error());
            say(tr("The calendar is in %1").arg(*place));
            offer({*place});
        });
}

} // namespace fleetrung::views
