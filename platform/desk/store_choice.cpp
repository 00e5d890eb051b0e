#include "platform/desk/store_choice.hpp"

#include <chrono>
#include <filesystem>

#include "platform/desk/input_file.hpp"

namespace fleetrung::desk
{
namespace
{

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

Result<store::Athlete> athleteOf(const logbook::Logbook& book, const StoreChoice& choice, CivilDate day)
{
    const auto squad = book.squad(day);
    if (!squad)
        return tl::unexpected(inFile(choice.store, squad.error()));
    std::vector<store::Athlete> athletes;
    for (const auto& summary : *squad)
        athletes.push_back(summary.athlete);
    return chosenFrom(athletes, "--athlete", choice.athlete);
}

Result<Identifier> seasonOf(const logbook::Logbook& book, const StoreChoice& choice, const store::Athlete& athlete,
                            CivilDate day)
{
    const auto records = book.seasons(athlete.id);
    if (!records)
        return tl::unexpected(inFile(choice.store, records.error()));
    if (records->empty())
        return refuse("--athlete: " + athlete.name + " has no season in the store; add one first");
    std::vector<store::Season> seasons;
    for (const auto& record : *records)
        seasons.push_back(record.row);
    if (!choice.season.empty())
        return chosenFrom(seasons, "--season", choice.season).map([](const store::Season& season) {
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

} // namespace

store::StorePaths pathsOf(const std::string& named)
{
    std::error_code error;
    const std::filesystem::path path(named);
    const auto rows = std::filesystem::is_directory(path, error) ? path / "athletes.fleetrung" : path;
    return {rows.string(), (rows.parent_path() / "captures.fleetrung").string()};
}

Result<CivilDate> chosenDay(const StoreChoice& choice)
{
    if (choice.day.empty())
        return std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    const auto day = parseDate(choice.day);
    if (!day)
        return refuse("--day: \"" + choice.day + "\" is no date; write it as 2026-03-30");
    return *day;
}

Result<logbook::Logbook> openBook(const std::string& named)
{
    const auto paths = pathsOf(named);
    if (auto readable = checkReadable(paths.rows); !readable)
        return tl::unexpected(readable.error());
    auto book = logbook::Logbook::openReadOnly(paths);
    if (!book)
        return tl::unexpected(inFile(paths.rows, book.error()));
    return std::move(*book);
}

Result<ChosenSeason> chooseSeason(const StoreChoice& choice, CivilDate day)
{
    auto book = openBook(choice.store);
    if (!book)
        return tl::unexpected(book.error());
    auto athlete = athleteOf(*book, choice, day);
    if (!athlete)
        return tl::unexpected(athlete.error());
    const auto season = seasonOf(*book, choice, *athlete, day);
    if (!season)
        return tl::unexpected(season.error());
    return ChosenSeason{std::move(*book), std::move(*athlete), *season};
}

CLI::Option* addStoreOptions(CLI::App& command, StoreChoice& choice)
{
    auto* athlete =
        command.add_option("--athlete", choice.athlete, "name (or identifier) of the athlete")->type_name("NAME");
    command
        .add_option("--season", choice.season, "name (or identifier) of the season; else the one that holds the day")
        ->type_name("NAME");
    command.add_option("--day", choice.day, "as of this day, for example 2026-03-30; else today")->type_name("DATE");
    return command.add_option("--store", choice.store, "the store: athletes.fleetrung, or the folder it lies in")
        ->type_name("FILE")
        ->needs(athlete);
}

} // namespace fleetrung::desk
