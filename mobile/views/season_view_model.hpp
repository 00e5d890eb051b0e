// The season that stands, changed by touch: its competitions, its blocks (travel, exams, illness, injury) and its
// boxes. Each change shows what it does to the plan before it is kept.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/season/plan.hpp"
#include "mobile/views/day_picker.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

struct SeasonShown {
    season::SeasonPlan plan; ///< as it stands, with its setup
    std::vector<season::LadderState> states;
    CivilDate today{};
};

class SeasonViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* competitions READ competitions CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* blocks READ blocks CONSTANT FINAL)
    Q_PROPERTY(QStringList boxes READ boxes NOTIFY changed FINAL) ///< heights as entered, or in the chosen unit
    Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY changed FINAL)

    // The week and the weight room; a change is kept at once. Days and equipment as places in their lists.
    Q_PROPERTY(QStringList weekdays READ weekdays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList liftDays READ liftDays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList sprintDays READ sprintDays NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList equipment READ equipment NOTIFY changed FINAL) ///< bar, rack, pins, blocks
    Q_PROPERTY(QString sessionMinutes READ sessionMinutes NOTIFY changed FINAL)

    // The competition that is being changed, or added
    // The same for a block
    Q_PROPERTY(bool isNew READ isNew NOTIFY draftChanged FINAL)
    Q_PROPERTY(
        int blockKind READ blockKind WRITE setBlockKind NOTIFY draftChanged FINAL) ///< travel, exam, illness, injury
    Q_PROPERTY(QString blockKindText READ blockKindText NOTIFY draftChanged FINAL)
    Q_PROPERTY(QStringList regions READ regions CONSTANT FINAL)
    Q_PROPERTY(int blockRegion READ blockRegion WRITE setBlockRegion NOTIFY draftChanged FINAL) ///< of an injury
    Q_PROPERTY(fleetrung::views::DayPicker* firstDay READ firstDay CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::DayPicker* lastDay READ lastDay CONSTANT FINAL)
    Q_PROPERTY(QString draftName READ draftName WRITE setDraftName NOTIFY draftChanged FINAL)
    Q_PROPERTY(int draftPriority READ draftPriority WRITE setDraftPriority NOTIFY draftChanged FINAL) ///< 0 = A
    Q_PROPERTY(QString priorityText READ priorityText NOTIFY draftChanged FINAL)
    Q_PROPERTY(bool draftMain READ draftMain WRITE setDraftMain NOTIFY draftChanged FINAL)
    Q_PROPERTY(fleetrung::views::DayPicker* day READ day CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* consequences READ consequences CONSTANT FINAL)
    Q_PROPERTY(QString nameProblem READ nameProblem NOTIFY draftChanged FINAL)
    Q_PROPERTY(QString dayProblem READ dayProblem NOTIFY draftChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY draftChanged FINAL) ///< of the whole
    Q_PROPERTY(bool canSave READ canSave NOTIFY draftChanged FINAL)

public:
    explicit SeasonViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(std::optional<SeasonShown> season);

    /// -1: a new one.
    Q_INVOKABLE void editCompetition(int index);
    Q_INVOKABLE void saveCompetition();
    Q_INVOKABLE void deleteCompetition();
    Q_INVOKABLE void editBlock(int index); ///< -1: a new one
    Q_INVOKABLE void saveBlock();
    Q_INVOKABLE void deleteBlock();
    /// A sentence where that is no height; empty where it was taken.
    Q_INVOKABLE QString addBox(const QString& height);
    Q_INVOKABLE void removeBox(int index);

    Q_INVOKABLE void toggleLiftDay(int day);
    Q_INVOKABLE void toggleSprintDay(int day);
    Q_INVOKABLE void toggleEquipment(int index);
    /// A sentence where that cannot be; empty where it was taken.
    Q_INVOKABLE QString setSessionMinutes(const QString& minutes);

    QStringList weekdays() const;
    QVariantList liftDays() const;
    QVariantList sprintDays() const;
    QVariantList equipment() const;
    QString sessionMinutes() const;
    bool hasSeason() const { return season_.has_value(); }
    QString name() const { return season_ ? QString::fromStdString(season_->plan.setup.name) : QString(); }
    Rows* competitions() { return &competitions_; }
    Rows* blocks() { return &blocks_; }
    QStringList boxes() const;
    QString lengthUnit() const { return preferences_->lengthUnit(); }
    int blockKind() const { return static_cast<int>(block_.kind); }
    void setBlockKind(int kind);
    QString blockKindText() const;
    QStringList regions() const;
    int blockRegion() const;
    void setBlockRegion(int region);
    DayPicker* firstDay() { return &firstDay_; }
    DayPicker* lastDay() { return &lastDay_; }
    bool isNew() const { return index_ < 0; }
    QString draftName() const { return QString::fromStdString(draft_.name); }
    void setDraftName(const QString& name);
    int draftPriority() const { return static_cast<int>(draft_.priority); }
    void setDraftPriority(int priority);
    QString priorityText() const;
    bool draftMain() const { return draft_.main; }
    void setDraftMain(bool main);
    DayPicker* day() { return &day_; }
    Rows* consequences() { return &consequences_; }
    QString nameProblem() const { return problems_.value(QStringLiteral("name")).toString(); }
    QString dayProblem() const { return problems_.value(QStringLiteral("day")).toString(); }
    QString problem() const { return problems_.value(QStringLiteral("all")).toString(); }
    bool canSave() const { return problems_.isEmpty(); }

signals:
    void changed();
    void draftChanged();
    /// `before`: what it was, for the way back.
    void seasonChanged(const fleetrung::season::SeasonSetup& setup, const fleetrung::season::SeasonSetup& before,
                       const QString& said);

private:
    Units units() const { return preferences_->units(); }
    void showRows();
    [[nodiscard]] season::SeasonSetup drafted() const;
    void weigh();
    /// The plan with a competition, block or box taken out or put in; kept where it stands.
    void keepIfSound(const season::SeasonSetup& setup, const QString& said);
    void keep(const season::SeasonSetup& setup, const QString& said);

    const Preferences* preferences_;
    std::optional<SeasonShown> season_;
    Rows competitions_;
    Rows blocks_;
    bool draftsBlock_ = false; ///< else a competition
    int index_ = -1;
    season::Competition draft_;
    DayPicker day_;
    season::Block block_;
    DayPicker firstDay_;
    DayPicker lastDay_;
    Rows consequences_;
    QVariantMap problems_;
};

} // namespace fleetrung::views
