// The lifts of the season that stands: its ladders in their order, those of the user's own, and the lifts beside them.
// Each change is kept at once, with its undo.
#pragma once

#include <optional>

#include <QObject>
#include <QStringList>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/own_ladder_view_model.hpp"
#include "mobile/views/season_view_model.hpp"

namespace fleetrung::views
{

class SeasonLiftsViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    /// Chosen ones first, in their order; roles title, detail, chosen, own, first.
    Q_PROPERTY(fleetrung::views::Rows* ladders READ ladders CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* secondary READ secondary CONSTANT FINAL) ///< title, detail
    Q_PROPERTY(fleetrung::views::OwnLadderViewModel* own READ own CONSTANT FINAL)
    Q_PROPERTY(QStringList weekdays READ weekdays NOTIFY changed FINAL)
    Q_PROPERTY(QStringList motions READ motions NOTIFY changed FINAL)   ///< the first: none that the sensor knows
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY changed FINAL) ///< names of the chosen ladders
    Q_PROPERTY(QString turnsText READ turnsText NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    explicit SeasonLiftsViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(std::optional<SeasonShown> season);

    /// Into the season, from today on, or out of it.
    Q_INVOKABLE void toggleLadder(int row);
    Q_INVOKABLE void raiseLadder(int row); ///< one place nearer to the first
    Q_INVOKABLE void beginOwn(int row);    ///< a copy of that ladder stands in `own`
    Q_INVOKABLE void editOwn(int row);
    Q_INVOKABLE void deleteOwn();

    /// Fields: name, motion, days, sets, repetitions, regions. -1: a new one.
    Q_INVOKABLE QVariantMap secondaryForm(int index) const;
    Q_INVOKABLE QVariantMap saveSecondary(int index, const QVariantMap& form);
    Q_INVOKABLE void deleteSecondary(int index);

    Rows* ladders() { return &ladders_; }
    Rows* secondary() { return &secondary_; }
    OwnLadderViewModel* own() { return &own_; }
    QStringList weekdays() const;
    QStringList motions() const;
    QString chosenText() const;
    QString turnsText() const;
    QString problem() const { return problem_; }

signals:
    void changed();
    void ownKept(); ///< the ladder under edit is in the season
    void seasonChanged(const fleetrung::season::SeasonSetup& setup, const fleetrung::season::SeasonSetup& before,
                       const QString& said);

private:
    Units units() const { return preferences_->units(); }
    [[nodiscard]] const season::SeasonSetup& setup() const { return season_->plan.setup; }
    [[nodiscard]] const season::Ladder* ladderAt(int row) const;
    [[nodiscard]] QString ladderDetail(const season::Ladder& ladder, std::size_t place) const;
    [[nodiscard]] bool isOwn(const std::string& key) const;
    [[nodiscard]] std::set<std::string> stoodOn(const std::string& ladder) const;
    void showRows();
    void saveOwn();
    /// Empty where it was kept.
    QString keep(const season::SeasonSetup& setup, const QString& said);

    const Preferences* preferences_;
    std::optional<SeasonShown> season_;
    std::vector<std::string> keys_; ///< of the rows of ladders
    Rows ladders_;
    Rows secondary_;
    OwnLadderViewModel own_;
    QString problem_;
};

} // namespace fleetrung::views
