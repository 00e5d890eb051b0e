// Real jumps on force plates, fed as the specific force F / m of an ideal upright sensor at the body's centre. What is
// compared: flight against the plate's 20 N threshold, take-off velocity and height against impulse-momentum. There is
// no drop jump among them, so contact times are not checked here.
//
// Data, no part of this checkout (FLEETRUNG_DATA names the folder; without it the tests are skipped): squat jumps from
// github.com/andrewlba/ACL_squat_jump (MIT), counter-movement jumps from Duarte and Watanabe, Notes on Scientific
// Computing for Biomechanics and Motor Control, github.com/BMClab/BMC (CC BY 4.0).
#include <catch2/catch.hpp>

#include <array>
#include <cstdio>
#include <filesystem>
#include <memory>

#include "engine/base/numbers.hpp"
#include "engine/motion/gravity.hpp"
#include "tests/engine/jumps/scoring.hpp"

using namespace fleetrung;
using namespace fleetrung::jumps;

namespace
{

const std::string squatJumps = FLEETRUNG_DATA "/force-plate-squat-jump/";
const std::string counterMovementJumps = FLEETRUNG_DATA "/force-plate-cmj/";

std::string unpacked(const std::string& path)
{
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(("gzip -dcf '" + path + "'").c_str(), "r"), pclose);
    std::string text;
    std::array<char, 65536> buffer{};
    for (std::size_t got = 0; pipe && (got = fread(buffer.data(), 1, buffer.size(), pipe.get())) > 0;)
        text.append(buffer.data(), got);
    return text;
}

/// Rows of numbers under a header; an empty cell or a word is nothing.
std::vector<std::vector<std::optional<double>>> rows(const std::string& text)
{
    std::vector<std::vector<std::optional<double>>> all;
    std::size_t at = text.find('\n') + 1;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        std::vector<std::optional<double>> row;
        for (std::size_t from = at; from <= end;) {
            const std::size_t comma = std::min(text.find(',', from), end);
            row.push_back(parseNumber(text.substr(from, comma - from)));
            from = comma + 1;
        }
        all.push_back(row);
        at = end + 1;
    }
    return all;
}

motion::Recording recordingOf(const std::string& path, const std::vector<std::size_t>& columns, double quietForce)
{
    motion::Recording recording;
    for (const auto& row : rows(unpacked(path))) {
        double force = 0;
        for (const auto column : columns)
            force += row.at(column).value_or(0);
        recording.samples.push_back(
            {row.at(0).value_or(0), {0, 0, force / quietForce * motion::standardGravity}, {0, 0, 0}});
    }
    return recording;
}

void printHead()
{
    std::printf("\n%-12s %-17s | %9s %9s %8s | %8s %8s | %8s %8s %6s | %8s\n", "recording", "kind", "take-off",
                "landing", "plate s", "flight s", "error ms", "v m/s", "impulse", "u", "h cm");
}

void print(const std::string& name, const Jump& jump, double flight, std::optional<double> impulse)
{
    const double found = jump.flight ? jump.flight->value : 0;
    std::printf("%-12s %-17s | %9.4f %9.4f %8.3f | %8.4f %8.2f | %8.3f %8.3f %6.3f | %8.1f  ", name.c_str(),
                std::string(nameOf(jump.kind)).c_str(), jump.takeoff.value,
                jump.secondLanding ? jump.secondLanding->value : 0, flight, found, 1e3 * (found - flight),
                jump.takeoffVelocity ? jump.takeoffVelocity->value : 0, impulse.value_or(0),
                jump.takeoffVelocity ? jump.takeoffVelocity->uncertainty : 0,
                100 * (jump.height ? jump.height->value : 0));
    for (const auto flag : flagNames(jump.flags))
        std::printf(" %s", std::string(flag).c_str());
    std::printf("\n");
}

} // namespace

TEST_CASE("Squat jumps on force plates: all found, none invented, flight and take-off velocity as the plate has them",
          "[jumps][real]")
{
    if (!std::filesystem::exists(squatJumps)) {
        WARN("skipped: " << squatJumps << " is not here");
        return;
    }
    printHead();
    test::Errors flights, speeds;
    const auto table = unpacked(squatJumps + "jumps.csv");
    const auto known = rows(table);
    for (const std::string subject : {"BFR003", "BFR007", "BFR010", "BFR011"}) {
        std::vector<std::vector<std::optional<double>>> own;
        std::size_t at = table.find('\n') + 1;
        for (const auto& row : known) {
            if (table.compare(at, subject.size(), subject) == 0)
                own.push_back(row);
            at = table.find('\n', at) + 1;
        }
        REQUIRE(own.size() == 3);
        const auto recording = recordingOf(squatJumps + subject + ".csv.gz", {2, 5}, own[0].at(6).value());
        const auto analysis = analyseJumps(recording, {});
        REQUIRE(analysis);
        for (const auto& jump : analysis->jumps) {
            const auto truth = std::find_if(own.begin(), own.end(), [&](const auto& row) {
                return std::abs(row.at(2).value() - jump.takeoff.value) < 0.1;
            });
            print(subject, jump, truth == own.end() ? 0 : (*truth).at(4).value(),
                  truth == own.end() ? std::nullopt : (*truth).at(8));
            if (truth == own.end())
                continue;
            flights.add(jump.flight, (*truth).at(4).value());
            if ((*truth).at(8))
                speeds.add(jump.takeoffVelocity, (*truth).at(8).value());
        }
        CHECK(analysis->jumps.size() == 3);
    }
    std::printf("flight: rms %.2f ms, mean %+.2f ms, largest %.2f ms of %zu; take-off velocity: rms %.3f m/s, mean "
                "%+.3f of %zu\n",
                1e3 * flights.rms(), 1e3 * flights.bias(), 1e3 * flights.worst(), flights.error.size(), speeds.rms(),
                speeds.bias(), speeds.error.size());
    // As found (1.2 ms and 0.034 m/s) with room for rounding. The limits at which force begins and ends were chosen
    // with these jumps in view, so they are no independent proof.
    CHECK(flights.error.size() == 12);
    CHECK(flights.rms() < 0.002);
    CHECK(flights.worst() < 0.005);
    CHECK(speeds.error.size() == 7);
    CHECK(speeds.rms() < 0.05);
}

TEST_CASE("Counter-movement jumps on force plates: flight, height and take-off velocity as published", "[jumps][real]")
{
    if (!std::filesystem::exists(counterMovementJumps)) {
        WARN("skipped: " << counterMovementJumps << " is not here");
        return;
    }
    struct Known {
        const char* name;
        double quietForce, flight; // N, s
        double impulseHeight;      // m, 0 where none is published
    };
    printHead();
    for (const auto& known : {Known{"cmj_600hz", 628, 0.425, 0.243}, Known{"jump1_450hz", 692, 0.551, 0},
                              Known{"jump2_450hz", 773, 0.587, 0}}) {
        const auto recording = recordingOf(counterMovementJumps + known.name + ".csv.gz", {1}, known.quietForce);
        const auto analysis = analyseJumps(recording, {});
        REQUIRE(analysis);
        for (const auto& jump : analysis->jumps)
            print(known.name, jump, known.flight,
                  known.impulseHeight > 0 ? std::optional(speedFromHeight(known.impulseHeight, motion::standardGravity))
                                          : std::nullopt);
        REQUIRE(analysis->jumps.size() == 1);
        const auto& jump = analysis->jumps.front();
        CHECK(jump.kind == Kind::CounterMovement);
        REQUIRE(jump.flight);
        CHECK(jump.flight->value == Approx(known.flight).margin(0.005));
    }
}
