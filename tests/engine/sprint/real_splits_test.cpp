// Split times of real people, no part of this checkout (FLEETRUNG_DATA names the folder; without it the tests are
// skipped). Gates: 52 team-sport athletes, contributed by J. D. Vescovi, in github.com/mladenjovanovic/shorts (MIT).
// Final: Graubner R, Nixdorf E, New Stud Athl 2011;26(1/2):19-53, the greatest speed measured by laser beside the
// splits.
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include <catch2/catch.hpp>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"
#include "engine/sprint/splits.hpp"

using namespace fleetrung;
using namespace fleetrung::sprint;

namespace
{

const std::string folder = FLEETRUNG_DATA "/sprint-splits/";

bool isHere()
{
    if (std::filesystem::exists(folder))
        return true;
    WARN("skipped: no data in " << folder);
    return false;
}

CsvTable tableOf(const std::string& name)
{
    std::ifstream file(folder + name);
    std::stringstream text;
    text << file.rdbuf();
    auto table = parseCsv(text.str());
    REQUIRE(table);
    return *table;
}

double cell(const CsvRow& row, std::size_t column)
{
    const auto value = parseNumber(row.cells.at(column));
    REQUIRE(value);
    return *value;
}

} // namespace

TEST_CASE("splits of 52 athletes through gates give a sprint within the timing of the gates", "[real]")
{
    if (!isHere())
        return;
    const auto table = tableOf("timing_gates_52_athletes.csv");
    std::vector<double> rms;
    for (const auto& row : table.rows) {
        const std::vector<Split> splits{
            {5, cell(row, 6)}, {10, cell(row, 7)}, {20, cell(row, 8)}, {30, cell(row, 9)}, {35, cell(row, 10)}};
        // The lead foot stands 5 cm behind the beam; the body breaks it a little later: the start of the clock is not
        // known against the first movement, so the offset is free.
        const auto fit = fitSplits(splits, {.start = {Clock::Unknown, {}, 0}});
        INFO(row.cells[0] << ": " << (fit ? "" : describe(fit.error())));
        if (!fit) { // slower over the last 5 m: four splits are left, and a free start needs five
            CHECK(fit.error().code == Code::NotAvailable);
            continue;
        }
        CHECK(fit->model.vmax > 5.5); // team-sport players over 35 m: common practice, no source
        CHECK(fit->model.vmax < 9.5);
        rms.push_back(fit->residualRms);
    }
    REQUIRE(table.rows.size() == 52);
    REQUIRE(rms.size() >= 48);
    std::ranges::sort(rms);
    WARN(rms.size() << " of 52 fitted, median residual " << rms[rms.size() / 2] << " s, greatest " << rms.back()
                    << " s");
    CHECK(rms[rms.size() / 2] < 0.010); // times were read to 0.01 s
    CHECK(rms.back() < 0.06);
}

TEST_CASE("top speeds of two 100 m finals lie within 2 percent of what the laser measured", "[real][published]")
{
    if (!isHere())
        return;
    const auto table = tableOf("world_champs_2009_100m.csv");
    for (const std::string event : {"men_100m_final_2009", "women_100m_final_2009"}) {
        std::vector<Split> splits;
        double reaction = 0;
        double measured = 0;
        for (const auto& row : table.rows) {
            if (row.cells[0] != event)
                continue;
            reaction = cell(row, 1);
            measured = cell(row, 2);
            splits.push_back({cell(row, 3), cell(row, 4)});
        }
        const auto fit = fitSplits(splits, {.start = {Clock::Gun, reaction, 0}});
        INFO(event << ": " << (fit ? "" : describe(fit.error())));
        REQUIRE(fit);
        CHECK(fit->model.vmax == Approx(measured).epsilon(0.02));
    }
}
