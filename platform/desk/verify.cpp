#include <map>
#include <memory>

#include "engine/base/json.hpp"
#include "engine/base/numbers.hpp"
#include "platform/desk/commands.hpp"
#include "platform/desk/progress.hpp"
#include "platform/desk/store_choice.hpp"

namespace fleetrung::desk
{
namespace
{

struct VerifyOptions {
    std::string store;
    bool json = false;
};

struct Found {
    std::vector<std::string> files; ///< what is wrong with them
    int seasons = 0;
    int checked = 0;
    struct Different {
        std::string athlete;
        logbook::DecisionDifference what;
    };
    std::vector<Different> differences;
    struct Unchecked {
        std::string athlete;
        logbook::UncheckedDecision what;
    };
    std::vector<Unchecked> unchecked;

    [[nodiscard]] bool allWell() const { return files.empty() && differences.empty(); }
};

std::string counted(int number, const char* one, const char* many)
{
    return integerText(number) + " " + (number == 1 ? one : many);
}

Result<void> checkSeason(const logbook::Logbook& book, const VerifyOptions& options, const std::string& athlete,
                         const store::Season& season, Progress& progress, Found& found)
{
    const auto check = book.verifyDecisions(season.id, [&](int done, int all) {
        progress.now("decisions of " + athlete + ", " + season.name + ": " + integerText(done) + " of " +
                     integerText(all));
        return true;
    });
    if (!check)
        return tl::unexpected(inFile(options.store, check.error()));
    ++found.seasons;
    found.checked += check->checked;
    for (const auto& difference : check->differences)
        found.differences.push_back({athlete, difference});
    for (const auto& unchecked : check->unchecked)
        found.unchecked.push_back({athlete, unchecked});
    return {};
}

Result<Found> look(const VerifyOptions& options)
{
    Progress progress("reading every page of " + options.store);
    const auto book = openBook(options.store);
    if (!book)
        return tl::unexpected(book.error());
    Found found;
    const auto wrong = book->verify();
    if (!wrong)
        return tl::unexpected(inFile(options.store, wrong.error()));
    found.files = *wrong;
    const auto athletes = book->rows().list<store::Athlete>();
    if (!athletes)
        return tl::unexpected(inFile(options.store, athletes.error()));
    for (const auto& athlete : *athletes) {
        const auto seasons = book->rows().list<store::Season>({.athlete = athlete.id});
        if (!seasons)
            return tl::unexpected(inFile(options.store, seasons.error()));
        for (const auto& season : *seasons)
            if (auto checked = checkSeason(*book, options, athlete.name, season, progress, found); !checked)
                return tl::unexpected(checked.error());
    }
    return found;
}

/// Long values (an input, a text) are told by their beginning.
std::string brief(const std::string& value)
{
    constexpr std::size_t most = 60;
    return value.size() <= most ? value : value.substr(0, most) + "...";
}

std::string textOf(const Found& found)
{
    std::string text;
    for (const auto& wrong : found.files)
        text += "files: " + wrong + "\n";
    for (const auto& [athlete, what] : found.differences)
        text += "differs: " + athlete + ", " + dateText(what.day) + ", " + what.difference.ladder + ", " +
                what.difference.field + ": stored \"" + brief(what.difference.stored) + "\", derived \"" +
                brief(what.difference.derived) + "\"\n";
    std::map<std::string, int> reasons;
    for (const auto& unchecked : found.unchecked)
        ++reasons[unchecked.what.reason];
    for (const auto& [reason, count] : reasons)
        text += "not checked: " + counted(count, "decision", "decisions") + ": " + reason + "\n";
    return text + counted(found.checked, "decision", "decisions") + " of " +
           counted(found.seasons, "season", "seasons") + " taken again, " +
           counted(static_cast<int>(found.differences.size()), "difference", "differences") + "; " +
           (found.files.empty() ? "the files are whole" : "the files are damaged") + "\n";
}

Json jsonOf(const Found& found)
{
    Json json{{"all_well", found.allWell()}, {"seasons", found.seasons}, {"decisions_checked", found.checked}};
    json["files"] = found.files;
    json["differences"] = Json::array();
    for (const auto& [athlete, what] : found.differences)
        json["differences"].push_back({{"athlete", athlete},
                                       {"decision", identifierText(what.decision)},
                                       {"day", dateText(what.day)},
                                       {"ladder", what.difference.ladder},
                                       {"field", what.difference.field},
                                       {"stored", what.difference.stored},
                                       {"derived", what.difference.derived}});
    json["not_checked"] = Json::array();
    for (const auto& [athlete, what] : found.unchecked)
        json["not_checked"].push_back({{"athlete", athlete},
                                       {"decision", identifierText(what.decision)},
                                       {"day", dateText(what.day)},
                                       {"ladder", what.ladder},
                                       {"reason", what.reason}});
    return json;
}

Result<Output> verify(const VerifyOptions& options)
{
    const auto found = look(options);
    if (!found)
        return tl::unexpected(found.error());
    return Output(options.json ? jsonText(jsonOf(*found), 2) + "\n" : textOf(*found), found->allWell() ? 0 : failed);
}

} // namespace

void addVerify(CLI::App& app, Command& chosen)
{
    const auto options = std::make_shared<VerifyOptions>();
    auto* command = app.add_subcommand(
        "verify", "Check a store: its files, and whether each decision comes out again from what was kept with it.\n"
                  "Exit code 1 where something is wrong; decisions without kept inputs are counted, no fault.");
    command->add_option("STORE", options->store, "the store: athletes.fleetrung, or the folder it lies in")->required();
    command->add_flag("--json", options->json, "one JSON object instead of lines");
    command->callback([options, &chosen] { chosen = [options] { return verify(*options); }; });
}

} // namespace fleetrung::desk
