#include "mobile/views/app_view_model.hpp"

#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{

using logbook::Logbook;

AppViewModel::AppViewModel(Preferences* preferences, LogThread* log, DayClock clock, QObject* parent)
    : QObject(parent), preferences_(preferences), log_(log), clock_(clock), bench_(preferences), doneSets_(preferences),
      ladder_(preferences), season_(preferences), seasonLifts_(preferences), track_(preferences),
      trackWork_(preferences), trends_(preferences), squad_(preferences), squadDay_(preferences), desk_(preferences),
      import_(preferences)
{
    connect(preferences, &Preferences::languageChanged, this, [this] {
        refresh();
        refreshSensors();
    });
    connectSquad();
    connectTrack();
    connectTrackWork();
    connectLadder();
    connectSeason();
    connectTrends();
    connectSquadDay();
    connectBench();
    connectDoneSets();
    connectDay();
    connectOtherLifts();
    connectSensors();
    connectImport();
    connectDemo();
}

// --- Reading

void AppViewModel::refresh()
{
    log_->run(
        this,
        [wanted = current_,
         now = clock_.now()](Logbook& logbook) -> Expected<std::pair<SquadData, Expected<AthletePages>>> {
            auto squad = squadData(logbook, wanted, now.trainingDay);
            if (!squad)
                return tl::unexpected(squad.error());
            const auto id = parseIdentifier(squad->current);
            Expected<AthletePages> pages = id ? athletePages(logbook, *id, now) : emptyPages();
            return std::pair{std::move(*squad), std::move(pages)};
        },
        [this](Expected<std::pair<SquadData, Expected<AthletePages>>> read) {
            if (!read) {
                sayProblem(read.error());
                showPages(emptyPages());
                emit refreshed();
                return;
            }
            current_ = read->first.current;
            squad_.show(read->first.athletes, read->first.archived, current_, clock_.today());
            std::vector<Sharer> squad;
            for (const auto& athlete : read->first.athletes)
                squad.push_back({athlete.key, athlete.name});
            squadDay_.showSquad(std::move(squad));
            showPages(read->second);
            emit refreshed();
        });
}

void AppViewModel::showPages(const Expected<AthletePages>& pages)
{
    if (!pages) {
        sayProblem(pages.error());
        return;
    }
    bench_.showDay(pages->bench);
    doneSets_.show(pages->done);
    ladder_.show(pages->ladder);
    season_.show(pages->season);
    seasonLifts_.show(pages->season);
    shownSeason_ = pages->seasonId;
    track_.show(pages->name, clock_.today(), pages->runs, pages->jumps);
    readTrackWork();
    trends_.show(pages->trends);
    showSharers();
}

// --- Saying what happened

void AppViewModel::say(const QString& text, Undo undo)
{
    notice_ = text;
    problem_ = false;
    undo_ = std::move(undo);
    emit noticeChanged();
}

void AppViewModel::sayProblem(const Error& error)
{
    notice_ = errorText(error);
    problem_ = true;
    undo_ = {};
    emit noticeChanged();
}

void AppViewModel::closeNotice()
{
    say({});
}

void AppViewModel::undo()
{
    if (!undo_)
        return;
    log_->run(this, std::exchange(undo_, {}), [this](const Expected<void>& undone) {
        if (!undone)
            return sayProblem(undone.error());
        closeNotice();
        refresh();
        refreshSensors();
    });
}

void AppViewModel::write(std::function<Expected<Identifier>(Logbook&)> work, const QString& text,
                         std::function<Undo(const Identifier&)> undo)
{
    log_->run(this, std::move(work), [this, text, undo = std::move(undo)](const Expected<Identifier>& written) {
        if (!written)
            return sayProblem(written.error());
        say(text, undo ? undo(*written) : Undo{});
        refresh();
    });
}

// --- Squad

void AppViewModel::connectSquad()
{
    connect(&squad_, &SquadViewModel::chosen, this, [this](const QString& key) { switchAthlete(key, false); });
    connect(&squad_, &SquadViewModel::saved, this, [this](const AthleteShown& shown) {
        write(
            [shown](Logbook& logbook) -> Expected<Identifier> {
                store::Athlete athlete;
                if (const auto id = parseIdentifier(shown.key)) {
                    const auto stored = logbook.athlete(*id);
                    if (!stored)
                        return tl::unexpected(stored.error());
                    athlete = *stored;
                }
                athlete.name = shown.name;
                athlete.born = shown.born;
                athlete.bodyMassKg = shown.bodyMassKg;
                athlete.statureM = shown.statureM;
                athlete.trainingYears = shown.trainingYears;
                athlete.guardianConsent = shown.guardianConsent;
                athlete.event = shown.event;
                athlete.group = shown.group;
                if (shown.key.empty())
                    return logbook.addAthlete(athlete);
                return logbook.changeAthlete(athlete).map([&athlete] { return athlete.id; });
            },
            tr("%1 is saved.").arg(QString::fromStdString(shown.name)));
    });
    connect(&squad_, &SquadViewModel::removed, this, [this](const QString& key, const QString& name) {
        const auto id = parseIdentifier(key.toStdString());
        if (!id)
            return;
        write([id](Logbook& logbook) { return logbook.deleteAthlete(*id).map([id] { return *id; }); },
              tr("%1 is in the archive, with all that was done.").arg(name),
              [](const Identifier& gone) -> Undo {
                  return [gone](Logbook& logbook) { return logbook.restoreAthlete(gone); };
              });
    });
    connect(&squad_, &SquadViewModel::broughtBack, this, [this](const QString& key, const QString& name) {
        const auto id = parseIdentifier(key.toStdString());
        if (!id)
            return;
        write([id](Logbook& logbook) { return logbook.restoreAthlete(*id).map([id] { return *id; }); },
              tr("%1 is back.").arg(name),
              [](const Identifier& back) -> Undo {
                  return [back](Logbook& logbook) { return logbook.deleteAthlete(back); };
              });
    });
}

void AppViewModel::switchAthlete(const QString& key, bool keepsLift)
{
    if (key.toStdString() == current_)
        return;
    if (setUnderWay_ || saving_)
        return sayProblem(
            {.code = Code::Refused,
             .place = {},
             .message = tr("A set is under way and stays with who began it. End it first.").toStdString()});
    current_ = key.toStdString();
    if (!keepsLift)
        bench_.leaveLift();
    refresh();
}

void AppViewModel::connectSquadDay()
{
    connect(&squadDay_, &SquadDayViewModel::asked, this, [this] {
        log_->run(
            this, [today = clock_.today()](Logbook& logbook) { return logbook.dueToday(today); },
            [this](Expected<std::vector<season::DueAthlete>> due) {
                if (!due)
                    return sayProblem(due.error());
                squadDay_.show(std::move(*due));
            });
    });
    connect(&squadDay_, &SquadDayViewModel::chosen, this, [this](const QString& key) { switchAthlete(key, false); });
    connect(&squadDay_, &SquadDayViewModel::sharersChanged, this, &AppViewModel::showSharers);
    connect(&bench_, &BenchViewModel::switchAsked, this, [this](const QString& key) { switchAthlete(key, true); });
    connect(&bench_, &BenchViewModel::liftOpened, this, &AppViewModel::showSharers);
}

void AppViewModel::showSharers()
{
    const BenchLift* opened = bench_.openedLift();
    bench_.showSharers(squadDay_.sharersOf(current_, opened ? opened->plan.ladder : std::string()), current_);
}

// --- Ladder

void AppViewModel::connectLadder()
{
    connect(
        &ladder_, &LadderViewModel::answered, this,
        [this](const Identifier& decision, bool followed, const QString& changedTo, const QString& why) {
            write(
                [decision, followed, to = changedTo.toStdString(),
                 reason = why.toStdString()](Logbook& logbook) -> Expected<Identifier> {
                    const auto answer = followed ? store::Answer::Followed : store::Answer::Changed;
                    return logbook.answerDecision(decision, answer, to, reason).map([decision] { return decision; });
                },
                followed ? tr("Kept: you follow this.") : tr("Kept: you decided otherwise."),
                [](const Identifier& id) -> Undo {
                    return [id](Logbook& logbook) { return logbook.answerDecision(id, store::Answer::None); };
                });
        });
    connect(&ladder_, &LadderViewModel::seasonPlanned, this, [this](const season::SeasonSetup& setup) {
        const auto id = athlete();
        if (!id)
            return;
        write([id, setup](Logbook& logbook) { return logbook.addSeason(*id, setup); }, tr("The season is laid out."),
              [](const Identifier& added) -> Undo {
                  return [added](Logbook& logbook) { return logbook.deleteSeason(added); };
              });
    });
}

// --- Season

void AppViewModel::connectSeason()
{
    const auto keep = [this](const season::SeasonSetup& setup, const season::SeasonSetup& before, const QString& said) {
        if (!shownSeason_)
            return;
        const auto put = [](const Identifier& id, const season::SeasonSetup& what) {
            return [id, what](Logbook& logbook) { return logbook.changeSeason(id, what); };
        };
        write([change = put(*shownSeason_, setup),
               id = *shownSeason_](Logbook& logbook) { return change(logbook).map([id] { return id; }); },
              said, [put, before](const Identifier& id) -> Undo { return put(id, before); });
    };
    connect(&season_, &SeasonViewModel::seasonChanged, this, keep);
    connect(&seasonLifts_, &SeasonLiftsViewModel::seasonChanged, this, keep);
}

} // namespace fleetrung::views
