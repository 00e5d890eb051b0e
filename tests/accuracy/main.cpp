// fleetrung-accuracy: simulated sets of every lift, rate and fault against their exact truth.
#include <atomic>
#include <chrono>
#include <fstream>
#include <iostream>
#include <thread>

#include <CLI/CLI.hpp>

#include "tests/accuracy/report.hpp"
#include "tests/accuracy/single.hpp"

using namespace fleetrung;
using namespace fleetrung::accuracy;

namespace
{

struct Options {
    std::size_t repetitions = 21000; ///< class A without fault, all lifts and rates
    std::string lift, fault, csv, setsCsv, worstBy, write;
    double rate = 0;
    std::uint64_t seed = 20260;
    std::uint64_t set = 0;
    std::size_t worst = 0;
    unsigned threads = 2;
    bool live = false;
    bool check = false;
};

/// Rows of faults get a tenth of what a row without fault gets.
std::size_t quota(const Options& options, const Fault& fault)
{
    const auto rows = judgedLifts().size() * allFaults().front().rates.size();
    const auto usual = (options.repetitions + rows - 1) / rows;
    return fault.name == "none" ? usual : std::max<std::size_t>(10, usual / 5);
}

std::vector<Row> wantedRows(const Options& options)
{
    std::vector<Row> rows;
    for (const auto& fault : allFaults())
        for (const auto* lift : judgedLifts())
            for (const double rate : fault.rates) {
                const bool wanted = concerns(fault, *lift) && (options.lift.empty() || options.lift == lift->key) &&
                                    (options.fault.empty() || options.fault == fault.name) &&
                                    (options.rate == 0 || options.rate == rate);
                if (wanted)
                    rows.push_back({lift, &fault, rate, {}});
            }
    return rows;
}

struct Job {
    std::size_t row;
    Situation situation;
};

/// Sets until each row has its repetitions. A row's sets do not depend on which other rows are asked for.
std::vector<Job> jobsOf(const std::vector<Row>& rows, const Options& options)
{
    std::vector<Job> jobs;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        const auto& row = rows[r];
        std::uint64_t rowSeed = mixed(options.seed, static_cast<std::uint64_t>(row.rate));
        for (const char c : std::string(row.lift->key) + "/" + std::string(row.fault->name))
            rowSeed = mixed(rowSeed, static_cast<unsigned char>(c));
        std::size_t planned = 0;
        for (std::uint64_t number = 0; planned < quota(options, *row.fault); ++number) {
            const Situation situation{row.lift, row.fault, row.rate, mixed(rowSeed, number)};
            planned += static_cast<std::size_t>(draw(situation).plan.repetitions);
            jobs.push_back({r, situation});
        }
    }
    return jobs;
}

std::vector<SetScore> judgeAll(const std::vector<Job>& jobs, const Options& options)
{
    std::vector<SetScore> scores(jobs.size());
    std::atomic<std::size_t> next = 0;
    std::vector<std::thread> workers;
    for (unsigned i = 0; i < options.threads; ++i)
        workers.emplace_back([&] {
            for (std::size_t j = next++; j < jobs.size(); j = next++) {
                const auto& situation = jobs[j].situation;
                const bool live = options.live && situation.fault->quality == Class::A;
                scores[j] = judge(situation, live);
            }
        });
    for (auto& worker : workers)
        worker.join();
    return scores;
}

/// Nothing to do where no path is given.
bool write(const std::string& path, const std::string& bytes)
{
    if (path.empty())
        return true;
    std::ofstream file(path, std::ios::binary);
    file << bytes;
    if (file.flush())
        return true;
    std::cerr << "fleetrung-accuracy: cannot write " << path << '\n';
    return false;
}

int report(const Options& options)
{
    const auto begun = std::chrono::steady_clock::now();
    auto rows = wantedRows(options);
    const auto jobs = jobsOf(rows, options);
    std::cout << "seed " << options.seed << ", " << jobs.size() << " sets\n";
    const auto scores = judgeAll(jobs, options);
    for (std::size_t j = 0; j < jobs.size(); ++j)
        rows[jobs[j].row].tally.add(scores[j]);
    printReport(rows);
    if (options.worst > 0)
        printWorst(scores, options.worst, options.worstBy);
    if (!write(options.csv, reportCsv(rows)) || !write(options.setsCsv, setsCsv(scores)))
        return 1;
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begun;
    std::cout << "took " << taken.count() << " s on " << options.threads << " threads, simulation included\n";
    return options.check && !keepsLimits(rows) ? 1 : 0;
}

int run(int argc, char** argv)
{
    CLI::App app{"Simulated sets of every lift, rate and fault against their exact truth."};
    Options options;
    app.add_option("--repetitions", options.repetitions, "of class A without fault, all lifts and rates");
    app.add_option("--lift", options.lift, "this lift only");
    app.add_option("--rate", options.rate, "Hz; this rate only");
    app.add_option("--fault", options.fault, "this fault only; none, short-gaps, ...");
    app.add_option("--seed", options.seed, "the same seed gives the same sets");
    app.add_option("--csv", options.csv, "write every row to this file");
    app.add_option("--sets-csv", options.setsCsv, "write every set, what was drawn and what was missed, to this file");
    app.add_option("--worst", options.worst, "list so many of the worst repetitions, and of those missed or invented");
    app.add_option("--worst-by", options.worstBy, "by this metric's error (\"TPV\"), not by sigmas");
    app.add_option("--threads", options.threads, "2");
    app.add_flag("--live", options.live, "also play each set of class A through the live set");
    app.add_flag("--check", options.check, "fail where a limit is broken");
    app.add_option("--set", options.set,
                   "one set as --worst names it, with --lift, --rate and --fault: its plan, its "
                   "truth and what was found");
    app.add_option("--write", options.write, "with --set: write its recording CSV here");
    CLI11_PARSE(app, argc, argv);
    if (options.set != 0)
        return showSingle(options.lift, options.fault, options.rate, options.set, options.write);
    return report(options);
}

} // namespace

int main(int argc, char** argv)
{
    try {
        return run(argc, argv);
    } catch (const std::exception& error) {
        std::cerr << "fleetrung-accuracy: " << error.what() << '\n';
        return 1;
    }
}
