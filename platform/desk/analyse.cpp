#include "platform/desk/commands.hpp"

#include <memory>

#include "engine/base/numbers.hpp"
#include "engine/motion/recording_csv.hpp"
#include "platform/desk/analysis_output.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/progress.hpp"

namespace fleetrung::desk
{
namespace
{

struct AnalyseOptions {
    std::string file;
    std::optional<std::string> lift;
    std::optional<std::string> load;
    std::string columns;
    bool json = false;
};

Result<const reps::Lift*> liftNamed(const std::string& key, const std::string& from)
{
    if (const auto* lift = reps::findLift(key))
        return lift;
    std::string keys;
    for (const auto& lift : reps::allLifts())
        keys += (keys.empty() ? "" : ", ") + std::string(lift.key);
    return refuse(from + ": there is no lift \"" + key + "\"; use one of " + keys);
}

Result<std::optional<double>> loadOf(const AnalyseOptions& options, const motion::ImportedRecording& imported)
{
    if (!options.load)
        return imported.loadKg;
    const auto load = parseNumber(*options.load);
    if (!load || *load < 0 || *load > 1000)
        return refuse("--load: \"" + *options.load +
                      "\" is no load; give kilograms from 0 to 1000, with a decimal point");
    return load;
}

Result<std::string> analyse(const AnalyseOptions& options)
{
    Progress progress("reading " + options.file);
    const auto columns = motion::parseColumnMap(options.columns);
    if (!columns)
        return refuse("--columns: " + columns.error().message);
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto imported = motion::importRecording(*bytes, *columns);
    if (!imported)
        return tl::unexpected(inFile(options.file, imported.error()));

    const auto lift =
        options.lift ? liftNamed(*options.lift, "--lift") : liftNamed(imported->lift.value_or("free"), options.file);
    if (!lift)
        return tl::unexpected(lift.error());
    const auto load = loadOf(options, *imported);
    if (!load)
        return tl::unexpected(load.error());

    progress.now("analysing " + options.file);
    const auto analysis = reps::analyseSet(imported->recording, **lift);
    if (!analysis)
        return tl::unexpected(inFile(options.file, analysis.error()));
    const SetFacts facts{*lift, *load};
    return options.json ? jsonText(analysisJson(*analysis, facts), 2) + "\n" : analysisText(*analysis, facts);
}

} // namespace

void addAnalyse(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<AnalyseOptions>();
    auto* command =
        app.add_subcommand("analyse", "Find the repetitions in a recording (CSV) of one set and measure them");
    command
        ->add_option("FILE", options->file,
                     "recording CSV; \"# lift: half-squat\" and \"# load_kg: 120\" above its header are read")
        ->required();
    command
        ->add_option("--lift", options->lift,
                     "lift key, for example half-squat; \"free\" is any vertical stroke of 5 cm or more")
        ->type_name("NAME");
    command->add_option("--load", options->load, "load on the bar")->type_name("KG");
    command
        ->add_option("--columns", options->columns,
                     "how the columns of another program are named, for example time_s=t,acc_x_mps2=ax")
        ->type_name("OURS=THEIRS,...");
    command->add_flag("--json", options->json, "one JSON object instead of a table");
    command->callback([options, &chosen] { chosen = [options] { return analyse(*options); }; });
}

} // namespace fleetrung::desk
