// Whose season of which store a command is about: the options, and what they name.
#pragma once

#include <CLI/App.hpp>

#include "mobile/logbook/logbook.hpp"
#include "platform/desk/failure.hpp"

namespace fleetrung::desk
{

struct StoreChoice {
    std::string store;
    std::string athlete;
    std::string season;
    std::string day;
};

/// --store, --athlete, --season and --day. Gives --store, which needs --athlete.
CLI::Option* addStoreOptions(CLI::App& command, StoreChoice& choice);

/// The rows' file; the captures lie beside it. A folder stands for the files in it.
[[nodiscard]] store::StorePaths pathsOf(const std::string& named);
/// For reading only.
[[nodiscard]] Result<logbook::Logbook> openBook(const std::string& named);

/// The day named, else today.
[[nodiscard]] Result<CivilDate> chosenDay(const StoreChoice& choice);

struct ChosenSeason {
    logbook::Logbook book; ///< for reading only
    store::Athlete athlete;
    Identifier season;
};
/// The season named; without a name the one that holds the day, or else the last that began before it.
[[nodiscard]] Result<ChosenSeason> chooseSeason(const StoreChoice& choice, CivilDate day);

} // namespace fleetrung::desk
