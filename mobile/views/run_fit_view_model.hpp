// One run opened: what its splits give, how sure that is, what was left out or assumed, and the athlete's runs before.
#pragma once

#include <optional>

#include <QObject>
#include <QPointF>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/logbook/run_fit.hpp"
#include "mobile/plot/pictures.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class RunFitViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString when READ when NOTIFY changed FINAL)
    Q_PROPERTY(QString time READ time NOTIFY changed FINAL)
    Q_PROPERTY(bool flyingStart READ flyingStart NOTIFY changed FINAL)
    Q_PROPERTY(QStringList facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QString refused READ refused NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* numbers READ numbers CONSTANT FINAL)
    Q_PROPERTY(fleetrung::views::Rows* forces READ forces CONSTANT FINAL)
    Q_PROPERTY(QString forceNote READ forceNote NOTIFY changed FINAL)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed FINAL)
    Q_PROPERTY(QStringList history READ history NOTIFY changed FINAL)
    Q_PROPERTY(bool canUseAll READ canUseAll NOTIFY changed FINAL)
    Q_PROPERTY(bool usesAll READ usesAll NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue curve READ curve NOTIFY changed FINAL)
    Q_PROPERTY(QString splitText READ splitText NOTIFY splitChanged FINAL) ///< of the touched split; empty: none is
    Q_PROPERTY(fleetrung::plot::PlotValue residuals READ residuals NOTIFY changed FINAL)

public:
    explicit RunFitViewModel(const Preferences* preferences, QObject* parent = nullptr);

    void show(logbook::RunStory story);
    /// The splits that were left out are used, or left out again.
    Q_INVOKABLE void useAll(bool all);
    /// A place in one of the two pictures: the stretch that lies there, or the nearest split.
    Q_INVOKABLE void touchCurve(const QPointF& place);
    Q_INVOKABLE void touchResiduals(const QPointF& place);
    Q_INVOKABLE void stepSplit(int by);
    Q_INVOKABLE void releaseSplit();

    QString title() const;
    QString when() const;
    QString time() const;
    bool flyingStart() const { return story_ && story_->run.start == "flying"; }
    QStringList facts() const;            ///< wind, shoes, steps from video, note
    QString refused() const;              ///< why there is no fit; empty where there is one, and for a flying start
    Rows* numbers() { return &numbers_; } ///< roles "name", "value", "note"
    Rows* forces() { return &forces_; }   ///< likewise; empty where there are none: forceNote says why
    QString forceNote() const;
    QStringList notes() const; ///< what was left out or assumed
    QStringList history() const;
    bool canUseAll() const;
    bool usesAll() const { return story_ && story_->usesAll; }
    plot::PlotValue curve() const;
    plot::PlotValue residuals() const;
    QString splitText() const;

signals:
    void changed();
    void splitChanged();
    void asked(const fleetrung::Identifier& run, bool useAll);

private:
    Units units() const { return preferences_->units(); }
    [[nodiscard]] const logbook::RunFit* fit() const;
    [[nodiscard]] const logbook::FlyingRun* flying() const;
    [[nodiscard]] QString errorText(double error) const;
    QList<QVariantMap> fitRows() const;
    QList<QVariantMap> flyingRows() const;
    QList<QVariantMap> forceRows() const;
    void showRows();
    [[nodiscard]] plot::SprintCurveInput input() const;
    void chooseSplit(std::optional<std::size_t> split);

    const Preferences* preferences_;
    std::optional<logbook::RunStory> story_;
    std::optional<std::size_t> split_; ///< the touched one, of the fit's residuals
    Rows numbers_;
    Rows forces_;
};

} // namespace fleetrung::views
