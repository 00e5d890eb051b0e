#include "platform/desk/commands.hpp"

#include <algorithm>
#include <iostream>
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
    std::optional<std::string> bodyMass;
    std::string columns;
    bool json = false;
    bool all = false;
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

/// Kilograms from the command line.
Result<double> massOf(const std::string& option, const std::string& text, double least, double greatest)
{
    const auto mass = parseNumber(text);
    if (!mass || *mass < least || *mass > greatest)
        return refuse(option + ": \"" + text + "\" is no mass that fits; give kilograms from " + shortestText(least) +
                      " to " + shortestText(greatest) + ", with a decimal point");
    return *mass;
}

Result<SetFacts> factsOf(const AnalyseOptions& options, const motion::ImportedRecording& imported)
{
    const auto lift =
        options.lift ? liftNamed(*options.lift, "--lift") : liftNamed(imported.lift.value_or("free"), options.file);
    if (!lift)
        return tl::unexpected(lift.error());
    SetFacts facts{*lift, imported.loadKg, std::nullopt};
    if (options.load) {
        const auto load = massOf("--load", *options.load, 0, 1000);
        if (!load)
            return tl::unexpected(load.error());
        facts.loadKg = *load;
    }
    if (options.bodyMass) {
        const auto mass = massOf("--body-mass", *options.bodyMass, 20, 300);
        if (!mass)
            return tl::unexpected(mass.error());
        facts.bodyMassKg = *mass;
    }
    return facts;
}

struct Analysed {
    reps::SetAnalysis analysis; ///< with what the import mended among its findings
    SetFacts facts;
};

Result<Analysed> analyseFile(const AnalyseOptions& options)
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

    const auto facts = factsOf(options, *imported);
    if (!facts)
        return tl::unexpected(facts.error());

    progress.now("analysing " + options.file);
    auto analysis = reps::analyseSet(imported->recording, *facts->lift);
    if (!analysis)
        return tl::unexpected(inFile(options.file, analysis.error()));
    analysis->findings.insert(analysis->findings.begin(), imported->findings.begin(), imported->findings.end());
    for (const auto& finding : imported->findings)
        analysis->quality = std::max(analysis->quality, finding.quality);
    return Analysed{std::move(*analysis), *facts};
}

Result<std::string> analyse(const AnalyseOptions& options)
{
    const auto analysed = analyseFile(options);
    if (!analysed)
        return tl::unexpected(analysed.error());
    const auto& [analysis, facts] = *analysed;
    for (const auto& note : analysisNotes(analysis))
        std::cerr << options.file << ": note: " << note << '\n';
    return options.json ? jsonText(analysisJson(analysis, facts), 2) + "\n"
                        : analysisText(analysis, facts, options.all);
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
    command->add_option("--load", options->load, "load on the bar, for force and power too")->type_name("KG");
    command
        ->add_option("--body-mass", options->bodyMass,
                     "body mass: its share that the lift moves belongs to force and power")
        ->type_name("KG");
    command
        ->add_option("--columns", options->columns,
                     "how the columns of another program are named, for example time_s=t,acc_x_mps2=ax")
        ->type_name("OURS=THEIRS,...");
    command->add_flag("--all", options->all, "tables of every metric, with force and power where the load is known");
    command->add_flag("--json", options->json, "one JSON object instead of a table");
    command->callback([options, &chosen] { chosen = [options] { return analyse(*options); }; });
}

} // namespace fleetrung::desk
