// write_tables FOLDER: the tables of the invented season as files, and their cells as JSON (expected.json), written
// under the locale of the environment.
#include <clocale>
#include <fstream>
#include <iostream>
#include <string>

#include "engine/base/json.hpp"
#include "engine/report/csv_tables.hpp"
#include "tests/report/invented_season.hpp"

int main(int count, char** arguments)
{
    using namespace fleetrung;
    if (count != 2 || std::setlocale(LC_ALL, "") == nullptr) {
        std::cerr << "write_tables FOLDER; the locale of the environment must exist\n";
        return 2;
    }
    const std::string folder = arguments[1];
    const std::vector reports{invented::season()};
    Json expected = Json::object();
    for (const auto& table : report::csvTables(reports)) {
        std::ofstream(folder + "/" + table.fileName, std::ios::binary) << report::csvText(table);
        expected[table.fileName] = {{"header", table.header}, {"rows", table.rows}};
    }
    std::ofstream(folder + "/expected.json", std::ios::binary) << expected.dump();
    std::cout << std::localeconv()->decimal_point << "\n";
    return 0;
}
