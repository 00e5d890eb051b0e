// A ladder of the user's own while it is made or changed: begun as a copy of another, then fitted rung by rung.
#pragma once

#include <set>
#include <string>

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/season/ladder.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class OwnLadderViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(bool heavy READ heavy WRITE setHeavy NOTIFY changed FINAL) ///< one heavy ladder steps in seven days
    Q_PROPERTY(bool oneSided READ oneSided WRITE setOneSided NOTIFY changed FINAL)
    Q_PROPERTY(QStringList regionNames READ regionNames NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList regions READ regions NOTIFY changed FINAL) ///< places in regionNames
    Q_PROPERTY(fleetrung::views::Rows* rungs READ rungs CONSTANT FINAL)
    Q_PROPERTY(QStringList motions READ motions NOTIFY changed FINAL) ///< what the repetition finder knows
    Q_PROPERTY(QStringList phases READ phases NOTIFY changed FINAL)   ///< in which a rung may begin or end
    Q_PROPERTY(QString lengthUnit READ lengthUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit OwnLadderViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// `stoodOn`: keys of rungs that the athlete has stood on; they stay.
    void begin(season::Ladder ladder, bool isNew, std::set<std::string> stoodOn);
    void setProblem(const QString& problem);
    [[nodiscard]] const season::Ladder& ladder() const { return ladder_; }

    Q_INVOKABLE void toggleRegion(int index);
    /// Fields: name, motion, rangeFrom, rangeTo, targetFrom, targetTo, earliest, latest, sets, repetitions, rest,
    /// ratio, probe, box, needs. -1: a new rung, shorter than the last.
    Q_INVOKABLE QVariantMap rungForm(int index) const;
    /// Problems by field; empty where the rung was taken. Rungs find their place by their range.
    Q_INVOKABLE QVariantMap saveRung(int index, const QVariantMap& form);
    /// A sentence where it must stay.
    Q_INVOKABLE QString removeRung(int index);
    /// Asks for the whole ladder to be kept.
    Q_INVOKABLE void save();

    bool isNew() const { return isNew_; }
    QString name() const { return QString::fromStdString(ladder_.name); }
    void setName(const QString& name);
    bool heavy() const { return ladder_.heavy; }
    void setHeavy(bool heavy);
    bool oneSided() const { return ladder_.oneSided; }
    void setOneSided(bool oneSided);
    QStringList regionNames() const;
    QVariantList regions() const;
    Rows* rungs() { return &rungs_; }
    QStringList motions() const;
    QStringList phases() const;
    QString lengthUnit() const { return preferences_->lengthUnit(); }
    QString problem() const { return problem_; }

signals:
    void changed();
    void saved();

private:
    Units units() const { return preferences_->units(); }
    [[nodiscard]] bool holds(int index) const;
    [[nodiscard]] season::Rung freshRung() const;
    void showRungs();

    const Preferences* preferences_;
    season::Ladder ladder_;
    bool isNew_ = true;
    std::set<std::string> stoodOn_;
    QString problem_;
    Rows rungs_;
};

} // namespace fleetrung::views
