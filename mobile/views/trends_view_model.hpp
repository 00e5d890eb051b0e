// What Trends shows: over which weeks; time to peak velocity of a ladder, times of a sprint test, and whether it
// worked.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/did_it_work.hpp"
#include "mobile/views/lift_trend_view_model.hpp"
#include "mobile/views/load_velocity_view_model.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/sprint_trend_view_model.hpp"

namespace fleetrung::views
{

struct TrendsData {
    QString athlete;
    SeasonTrends season;
    bool hasEarlier = false;                               ///< there are seasons before this one
    std::optional<Expected<transfer::Transfer>> didItWork; ///< empty: no season
};

class TrendsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(QString athleteName READ athleteName NOTIFY changed FINAL)
    Q_PROPERTY(QString seasonText READ seasonText NOTIFY changed FINAL)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY changed FINAL)
    Q_PROPERTY(QStringList periods READ periods NOTIFY changed FINAL)
    Q_PROPERTY(int period READ period NOTIFY changed FINAL)
    Q_PROPERTY(QString periodNote READ periodNote NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::LiftTrendViewModel* lift READ lift CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::SprintTrendViewModel* sprint READ sprint CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::LoadVelocityViewModel* loads READ loads CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::DidItWorkViewModel* didItWork READ didItWork CONSTANT FINAL)

public:
    explicit TrendsViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(TrendsData data);
    /// Seasons before the shown one, in order of time: the answer to `earlierAsked`.
    void showEarlier(std::vector<SeasonTrends> earlier);

    Q_INVOKABLE void choosePeriod(int index);
    /// All weeks of the season, all sides, all runs.
    Q_INVOKABLE void clearFilters();

    QString athleteName() const { return data_.athlete; }
    QString seasonText() const { return QString::fromStdString(data_.season.name); }
    bool isEmpty() const { return !lift_.hasLifts() && !sprint_.hasSprints(); }
    QStringList periods() const;
    int period() const { return static_cast<int>(period_); }
    QString periodNote() const;
    LiftTrendViewModel* lift() { return &lift_; }
    SprintTrendViewModel* sprint() { return &sprint_; }
    LoadVelocityViewModel* loads() { return &loads_; }
    DidItWorkViewModel* didItWork() { return &didItWork_; }

signals:
    void changed();
    void earlierAsked();

private:
    void showPeriod();
    void showLoads();

    const Preferences* preferences_;
    TrendsData data_;
    std::optional<std::vector<SeasonTrends>> earlier_;
    TrendPeriod period_ = TrendPeriod::Season;
    LiftTrendViewModel lift_;
    SprintTrendViewModel sprint_;
    LoadVelocityViewModel loads_;
    DidItWorkViewModel didItWork_;
};

} // namespace fleetrung::views
