#include "mobile/views/calibration_view_model.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::views
{

using Now = motion::SixFaces::Now;

namespace
{

constexpr double gravity = 9.80665; // m/s2, standard; the phone does not ask where it is
constexpr double window = 1.0;      // s, within the 1.5 s for which a side lies still

} // namespace

CalibrationViewModel::CalibrationViewModel(const Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences), faceRows_({"pose", "taken", "wanted"}, this)
{
    showRows();
}

void CalibrationViewModel::begin(const QString& address, const QString& name)
{
    address_ = address;
    sensorName_ = name;
    trouble_.clear();
    startOver();
}

void CalibrationViewModel::startOver()
{
    six_ = {};
    now_ = Now::Moving;
    last_.clear();
    still_.clear();
    drawn_.fill(false);
    pairOf_.fill({});
    result_.reset();
    problem_.clear();
    showRows();
}

void CalibrationViewModel::leave()
{
    address_.clear();
    startOver();
}

void CalibrationViewModel::showTrouble(const QString& address, const QString& text)
{
    if (address != address_ || text == trouble_)
        return;
    trouble_ = text;
    emit changed();
}

void CalibrationViewModel::addSamples(const QString& address, const std::vector<motion::Sample>& uncalibrated)
{
    if (address != address_ || address.isEmpty() || result_)
        return;
    const Now before = now_;
    const int taken = takenCount();
    for (const auto& sample : uncalibrated)
        take(sample);
    if (now_ != before || takenCount() != taken)
        showRows();
}

void CalibrationViewModel::take(const motion::Sample& sample)
{
    if (!last_.empty() && sample.time <= last_.back().time)
        last_.clear(); // the link came back: another clock
    last_.push_back(sample);
    const auto recent =
        std::ranges::find_if(last_, [&sample](const motion::Sample& old) { return sample.time - old.time <= window; });
    last_.erase(last_.begin(), recent);

    const auto before = six_.taken();
    now_ = six_.add(sample);
    for (std::size_t face = 0; face < motion::faceCount; ++face)
        if (six_.taken()[face] && !before[face])
            place(face);
    if (six_.complete() && !result_ && problem_.isEmpty())
        solve();
}

/// Ticks the drawing for a side of the sensor. Which of its axes runs through which side nobody knows: the first side
/// of an axis is the one that is asked for, the second lies opposite.
void CalibrationViewModel::place(std::size_t face)
{
    Eigen::Vector3d sum = Eigen::Vector3d::Zero();
    for (const auto& sample : last_)
        sum += sample.specificForce;
    still_.push_back(sum / static_cast<double>(last_.size()));

    auto& pair = pairOf_[face / 2];
    if (!pair) {
        const auto used = [this](int candidate) { return std::ranges::find(pairOf_, candidate) != pairOf_.end(); };
        int wanted = next() / 2;
        for (int candidate = 0; used(wanted) && candidate < 3; ++candidate)
            wanted = candidate;
        pair = wanted;
    }
    const auto first = static_cast<std::size_t>(2 * *pair);
    drawn_[drawn_[first] ? first + 1 : first] = true;
}

void CalibrationViewModel::solve()
{
    auto solved = six_.solve(gravity);
    if (solved)
        result_ = *solved;
    else
        problem_ = tr("The sides do not fit together. Start over, and lay it quite flat each time.");
}

double CalibrationViewModel::worst(const motion::Calibration& calibration) const
{
    double worst = 0;
    for (const auto& mean : still_) {
        const Eigen::Vector3d force = calibration.scale.cwiseProduct(mean) - calibration.offset;
        worst = std::max(worst, std::abs(force.norm() - gravity));
    }
    return worst;
}

void CalibrationViewModel::save()
{
    if (!result_)
        return;
    const auto calibration = *result_;
    const QString address = address_;
    leave();
    emit saved(address, calibration);
}

// --- Words

int CalibrationViewModel::takenCount() const
{
    return static_cast<int>(std::ranges::count(six_.taken(), true));
}

int CalibrationViewModel::next() const
{
    const auto open = std::ranges::find(drawn_, false);
    return open == drawn_.end() ? -1 : static_cast<int>(open - drawn_.begin());
}

QString CalibrationViewModel::countText() const
{
    return tr("%1 of 6 sides").arg(takenCount());
}

CalibrationViewModel::Mark CalibrationViewModel::nowMark() const
{
    if (!problem_.isEmpty() || !trouble_.isEmpty() || now_ == Now::Slanted)
        return Wrong;
    return complete() || now_ == Now::Taken ? Good : Waiting;
}

QString CalibrationViewModel::nowText() const
{
    if (!problem_.isEmpty())
        return problem_;
    if (complete())
        return tr("All six sides are measured.");
    if (!trouble_.isEmpty())
        return trouble_;
    switch (now_) {
    case Now::Moving:
        return tr("Lay it down on any side, and let go.");
    case Now::Settling:
        return tr("Hands off: it is being measured.");
    case Now::Taken:
        return tr("Taken. Now another side.");
    case Now::TakenBefore:
        return tr("This side is taken. Lay it on another.");
    case Now::Slanted:
        return tr("It lies slanted: lay it flat.");
    }
    return {};
}

QString CalibrationViewModel::beforeText() const
{
    return result_ ? tr("%1 m/s²").arg(preferences_->units().number(worst({}), 2)) : QString();
}

QString CalibrationViewModel::afterText() const
{
    return result_ ? tr("%1 m/s²").arg(preferences_->units().number(worst(*result_), 2)) : QString();
}

void CalibrationViewModel::showRows()
{
    QList<QVariantMap> rows;
    for (std::size_t pose = 0; pose < motion::faceCount; ++pose)
        rows += QVariantMap{{QStringLiteral("pose"), static_cast<int>(pose)},
                            {QStringLiteral("taken"), drawn_[pose]},
                            {QStringLiteral("wanted"), static_cast<int>(pose) == next()}};
    faceRows_.show(rows);
    emit changed();
}

} // namespace fleetrung::views
