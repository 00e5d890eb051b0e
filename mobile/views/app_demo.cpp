// The part of the program behind the demo squad: made once, looked at on its own day, and gone when it is left.
#include "mobile/views/app_view_model.hpp"

namespace fleetrung::views
{

void AppViewModel::offerDemo(DemoHand hand, store::StorePaths own)
{
    demo_ = std::move(hand);
    ownPaths_ = std::move(own);
    DemoMaker::remove(demo_.folder); // the program ended while it was shown
    emit demoChanged();
}

void AppViewModel::connectDemo()
{
    connect(&demoMaker_, &DemoMaker::progressed, this, [this](int percent) {
        demoPercent_ = percent;
        emit demoChanged();
    });
    connect(&demoMaker_, &DemoMaker::made, this, [this](CivilDate day) {
        ownClock_ = clock_;
        clock_.fix(day);
        demoShown_ = true;
        showLogbook(DemoMaker::pathsIn(demo_.folder));
        emit demoChanged();
    });
    connect(&demoMaker_, &DemoMaker::failed, this, [this](const Error& error) {
        emit demoChanged();
        if (error.code == Code::Cancelled)
            return say(tr("The demo squad is not made."));
        sayProblem(error);
    });
}

void AppViewModel::openDemo()
{
    if (demoShown_ || !demo_.make)
        return;
    if (setRuns())
        return sayProblem(
            {.code = Code::Refused, .place = {}, .message = tr("A set is under way. End it first.").toStdString()});
    demoPercent_ = 0;
    demoMaker_.start(demo_);
    emit demoChanged();
}

void AppViewModel::cancelDemo()
{
    demoMaker_.cancel();
}

void AppViewModel::leaveDemo()
{
    if (!demoShown_)
        return;
    if (setRuns())
        return sayProblem(
            {.code = Code::Refused, .place = {}, .message = tr("A set is under way. End it first.").toStdString()});
    clock_ = ownClock_;
    demoShown_ = false;
    showLogbook(ownPaths_);
    log_->settle(); // the demo's files are closed
    DemoMaker::remove(demo_.folder);
    emit demoChanged();
}

void AppViewModel::showLogbook(const store::StorePaths& paths)
{
    bench_.leaveLift();
    current_.clear();
    say({});
    log_->reopen(paths);
    refresh();
    refreshSensors();
}

QString AppViewModel::demoText() const
{
    if (demoMaker_.running())
        return tr("Playing an invented squad's seasons: %1 %").arg(demoPercent_);
    return demoShown_ ? tr("Demo squad: everything here is invented.") : QString();
}

} // namespace fleetrung::views
