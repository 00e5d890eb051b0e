// fleetrung-demo-season: plays the invented squad's seasons into a store and says what came of them.
#include <algorithm>
#include <array>
#include <cctype>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iostream>
#include <string>

#include <CLI/CLI.hpp>

#include "demo/squad/season_player.hpp"
#include "engine/base/json.hpp"
#include "engine/base/numbers.hpp"

using namespace fleetrung;

namespace
{

constexpr std::string_view deviceName = "demo phone";

Identifier madeUp(std::string_view what, std::uint64_t number)
{
    const auto text = integerText(static_cast<std::int64_t>(number));
    const std::array<std::string_view, 3> parts{"fleetrung demo", what, text};
    return hashIdentifier(parts);
}

void summarise(const squad::Performer& performer, const squad::Tally& tally)
{
    std::cout << "\n"
              << performer.athlete.name << ", " << performer.athlete.event << ", " << performer.setup.name << ", up to "
              << dateText(performer.playedTo) << "\n"
              << "  " << tally.sessions << " sessions, " << tally.sets << " sets (" << tally.measuredSets
              << " with the sensor), " << tally.daysLost << " days lost\n"
              << "  repetitions in recorded sets: " << tally.lifted << " lifted, " << tally.found << " found\n"
              << "  decisions:";
    for (const auto& [kind, count] : tally.decisions) {
        std::cout << " " << count << " " << kind << (kind == tally.decisions.rbegin()->first ? "" : ",");
    }
    std::cout << "\n";
    for (const auto& step : tally.steps) {
        std::cout << "    " << step << "\n";
    }
    if (tally.flying20.size() > 1) {
        std::cout << "  flying 20 m: " << fixedText(tally.flying20.front().second, 2) << " s on "
                  << dateText(tally.flying20.front().first) << ", " << fixedText(tally.flying20.back().second, 2)
                  << " s on " << dateText(tally.flying20.back().first) << "\n";
    }
}

/// "Imani Vesterholt" -> "imani-vesterholt"
std::string fileName(const squad::Performer& performer)
{
    std::string name;
    for (const char letter : performer.athlete.name) {
        name += letter == ' ' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(letter)));
    }
    return name;
}

void write(const std::filesystem::path& path, const std::string& bytes)
{
    std::ofstream file(path, std::ios::binary);
    file << bytes;
    file.close();
    if (!file) {
        throw std::runtime_error("cannot write " + path.string());
    }
}

/// Says the first day of each month.
std::function<void(CivilDate)> sayMonths()
{
    return [month = std::chrono::month{}](CivilDate day) mutable {
        if (const auto now = std::chrono::year_month_day(day).month(); now != month) {
            month = now;
            std::cout << " " << dateText(day) << std::flush;
        }
    };
}

/// What `fleetrung-desk plan` reads.
std::string seasonText(const squad::Performer& performer)
{
    auto setup = performer.setup;
    setup.athlete.name = performer.athlete.name;
    setup.athlete.birthDate = performer.athlete.born;
    setup.athlete.trainingYears = performer.athlete.trainingYears;
    setup.athlete.bodyMassKg = performer.athlete.bodyMassKg;
    setup.athlete.guardianConsent = performer.athlete.guardianConsent;
    return jsonText(season::setupJson(setup), 2) + "\n";
}

void play(const std::filesystem::path& folder, int mostDays)
{
    std::filesystem::create_directories(folder);
    const auto rows = folder / "athletes.fleetrung";
    const auto captures = folder / "captures.fleetrung";
    if (std::filesystem::exists(rows) || std::filesystem::exists(captures)) {
        throw std::runtime_error(folder.string() + " holds a store already: name an empty folder, or remove it first");
    }
    std::uint64_t next = 0;
    auto logbook = squad::must(logbook::Logbook::open({rows.string(), captures.string()}, madeUp(deviceName, 0),
                                                      [&next] { return madeUp("row", ++next); }));
    for (auto performer : squad::cast()) {
        if (mostDays > 0) {
            performer.playedTo = std::min(performer.playedTo, performer.setup.start + std::chrono::days{mostDays - 1});
        }
        const auto name = fileName(performer);
        write(folder / (name + ".season.json"), seasonText(performer));
        std::cout << performer.athlete.name << ":" << std::flush;
        const auto played = squad::playSeason(logbook, performer, sayMonths());
        std::cout << "\n";
        summarise(performer, played.tally);
        if (!played.nextLift.empty()) {
            write(folder / (name + ".replay.csv"), played.nextRecording);
            std::cout << "  next: " << played.nextLift << ", to be replayed from " << name << ".replay.csv\n";
        }
        std::cout << "\n";
    }
    std::cout << "store: " << rows.string() << " (rows), " << captures.string() << " (raw recordings)\n";
}

int run(int argc, char** argv)
{
    CLI::App app{"Plays the invented squad's seasons through simulator, engine and logbook into a store."};
    std::string folder;
    int mostDays = 0;
    app.add_option("folder", folder, "empty or new folder for the store")->required();
    app.add_option("--days", mostDays, "play only the first days of each season; 0 = all");
    CLI11_PARSE(app, argc, argv);
    play(folder, mostDays);
    return 0;
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        std::fflush(stdout);
        std::fprintf(stderr, "fleetrung-demo-season: %s\n", error.what());
        return 1;
    }
}
