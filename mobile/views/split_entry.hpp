// Splits typed with a few big keys while the stopwatch is still in the other hand: the next distance is offered, the
// digits of the watch are enough (189 is 1.89 s), and one key takes the last split off again.
#pragma once

#include <vector>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "engine/store/records.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class SplitEntry : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(QString distance READ distance NOTIFY changed FINAL)
    Q_PROPERTY(QString time READ time NOTIFY changed FINAL)
    Q_PROPERTY(QString point READ point CONSTANT FINAL)
    Q_PROPERTY(QString last READ last NOTIFY changed FINAL)
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString distanceProblem READ distanceProblem NOTIFY changed FINAL)
    Q_PROPERTY(QString timeProblem READ timeProblem NOTIFY changed FINAL)
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* rows READ rows CONSTANT FINAL)

public:
    explicit SplitEntry(const Preferences* preferences, QObject* parent = nullptr);

    /// Empty, with the distances of the run that was last split: [m], ascending.
    void begin(std::vector<double> usual);
    /// The whole distance as typed: no further one is offered before it.
    Q_INVOKABLE void setRun(const QString& distance);
    Q_INVOKABLE void press(const QString& key); ///< a digit, or the decimal point
    Q_INVOKABLE void erase();
    /// With the distance as it stands in its field. False: the problem stands beside its field.
    Q_INVOKABLE bool add(const QString& distance);
    Q_INVOKABLE void takeOffLast();

    QString distance() const; ///< the next one, for its field
    QString time() const;     ///< as it would be read: "1.89"
    QString point() const;    ///< of the user's locale
    QString last() const;
    QString summary() const;
    QString distanceProblem() const { return distanceProblem_; }
    QString timeProblem() const { return timeProblem_; }
    bool any() const { return !splits_.empty(); }
    Rows* rows() { return &rows_; }
    [[nodiscard]] const std::vector<store::Split>& splits() const { return splits_; }

signals:
    void changed();

private:
    [[nodiscard]] double nextDistance() const;
    [[nodiscard]] QString text(const store::Split& split) const;
    void show();

    const Preferences* preferences_;
    std::vector<double> usual_;
    double run_ = 0; ///< m; 0 while it is not known
    std::vector<store::Split> splits_;
    QString keys_; ///< as pressed; a point is '.'
    QString distanceProblem_, timeProblem_;
    Rows rows_;
};

} // namespace fleetrung::views
