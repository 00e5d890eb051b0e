// What Squad shows: the athletes on this device, which of them the other pages show, and the form of one.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/base/civil_date.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

struct AthleteShown {
    std::string key;
    std::string name;
    std::optional<CivilDate> born;
    std::optional<double> bodyMassKg;
    std::optional<double> statureM;
    std::optional<double> trainingYears;
    std::string event; ///< "200 m"
    std::string group; ///< training group
    bool guardianConsent = false;
};

class SquadViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(fleetrung::views::Rows* athletes READ athletes CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* archived READ archived CONSTANT FINAL)
    Q_PROPERTY(QString dayExample READ dayExample NOTIFY changed FINAL) ///< how a day is typed here
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL)

public:
    explicit SquadViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(std::vector<AthleteShown> athletes, std::vector<AthleteShown> archived, const std::string& current,
              CivilDate today);

    Q_INVOKABLE void choose(const QString& key);
    /// The values of the form: of an athlete, or empty ones for a new athlete.
    Q_INVOKABLE QVariantMap form(const QString& key) const;
    /// Problems by field; empty where it was taken. An empty key makes a new athlete.
    Q_INVOKABLE QVariantMap save(const QString& key, const QVariantMap& form);
    /// Into the archive: with all that was done, out of every list.
    Q_INVOKABLE void remove(const QString& key);
    Q_INVOKABLE void bringBack(const QString& key);

    Rows* athletes() { return &rows_; }
    Rows* archived() { return &archivedRows_; }
    QString dayExample() const { return preferences_->units().dayExample(); }
    QString countText() const;

signals:
    void changed();
    void chosen(const QString& key);
    void saved(const fleetrung::views::AthleteShown& athlete); ///< an empty key: a new one
    void removed(const QString& key, const QString& name);
    void broughtBack(const QString& key, const QString& name);

private:
    void showRows();
    QString detailOf(const AthleteShown& athlete) const;
    std::optional<int> ageOf(const AthleteShown& athlete) const;
    const AthleteShown* find(const QString& key) const;

    const Preferences* preferences_;
    std::vector<AthleteShown> athletes_;
    std::vector<AthleteShown> archived_;
    std::string current_;
    CivilDate today_{};
    Rows rows_;
    Rows archivedRows_;
};

} // namespace fleetrung::views
