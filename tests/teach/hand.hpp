// A person who takes a sensor through the steps of teaching: an exact path of position and attitude.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include <Eigen/Core>
#include <Eigen/Geometry>

#include "demo/simulator/random.hpp"
#include "engine/sensor/teach.hpp"

namespace fleetrung::tests
{

/// What goes wrong in one step.
enum class Spoil { Nothing, RestlessFace, SameFaceTwice, HalfTurn, TurnOtherWay, NoRaise };

struct Mistake {
    Spoil spoil = Spoil::Nothing;
    sensor::TeachStep step = sensor::TeachStep::FaceOne; ///< the step that has to be done again
};

struct HandState {
    Eigen::Matrix3d attitude; ///< body axes -> world
    Eigen::Vector3d position; ///< m
};

struct HandSpan {
    sensor::TeachStep step;
    double from, to; ///< s
};

class Hand
{
public:
    Hand(simulator::Random& random, double raiseHeight);

    void doSteps(const Mistake& mistake);
    /// Moves about for so long [s].
    void waveAbout(double duration);

    [[nodiscard]] double end() const { return end_; }
    [[nodiscard]] const std::vector<HandSpan>& spans() const { return spans_; }
    /// Specific force [m/s2] and angular rate [rad/s] in body axes, without any error of a sensor.
    [[nodiscard]] std::pair<Eigen::Vector3d, Eigen::Vector3d> feel(double time, double gravity) const;

private:
    struct Piece {
        double begin, duration;
        Eigen::Quaterniond attitude;
        Eigen::Vector3d axis;     ///< world
        double angle;             ///< rad, turned over the piece
        Eigen::Vector3d from, by; ///< m
        double arc;               ///< m, up and down again on the way
        double shake, beat;       ///< m and Hz, of the hand's tremor
        double rock = 0;          ///< rad, to and fro in the middle: not still
    };

    void add(double duration, const Eigen::Vector3d& axis, double angle, const Eigen::Vector3d& by, double arc,
             double shake);
    void rest(double duration, double shake = 0);
    void turnTo(const Eigen::Quaterniond& attitude);
    void layOn(int face);
    void face(sensor::TeachStep step, int face, bool restless);
    void turn(sensor::TeachStep step, double angle);
    void raise(sensor::TeachStep step, double height);
    void span(sensor::TeachStep step);
    [[nodiscard]] HandState at(double time) const;

    simulator::Random& random_;
    double raiseHeight_;
    std::vector<Piece> pieces_;
    std::vector<HandSpan> spans_;
    double end_ = 0;
    Eigen::Quaterniond attitude_ = Eigen::Quaterniond::Identity();
    Eigen::Vector3d position_ = Eigen::Vector3d::Zero();
    Eigen::Vector3d lever_;
};

} // namespace fleetrung::tests
