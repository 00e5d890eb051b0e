// Jumps of one kind, typed trial by trial: two or three of a test, each kept as a jump of its own, with the best and
// the mean of them in sight before they are saved.
#pragma once

#include <optional>
#include <vector>

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

#include "engine/store/records.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class FormReader;

class JumpEntry : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Owned by a view model")
    Q_PROPERTY(fleetrung::views::Rows* trials READ trials CONSTANT FINAL) ///< role "words"
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)         ///< best and mean
    Q_PROPERTY(bool any READ any NOTIFY changed FINAL)
    Q_PROPERTY(bool full READ full NOTIFY changed FINAL)
    Q_PROPERTY(QString caution READ caution NOTIFY changed FINAL) ///< before drop jumps, with our limits

public:
    static constexpr std::size_t mostTrials = 12;

    explicit JumpEntry(const Preferences* preferences, QObject* parent = nullptr);

    /// Without trials. Gives what the form begins with: kind, box, bounds, surface, shoes of the last jump. `jumps` in
    /// order of days.
    QVariantMap begin(const std::vector<store::Jump>& jumps, CivilDate today);

    /// Another kind, box or number of bounds: trials of the one before do not go with it.
    Q_INVOKABLE void clear();
    /// The form's values of one jump. Problems by field; empty where it was taken.
    Q_INVOKABLE QVariantMap addTrial(const QVariantMap& form);
    Q_INVOKABLE void takeOffLast();
    /// All trials, and what stands in the fields, where anything does. Problems by field; empty where they were taken.
    Q_INVOKABLE QVariantMap save(const QVariantMap& form);

    Rows* trials() { return &rows_; }
    QString summary() const;
    bool any() const { return !trials_.empty(); }
    bool full() const { return trials_.size() >= mostTrials; }
    QString caution() const;

signals:
    void changed();
    /// As typed: the day, not yet the athlete nor the instant.
    void added(const std::vector<fleetrung::store::Jump>& jumps);

private:
    [[nodiscard]] store::Jump readTrial(FormReader& reader) const;
    void readCommon(FormReader& reader, store::Jump& jump) const;
    void showTrials();

    const Preferences* preferences_;
    CivilDate today_{};
    std::vector<store::Jump> trials_;
    Rows rows_;
};

/// What is said of one jump: "34 cm", and its parts: contact, flight, reactive strength.
struct JumpWords {
    QString value;
    QStringList parts;
};
[[nodiscard]] JumpWords wordsOf(const store::Jump& jump, const Units& units);

} // namespace fleetrung::views
