#include "platform/desk/commands.hpp"

#include <memory>

#include "engine/base/json_place.hpp"
#include "engine/season/plan.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/plan_calendar.hpp"

namespace fleetrung::desk
{
namespace
{

struct PlanOptions {
    std::string file;
    bool json = false;
    CalendarOptions calendar;
};

/// Reading names a line, checking names a key ("competitions[1].date"): people get the line of the key as well.
Failure inSetup(const std::string& file, const std::string& text, const Error& error)
{
    if (error.place.empty() || error.place.starts_with("line "))
        return inFile(file, error);
    return inFile(file, {error.code, jsonPlace(text, error.place), error.place + ": " + error.message});
}

Result<std::string> plan(const PlanOptions& options)
{
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto setup = season::parseSetup(*bytes);
    if (!setup)
        return tl::unexpected(inSetup(options.file, *bytes, setup.error()));
    const auto plan = season::planSeason(*setup);
    if (!plan)
        return tl::unexpected(inSetup(options.file, *bytes, plan.error()));
    if (auto written = writeCalendar(options.calendar, *plan); !written)
        return tl::unexpected(written.error());
    return options.json ? jsonText(season::planJson(*plan), 2) + "\n" : season::planText(*plan);
}

} // namespace

void addPlan(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<PlanOptions>();
    auto* command =
        app.add_subcommand("plan", "Lay the phases and ladders of a season backwards from its competitions");
    command
        ->add_option("FILE", options->file, "the season as JSON: start, competitions, training days, ladders, athlete")
        ->required();
    command->add_flag("--json", options->json, "one JSON object instead of tables");
    addCalendarOptions(*command, options->calendar);
    command->callback([options, &chosen] { chosen = [options] { return plan(*options); }; });
}

} // namespace fleetrung::desk
