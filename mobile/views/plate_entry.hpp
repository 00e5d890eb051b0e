// The load as it lies on the bar: one tap puts a plate on each side. The way of people who see plates and no number.
#pragma once

#include <vector>

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/views/preferences.hpp"

namespace fleetrung::views
{

class PlateEntry : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(QStringList weights READ weights NOTIFY changed FINAL) ///< of the rack, heaviest first
    Q_PROPERTY(QString total READ total NOTIFY changed FINAL)         ///< "100 kg"
    Q_PROPERTY(QString sideText READ sideText NOTIFY changed FINAL)
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)

public:
    explicit PlateEntry(const Preferences* preferences, QObject* parent = nullptr);

    /// The plates of a load that was typed; the bar alone where it is no load.
    Q_INVOKABLE void begin(const QString& load);
    Q_INVOKABLE void add(int weight); ///< index into weights
    Q_INVOKABLE void takeOff();       ///< the one that was put on last
    Q_INVOKABLE void clear();
    Q_INVOKABLE QString load() const; ///< as it would be typed

    QStringList weights() const;
    QString total() const;
    QString sideText() const;
    bool any() const { return !side_.empty(); }

signals:
    void changed();

private:
    Units units() const { return preferences_->units(); }
    [[nodiscard]] double bar() const;

    const Preferences* preferences_;
    std::vector<double> side_; ///< in the order in which they were put on
};

} // namespace fleetrung::views
