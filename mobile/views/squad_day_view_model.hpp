// A squad's day: who is due for what, how they share the racks, and who shares this sensor.
#pragma once

#include <set>
#include <string>
#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "engine/season/squad_day.hpp"
#include "mobile/views/bench_view_model.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class SquadDayViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(fleetrung::views::Rows* due READ due CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* turns READ turns CONSTANT FINAL)     ///< by round, then rack
    Q_PROPERTY(fleetrung::views::Rows* sharing READ sharing CONSTANT FINAL) ///< who may share this sensor
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL)
    Q_PROPERTY(QString emptyText READ emptyText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList groups READ groups NOTIFY changed FINAL) ///< "All", then those of the squad
    Q_PROPERTY(int group READ group NOTIFY changed FINAL)
    Q_PROPERTY(int racks READ racks NOTIFY changed FINAL)
    Q_PROPERTY(QString racksText READ racksText NOTIFY changed FINAL)
    Q_PROPERTY(bool byHand READ byHand NOTIFY changed FINAL)

public:
    explicit SquadDayViewModel(Preferences* preferences, QObject* parent = nullptr);

    void show(std::vector<season::DueAthlete> due);
    /// Who may share the sensor without being due.
    void showSquad(std::vector<Sharer> squad);
    /// Those who share the sensor with that athlete: picked by hand, else of the same rack and round of that lift. At
    /// least two, or none.
    [[nodiscard]] std::vector<Sharer> sharersOf(const std::string& athlete, const std::string& ladder) const;

    /// Reads who is due, where that is not known yet.
    Q_INVOKABLE void ask();
    Q_INVOKABLE void chooseGroup(int index);
    Q_INVOKABLE void moveRacks(int more);
    Q_INVOKABLE void choose(const QString& key);
    Q_INVOKABLE void toggleSharer(const QString& key);
    Q_INVOKABLE void shareByRack(); ///< forgets what was picked by hand

    Rows* due() { return &dueRows_; }
    Rows* turns() { return &turnRows_; }
    Rows* sharing() { return &sharingRows_; }
    QString countText() const;
    QString emptyText() const;
    QStringList groups() const;
    int group() const { return group_; }
    int racks() const { return preferences_->racks(); }
    QString racksText() const;
    bool byHand() const { return !picked_.empty(); }

signals:
    void changed();
    void asked();
    void chosen(const QString& key);
    void sharersChanged();

private:
    [[nodiscard]] std::vector<season::DueAthlete> inGroup() const;
    [[nodiscard]] std::string nameOf(const std::string& key) const;
    [[nodiscard]] QString liftsOf(const season::SessionPlan& session) const;
    void showRows();
    void showSharing();

    Preferences* preferences_;
    std::vector<season::DueAthlete> due_;
    bool known_ = false;
    std::vector<Sharer> squad_;
    std::vector<season::RackTurn> turnsNow_;
    std::set<std::string> picked_;
    int group_ = 0;
    Rows dueRows_;
    Rows turnRows_;
    Rows sharingRows_;
};

} // namespace fleetrung::views
