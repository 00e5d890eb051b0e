// The words of the steps. Kept apart from what moves them on.
#include "mobile/views/teach_view_model.hpp"

#include <algorithm>
#include <cmath>

namespace fleetrung::views
{

using sensor::TeachStep;

bool TeachViewModel::isFace() const
{
    return step_ <= TeachStep::FaceSix;
}

bool TeachViewModel::isRaise() const
{
    return step_ >= TeachStep::RaiseOne;
}

QString TeachViewModel::stepText() const
{
    return tr("Step %1 of %2").arg(stepNumber()).arg(stepCount());
}

QString TeachViewModel::sentence() const
{
    switch (step_) {
    case TeachStep::FaceOne:
        return tr("Lay it flat, main side up.");
    case TeachStep::FaceTwo:
        return tr("Turn it over, main side down.");
    case TeachStep::FaceThree:
        return tr("Stand it on a long edge.");
    case TeachStep::FaceFour:
        return tr("Stand it on the other long edge.");
    case TeachStep::FaceFive:
        return tr("Stand it on a short end.");
    case TeachStep::FaceSix:
        return tr("Stand it on the other short end.");
    case TeachStep::TurnOne:
        return tr("Main side up: turn it once to the left.");
    case TeachStep::TurnTwo:
        return tr("On a long edge: turn it once to the left.");
    case TeachStep::TurnThree:
        return tr("On a short end: turn it once to the left.");
    case TeachStep::RaiseOne:
        return tr("Raise it straight up by %1, and hold it there.")
            .arg(preferences_->units().length(recording_.raiseHeight));
    case TeachStep::RaiseTwo:
        return tr("Back down, then raise it by %1 once more.")
            .arg(preferences_->units().length(recording_.raiseHeight));
    }
    return {};
}

QString TeachViewModel::hint() const
{
    if (step_ == TeachStep::FaceOne)
        return tr("The main side has the button or the lamp. It has neither? Pick a side and stay with it.");
    if (isFace())
        return tr("Lean it on something if it will not stand. Then hands off.");
    if (isRaise())
        return tr("From the floor to the top of a box or bench. Start and end still.");
    return tr("All the way round on the table, as the arrow shows. Start and end still.");
}

bool TeachViewModel::asksHeight() const
{
    return stage_ == Ready && isRaise() && !heightSaid_;
}

QString TeachViewModel::height() const
{
    return preferences_->units().lengthNumber(recording_.raiseHeight);
}

QString TeachViewModel::heightLabel() const
{
    return tr("How high will you raise it? (%1)").arg(preferences_->lengthUnit());
}

QString TeachViewModel::countdown() const
{
    if (stage_ != Running)
        return {};
    const double left = sensor::secondsOf(step_) * (1 - share());
    return preferences_->units().number(std::ceil(std::max(0.0, left)), 0);
}

QString TeachViewModel::nowText() const
{
    if (stage_ != Running)
        return {};
    if (isFace())
        return tr("Keep it still");
    // Turns and raises begin and end still.
    if (share() < 0.2)
        return tr("Hold it still");
    if (share() > 0.8)
        return tr("Hold it still again");
    return isRaise() ? tr("Now raise it") : tr("Now turn it once");
}

QString TeachViewModel::resultTitle() const
{
    if (!taught_)
        return {};
    if (!taught_->map)
        return tr("It cannot be read yet");
    return taught_->sure >= 0.9 ? tr("Learned") : tr("Learned, but check it");
}

QString TeachViewModel::resultText() const
{
    if (!taught_)
        return {};
    if (!taught_->map)
        return QString::fromStdString(taught_->why);
    return tr("%1 % sure of the whole. Lift once and look whether the height is right.")
        .arg(preferences_->units().number(std::floor(taught_->sure * 100), 0));
}

} // namespace fleetrung::views
