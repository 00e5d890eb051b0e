#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <map>
#include <string>

#include "engine/base/csv_table.hpp"
#include "engine/base/numbers.hpp"
#include "engine/motion/vertical_motion.hpp"

using namespace fleetrung;
using namespace fleetrung::motion;

namespace
{

// Values of SciPy 1.10.1 (Rotation, cumulative_trapezoid); tests/reference/make_motion.py made them and says how.
class Reference
{
public:
    explicit Reference(const std::string& name)
    {
        std::ifstream file(std::string(FLEETRUNG_SOURCE) + "/tests/reference/" + name, std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(file), {}};
        const auto table = parseCsv(bytes);
        REQUIRE(table);
        for (std::size_t c = 0; c < table->header.cells.size(); ++c)
            for (const auto& row : table->rows) {
                const auto number = parseNumber(row.cells[c]);
                REQUIRE(number);
                columns_[table->header.cells[c]].push_back(*number);
            }
    }
    [[nodiscard]] std::size_t size() const { return columns_.at("time_s").size(); }
    [[nodiscard]] double value(const std::string& column, std::size_t i) const { return columns_.at(column)[i]; }
    [[nodiscard]] Eigen::Vector3d vector(const std::string& name, std::size_t i) const
    {
        return {value(name + "_x", i), value(name + "_y", i), value(name + "_z", i)};
    }
    [[nodiscard]] Eigen::Quaterniond attitude(const std::string& name, std::size_t i) const
    {
        return {value(name + "_w", i), value(name + "_x", i), value(name + "_y", i), value(name + "_z", i)};
    }

private:
    std::map<std::string, std::vector<double>> columns_;
};

Recording recordingOf(const Reference& reference)
{
    Recording recording;
    for (std::size_t i = 0; i < reference.size(); ++i)
        recording.samples.push_back(
            {reference.value("time_s", i), reference.vector("force", i), reference.vector("rate", i)});
    return recording;
}

} // namespace

TEST_CASE("An attitude that cones for two seconds is the one that SciPy's rotations give", "[motion][published]")
{
    const Reference reference("rotation.csv");
    Propagation propagation(State{}, {0, Eigen::Vector3d(0, 0, 9.8), reference.vector("rate", 0)}, WholeVector::Zero());
    double worst = 0, worstFine = 0;
    for (std::size_t i = 1; i < reference.size(); ++i) {
        propagation.step({reference.value("time_s", i), Eigen::Vector3d(0, 0, 9.8), reference.vector("rate", i)});
        const auto& attitude = propagation.state().attitude;
        worst = std::max(worst, attitude.angularDistance(reference.attitude("q", i)));
        worstFine = std::max(worstFine, attitude.angularDistance(reference.attitude("fine", i)));
    }
    CHECK(worst < 1e-10);
    CHECK(worstFine < 0.001); // rad: what sampling at 200 Hz costs at 3 rad/s of coning, by whatever program
}

TEST_CASE("Velocity and height of a stroke are what SciPy's trapezoidal rule gives", "[motion][published]")
{
    const Reference reference("stroke.csv");
    const auto recording = recordingOf(reference);
    State start;
    start.attitude = reference.attitude("q", 0);
    Propagation propagation(start, recording.samples[0], WholeVector::Zero());
    double worstVelocity = 0, worstHeight = 0;
    for (std::size_t i = 1; i < reference.size(); ++i) {
        propagation.step(recording.samples[i]);
        worstVelocity =
            std::max(worstVelocity, (propagation.state().velocity - reference.vector("velocity", i)).norm());
        worstHeight = std::max(worstHeight, std::abs(propagation.state().height - reference.value("height", i)));
    }
    CHECK(worstVelocity < 1e-9);
    // The engine's height has the third-order term that the trapezoid lacks: dt^2 / 12 * 0.6 m / (1.1 s)^2 * 6.
    CHECK(worstHeight < 1e-5);
}

TEST_CASE("The solved motion of a stroke between two rests is SciPy's double integral", "[motion][published]")
{
    const Reference reference("stroke.csv");
    const auto recording = recordingOf(reference);
    const auto motion = solveVerticalMotion(recording, {});
    REQUIRE(motion);
    double worstVelocity = 0, worstHeight = 0;
    for (std::size_t i = 0; i < reference.size(); ++i) {
        worstVelocity = std::max(worstVelocity, std::abs(motion->velocity[i] - reference.value("velocity_z", i)));
        worstHeight =
            std::max(worstHeight, std::abs(motion->height[i] - motion->height[0] - reference.value("height", i)));
    }
    CHECK(worstVelocity < 0.001);
    CHECK(worstHeight < 0.001);
}
