// What Track shows of the work that is counted, timed or not: the last weeks with their fast metres, each piece of
// work, and the form to type it.
#pragma once

#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/store/records.hpp"
#include "engine/track/weeks.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

/// A piece of work and the fast metres that count of it.
struct WorkDone {
    store::TrackWork row;
    track::FastMetres fast;
};

struct TrackWorkData {
    std::vector<WorkDone> work;     ///< in order of days
    std::vector<track::Week> weeks; ///< likewise; the last one is this week
};

class TrackWorkViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    /// Whether it is looked at: nothing is worked out before.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* weeks READ weeks CONSTANT FINAL)
    Q_PROPERTY(bool hasMore READ hasMore NOTIFY changed FINAL)
    Q_PROPERTY(QString today READ today NOTIFY changed FINAL)
    Q_PROPERTY(QString dayExample READ dayExample NOTIFY changed FINAL) ///< how a day is typed here
    Q_PROPERTY(QString massUnit READ massUnit NOTIFY changed FINAL)

public:
    explicit TrackWorkViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(CivilDate today, TrackWorkData data);

    Q_INVOKABLE QVariantMap beginWork() const;
    /// Problems by field; empty where it was taken.
    Q_INVOKABLE QVariantMap addWork(const QVariantMap& form);
    Q_INVOKABLE void remove(const QString& key);
    Q_INVOKABLE void showMore();

    bool shown() const { return shown_; }
    void setShown(bool shown);
    /// Roles "key", "title", "value", "detail".
    Rows* rows() { return &rows_; }
    /// Roles "title", "value", "detail", "flag": this week first.
    Rows* weeks() { return &weekRows_; }
    bool hasMore() const { return data_.work.size() > page_; }
    QString today() const { return preferences_->units().dayNumber(today_); }
    QString dayExample() const { return preferences_->units().dayExample(); }
    QString massUnit() const { return preferences_->units().massUnit(); }

signals:
    void changed();
    void asked(); ///< for what is to be shown
    /// As typed: the day, not yet the athlete nor the instant.
    void workAdded(const fleetrung::store::TrackWork& work);
    void workRemoved(const QString& key);

private:
    void showRows();
    QVariantMap workRow(const WorkDone& work) const;
    QVariantMap weekRow(const track::Week& week) const;

    const Preferences* preferences_;
    CivilDate today_{};
    TrackWorkData data_;
    bool shown_ = false;
    std::size_t page_ = 30; ///< rows shown; more on demand
    Rows rows_;
    Rows weekRows_;
};

} // namespace fleetrung::views
