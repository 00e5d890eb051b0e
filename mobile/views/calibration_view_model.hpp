// Measuring a sensor's own errors: it is laid on its six sides, in any order, and motion::SixFaces tells from the
// samples which have been taken. Nothing is tapped in between: both hands are free for the sensor.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "engine/motion/calibration.hpp"
#include "mobile/views/preferences.hpp"
#include "mobile/views/rows.hpp"

namespace fleetrung::views
{

class CalibrationViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the program")
    Q_PROPERTY(QString sensorName READ sensorName NOTIFY changed FINAL)
    Q_PROPERTY(fleetrung::views::Rows* faces READ faces CONSTANT FINAL) ///< in the order in which they are asked for
    Q_PROPERTY(int next READ next NOTIFY changed FINAL)                 ///< pose that is asked for; -1: none is left
    Q_PROPERTY(QString countText READ countText NOTIFY changed FINAL)
    Q_PROPERTY(QString nowText READ nowText NOTIFY changed FINAL)
    Q_PROPERTY(Mark nowMark READ nowMark NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool complete READ complete NOTIFY changed FINAL) ///< solved: it can be saved
    Q_PROPERTY(QString beforeText READ beforeText NOTIFY changed FINAL)
    Q_PROPERTY(QString afterText READ afterText NOTIFY changed FINAL)

public:
    enum Mark { Waiting, Good, Wrong };
    Q_ENUM(Mark)

    explicit CalibrationViewModel(const Preferences* preferences, QObject* parent = nullptr);

    // From the program
    void begin(const QString& address, const QString& name);
    void addSamples(const QString& address, const std::vector<motion::Sample>& uncalibrated);
    void showTrouble(const QString& address, const QString& text); ///< empty: it is over

    [[nodiscard]] QString address() const { return address_; }

    // From the page
    Q_INVOKABLE void startOver();
    Q_INVOKABLE void leave();
    Q_INVOKABLE void save();

    QString sensorName() const { return sensorName_; }
    Rows* faces() { return &faceRows_; }
    int next() const;
    QString countText() const;
    QString nowText() const;
    Mark nowMark() const;
    QString problem() const { return problem_; }
    bool complete() const { return result_.has_value(); }
    QString beforeText() const;
    QString afterText() const;

signals:
    void changed();
    void saved(const QString& address, const fleetrung::motion::Calibration& calibration);

private:
    void take(const motion::Sample& sample);
    void place(std::size_t face);
    void solve();
    void showRows();
    [[nodiscard]] int takenCount() const;
    /// How far the length of gravity is off at worst over the six sides [m/s2], with that calibration.
    [[nodiscard]] double worst(const motion::Calibration& calibration) const;

    const Preferences* preferences_;
    QString address_;
    QString sensorName_;
    QString trouble_;
    motion::SixFaces six_;
    motion::SixFaces::Now now_ = motion::SixFaces::Now::Moving;
    std::vector<motion::Sample> last_;            ///< of the last second
    std::vector<Eigen::Vector3d> still_;          ///< mean force of each side taken
    std::array<bool, motion::faceCount> drawn_{}; ///< drawings that are ticked
    std::array<std::optional<int>, 3> pairOf_;    ///< axis of the sensor -> pair of drawings
    std::optional<motion::Calibration> result_;
    QString problem_;
    Rows faceRows_;
};

} // namespace fleetrung::views
