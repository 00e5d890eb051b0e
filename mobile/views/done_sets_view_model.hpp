// The sets of today that are done, and what can still be said of them: load and kind, a repetition that was none, one
// that the sensor missed, one that is no evidence, the side. Nothing measured is changed: what the user says is kept
// beside it, and can be taken back.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "mobile/logbook/values.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

struct DoneSet {
    logbook::SetView set;
    std::string name; ///< of the lift, "Half squat"
    bool oneSided = false;
    bool byPeakVelocity = false; ///< the rung's velocity is the peak's
    bool byDropTime = false;     ///< the rung's time is that from the quickest descent to rest
};

class DoneSetsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(fleetrung::views::Rows* sets READ sets CONSTANT FINAL)
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL) ///< "3 sets done today"; empty where none is
    Q_PROPERTY(QString key READ key NOTIFY changed FINAL)             ///< of the opened set; empty: none
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool onLadder READ onLadder NOTIFY changed FINAL)
    Q_PROPERTY(bool onlyCounted READ onlyCounted NOTIFY changed FINAL) ///< typed without a value: only how many
    Q_PROPERTY(bool oneSided READ oneSided NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* repetitions READ repetitions CONSTANT FINAL)
    Q_PROPERTY(QString massUnit READ massUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString timeName READ timeName NOTIFY changed FINAL)

public:
    explicit DoneSetsViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// In the order in which they were done. An opened set stays open.
    void show(std::vector<DoneSet> sets);

    Q_INVOKABLE void open(const QString& key);
    /// Kind, load and effort of the opened set, for its form.
    Q_INVOKABLE QVariantMap form() const;
    /// Problems by field; empty where it was taken.
    Q_INVOKABLE QVariantMap save(const QVariantMap& form);
    Q_INVOKABLE void remove();
    Q_INVOKABLE void strikeOut(const QString& repetition, bool out);
    Q_INVOKABLE void countAsEvidence(const QString& repetition, bool counts);
    Q_INVOKABLE void setRight(const QString& repetition, bool right);
    /// One more, with what is known of it; problems by field.
    Q_INVOKABLE QVariantMap add(const QVariantMap& form);

    Rows* sets() { return &sets_; }
    QString countText() const;
    QString key() const;
    QString title() const;
    QString text() const;
    bool onLadder() const { return opened() && !opened()->set.row.ladder.empty(); }
    bool onlyCounted() const;
    bool oneSided() const { return opened() && opened()->oneSided; }
    Rows* repetitions() { return &repetitions_; }
    QString massUnit() const { return preferences_->massUnit(); }
    QString timeName() const;

signals:
    void changed();
    void setSaid(const fleetrung::store::LiftSet& now, const fleetrung::store::LiftSet& before);
    void setRemoved(const fleetrung::Identifier& set);
    void struckOut(const fleetrung::Identifier& repetition, bool out);
    void evidenceSaid(const fleetrung::Identifier& repetition, bool counts);
    void sideSaid(const fleetrung::Identifier& repetition, fleetrung::store::Side side, fleetrung::store::Side before);
    void repetitionAdded(const fleetrung::Identifier& set, double atTime,
                         const fleetrung::logbook::TypedRepetitions& values);

private:
    [[nodiscard]] Units units() const { return preferences_->units(); }
    [[nodiscard]] const DoneSet* opened() const;
    [[nodiscard]] const logbook::RepetitionView* find(const QString& repetition) const;
    [[nodiscard]] QVariantMap rowOf(const DoneSet& done) const;
    [[nodiscard]] QVariantMap rowOf(const logbook::RepetitionView& repetition, int number, const DoneSet& of) const;
    void showRows();

    const Preferences* preferences_;
    std::vector<DoneSet> done_;
    std::optional<Identifier> open_;
    Rows sets_;
    Rows repetitions_;
};

} // namespace fleetrung::views
