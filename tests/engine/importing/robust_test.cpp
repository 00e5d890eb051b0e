// Files with seeded mutations: whatever comes in, either a table with places comes out or one error with its cause.
#include "helper.hpp"

#include <random>

using namespace fleetrung;
using namespace fleetrung::importing;
using namespace fleetrung::importing::test;

namespace
{

const std::string seeds[] = {
    "Athlete;Datum;Uhrzeit;10 m;20 m;30 "
    "m;Wind\nAda;1.3.2026;17:05;1,85;2,98;4,02;+0,8\nBo;2.3.2026;17:09;1,9;3,0;4,1;\n",
    "Athlete,Date,Run,Distance (m),Time (s)\nAda,3/24/2026,1,10,1.85\nAda,3/24/2026,1,30,4.02\n",
    "Name,Date,Lift,Load (kg),Reps,\"TPV, ms\",note\nAda,2026-03-01,\"Half \"\"deep\"\" squat\",100,5,285,x\n",
    std::string("\xFF\xFEN\0a\0m\0e\0,\0"
                "3\0"
                "0\0 \0m\0\n\0A\0,\0"
                "4\0.\0"
                "2\0\n\0",
                30)};

std::string mutated(std::string text, std::mt19937& random)
{
    static const std::string pieces[] = {",",     ";",   "\t",          "\"", "\n",           "\r",       "-", "1.234",
                                         "1,234", "0",   "99999999999", "e9", "\xEF\xBB\xBF", "\xFE\xFF", "/", "m",
                                         "\xC3",  "nan", ":",           "#"};
    const int changes = 1 + static_cast<int>(random() % 6);
    for (int i = 0; i < changes; ++i) {
        const auto at = text.empty() ? 0 : random() % text.size();
        switch (random() % 4) {
        case 0:
            text.insert(at, pieces[random() % std::size(pieces)]);
            break;
        case 1:
            text.erase(at, 1 + random() % 8);
            break;
        case 2:
            if (!text.empty())
                text[at] = static_cast<char>(random());
            break;
        default:
            text.insert(at, text.substr(random() % (text.size() + 1), random() % 30));
        }
    }
    return text;
}

/// Everything that can be asked of a file; answers whatever it leaves open.
void readWhole(const std::string& text)
{
    const auto table = readTable(text);
    if (!table) {
        CHECK(table.error().code == Code::InvalidInput);
        CHECK_FALSE(table.error().message.empty());
        return;
    }
    for (const auto kind : {Kind::Runs, Kind::Sets}) {
        auto proposal = propose(*table, kind);
        auto& mapping = proposal.mapping;
        CHECK(mapping.columns.size() == table->header.size());
        for (const auto& remark : proposal.remarks)
            CHECK_FALSE(describe(remark).empty());
        mapping.decimalMark = mapping.decimalMark.value_or(',');
        mapping.dateOrder = mapping.dateOrder.value_or(DateOrder::DayMonth);
        mapping.day = today;
        mapping.load = Unit::Kilogram;
        for (std::size_t i = 0; i < mapping.columns.size(); ++i)
            if (mapping.columns[i].meaning == Meaning::Split && mapping.columns[i].distance <= 0)
                mapping.columns[i].distance = 10.0 * static_cast<double>(i + 1);
        const auto kept = parseMapping(mappingText(mapping));
        REQUIRE(kept);
        CHECK(*kept == mapping);
        std::vector<BadRow> bad;
        if (kind == Kind::Runs) {
            const auto runs = readRuns(*table, mapping, {today, {}});
            if (!runs)
                CHECK(runs.error().code == Code::Refused);
            else
                bad = runs->bad;
        } else {
            const auto sets = readSets(*table, mapping, {today, {}});
            if (!sets)
                CHECK(sets.error().code == Code::Refused);
            else
                bad = sets->bad;
        }
        for (const auto& row : bad) {
            CHECK(row.line > 0);
            CHECK(describe(row, *table).find("line ") == 0);
        }
    }
}

} // namespace

TEST_CASE("no mutation of a file crashes the import, and every error has its cause", "[robust]")
{
    constexpr unsigned seed = 20261126;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    for (int i = 0; i < 6000; ++i) {
        std::string text = seeds[random() % std::size(seeds)];
        text = mutated(text, random);
        CAPTURE(i, text);
        readWhole(text);
    }
}
