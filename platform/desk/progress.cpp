#include "platform/desk/progress.hpp"

#include <chrono>
#include <iostream>

#include <unistd.h>

namespace fleetrung::desk
{

Progress::Progress(std::string activity) : activity_(std::move(activity))
{
    if (isatty(STDERR_FILENO) == 1)
        thread_ = std::thread([this] { run(); });
}

Progress::~Progress()
{
    if (!thread_.joinable())
        return;
    {
        const std::lock_guard lock(mutex_);
        ended_ = true;
    }
    changed_.notify_one();
    thread_.join();
}

void Progress::now(std::string activity)
{
    const std::lock_guard lock(mutex_);
    activity_ = std::move(activity);
}

void Progress::run()
{
    using namespace std::chrono_literals;
    constexpr auto eraseLine = "\r\x1b[K";
    bool shown = false;
    std::unique_lock lock(mutex_);
    for (int seconds = 1; !changed_.wait_for(lock, 1s, [this] { return ended_; }); ++seconds) {
        std::cerr << eraseLine << activity_ << " ... " << seconds << " s" << std::flush;
        shown = true;
    }
    if (shown)
        std::cerr << eraseLine << std::flush;
}

} // namespace fleetrung::desk
