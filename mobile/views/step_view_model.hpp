// One step of the stair, asked about: what it rests on, or what it still waits for.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "engine/season/decision.hpp"
#include "mobile/views/engine_words.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

/// What the athlete did with a decision.
struct DecisionAnswer {
    bool followed = true;
    season::DecisionKind instead = season::DecisionKind::Hold;
    QString insteadText; ///< as kept in the logbook; empty for an answer just given
    QString why;
};

/// A stay on a rung: taken, or planned ahead.
struct StairStep {
    std::size_t rung = 0; ///< its place on the ladder, 0 = longest range
    std::string rungName; ///< "Half squat"
    bool taken = false;
    CivilDate from{};
    CivilDate to{};                        ///< inclusive; of a stay under way the day shown
    bool underWay = false;                 ///< the athlete stands here
    int week = 0;                          ///< of the season, of the first day
    QString phase;                         ///< in which it begins
    std::optional<CivilDate> firstPlanned; ///< where the season's first plan had it
    std::optional<CivilDate> earliest;     ///< ahead only
    std::optional<CivilDate> latest;       ///< ahead only: it must have begun by then
    QString dateReason;                    ///< ahead only: why that date
    bool next = false;                     ///< ahead only: no other step comes before it

    std::optional<season::Decision> decision; ///< that led here; of the next step the latest one on it
    std::optional<DecisionAnswer> answer;
    std::optional<double> firstLoadKg, lastLoadKg; ///< of the sessions that are evidence
    int sessions = 0;                              ///< of evidence
    std::vector<std::string> cautions;             ///< texts
};

/// "Hold", "Step back", ...
[[nodiscard]] QString decisionKindText(season::DecisionKind kind);
/// What was done with the decision, in words.
[[nodiscard]] QString answerWords(const DecisionAnswer& answer);
/// Roles "mark" (0 met, 1 not met, 2 for show), "name", "value", "allowed". With or without "± ..." behind the value.
[[nodiscard]] QList<QVariantMap> evidenceRows(const std::vector<season::EvidenceLine>& lines, const Units& units,
                                              bool withUncertainty);

class StepViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString when READ when NOTIFY changed FINAL)
    Q_PROPERTY(QStringList facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QString decisionTitle READ decisionTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString reason READ reason NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* evidence READ evidence CONSTANT FINAL)
    Q_PROPERTY(QString missing READ missing NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL)

public:
    explicit StepViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(const StairStep& step);

    QString title() const { return engineText(step_.rungName); }
    QString when() const;
    QStringList facts() const;
    QString decisionTitle() const;
    QString reason() const;
    Rows* evidence() { return &evidence_; }
    QString missing() const; ///< of a step ahead: the evidence that it still waits for
    QString answer() const;
    QString caution() const;

signals:
    void changed();

private:
    Units units() const { return preferences_->units(); }
    void showEvidence();

    const Preferences* preferences_;
    StairStep step_;
    Rows evidence_;
};

} // namespace fleetrung::views
