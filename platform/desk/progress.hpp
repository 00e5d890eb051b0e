// Says on a terminal what the program is busy with, once that has taken a second; silent in pipes and files.
#pragma once

#include <condition_variable>
#include <mutex>
#include <string>
#include <thread>

namespace fleetrung::desk
{

class Progress
{
public:
    explicit Progress(std::string activity); ///< "reading recording.csv"
    ~Progress();                             ///< takes the line off again
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void now(std::string activity);

private:
    void run();

    std::mutex mutex_;
    std::condition_variable changed_;
    std::string activity_;
    bool ended_ = false;
    std::thread thread_; ///< only where the error stream is a terminal
};

} // namespace fleetrung::desk
