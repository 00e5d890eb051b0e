// The commands of the program: each adds itself and its options to the command line, and puts what is to be done into
// `chosen` when the user names it. What a command prints it returns, so that nothing is printed of a run that failed.
#pragma once

#include <functional>

#include <CLI/App.hpp>

#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

/// The text for the standard output; its exit code is 1 where the text tells of something that is wrong.
struct Output {
    std::string text;
    int exitCode = 0;

    Output() = default;
    Output(std::string allWell) : text(std::move(allWell)) {} // NOLINT(google-explicit-constructor)
    Output(std::string found, int code) : text(std::move(found)), exitCode(code) {}
};
using Command = std::function<Result<Output>()>;

void addAnalyse(CLI::App& app, Command& chosen); ///< a recording of one set to its repetitions
void addJumps(CLI::App& app, Command& chosen);   ///< a recording of jumps to contact, flight and height
void addSprint(CLI::App& app, Command& chosen);  ///< split times to top speed, acceleration, force and power
void addPlan(CLI::App& app, Command& chosen);    ///< a season's description to its plan
void addDecide(CLI::App& app, Command& chosen);  ///< a day's decisions and session; the rules
void addVerify(CLI::App& app, Command& chosen);  ///< is the store whole, and do its decisions come out again?
void addImport(CLI::App& app, Command& chosen);  ///< runs or sets of another program's CSV into the store
void addReport(CLI::App& app, Command& chosen);  ///< an athlete's season out of the store to PDF and CSV

} // namespace fleetrung::desk
