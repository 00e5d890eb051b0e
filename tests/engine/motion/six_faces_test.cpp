#include <catch2/catch.hpp>

#include <cmath>

#include "engine/motion/calibration.hpp"

using namespace fleetrung;
using namespace fleetrung::motion;

namespace
{

constexpr double gravity = 9.80665;

/// Lays a sensor down whose readings are (true + offset) / scale, as the model of calibration.hpp has it.
class Hand
{
public:
    Hand(const Eigen::Vector3d& scale, const Eigen::Vector3d& offset, const Eigen::Vector3d& bias)
        : scale_(scale), offset_(offset), bias_(bias)
    {
    }

    SixFaces::Now lie(const Eigen::Vector3d& up, double seconds)
    {
        SixFaces::Now now = SixFaces::Now::Moving;
        for (int i = 0; i < static_cast<int>(seconds * 200); ++i)
            now = send(gravity * up.normalized() + Eigen::Vector3d::Constant(0.01 * std::sin(2.3 * i)),
                       Eigen::Vector3d::Constant(0.001 * std::cos(1.9 * i)));
        return now;
    }
    SixFaces::Now move()
    {
        SixFaces::Now now = SixFaces::Now::Moving;
        for (int i = 0; i < 200; ++i)
            now = send({5 * std::sin(0.1 * i), 6 * std::cos(0.07 * i), 4}, {std::sin(0.1 * i), 1, -1});
        return now;
    }
    SixFaces faces;

private:
    SixFaces::Now send(const Eigen::Vector3d& force, const Eigen::Vector3d& rate)
    {
        return faces.add({time_ += 0.005, (force + offset_).cwiseQuotient(scale_), rate + bias_});
    }

    Eigen::Vector3d scale_, offset_, bias_;
    double time_ = 0;
};

Hand straight()
{
    return {Eigen::Vector3d::Ones(), Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()};
}

} // namespace

// Outside value: the closed form of two equations +-g = scale x reading - offset, as calibration.hpp derives it.
TEST_CASE("Six faces in any order give back scale, offset and bias of a sensor", "[calibration]")
{
    const Eigen::Vector3d scale(0.97, 1.02, 1.01);
    const Eigen::Vector3d offset(0.2, -0.15, 0.05);
    const Eigen::Vector3d bias(0.01, -0.02, 0.005);
    Hand hand(scale, offset, bias);
    for (const Eigen::Vector3d& up : {Eigen::Vector3d(0, 0, -1), Eigen::Vector3d(1, 0, 0), Eigen::Vector3d(0, -1, 0),
                                      Eigen::Vector3d(0, 0, 1), Eigen::Vector3d(0, 1, 0), Eigen::Vector3d(-1, 0, 0)}) {
        CHECK_FALSE(hand.faces.complete());
        CHECK(hand.move() == SixFaces::Now::Moving);
        CHECK(hand.lie(up, 2.2) == SixFaces::Now::Taken);
    }
    REQUIRE(hand.faces.complete());
    const auto calibration = hand.faces.solve(gravity);
    REQUIRE(calibration);
    CHECK(calibration->sixFaces);
    CHECK((calibration->scale - scale).norm() < 0.002);
    CHECK((calibration->offset - offset).norm() < 0.01);
    CHECK((calibration->gyroscopeBias - bias).norm() < 0.0005);
    const Sample corrected =
        calibration->apply({0, (Eigen::Vector3d(0, 0, gravity) + offset).cwiseQuotient(scale), bias});
    CHECK(corrected.specificForce.z() == Approx(gravity).margin(0.01));
}

TEST_CASE("A face is taken only after it has lain still for a second and a half", "[calibration]")
{
    Hand hand = straight();
    hand.move();
    CHECK(hand.lie({0, 0, 1}, 1.2) == SixFaces::Now::Settling);
    CHECK(hand.lie({0, 0, 1}, 1.0) == SixFaces::Now::Taken);
    CHECK(hand.faces.taken()[4]);
}

TEST_CASE("A face laid down again is known, and one between faces is slanted", "[calibration]")
{
    Hand hand = straight();
    hand.lie({0, 0, 1}, 2.5);
    hand.move();
    CHECK(hand.lie({0, 0, 1}, 2.5) == SixFaces::Now::TakenBefore);
    hand.move();
    CHECK(hand.lie({0, 0.5, 1}, 2.5) == SixFaces::Now::Slanted);
    hand.faces.forget(4);
    hand.move();
    CHECK(hand.lie({0, 0, 1}, 2.5) == SixFaces::Now::Taken);
}

TEST_CASE("A face that is missing or tells another gravity is named", "[calibration]")
{
    Hand hand = straight();
    const auto nothing = hand.faces.solve(gravity);
    REQUIRE_FALSE(nothing);
    CHECK(nothing.error().place == "face +x up");
    Hand wrong({0.8, 1, 1}, Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero()); // 25 % too much along x
    for (const Eigen::Vector3d& up : {Eigen::Vector3d(1, 0, 0), Eigen::Vector3d(-1, 0, 0), Eigen::Vector3d(0, 1, 0),
                                      Eigen::Vector3d(0, -1, 0), Eigen::Vector3d(0, 0, 1), Eigen::Vector3d(0, 0, -1)}) {
        wrong.move();
        wrong.lie(up, 2.5);
    }
    const auto solved = wrong.faces.solve(gravity);
    REQUIRE_FALSE(solved);
    CHECK(solved.error().code == Code::InvalidInput);
    CHECK((solved.error().place == "face +x up" || solved.error().place == "face -x up"));
}

TEST_CASE("A gap in the stream begins the rest anew", "[calibration]")
{
    SixFaces faces;
    SixFaces::Now now = SixFaces::Now::Moving;
    for (int i = 0; i < 260; ++i) // 1.3 s, a second without a sample, 1.3 s
        now = faces.add({i * 0.01 + (i < 130 ? 0 : 1), {0, 0, gravity}, {0, 0, 0}});
    CHECK(now == SixFaces::Now::Settling);
}
