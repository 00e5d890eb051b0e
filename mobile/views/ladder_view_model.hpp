// What Ladder shows: the stair of one lift, planned against taken; today's decision with its evidence; and the answer.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/season/decision.hpp"
#include "mobile/plot/pictures.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/day_picker.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"
#include "mobile/views/step_view_model.hpp"

namespace fleetrung::views
{

struct LadderShown {
    std::string key;
    std::string name;                  ///< "Squat"
    std::vector<std::string> rungKeys; ///< longest range first
    plot::StairInput stair;
    std::optional<season::Decision> decision; ///< today's
    std::string rungName;                     ///< where the athlete stands: "Half squat"
    std::string nextName;                     ///< where the decision leads
    std::optional<DecisionAnswer> answer;     ///< given already
    std::optional<int> nextWeek;              ///< planned step
    std::optional<int> latestWeek;            ///< must step
    std::vector<std::string> cautions;        ///< texts to show before the decision is followed
    std::vector<StairStep> steps;             ///< of the stair, taken and ahead, in order of days
};

struct LadderPageData {
    std::vector<LadderShown> ladders; ///< none: no season
    int week = 0;
    int weeks = 0;
    QString phase;
    std::optional<int> daysToMain;
    bool canPlan = false;         ///< there is an athlete to plan a season for
    season::AthleteFacts athlete; ///< whom it is planned for
    CivilDate today{};
    QString emptyTitle;
    QString emptyText;
};

class LadderViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString weekText READ weekText NOTIFY changed FINAL)
    Q_PROPERTY(QString phaseText READ phaseText NOTIFY changed FINAL)
    Q_PROPERTY(QString competitionText READ competitionText NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue stair READ stair NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* steps READ steps CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::StepViewModel* step READ step CONSTANT FINAL)
    Q_PROPERTY(QString premise READ premise CONSTANT FINAL)
    Q_PROPERTY(QString decisionTitle READ decisionTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString reason READ reason NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* evidence READ evidence CONSTANT FINAL)
    Q_PROPERTY(QString nextText READ nextText NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)
    Q_PROPERTY(bool canAnswer READ canAnswer NOTIFY changed FINAL)
    Q_PROPERTY(QString answerText READ answerText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList otherChoices READ otherChoices NOTIFY changed FINAL)
    /// Of the season that is planned: the day of its main competition, and its first day.
    Q_PROPERTY(fleetrung::views::DayPicker* raceDay READ raceDay CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::DayPicker* firstDay READ firstDay CONSTANT FINAL)
    Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY changed FINAL)
    Q_PROPERTY(QStringList weekdays READ weekdays CONSTANT FINAL)
    Q_PROPERTY(QStringList allLadders READ allLadders CONSTANT FINAL)
    Q_PROPERTY(bool canPlan READ canPlan NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyTitle READ emptyTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)

public:
    explicit LadderViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(const LadderPageData& data);

    Q_INVOKABLE void choose(int index);
    /// The step at a place of the stair picture: weeks across, rungs down. -1 where there is none.
    Q_INVOKABLE int stepAt(const QPointF& place) const;
    /// Puts a step (a row of `steps`) before `step`. False where there is none.
    Q_INVOKABLE bool openStep(int index);
    Q_INVOKABLE void follow();
    /// `choice` is an index into otherChoices. A sentence where the reason is missing; empty where it was taken.
    Q_INVOKABLE QString decideOtherwise(int choice, const QString& why);

    /// The form of a new season is opened: it begins today, and its race is some months away.
    Q_INVOKABLE void beginSeason();
    /// Problems by field ("all": of the whole); empty where the season was taken.
    Q_INVOKABLE QVariantMap planSeason(const QVariantMap& form);

    DayPicker* raceDay() { return &raceDay_; }
    DayPicker* firstDay() { return &firstDay_; }
    QString lengthUnit() const { return preferences_->lengthUnit(); }
    QStringList weekdays() const;   ///< Monday first
    QStringList allLadders() const; ///< that a season can be made of
    bool hasSeason() const { return !data_.ladders.empty(); }
    QStringList names() const;
    int current() const { return static_cast<int>(current_); }
    QString title() const;
    QString weekText() const;
    QString phaseText() const { return data_.phase; }
    QString competitionText() const;
    plot::PlotValue stair() const;
    Rows* steps() { return &steps_; }
    StepViewModel* step() { return &step_; }
    QString premise() const; ///< both sides of the evidence on shortened range
    QString decisionTitle() const;
    QString reason() const;
    Rows* evidence() { return &evidence_; }
    QString nextText() const;
    QString caution() const;
    bool canAnswer() const;
    QString answerText() const;
    QStringList otherChoices() const;
    bool canPlan() const { return data_.canPlan && !hasSeason(); }
    QString emptyTitle() const { return data_.emptyTitle; }
    QString emptyText() const { return data_.emptyText; }

signals:
    void changed();
    void seasonPlanned(const fleetrung::season::SeasonSetup& setup);
    /// `changedTo`: the key of the rung the athlete goes to instead, or "ease", "rest".
    void answered(const fleetrung::Identifier& decision, bool followed, const QString& changedTo, const QString& why);

private:
    const LadderShown* shown() const { return hasSeason() ? &data_.ladders[current_] : nullptr; }
    std::vector<season::DecisionKind> otherKinds() const;
    void showRows();
    void take(const DecisionAnswer& answer);
    QString changedTo(season::DecisionKind kind) const;

    const Preferences* preferences_;
    LadderPageData data_;
    std::size_t current_ = 0;
    Rows evidence_;
    Rows steps_;
    StepViewModel step_;
    DayPicker raceDay_;
    DayPicker firstDay_;
};

} // namespace fleetrung::views
