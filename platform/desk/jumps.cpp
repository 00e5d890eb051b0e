#include "platform/desk/commands.hpp"

#include <memory>
#include <optional>

#include "engine/base/numbers.hpp"
#include "engine/motion/recording_csv.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/jumps_output.hpp"
#include "platform/desk/number_option.hpp"
#include "platform/desk/progress.hpp"

namespace fleetrung::desk
{
namespace
{

struct JumpOptions {
    std::string file;
    std::string worn = "waist";
    std::optional<std::string> kind, box, gravity;
    std::string columns;
    bool json = false;
};

Result<jumps::Request> requestOf(const JumpOptions& options)
{
    jumps::Request request;
    if (options.worn != "waist" && options.worn != "shoe")
        return refuse("--worn: there is no place \"" + options.worn + "\"; use waist or shoe");
    request.worn = options.worn == "shoe" ? jumps::Worn::Shoe : jumps::Worn::Waist;
    if (options.kind) {
        request.kind = jumps::kindNamed(*options.kind);
        if (!request.kind)
            return refuse("--kind: there is no kind of jump \"" + *options.kind +
                          "\"; use drop, counter-movement, squat or hops");
    }
    const auto box = numberIn(options.box, "--box", 0.05, 1.5, "metres");
    if (!box)
        return tl::unexpected(box.error());
    request.box = *box;
    const auto gravity = numberIn(options.gravity, "--gravity", 9.7, 9.9, "m/s2");
    if (!gravity)
        return tl::unexpected(gravity.error());
    if (*gravity) {
        request.gravity = **gravity;
        request.gravityUncertainty = 0;
    }
    return request;
}

Result<std::string> findJumps(const JumpOptions& options)
{
    Progress progress("reading " + options.file);
    const auto request = requestOf(options);
    if (!request)
        return tl::unexpected(request.error());
    const auto columns = motion::parseColumnMap(options.columns);
    if (!columns)
        return refuse("--columns: " + columns.error().message);
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto imported = motion::importRecording(*bytes, *columns);
    if (!imported)
        return tl::unexpected(inFile(options.file, imported.error()));
    progress.now("finding the jumps in " + options.file);
    const auto analysis = jumps::analyseJumps(imported->recording, *request);
    if (!analysis)
        return tl::unexpected(inFile(options.file, analysis.error()));
    const bool given = options.gravity.has_value();
    return options.json ? jsonText(jumpsJson(*analysis, given), 2) + "\n" : jumpsText(*analysis, given);
}

} // namespace

void addJumps(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<JumpOptions>();
    auto* command = app.add_subcommand(
        "jumps", "Find the jumps in a recording (CSV) of a sensor worn on the body: contact, flight, height");
    command->add_option("FILE", options->file, "recording CSV")->required();
    command
        ->add_option("--kind", options->kind, "drop, counter-movement, squat or hops; without it every jump is shown")
        ->type_name("KIND");
    command->add_option("--worn", options->worn, "waist (as usual) or shoe")->type_name("PLACE");
    command->add_option("--box", options->box, "height of the box; a drop more than 15 % off it is flagged")
        ->type_name("M");
    command->add_option("--gravity", options->gravity, "local gravity for heights, instead of the standard 9.80665")
        ->type_name("MPS2");
    command
        ->add_option("--columns", options->columns,
                     "how the columns of another program are named, for example time_s=t,acc_x_mps2=ax")
        ->type_name("OURS=THEIRS,...");
    command->add_flag("--json", options->json, "one JSON object instead of a table");
    command->callback([options, &chosen] { chosen = [options] { return findJumps(*options); }; });
}

} // namespace fleetrung::desk
