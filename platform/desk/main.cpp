// fleetrung-desk: what a coach's laptop and scripts ask of the engine, without the phone.
#include <clocale>
#include <exception>
#include <iostream>

#include <CLI/CLI.hpp>

#include "platform/desk/commands.hpp"

namespace
{

using namespace fleetrung::desk;

int run(const Command& command)
{
    const auto output = command();
    if (!output) {
        std::cerr << output.error().text << '\n';
        return output.error().exitCode;
    }
    std::cout << output->text << std::flush;
    if (std::cout)
        return output->exitCode;
    std::cerr << "standard output: cannot be written; check the disk or the program that reads it\n";
    return failed;
}

int exitCodeOf(const CLI::App& app, const CLI::ParseError& error)
{
    const bool wanted = error.get_exit_code() == static_cast<int>(CLI::ExitCodes::Success); // --help, --version
    app.exit(error, std::cout, std::cerr);
    return wanted ? 0 : badInput;
}

} // namespace

int main(int argc, char** argv)
{
    std::setlocale(LC_ALL,
                   ""); // as Qt does on the phone: no number may follow it, and tests under several locales see so
    try {
        CLI::App app{"Fleetrung at the desk: repetitions and jumps out of recordings, plans, decisions, imports, "
                     "season reports.\n"
                     "Exit codes: 0 done, 1 failure, 2 bad input (with file, line and column).",
                     "fleetrung-desk"};
        app.set_version_flag("--version", FLEETRUNG_VERSION);
        app.require_subcommand(1);
        Command chosen;
        addAnalyse(app, chosen);
        addJumps(app, chosen);
        addSprint(app, chosen);
        addPlan(app, chosen);
        addDecide(app, chosen);
        addReport(app, chosen);
        addImport(app, chosen);
        addVerify(app, chosen);
        try {
            app.parse(argc, argv);
        } catch (const CLI::ParseError& error) {
            return exitCodeOf(app, error);
        }
        return run(chosen);
    } catch (const std::exception& error) {
        std::cerr << "failure: " << error.what() << '\n';
        return failed;
    }
}
