#include <algorithm>
#include <ctime>
#include <filesystem>
#include <memory>
#include <random>

#include "engine/base/json.hpp"
#include "engine/base/numbers.hpp"
#include "engine/reps/lift.hpp"
#include "mobile/logbook/import.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/import_output.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/progress.hpp"
#include "platform/desk/store_choice.hpp"

namespace fleetrung::desk
{
namespace
{

using logbook::NameChoice;

struct ImportOptions {
    std::string file, store, athlete, map, decimal, dates, load, day;
    std::vector<std::string> matches, lifts;
    bool add = false, skipUnknown = false, dryRun = false, printMap = false, json = false;
};

Identifier randomIdentifier()
{
    std::random_device device;
    Identifier id;
    std::ranges::generate(id.bytes, [&device] { return static_cast<std::uint8_t>(device()); });
    return id;
}

/// By the time zone of this machine.
store::Moment localMoment(CivilDate day, int second)
{
    const std::chrono::year_month_day date(day);
    std::tm local{};
    local.tm_year = static_cast<int>(date.year()) - 1900;
    local.tm_mon = static_cast<int>(static_cast<unsigned>(date.month())) - 1;
    local.tm_mday = static_cast<int>(static_cast<unsigned>(date.day()));
    local.tm_sec = second;
    local.tm_isdst = -1;
    store::Moment moment;
    moment.utcSeconds = std::mktime(&local);
    moment.offsetMinutes = static_cast<int>(local.tm_gmtoff / 60);
    moment.trainingDay = day;
    return moment;
}

CivilDate localToday()
{
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    return CivilDate(std::chrono::year(local.tm_year + 1900) / (local.tm_mon + 1) / local.tm_mday);
}

/// The table, with what this program's own export keeps in files beside it.
Result<importing::Table> readTables(const ImportOptions& options, ImportSaid& said)
{
    const auto bytes = readFile(options.file);
    if (!bytes)
        return tl::unexpected(bytes.error());
    auto table = importing::readTable(*bytes);
    if (!table)
        return tl::unexpected(inFile(options.file, table.error()));
    for (const auto& name : importing::companions(*table)) {
        const auto path = std::filesystem::path(options.file).parent_path() / name;
        std::error_code error;
        if (!std::filesystem::exists(path, error)) {
            said.notes.push_back(path.string() + " is not there: what it says more is left out");
            continue;
        }
        const auto more = readFile(path.string());
        if (!more)
            return tl::unexpected(more.error());
        const auto other = importing::readTable(*more);
        if (!other) // the season may have had no run with splits
            continue;
        auto joint = importing::joined(*table, *other);
        if (!joint)
            return tl::unexpected(inFile(path.string(), joint.error()));
        table = std::move(joint);
    }
    return std::move(*table);
}

/// "WORD=MEANING" as given.
Result<std::pair<std::string, std::string>> pairOf(const std::string& option, const std::string& text)
{
    const auto mark = text.rfind('=');
    if (mark == std::string::npos)
        return refuse(option + ": \"" + text + "\" has no \"=\"; write it as \"name in the file=name here\"");
    return std::pair{text.substr(0, mark), text.substr(mark + 1)};
}

Result<importing::Mapping> mappingFor(const ImportOptions& options, importing::Kind kind, const importing::Table& table,
                                      ImportSaid& said)
{
    auto proposal = importing::propose(table, kind);
    for (const auto& remark : proposal.remarks)
        said.notes.push_back(importing::describe(remark));
    auto mapping = proposal.mapping;
    if (!options.map.empty()) {
        const auto text = readFile(options.map);
        if (!text)
            return tl::unexpected(text.error());
        const auto kept = importing::parseMapping(*text);
        if (!kept)
            return tl::unexpected(inFile(options.map, kept.error()));
        const auto fitting = importing::remembered(table, *kept);
        if (!fitting)
            return tl::unexpected(inFile(options.map, fitting.error()));
        mapping = *fitting;
        if (mapping.kind != kind)
            return refuse("--map: it is a mapping of the other kind; runs and sets have one each");
    }
    if (!options.decimal.empty())
        mapping.decimalMark = options.decimal == "comma" ? ',' : '.';
    if (!options.decimal.empty() && options.map.empty())
        mapping = importing::answered(table, std::move(mapping)).mapping;
    if (!options.dates.empty())
        mapping.dateOrder =
            options.dates == "day-month" ? importing::DateOrder::DayMonth : importing::DateOrder::MonthDay;
    if (!options.load.empty())
        mapping.load = options.load == "lb" ? importing::Unit::Pound : importing::Unit::Kilogram;
    if (!options.day.empty()) {
        mapping.day = parseDate(options.day);
        if (!mapping.day)
            return refuse("--day: \"" + options.day + "\" is no date; write it as 2026-03-30");
    }
    for (const auto& text : options.lifts) {
        const auto lift = pairOf("--lift", text);
        if (!lift)
            return tl::unexpected(lift.error());
        if (!lift->second.empty() && reps::findLift(lift->second) == nullptr)
            return refuse("--lift: there is no lift \"" + lift->second +
                          "\"; fleetrung-desk analyse --help names them");
        mapping.lifts[lift->first] = lift->second;
    }
    return mapping;
}

std::vector<store::Athlete> squadOf(const std::vector<logbook::AthleteSummary>& squad)
{
    std::vector<store::Athlete> athletes;
    for (const auto& summary : squad)
        athletes.push_back(summary.athlete);
    return athletes;
}

Result<Identifier> athleteNamed(const std::string& option, const std::string& name,
                                const std::vector<store::Athlete>& squad)
{
    const auto match = logbook::matchNames({name}, squad).front().second;
    if (match.kind == NameChoice::Match)
        return match.athlete;
    return refuse(option + ": there is no one athlete \"" + name +
                  "\" in the store; name one as verify and report do, "
                  "or give the identifier");
}

/// Who each name of the file is; a name that nobody has said anything of is refused, never dropped in silence.
Result<logbook::NameChoices> namesFor(const ImportOptions& options, const std::vector<std::string>& names,
                                      const std::vector<store::Athlete>& squad,
                                      const std::map<std::string, std::string>& kept)
{
    logbook::NameChoices choices;
    for (const auto& [name, choice] : logbook::matchNames(names, squad, kept))
        choices[name] = choice;
    for (const auto& text : options.matches) {
        const auto match = pairOf("--match", text);
        if (!match)
            return tl::unexpected(match.error());
        const auto athlete = athleteNamed("--match", match->second, squad);
        if (!athlete)
            return tl::unexpected(athlete.error());
        choices[match->first] = {NameChoice::Match, *athlete};
    }
    std::string unknown;
    for (auto& [name, choice] : choices) {
        if (choice.kind != NameChoice::Skip)
            continue;
        if (name.empty() && options.athlete.empty())
            return refuse("--athlete: no column of the file names an athlete; say whose rows they are");
        if (name.empty()) {
            const auto athlete = athleteNamed("--athlete", options.athlete, squad);
            if (!athlete)
                return tl::unexpected(athlete.error());
            choice = {NameChoice::Match, *athlete};
        } else if (options.add) {
            choice.kind = NameChoice::Add;
        } else {
            unknown += (unknown.empty() ? "" : ", ") + name;
        }
    }
    if (!unknown.empty() && !options.skipUnknown)
        return refuse(
            "not in the store: " + unknown +
            "; say who they are with --match \"name in the file=name here\", or give --add or --skip-unknown");
    return choices;
}

Result<std::map<std::string, std::string>> liftsFor(const importing::Table& table, const importing::Mapping& mapping,
                                                    bool skipUnknown)
{
    std::vector<importing::KnownLift> known;
    for (const auto& lift : reps::allLifts())
        known.push_back({std::string(lift.key), std::string(lift.name)});
    std::map<std::string, std::string> lifts;
    std::string unknown;
    for (const auto& [word, key] : importing::liftWords(table, mapping, known)) {
        lifts[word] = key;
        if (key.empty() && !mapping.lifts.contains(word))
            unknown += (unknown.empty() ? "" : ", ") + word;
    }
    if (!unknown.empty() && !skipUnknown)
        return refuse("lifts not known: " + unknown +
                      "; say what they are with --lift \"word in the file=half-squat\" (\"free\" for any other lift, "
                      "nothing behind the = to leave it out), or give --skip-unknown");
    return lifts;
}

Result<logbook::Logbook> bookFor(const ImportOptions& options)
{
    if (options.dryRun)
        return openBook(options.store);
    const auto paths = pathsOf(options.store);
    if (auto readable = checkReadable(paths.rows); !readable)
        return tl::unexpected(readable.error());
    auto book = logbook::Logbook::open(paths, randomIdentifier(), randomIdentifier);
    if (!book)
        return tl::unexpected(inFile(paths.rows, book.error()));
    return std::move(*book);
}

template <class Rows>
Result<void> bring(const ImportOptions& options, const importing::Table& table, const importing::Mapping& mapping,
                   const Rows& rows, logbook::ImportPlan plan,
                   Expected<logbook::ImportCount> (*import)(logbook::Logbook&, const Rows&, const logbook::ImportPlan&),
                   ImportSaid& said)
{
    auto book = bookFor(options);
    if (!book)
        return tl::unexpected(book.error());
    const auto squad = book->squad(localToday());
    if (!squad)
        return tl::unexpected(inFile(options.store, squad.error()));
    auto names = namesFor(options, logbook::namesIn(rows), squadOf(*squad), mapping.athletes);
    if (!names)
        return tl::unexpected(names.error());
    if (mapping.kind == importing::Kind::Sets) {
        auto lifts = liftsFor(table, mapping, options.skipUnknown);
        if (!lifts)
            return tl::unexpected(lifts.error());
        plan.lifts = std::move(*lifts);
    }
    plan.names = std::move(*names);
    plan.momentOf = localMoment;
    plan.dryRun = options.dryRun;
    auto count = import(*book, rows, plan);
    if (!count)
        return tl::unexpected(inFile(options.store, count.error()));
    said.count = std::move(*count);
    return {};
}

Result<Output> importFile(const ImportOptions& options, importing::Kind kind)
{
    Progress progress("reading " + options.file);
    ImportSaid said{.kind = kind, .dryRun = options.dryRun, .notes = {}, .bad = {}, .count = {}};
    const auto table = readTables(options, said);
    if (!table)
        return tl::unexpected(table.error());
    const auto mapping = mappingFor(options, kind, *table, said);
    if (!mapping)
        return tl::unexpected(mapping.error());
    if (options.printMap)
        return Output(importing::mappingText(*mapping) + "\n");
    if (options.store.empty())
        return refuse("--store: name the store to import into, or give --print-map");
    if (const auto open = importing::questions(*table, *mapping); !open.empty())
        return tl::unexpected(
            Failure{badInput, options.file + ": " + importing::describe(open.front(), *table) + hintFor(open.front())});
    logbook::ImportPlan plan;
    plan.progress = [&progress](int done, int all) {
        progress.now("writing row " + integerText(done) + " of " + integerText(all));
        return true;
    };
    const importing::Reading reading{localToday(), {}};
    Result<void> brought;
    if (kind == importing::Kind::Runs) {
        const auto runs = importing::readRuns(*table, *mapping, reading);
        if (!runs)
            return tl::unexpected(inFile(options.file, runs.error()));
        said.bad = runs->bad;
        brought = bring(options, *table, *mapping, runs->runs, plan, logbook::importRuns, said);
    } else {
        const auto sets = importing::readSets(*table, *mapping, reading);
        if (!sets)
            return tl::unexpected(inFile(options.file, sets.error()));
        said.bad = sets->bad;
        brought = bring(options, *table, *mapping, sets->sets, plan, logbook::importSets, said);
    }
    if (!brought)
        return tl::unexpected(brought.error());
    return Output(options.json ? jsonText(importJson(said, *table), 2) + "\n" : importText(said, options.file, *table));
}

void addKind(CLI::App& command, Command& chosen, importing::Kind kind, const std::string& name,
             const std::string& meaning)
{
    const auto options = std::make_shared<ImportOptions>();
    auto* sub = command.add_subcommand(name, meaning);
    sub->add_option("FILE", options->file, "CSV: comma, semicolon or tab, UTF-8 or UTF-16")->required();
    sub->add_option("--store", options->store, "the store: athletes.fleetrung, or the folder it lies in")
        ->type_name("FILE");
    sub->add_option("--athlete", options->athlete, "whose rows they are where no column says so")->type_name("NAME");
    sub->add_option("--match", options->matches, "\"name in the file=name in the store\"; may be given often")
        ->type_name("PAIR");
    sub->add_flag("--add", options->add, "add athletes who are not in the store");
    sub->add_flag("--skip-unknown", options->skipUnknown, "leave out the rows of names that are not in the store");
    sub->add_option("--map", options->map, "what the columns mean, as JSON (--print-map); else from the header's words")
        ->type_name("FILE");
    sub->add_flag("--print-map", options->printMap,
                  "print what the columns are taken for, as JSON, and import nothing");
    sub->add_option("--decimal", options->decimal, "the decimal mark where the file leaves it open")
        ->check(CLI::IsMember({"point", "comma"}));
    sub->add_option("--dates", options->dates, "how 3/4/2026 is meant")
        ->check(CLI::IsMember({"day-month", "month-day"}));
    sub->add_option("--day", options->day, "the day of all rows where no column has it")->type_name("DATE");
    if (kind == importing::Kind::Sets) {
        sub->add_option("--load", options->load, "unit of loads where the header has none")
            ->check(CLI::IsMember({"kg", "lb"}));
        sub->add_option("--lift", options->lifts, "\"word in the file=half-squat\"; may be given often")
            ->type_name("PAIR");
    }
    sub->add_flag("--dry-run", options->dryRun, "say what would be added, and write nothing");
    sub->add_flag("--json", options->json, "one JSON object instead of lines");
    sub->callback([options, kind, &chosen] { chosen = [options, kind] { return importFile(*options, kind); }; });
}

} // namespace

void addImport(CLI::App& app, Command& chosen)
{
    auto* command = app.add_subcommand(
        "import", "Bring runs or sets of another program's CSV into a store, all or nothing.\n"
                  "What is in the store already, and twice in the file, is skipped and counted; bad rows are named.");
    command->require_subcommand(1);
    addKind(*command, chosen, importing::Kind::Runs, "runs",
            "timed runs: one row a run with a column a gate, or one row a split");
    addKind(*command, chosen, importing::Kind::Sets, "sets", "sets of a session log: one row a set");
}

} // namespace fleetrung::desk
