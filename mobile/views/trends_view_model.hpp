// What Trends shows: time to peak velocity by week for one ladder, sprint times by week, and whether it worked.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/plot/pictures.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/did_it_work.hpp"
#include "mobile/views/preferences.hpp"

namespace fleetrung::views
{

struct TrendsData {
    QString athlete;
    QString season;
    std::vector<plot::TpvTrendInput> ladders; ///< `lift` is the name shown; those without a point may be among them
    plot::SprintTrendInput sprints;
    std::optional<Expected<transfer::Transfer>> didItWork; ///< empty: no season
};

class TrendsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(QString athleteName READ athleteName NOTIFY changed FINAL)
    Q_PROPERTY(QString seasonText READ seasonText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int current READ current NOTIFY changed FINAL)
    Q_PROPERTY(bool hasLifts READ hasLifts NOTIFY changed FINAL)
    Q_PROPERTY(QString liftTitle READ liftTitle NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue liftPlot READ liftPlot NOTIFY changed FINAL)
    Q_PROPERTY(QString liftWords READ liftWords NOTIFY changed FINAL)
    Q_PROPERTY(bool hasSprints READ hasSprints NOTIFY changed FINAL)
    Q_PROPERTY(QStringList tests READ tests NOTIFY changed FINAL)
    Q_PROPERTY(int currentTest READ currentTest NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue sprintPlot READ sprintPlot NOTIFY changed FINAL)
    Q_PROPERTY(QString sprintWords READ sprintWords NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::DidItWorkViewModel* didItWork READ didItWork CONSTANT FINAL)

public:
    explicit TrendsViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(TrendsData data);

    Q_INVOKABLE void choose(int index);
    Q_INVOKABLE void chooseTest(int index);

    QString athleteName() const { return data_.athlete; }
    QString seasonText() const { return data_.season; }
    QStringList names() const;
    int current() const { return static_cast<int>(current_); }
    bool hasLifts() const { return !data_.ladders.empty(); }
    QString liftTitle() const;
    plot::PlotValue liftPlot() const;
    QString liftWords() const;
    bool hasSprints() const { return !data_.sprints.tests.empty(); }
    QStringList tests() const;
    int currentTest() const { return static_cast<int>(currentTest_); }
    plot::PlotValue sprintPlot() const;
    QString sprintWords() const;
    DidItWorkViewModel* didItWork() { return &didItWork_; }

signals:
    void changed();

private:
    const Preferences* preferences_;
    TrendsData data_;
    std::size_t current_ = 0;
    std::size_t currentTest_ = 0;
    DidItWorkViewModel didItWork_;
};

} // namespace fleetrung::views
