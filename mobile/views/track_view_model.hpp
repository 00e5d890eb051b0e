// What Track shows: runs and jumps of the athlete, latest first, and the forms to type them.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/store/records.hpp"
#include "engine/track/personal_bests.hpp"
#include "mobile/views/jump_entry.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"
#include "mobile/views/run_fit_view_model.hpp"
#include "mobile/views/split_entry.hpp"

namespace fleetrung::views
{

class TrackViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(QString athleteName READ athleteName NOTIFY changed FINAL)
    Q_PROPERTY(bool hasAthlete READ hasAthlete NOTIFY changed FINAL)
    Q_PROPERTY(bool jumpsShown READ jumpsShown WRITE setJumpsShown NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* runs READ runs CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* jumps READ jumps CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* boxes READ boxes CONSTANT FINAL) ///< drop jumps by height of the box
    Q_PROPERTY(fleetrung::views::JumpEntry* jumpEntry READ jumpEntry CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SplitEntry* splits READ splits CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::RunFitViewModel* fit READ fit CONSTANT FINAL)
    Q_PROPERTY(QStringList tests READ tests NOTIFY changed FINAL)
    Q_PROPERTY(int test READ test WRITE setTest NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* bests READ bests CONSTANT FINAL)
    Q_PROPERTY(bool hasMore READ hasMore NOTIFY changed FINAL)
    Q_PROPERTY(QString today READ today NOTIFY changed FINAL)
    Q_PROPERTY(QString dayExample READ dayExample NOTIFY changed FINAL) ///< how a day is typed here
    Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyTitle READ emptyTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)

public:
    explicit TrackViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// Runs and jumps in order of days, the earliest first.
    void show(const QString& athlete, CivilDate today, std::vector<store::Sprint> runs, std::vector<store::Jump> jumps);

    /// A new run is going to be typed: what its form begins with. Splits are typed into `splits`.
    Q_INVOKABLE QVariantMap beginRun();
    /// Problems by field; empty where it was taken.
    Q_INVOKABLE QVariantMap addRun(const QVariantMap& form);
    /// New jumps are going to be typed: what their form begins with. Trials are typed into `jumpEntry`.
    Q_INVOKABLE QVariantMap beginJumps();
    /// Shows the run in `fit`, and asks for what can be said of it.
    Q_INVOKABLE void openRun(const QString& key);
    void showRun(logbook::RunStory story) { fit_.show(std::move(story)); }
    Q_INVOKABLE void remove(const QString& key);
    Q_INVOKABLE void showMore();

    QString athleteName() const { return athlete_; }
    bool hasAthlete() const { return !athlete_.isEmpty(); }
    bool jumpsShown() const { return jumpsShown_; }
    void setJumpsShown(bool shown);
    Rows* runs() { return &runRows_; }
    Rows* jumps() { return &jumpRows_; }
    /// Roles "title", "value", "detail", "best", "slow": the last day's medians of each box.
    Rows* boxes() { return &boxRows_; }
    JumpEntry* jumpEntry() { return &jumpEntry_; }
    SplitEntry* splits() { return &splits_; }
    RunFitViewModel* fit() { return &fit_; }
    QStringList tests() const; ///< "All", then each test, the one that was run last first
    int test() const { return static_cast<int>(test_); }
    void setTest(int test);
    Rows* bests() { return &bestRows_; } ///< of the tests shown
    bool hasMore() const;
    QString today() const { return preferences_->units().dayNumber(today_); }
    QString dayExample() const { return preferences_->units().dayExample(); }
    QString lengthUnit() const { return preferences_->lengthUnit(); }
    QString emptyTitle() const;
    QString emptyText() const;

signals:
    void changed();
    /// As typed: the day, not yet the athlete nor the instant.
    void runAdded(const fleetrung::store::Sprint& run);
    void jumpsAdded(const std::vector<fleetrung::store::Jump>& jumps);
    void runOpened(const fleetrung::Identifier& run, bool useAll);
    void runRemoved(const QString& key);
    void jumpRemoved(const QString& key);

private:
    void showRows();
    void findWanted();
    void showBoxes();
    QVariantMap jumpRow(const store::Jump& jump) const;

    const Preferences* preferences_;
    QString athlete_;
    CivilDate today_{};
    std::vector<store::Sprint> runs_;
    std::vector<store::Jump> jumps_;
    SplitEntry splits_;
    JumpEntry jumpEntry_;
    RunFitViewModel fit_;
    bool jumpsShown_ = false;
    std::size_t page_ = 30; ///< rows shown; more on demand, so that a page of three seasons opens at once
    std::vector<track::PersonalBest> bests_;
    std::size_t test_ = 0;            ///< 0: all, else one of bests_
    std::vector<std::size_t> wanted_; ///< of runs_, those of the test
    Rows runRows_;
    Rows bestRows_;
    Rows jumpRows_;
    Rows boxRows_;
};

} // namespace fleetrung::views
