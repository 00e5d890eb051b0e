// What Trends says of "did it work?": the engine's sentence, the picture and numbers of every lag, what chance alone
// gives, and how it is judged.
#pragma once

#include <optional>

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "engine/transfer/transfer.hpp"
#include "mobile/plot/plot_value.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class DidItWorkViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QString sentence READ sentence NOTIFY changed FINAL)
    Q_PROPERTY(QString toLog READ toLog NOTIFY changed FINAL)
    Q_PROPERTY(QString chance READ chance NOTIFY changed FINAL)
    Q_PROPERTY(bool hasPicture READ hasPicture NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::plot::PlotValue picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* lags READ lags CONSTANT FINAL)
    Q_PROPERTY(QString noProof READ noProof CONSTANT FINAL)
    Q_PROPERTY(QString explanation READ explanation CONSTANT FINAL)

public:
    explicit DidItWorkViewModel(const Preferences* preferences, QObject* parent = nullptr);

    /// Empty: there is no season to judge.
    void show(std::optional<Expected<transfer::Transfer>> found);

    bool hasSeason() const { return found_.has_value(); }
    QString verdict() const;  ///< two or three words
    QString sentence() const; ///< the engine's, or why it was not judged
    QString toLog() const;    ///< what to log for it to speak; empty where it does
    QString chance() const;   ///< of the whole season; empty where there was not enough
    bool hasPicture() const { return judged() != nullptr; }
    plot::PlotValue picture() const;
    Rows* lags() { return &lags_; } ///< title, value, detail
    static QString noProof();
    static QString explanation();

signals:
    void changed();

private:
    [[nodiscard]] const transfer::Transfer* judged() const; ///< null where there was not enough
    [[nodiscard]] QVariantMap rowOf(const transfer::Lag& lag) const;
    void showRows();

    const Preferences* preferences_;
    std::optional<Expected<transfer::Transfer>> found_;
    Rows lags_;
};

} // namespace fleetrung::views
