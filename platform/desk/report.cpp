#include "platform/desk/commands.hpp"

#include <filesystem>
#include <memory>

#include "engine/base/numbers.hpp"
#include "engine/report/csv_tables.hpp"
#include "platform/desk/output_files.hpp"
#include "platform/desk/pdf_output.hpp"
#include "platform/desk/progress.hpp"
#include "platform/desk/store_choice.hpp"

namespace fleetrung::desk
{
namespace
{

struct ReportOptions {
    StoreChoice choice;
    std::string pdf;
    std::string csv;
    std::string paper = "a4";
    std::string units = "metric";
};

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
    const auto day = chosenDay(options.choice);
    if (!day)
        return tl::unexpected(day.error());

    Progress progress("reading " + options.choice.store);
    const auto chosen = chooseSeason(options.choice, *day);
    if (!chosen)
        return tl::unexpected(chosen.error());
    const auto seasonReport = chosen->book.seasonReport(chosen->athlete.id, chosen->season, *day);
    if (!seasonReport)
        return tl::unexpected(inFile(options.choice.store, seasonReport.error()));

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
    addStoreOptions(*command, options->choice)->required();
    command->add_option("--pdf", options->pdf, "PDF to write")->type_name("FILE");
    command->add_option("--csv", options->csv, "folder for the tables; made where it is missing")->type_name("FOLDER");
    command->add_option("--paper", options->paper, "of the PDF: a4 (also when left out) or letter")
        ->check(CLI::IsMember({"a4", "letter"}));
    command->add_option("--units", options->units, "of loads in the PDF: metric (also when left out) or pounds")
        ->check(CLI::IsMember({"metric", "pounds"}));
    command->callback([options, &chosen] { chosen = [options] { return makeReport(*options); }; });
}

} // namespace fleetrung::desk
