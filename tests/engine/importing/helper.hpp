// Little invented files read as their user would let them be read.
#pragma once

#include <catch2/catch.hpp>

#include <string>

#include "engine/importing/sets.hpp"

namespace fleetrung::importing::test
{

inline const CivilDate today = *parseDate("2026-11-26");

inline Table tableOf(const std::string& text)
{
    const auto table = readTable(text);
    if (!table)
        FAIL(describe(table.error()));
    return *table;
}

inline std::string errorOf(const std::string& text)
{
    const auto table = readTable(text);
    return table ? "no error" : describe(table.error());
}

inline std::string firstQuestion(const Table& table, const Mapping& mapping)
{
    const auto open = questions(table, mapping);
    return open.empty() ? "" : describe(open.front(), table);
}

inline std::vector<Ask> asked(const Table& table, const Mapping& mapping)
{
    std::vector<Ask> all;
    for (const auto& question : questions(table, mapping))
        all.push_back(question.ask);
    return all;
}

inline bool told(const Proposal& proposal, Told what)
{
    for (const auto& remark : proposal.remarks)
        if (remark.told == what)
            return true;
    return false;
}

inline Runs runsOf(const Table& table, const Mapping& mapping)
{
    const auto runs = readRuns(table, mapping, {today, {}});
    if (!runs)
        FAIL(describe(runs.error()));
    return *runs;
}

/// As proposed, without a change.
inline Runs runsIn(const std::string& text)
{
    const auto table = tableOf(text);
    return runsOf(table, propose(table, Kind::Runs).mapping);
}

inline Sets setsIn(const std::string& text, Unit load = Unit::None)
{
    const auto table = tableOf(text);
    auto mapping = propose(table, Kind::Sets).mapping;
    mapping.load = load;
    const auto sets = readSets(table, mapping, {today, {}});
    if (!sets)
        FAIL(describe(sets.error()));
    return *sets;
}

inline std::string sentencesOf(const std::vector<BadRow>& bad, const Table& table)
{
    std::string text;
    for (const auto& row : bad)
        text += describe(row, table) + "\n";
    return text;
}

} // namespace fleetrung::importing::test
