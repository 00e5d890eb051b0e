#include <memory>

#include "engine/base/json_place.hpp"
#include "engine/season/replay.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/decide_output.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/progress.hpp"
#include "platform/desk/store_choice.hpp"

namespace fleetrung::desk
{
namespace
{

struct DecideOptions {
    std::string file;
    StoreChoice choice;
    bool explain = false;
    bool why = false;
    bool json = false;
};

Result<std::string> explain(const DecideOptions& options)
{
    const auto& rules = season::standardSeasonData().rules;
    return options.json ? jsonText(season::rulesJson(rules), 2) + "\n" : season::explainRules(rules);
}

Result<std::string> decided(season::DayInput input, const DecideOptions& options)
{
    const auto data = season::dataFor(input.plan.setup);
    DecidedDay day;
    day.decisions = season::decideDay(input, data);
    day.session = season::planSession(input.plan, input.states, day.decisions, input.today, data, input.log);
    day.input = std::move(input);
    return options.json ? jsonText(decidedJson(day, data), 2) + "\n" : decidedText(day, options.why, data);
}

Result<std::string> fromFile(const DecideOptions& options)
{
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto json = parseJson(*bytes);
    if (!json)
        return tl::unexpected(inFile(options.file, json.error()));
    auto input = season::dayInputFromJson(*json);
    if (!input) { // names a key: people get its line as well
        const auto& error = input.error();
        return tl::unexpected(inFile(options.file, {error.code, jsonPlace(*bytes, error.place),
                                                    (error.place.empty() ? "" : error.place + ": ") + error.message}));
    }
    return decided(std::move(*input), options);
}

Result<std::string> fromStore(const DecideOptions& options)
{
    const auto day = chosenDay(options.choice);
    if (!day)
        return tl::unexpected(day.error());
    const Progress progress("reading " + options.choice.store);
    const auto chosen = chooseSeason(options.choice, *day);
    if (!chosen)
        return tl::unexpected(chosen.error());
    auto input = chosen->book.dayInput(chosen->season, *day);
    if (!input)
        return tl::unexpected(inFile(options.choice.store, input.error()));
    return decided(std::move(*input), options);
}

Result<std::string> decide(const DecideOptions& options)
{
    const int sources =
        (options.explain ? 1 : 0) + (options.file.empty() ? 0 : 1) + (options.choice.store.empty() ? 0 : 1);
    if (sources != 1)
        return refuse("decide: give one of --explain, an INPUT file, or --store with --athlete");
    if (options.explain)
        return explain(options);
    return options.file.empty() ? fromStore(options) : fromFile(options);
}

} // namespace

void addDecide(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<DecideOptions>();
    auto* command = app.add_subcommand(
        "decide", "Take a day's decisions and plan its session, or print the rules. Computed, never written.");
    command->add_option("INPUT", options->file, "a day's input as JSON, as it is kept with stored decisions");
    command->add_flag("--explain", options->explain, "every rule in its precedence, with its numbers and their origin");
    addStoreOptions(*command, options->choice);
    command->add_flag("--why", options->why, "also why each thing is prescribed");
    command->add_flag("--json", options->json, "one JSON object instead of text");
    command->callback([options, &chosen] { chosen = [options] { return decide(*options); }; });
}

} // namespace fleetrung::desk
