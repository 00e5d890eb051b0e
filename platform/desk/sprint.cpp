#include <memory>
#include <optional>

#include "engine/sprint/splits_csv.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/number_option.hpp"
#include "platform/desk/sprint_output.hpp"

namespace fleetrung::desk
{
namespace
{

struct SprintOptions {
    std::string file;
    std::string start = "movement";
    std::optional<std::string> reaction, beam, mass, stature, wind, temperature, pressure;
    bool hand = false;
    bool all = false;
    bool json = false;
};

Result<sprint::Start> startOf(const SprintOptions& options)
{
    const auto reaction = numberIn(options.reaction, "--reaction", 0, 2, "seconds");
    if (!reaction)
        return tl::unexpected(reaction.error());
    const auto beam = numberIn(options.beam, "--beam", 0.01, 5, "metres");
    if (!beam)
        return tl::unexpected(beam.error());
    if (*reaction && options.start != "gun")
        return refuse("--reaction: goes with --start gun only");
    if (beam->has_value() != (options.start == "beam"))
        return refuse("--beam: the way from the start to the beam goes with --start beam, and is needed there");
    if (options.start == "movement")
        return sprint::Start{sprint::Clock::FirstMovement, {}, 0};
    if (options.start == "gun")
        return sprint::Start{sprint::Clock::Gun, *reaction, 0};
    if (options.start == "beam")
        return sprint::Start{sprint::Clock::Beam, {}, **beam};
    if (options.start == "unknown")
        return sprint::Start{sprint::Clock::Unknown, {}, 0};
    return refuse("--start: there is no start \"" + options.start +
                  "\"; use movement, gun, beam or unknown (a falling start, a clock started by hand)");
}

/// Nothing where neither mass nor stature was given.
Result<std::optional<sprint::ForceVelocity>> profileOf(const SprintOptions& options, const sprint::SprintFit& fit)
{
    using Profile = std::optional<sprint::ForceVelocity>;
    const auto mass = numberIn(options.mass, "--mass", 20, 250, "kilograms");
    const auto stature = numberIn(options.stature, "--stature", 1, 2.5, "metres");
    const auto wind = numberIn(options.wind, "--wind", -15, 15, "m/s");
    const auto temperature = numberIn(options.temperature, "--temperature", -40, 60, "degrees Celsius");
    const auto pressure = numberIn(options.pressure, "--pressure", 500, 1100, "hPa");
    for (const auto* number : {&mass, &stature, &wind, &temperature, &pressure})
        if (!*number)
            return tl::unexpected(number->error());
    if (!*mass && !*stature)
        return *wind || *temperature || *pressure
                   ? Result<Profile>(
                         refuse("--mass and --stature: wind, temperature and pressure only matter with them"))
                   : Result<Profile>(Profile());
    if (!*mass || !*stature)
        return refuse("--mass and --stature: force and power need both");
    const sprint::Air standard;
    double last = 0;
    for (const auto& s : fit.residuals)
        if (s.used)
            last = s.split.time - fit.startOffset;
    const auto profile = sprint::forceVelocity(fit.model, last, {**mass, **stature},
                                               {.temperature = temperature->value_or(standard.temperature),
                                                .pressure = *pressure ? **pressure * 100 : standard.pressure,
                                                .wind = wind->value_or(0)});
    if (!profile)
        return tl::unexpected(inFile(options.file, profile.error()));
    return Profile(*profile);
}

Result<Output> fitSprint(const SprintOptions& options)
{
    const auto start = startOf(options);
    if (!start)
        return tl::unexpected(start.error());
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto splits = sprint::importSplits(*bytes);
    if (!splits)
        return tl::unexpected(inFile(options.file, splits.error()));
    const auto fit =
        sprint::fitSplits(*splits, {.start = *start,
                                    .timing = options.hand ? sprint::Timing::Hand : sprint::Timing::Electronic,
                                    .keepAfterPeak = options.all,
                                    .keepSuspects = options.all});
    if (!fit)
        return tl::unexpected(inFile(options.file, fit.error()));
    const auto profile = profileOf(options, *fit);
    if (!profile)
        return tl::unexpected(profile.error());
    const SprintResult result{*fit, *profile};
    return Output(options.json ? jsonText(sprintJson(result), 2) + "\n" : sprintText(result));
}

} // namespace

void addSprint(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<SprintOptions>();
    auto* command = app.add_subcommand("sprint", "Fit split times (CSV): top speed, acceleration, force and power");
    command->add_option("FILE", options->file, "CSV with the columns distance_m and time_s")->required();
    command
        ->add_option(
            "--start", options->start,
            "what starts the clock: movement (the first one, as usual), gun, beam (broken from standing) or unknown")
        ->type_name("START");
    command->add_option("--reaction", options->reaction, "reaction time of a gun start")->type_name("S");
    command->add_option("--beam", options->beam, "way from the start to the beam that starts the clock")
        ->type_name("M");
    command->add_flag("--hand", options->hand, "timed by hand");
    command->add_option("--mass", options->mass, "body mass, for force and power")->type_name("KG");
    command->add_option("--stature", options->stature, "body height, for the drag of the air")->type_name("M");
    command->add_option("--wind", options->wind, "from behind is positive")->type_name("MPS");
    command->add_option("--temperature", options->temperature, "of the air, instead of 20")->type_name("C");
    command->add_option("--pressure", options->pressure, "of the air, instead of 1013.25")->type_name("HPA");
    command->add_flag("--all", options->all,
                      "use every split, also one that contradicts the others or comes after the peak");
    command->add_flag("--json", options->json, "one JSON object instead of a table");
    command->callback([options, &chosen] { chosen = [options] { return fitSprint(*options); }; });
}

} // namespace fleetrung::desk
