#include "platform/desk/commands.hpp"

#include <chrono>
#include <filesystem>
#include <memory>

#include "engine/base/numbers.hpp"
#include "engine/report/csv_tables.hpp"
#include "mobile/logbook/logbook.hpp"
#include "platform/desk/input_file.hpp"
#include "platform/desk/output_files.hpp"
#include "platform/desk/pdf_output.hpp"
#include "platform/desk/progress.hpp"

namespace fleetrung::desk
{
namespace
{

struct ReportOptions {
    std::string store;
    std::string athlete;
    std::string season;
    std::string day;
    std::string pdf;
    std::string csv;
    std::string paper = "a4";
    std::string units = "metric";
};

/// The rows' file; the captures lie beside it. A folder stands for the files in it.
store::StorePaths pathsOf(const std::string& named)
{
    std::error_code error;
    const std::filesystem::path path(named);
    const auto rows = std::filesystem::is_directory(path, error) ? path / "athletes.fleetrung" : path;
    return {rows.string(), (rows.parent_path() / "captures.fleetrung").string()};
}

Result<CivilDate> dayOf(const ReportOptions& options)
{
    if (options.day.empty())
        return std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    const auto day = parseDate(options.day);
    if (!day)
        return refuse("--day: \"" + options.day + "\" is no date; write it as 2026-03-30");
    return *day;
}

/// One of the rows that are called so, or have that identifier; names that stand twice need the identifier.
template <class Row>
Result<Row> chosenFrom(const std::vector<Row>& rows, const std::string& option, const std::string& name)
{
    std::vector<Row> named;
    std::string all;
    for (const auto& row : rows) {
        if (row.name == name || identifierText(row.id) == name)
            named.push_back(row);
        all += (all.empty() ? "" : ", ") + row.name;
    }
    if (named.size() == 1)
        return named.front();
    if (named.empty())
        return refuse(option + ": there is no \"" + name + "\" in the store; it holds " + (all.empty() ? "none" : all));
    std::string ids;
    for (const auto& row : named)
        ids += (ids.empty() ? "" : " or ") + identifierText(row.id);
    return refuse(option + ": \"" + name + "\" stands more than once; give its identifier: " + ids);
}

Result<store::Athlete> athleteOf(const logbook::Logbook& book, const ReportOptions& options, CivilDate day)
{
    const auto squad = book.squad(day);
    if (!squad)
        return tl::unexpected(inFile(options.store, squad.error()));
    std::vector<store::Athlete> athletes;
    for (const auto& summary : *squad)
        athletes.push_back(summary.athlete);
    return chosenFrom(athletes, "--athlete", options.athlete);
}

/// The season named; without a name the one that holds the day, or else the last that began before it.
Result<Identifier> seasonOf(const logbook::Logbook& book, const ReportOptions& options, const store::Athlete& athlete,
                            CivilDate day)
{
    const auto records = book.seasons(athlete.id);
    if (!records)
        return tl::unexpected(inFile(options.store, records.error()));
    if (records->empty())
        return refuse("--athlete: " + athlete.name + " has no season in the store; add one first");
    std::vector<store::Season> seasons;
    for (const auto& record : *records)
        seasons.push_back(record.row);
    if (!options.season.empty())
        return chosenFrom(seasons, "--season", options.season).map([](const store::Season& season) {
            return season.id;
        });
    const auto* best = &seasons.front();
    for (const auto& season : seasons)
        if (season.start <= day && (best->start > day || season.start >= best->start))
            best = &season;
    if (best->start > day)
        return refuse("--day: " + dateText(day) + " lies before the first season of " + athlete.name +
                      ", which begins " + dateText(best->start));
    return best->id;
}

Result<void> writeTables(const report::SeasonReport& seasonReport, const std::string& folder, std::string& said)
{
    if (auto made = makeFolder(folder); !made)
        return made;
    const auto tables = report::csvTables(std::span(&seasonReport, 1));
    for (const auto& table : tables)
        if (auto written = writeFile((std::filesystem::path(folder) / table.fileName).string(), report::csvText(table));
            !written)
            return written;
    said += folder + ": " + integerText(static_cast<std::int64_t>(tables.size())) +
            " tables; data_dictionary.csv explains their columns\n";
    return {};
}

Result<std::string> makeReport(const ReportOptions& options)
{
    if (options.pdf.empty() && options.csv.empty())
        return refuse("report: nothing to write; give --pdf FILE, --csv FOLDER, or both");
    if (!options.pdf.empty() && !canWritePdf())
        return tl::unexpected(writePdf({}, options.pdf, {}).error());
    const auto day = dayOf(options);
    if (!day)
        return tl::unexpected(day.error());

    Progress progress("reading " + options.store);
    const auto paths = pathsOf(options.store);
    if (auto readable = checkReadable(paths.rows); !readable)
        return tl::unexpected(readable.error());
    const auto book = logbook::Logbook::openReadOnly(paths);
    if (!book)
        return tl::unexpected(inFile(paths.rows, book.error()));
    const auto athlete = athleteOf(*book, options, *day);
    if (!athlete)
        return tl::unexpected(athlete.error());
    const auto season = seasonOf(*book, options, *athlete, *day);
    if (!season)
        return tl::unexpected(season.error());
    const auto seasonReport = book->seasonReport(athlete->id, *season, *day);
    if (!seasonReport)
        return tl::unexpected(inFile(options.store, seasonReport.error()));

    progress.now("writing the report");
    std::string said =
        seasonReport->athlete.name + ", " + seasonReport->seasonName + ", up to " + dateText(seasonReport->upTo) + "\n";
    if (!options.pdf.empty()) {
        const PdfStyle style{options.paper == "letter", options.units == "pounds"};
        if (auto written = writePdf(*seasonReport, options.pdf, style); !written)
            return tl::unexpected(written.error());
        said += options.pdf + ": the season report\n";
    }
    if (!options.csv.empty())
        if (auto written = writeTables(*seasonReport, options.csv, said); !written)
            return tl::unexpected(written.error());
    return said;
}

} // namespace

void addReport(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<ReportOptions>();
    auto* command = app.add_subcommand("report", "Write an athlete's season report as PDF and as CSV tables");
    command->add_option("--store", options->store, "the store: athletes.fleetrung, or the folder it lies in")
        ->type_name("FILE")
        ->required();
    command->add_option("--athlete", options->athlete, "name (or identifier) of the athlete")
        ->type_name("NAME")
        ->required();
    command
        ->add_option("--season", options->season, "name (or identifier) of the season; else the one that holds the day")
        ->type_name("NAME");
    command->add_option("--day", options->day, "report as of this day, for example 2026-03-30; else today")
        ->type_name("DATE");
    command->add_option("--pdf", options->pdf, "PDF to write")->type_name("FILE");
    command->add_option("--csv", options->csv, "folder for the tables; made where it is missing")->type_name("FOLDER");
    command->add_option("--paper", options->paper, "of the PDF: a4 (also when left out) or letter")
        ->check(CLI::IsMember({"a4", "letter"}));
    command->add_option("--units", options->units, "of loads in the PDF: metric (also when left out) or pounds")
        ->check(CLI::IsMember({"metric", "pounds"}));
    command->callback([options, &chosen] { chosen = [options] { return makeReport(*options); }; });
}

} // namespace fleetrung::desk
