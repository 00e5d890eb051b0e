// The commands of the program: each adds itself and its options to the command line, and puts what is to be done into
// `chosen` when the user names it. What a command prints it returns, so that nothing is printed of a run that failed.
#pragma once

#include <functional>

#include <CLI/App.hpp>

#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

/// The text for the standard output.
using Command = std::function<Result<std::string>()>;

void addAnalyse(CLI::App& app, Command& chosen); ///< a recording of one set to its repetitions
void addJumps(CLI::App& app, Command& chosen);   ///< a recording of jumps to contact, flight and height
void addPlan(CLI::App& app, Command& chosen);    ///< a season's description to its plan
void addReport(CLI::App& app, Command& chosen);  ///< an athlete's season out of the store to PDF and CSV

} // namespace fleetrung::desk
