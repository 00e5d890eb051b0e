#include "tests/accuracy/report.hpp"

#include <algorithm>
#include <functional>
#include <iomanip>
#include <iostream>

#include "engine/base/numbers.hpp"

namespace fleetrung::accuracy
{
namespace
{

using RowFilter = std::function<bool(const Row&)>;

Tally pooled(const std::vector<Row>& rows, const RowFilter& wanted)
{
    Tally all;
    for (const auto& row : rows)
        if (wanted(row))
            all.add(row.tally);
    return all;
}

std::string cell(double value, int decimals)
{
    return fixedText(value, decimals);
}

constexpr int narrow = 13;

/// "rms/bias" in the unit of print.
std::string errorCell(const Errors& errors, double scale)
{
    if (errors.count == 0)
        return "-";
    return cell(errors.rms() * scale, 1) + "/" + cell(errors.bias() * scale, 1);
}

std::string flagCell(const Flagged& flagged)
{
    return integerText(static_cast<std::int64_t>(flagged.rightly)) + "+" +
           integerText(static_cast<std::int64_t>(flagged.wrongly)) + "-" +
           integerText(static_cast<std::int64_t>(flagged.overlooked));
}

void printStart(std::string_view name, std::string_view rate)
{
    std::cout << std::left << std::setw(22) << name << std::right << std::setw(5) << rate;
}

std::string rateText(double rate)
{
    return rate > 0 ? integerText(static_cast<std::int64_t>(rate)) : "all";
}

void printErrorHead(std::string_view title)
{
    std::cout << '\n' << title << ": errors, rms/bias\n";
    printStart("", "Hz");
    std::cout << std::setw(7) << "true" << std::setw(6) << "missed" << std::setw(6) << "inv." << std::setw(5) << "ref.";
    for (const auto& metric : allMetrics())
        std::cout << std::setw(narrow) << metric.name;
    std::cout << std::setw(narrow) << "TPV rest" << std::setw(narrow) << "TPV moving" << '\n';
    printStart("", "");
    std::cout << std::setw(24) << "";
    for (const auto& metric : allMetrics())
        std::cout << std::setw(narrow) << metric.unit;
    std::cout << std::setw(narrow) << "ms" << std::setw(narrow) << "ms" << '\n';
}

void printErrors(std::string_view name, double rate, const Tally& tally)
{
    printStart(name, rateText(rate));
    std::cout << std::setw(7) << tally.repetitions << std::setw(6) << tally.missed << std::setw(6) << tally.invented
              << std::setw(5) << tally.refused;
    for (std::size_t m = 0; m < metricCount; ++m)
        std::cout << std::setw(narrow) << errorCell(tally.errors[m], allMetrics()[m].scale);
    std::cout << std::setw(narrow) << errorCell(tally.timeToPeakRest, 1e3) << std::setw(narrow)
              << errorCell(tally.timeToPeakMoving, 1e3) << '\n';
}

void printCoverageHead(std::string_view title)
{
    std::cout << '\n'
              << title
              << ": stated 95 % intervals that hold the truth [%], and flags (rightly + wrongly - overlooked)\n";
    printStart("", "Hz");
    for (const auto& metric : allMetrics())
        std::cout << std::setw(11) << metric.name;
    std::cout << std::setw(13) << "partial" << std::setw(13) << "two-peaked" << '\n';
}

void printCoverage(std::string_view name, double rate, const Tally& tally)
{
    printStart(name, rateText(rate));
    for (const auto& errors : tally.errors)
        std::cout << std::setw(11) << (errors.count == 0 ? "-" : cell(100 * errors.coverage(), 1));
    std::cout << std::setw(13) << flagCell(tally.partial) << std::setw(13) << flagCell(tally.twoPeaked) << '\n';
}

struct Line {
    std::string name;
    double rate; ///< 0 = all
    Tally tally;
};

void print(std::string_view title, const std::vector<Line>& lines)
{
    if (lines.empty())
        return;
    printErrorHead(title);
    for (const auto& line : lines)
        printErrors(line.name, line.rate, line.tally);
    printCoverageHead(title);
    for (const auto& line : lines)
        printCoverage(line.name, line.rate, line.tally);
}

std::vector<Line> byFault(const std::vector<Row>& rows, Class quality)
{
    std::vector<Line> lines;
    for (const auto& fault : allFaults())
        for (const double rate : fault.rates) {
            const auto tally = pooled(rows, [&](const Row& row) { return row.fault == &fault && row.rate == rate; });
            if (fault.quality == quality && tally.sets > 0)
                lines.push_back({std::string(fault.name), rate, tally});
        }
    return lines;
}

std::vector<Line> byLift(const std::vector<Row>& rows)
{
    std::vector<Line> lines;
    for (const auto* lift : judgedLifts())
        for (const auto& row : rows)
            if (row.lift == lift && row.fault->name == "none")
                lines.push_back({std::string(lift->key), row.rate, row.tally});
    return lines;
}

void printRefusals(const std::vector<Row>& rows)
{
    for (const auto& fault : allFaults()) {
        const auto tally = pooled(rows, [&](const Row& row) { return row.fault->name == fault.name; });
        if (tally.sets == 0 || (fault.quality != Class::C && tally.refusals.empty()))
            continue;
        std::cout << fault.name << " (" << fault.what << "): " << tally.refusedSets << " of " << tally.sets
                  << " sets gave nothing, or every repetition was refused or flagged\n";
        std::size_t shown = 0;
        for (const auto& [message, count] : tally.refusals)
            if (shown++ < 4)
                std::cout << "    " << count << " x " << message << '\n';
    }
}

void printLive(const Live& live)
{
    if (live.announced + live.missed == 0)
        return;
    std::cout << "\nLive, class A: " << live.announced << " announced, " << live.missed
              << " of the final analysis never announced, longest delay " << cell(1e3 * live.longestDelay, 1)
              << " ms of signal\n  share within 2 sqrt(P_live - P_final):";
    for (std::size_t m = 0; m < metricCount; ++m)
        if (live.compared[m] > 0)
            std::cout << "  " << allMetrics()[m].name << ' '
                      << cell(100 * static_cast<double>(live.kept[m]) / static_cast<double>(live.compared[m]), 1)
                      << " %";
    std::cout << '\n';
}

void printBound(const Tally& tally)
{
    std::cout << "\nClass A without fault: " << tally.repetitions << " repetitions in " << tally.sets << " sets, "
              << tally.missed << " missed, " << tally.invented << " invented.\n";
    const auto count = static_cast<double>(tally.repetitions);
    if (tally.repetitions > 0 && tally.missed + tally.invented == 0)
        std::cout << "None in N leaves a rate of at most 3/N with 95 % confidence: 3/" << tally.repetitions << " = "
                  << cell(100 * 3 / count, 4) << " %.\n";
    std::cout << "A simulation is no validation against motion capture.\n";
}

} // namespace

void printReport(const std::vector<Row>& rows)
{
    const auto clean = [](const Row& row) { return row.fault->name == "none"; };
    print("Class A by lift", byLift(rows));
    auto classA = byFault(rows, Class::A);
    if (const auto all = pooled(rows, clean); all.sets > 0)
        classA.push_back({"none", 0, all});
    print("Class A, all lifts", classA);
    print("Class B, all lifts", byFault(rows, Class::B));
    print("Class C, all lifts", byFault(rows, Class::C));
    printRefusals(rows);
    printLive(pooled(rows, clean).live);
    printBound(pooled(rows, clean));
}

} // namespace fleetrung::accuracy
