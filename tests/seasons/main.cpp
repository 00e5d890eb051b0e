// fleetrung-seasons: invented athletes with known true adaptation, their seasons played through the engine.
#include <chrono>
#include <iostream>
#include <thread>

#include <CLI/CLI.hpp>

#include "engine/base/numbers.hpp"
#include "tests/seasons/tally.hpp"

using namespace fleetrung;
using namespace fleetrung::seasons;

int main(int argc, char** argv)
{
    CLI::App app{"Plays seasons of invented athletes and checks the rules against the truth."};
    std::size_t count = 1000;
    std::uint64_t seed = 1;
    std::uint64_t only = 0;
    unsigned threads = std::max(1U, std::thread::hardware_concurrency());
    bool check = false, list = false;
    app.add_option("--seasons", count, "how many");
    app.add_option("--seed", seed, "number of the first season; the others follow it");
    auto* one = app.add_option("--season", only, "play this season alone and print all of it");
    app.add_option("--threads", threads, "seasons played at a time");
    app.add_flag("--breaches", list, "print every breach");
    app.add_flag("--check", check, "exit 1 where a check or a share of the rules is not reached");
    CLI11_PARSE(app, argc, argv);
    if (one->count() > 0) {
        std::cout << seasonText(playSeason(only));
        return 0;
    }
    if (list) {
        for (std::size_t i = 0; i < count; ++i)
            for (const auto& breach : judge(playSeason(seed + i)).breaches)
                std::cout << "season " << seed + i << ", " << dateText(breach.day) << ", " << breach.check << ": "
                          << breach.what << '\n';
        return 0;
    }
    const auto begun = std::chrono::steady_clock::now();
    const auto tally = playSeasons(seed, count, threads);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - begun;
    std::cout << "`fleetrung-seasons --seasons " << count << " --seed " << seed << "`\n\n" << tallyText(tally);
    std::cerr << fixedText(1000 * taken.count() / static_cast<double>(std::max<std::size_t>(1, count)), 1)
              << " ms a season on " << threads << " threads\n";
    if (check && !tally.reached()) {
        std::cerr << "not reached\n";
        return 1;
    }
    return 0;
}
