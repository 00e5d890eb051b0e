#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include <catch2/catch.hpp>

#include <Eigen/Geometry>

#include "engine/motion/calibration.hpp"

using namespace fleetrung;
using namespace fleetrung::motion;

namespace
{

constexpr double gravity = 9.80665; // m/s2, standard gravity (CGPM 1901)
constexpr double degree = std::numbers::pi / 180;
constexpr double rate = 100; // Hz

/// A sensor with errors of its own, in poses and turns that are given to it.
class Bench
{
public:
    explicit Bench(std::uint64_t seed) : random_(seed) {}

    Eigen::Vector3d scale{1.012, 0.991, 1.003}, offset{0.21, -0.15, 0.3}, bias{0.012, -0.02, 0.006};
    double forceNoise = 0.02, rateNoise = 0.001;

    /// Lies (or turns evenly about `axis` of the world) with `up` being up in the sensor's axes.
    template <class Take>
    void hold(Eigen::Vector3d up, double seconds, Take take, double turn = 0,
              const Eigen::Vector3d& axis = Eigen::Vector3d::UnitZ())
    {
        up.normalize();
        const auto toSensor = Eigen::Quaterniond::FromTwoVectors(Eigen::Vector3d::UnitZ(), up);
        for (const double end = time + seconds; time < end; time += 1 / rate) {
            angle_ += turn / rate;
            const Eigen::AngleAxisd turned(-angle_, axis);
            const Eigen::Vector3d force = toSensor * (turned * Eigen::Vector3d(0, 0, gravity));
            const Eigen::Vector3d turning = toSensor * Eigen::Vector3d(turn * axis);
            const Eigen::Vector3d read = (force + noise(forceNoise) + offset).cwiseQuotient(scale);
            take(Sample{time, read, turning + bias + noise(rateNoise)});
        }
        angle_ = 0;
    }

    double time = 3;

private:
    Eigen::Vector3d noise(double size)
    {
        std::normal_distribution<double> normal(0, size);
        const double x = normal(random_), y = normal(random_), z = normal(random_);
        return {x, y, z};
    }

    std::mt19937_64 random_;
    double angle_ = 0;
};

Eigen::Vector3d face(std::size_t number)
{
    Eigen::Vector3d up = Eigen::Vector3d::Zero();
    up[static_cast<int>(number / 2)] = number % 2 == 0 ? 1 : -1;
    return up;
}

/// Laid on the face, not quite level.
SixFaces::Now lay(SixFaces& faces, Bench& bench, std::size_t number, double slant = 0)
{
    auto best = SixFaces::Now::Moving;
    const Eigen::Vector3d across(0.6, -0.5, 0.62);
    bench.hold(
        Eigen::Vector3d(1, 1, 1), 0.3, [&](const Sample& sample) { faces.add(sample); }, 2); // picked up
    bench.hold(face(number) + std::tan(slant) * across, 2.5, [&](const Sample& sample) {
        const auto now = faces.add(sample);
        if (now >= SixFaces::Now::Taken)
            best = now;
    });
    return best;
}

} // namespace

TEST_CASE("Six faces give scale, offset and bias of the sensor by the closed form")
{
    Bench bench(1);
    bench.forceNoise = bench.rateNoise = 0;
    SixFaces faces;
    for (const std::size_t number : {4, 1, 0, 5, 2, 3})
        CHECK(lay(faces, bench, number) == SixFaces::Now::Taken);
    REQUIRE(faces.complete());
    const auto found = faces.solve(gravity);
    REQUIRE(found);
    CHECK((found->scale - bench.scale).norm() < 1e-9);
    CHECK((found->offset - bench.offset).norm() < 1e-9);
    CHECK((found->gyroscopeBias - bench.bias).norm() < 1e-9);
    CHECK(found->sixFaces);
    bench.hold({1, 2, 3}, 0.1, [&](const Sample& sample) {
        CHECK(found->apply(sample).specificForce.norm() == Approx(gravity).epsilon(1e-9));
    });
}

TEST_CASE("Faces that are not quite level still give the sensor's own errors, through noise")
{
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        CAPTURE(seed);
        Bench bench(seed);
        SixFaces faces;
        for (std::size_t number = 0; number < faceCount; ++number)
            CHECK(lay(faces, bench, number, 5 * degree) == SixFaces::Now::Taken);
        const auto found = faces.solve(gravity);
        REQUIRE(found);
        CHECK((found->scale - bench.scale).cwiseAbs().maxCoeff() < 1e-3);
        CHECK((found->offset - bench.offset).cwiseAbs().maxCoeff() < 0.01);
        CHECK((found->gyroscopeBias - bench.bias).cwiseAbs().maxCoeff() < 2e-4);
    }
}

TEST_CASE("A face already taken, a slanted pose and a moved sensor are told apart")
{
    Bench bench(3);
    SixFaces faces;
    CHECK(lay(faces, bench, 4) == SixFaces::Now::Taken);
    CHECK(lay(faces, bench, 4) == SixFaces::Now::TakenBefore);
    CHECK(lay(faces, bench, 0, 30 * degree) == SixFaces::Now::Slanted);
    bench.hold(
        face(2), 10, [&](const Sample& sample) { CHECK(faces.add(sample) < SixFaces::Now::Taken); }, 1,
        Eigen::Vector3d::UnitX());
    CHECK(faces.taken() == std::array<bool, faceCount>{false, false, false, false, true, false});
    faces.forget(4);
    CHECK(lay(faces, bench, 4) == SixFaces::Now::Taken);
}

TEST_CASE("A face is taken only after it has lain still for a second and a half")
{
    Bench bench(2);
    SixFaces faces;
    const auto rest = [&](double seconds) {
        auto now = SixFaces::Now::Moving;
        bench.hold(face(4), seconds, [&](const Sample& sample) { now = faces.add(sample); });
        return now;
    };
    CHECK(rest(1.2) == SixFaces::Now::Settling);
    bench.time += 1; // a gap: the rest begins anew
    CHECK(rest(1.2) == SixFaces::Now::Settling);
    CHECK(rest(0.6) == SixFaces::Now::Taken);
    CHECK(faces.taken()[4]);
}

TEST_CASE("A missing face and one that shows another gravity are named")
{
    Bench bench(4);
    SixFaces faces;
    for (std::size_t number = 0; number < faceCount; ++number)
        if (number != 3)
            lay(faces, bench, number);
    REQUIRE_FALSE(faces.solve(gravity));
    CHECK(faces.solve(gravity).error().place == "face -y up");
    CHECK(faces.solve(gravity).error().code == Code::InvalidInput);
    bench.offset.y() = -4; // someone leaned on it
    lay(faces, bench, 3);
    REQUIRE_FALSE(faces.solve(gravity));
    CHECK(faces.solve(gravity).error().place == "face -y up");
}

TEST_CASE("A calibration comes back from its text as it was, and a wrong text is refused by name")
{
    Calibration calibration;
    calibration.scale = {1.0123456789012345, 1 / 1.1, 1};
    calibration.offset = {0.1, -0.2, 1e-17};
    calibration.gyroscopeBias = {0.01, 0.02, -0.03};
    calibration.sixFaces = true;
    const auto again = parseCalibration(calibrationText(calibration));
    REQUIRE(again);
    CHECK(again->scale == calibration.scale);
    CHECK(again->offset == calibration.offset);
    CHECK(again->gyroscopeBias == calibration.gyroscopeBias);
    CHECK(again->sixFaces);
    auto flat = calibration;
    flat.scale.y() = 0;
    const auto refused = parseCalibration(calibrationText(flat));
    REQUIRE_FALSE(refused);
    CHECK(refused.error().place == "calibration, scale");
    for (const auto* text : {"", "[]", "{}", R"({"scale":[1,1,1]})", R"({"scale":[1,1,"a"]})"})
        CHECK_FALSE(parseCalibration(text));
}

TEST_CASE("The gyroscope's bias follows a sensor that warms up, whenever it lies still between sets")
{
    Bench bench(5);
    Rezero rezero(bench.bias);
    Eigen::Vector3d used = bench.bias;
    double worst = 0, worstWithout = 0;
    const Eigen::Vector3d start = bench.bias;
    for (int minute = 0; minute < 20; ++minute) {
        // Common practice, no source: a few hundredths of a degree per second and kelvin; 1 kelvin a minute.
        bench.bias += Eigen::Vector3d(0.03, -0.05, 0.04) * degree;
        const auto take = [&](const Sample& sample) {
            if (const auto bias = rezero.add(sample))
                used = *bias;
        };
        bench.hold({0.2, 0.3, 1}, 3, take);
        worst = std::max(worst, (used - bench.bias).norm());
        worstWithout = std::max(worstWithout, (start - bench.bias).norm());
        bench.hold({0.2, 0.3, 1}, 57, take, 40 * degree, Eigen::Vector3d(0.6, 0.8, 0));
    }
    CHECK(worst < 0.03 * degree);
    CHECK(worstWithout > 1 * degree);
}

TEST_CASE("A slow even turn is not taken for the gyroscope's bias")
{
    for (const double turn : {0.4, 1.0, 3.0})
        for (const auto& axis : {Eigen::Vector3d(1, 0, 0), Eigen::Vector3d(0.6, -0.8, 0), Eigen::Vector3d(0, 0, 1)}) {
            CAPTURE(turn, axis.z());
            Bench bench(6);
            Rezero rezero(bench.bias);
            double worst = 0;
            int found = 0;
            bench.hold({0.1, -0.2, 1}, 2, [&](const Sample& sample) { rezero.add(sample); });
            bench.hold(
                {0.1, -0.2, 1}, 20,
                [&](const Sample& sample) {
                    if (const auto bias = rezero.add(sample)) {
                        worst = std::max(worst, (*bias - bench.bias).norm());
                        ++found;
                    }
                },
                turn * degree, axis);
            // The second in which the turn begins may still count as rest; what it shows lies close to the bias.
            CHECK(found <= 1);
            CHECK(worst < 0.1 * degree);
        }
}

TEST_CASE("A bias that nobody measured is found from the first second of rest, and not before")
{
    Bench bench(7);
    Rezero rezero;
    std::optional<Eigen::Vector3d> found;
    double at = 0;
    bench.hold({0, 0, 1}, 5, [&](const Sample& sample) {
        if (const auto bias = rezero.add(sample); bias && !found) {
            found = bias;
            at = sample.time - 3;
        }
    });
    REQUIRE(found);
    CHECK(at >= 1.0);
    CHECK(at < 1.2);
    CHECK((*found - bench.bias).norm() < 0.03 * degree);
}

TEST_CASE("A first bias that was an even turn is set right by two rests in different poses, and not by turns in both")
{
    const Eigen::Vector3d level(0.1, -0.2, 1), tilted(1, 0, 0.4);
    for (const double turn : {1.5, 3.0, 8.0}) {
        CAPTURE(turn);
        Bench bench(8);
        Rezero rezero;
        std::optional<Eigen::Vector3d> used;
        const auto take = [&](const Sample& sample) {
            if (const auto bias = rezero.add(sample))
                used = bias;
        };
        const auto error = [&] { return (used.value() - bench.bias).norm(); };
        const auto moved = [&] { bench.hold({0, 1, 1}, 0.5, take, 2, Eigen::Vector3d::UnitX()); };
        bench.hold(level, 3, take, turn * degree); // looks like rest
        CHECK(error() == Approx(turn * degree).epsilon(0.05));
        moved();
        bench.hold(level, 5, take); // one pose says nothing, however long
        CHECK(error() == Approx(turn * degree).epsilon(0.05));
        moved();
        bench.hold(tilted, 3, take);
        CHECK(error() < 0.03 * degree);
        for (const auto& pose : {level, tilted, level}) {
            moved();
            bench.hold(pose, 3, take, turn * degree);
        }
        CHECK(error() < 0.1 * degree);
    }
}
