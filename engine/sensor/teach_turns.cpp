#include "engine/sensor/teach_turns.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <Eigen/Geometry>

#include "engine/sensor/teach_rates.hpp"

namespace fleetrung::sensor::teaching
{
namespace
{

using Eigen::Matrix3d;
using Eigen::Vector3d;

// Starting values of this project, chosen on random layouts (tests/teach).
constexpr double leastStep = 0.15;       // s between two directions of gravity
constexpr double believable = 0.1;       // gravities that the force may be off before it is no longer gravity alone
constexpr double explainedAtLeast = 0.4; // of gravity's turning
constexpr double halfExplained = 0.2;    // below it, it does not turn
constexpr double asGood = 0.06;          // of `explained`

/// One step of gravity's direction.
struct Step {
    double from, to;
    Vector3d change, middle;
    double weight;
};

std::vector<Step> stepsOf(const Gravity& gravity)
{
    const double period = (gravity.end() - gravity.begin()) / static_cast<double>(gravity.time.size());
    const double length = std::max(leastStep, 3 * period);
    std::vector<Step> steps;
    for (double from = gravity.begin() + length; from + 2 * length < gravity.end(); from += length) {
        const Vector3d before = gravity.mean(from - length / 2, from + length / 2);
        const Vector3d after = gravity.mean(from + length / 2, from + 1.5 * length);
        const double off = std::max(std::abs(before.norm() - 1), std::abs(after.norm() - 1)) / believable;
        const Vector3d a = before.normalized(), b = after.normalized();
        if (a.allFinite() && b.allFinite()) {
            steps.push_back({from, from + length, b - a, (a + b) / 2, 1 / (1 + off * off)});
        }
    }
    return steps;
}

Matrix3d crossOf(const Vector3d& v)
{
    Matrix3d cross;
    cross << 0, -v.z(), v.y(), v.z(), 0, -v.x(), -v.y(), v.x(), 0;
    return cross;
}

/// Normal equations of change = middle x (sum of f_c W_c) for all channels of a group at once.
struct Equations {
    Eigen::MatrixXd matrix;
    Eigen::VectorXd right;
    double total = 0;

    Equations(const std::vector<Step>& steps, const std::vector<RateChannel>& channels)
    {
        const auto size = static_cast<Eigen::Index>(3 * channels.size());
        matrix = Eigen::MatrixXd::Zero(size, size);
        right = Eigen::VectorXd::Zero(size);
        std::vector<double> turned(channels.size());
        for (const auto& step : steps) {
            const Matrix3d cross = crossOf(step.middle);
            const Matrix3d square = step.weight * (cross.transpose() * cross);
            const Vector3d pull = step.weight * (cross.transpose() * step.change);
            total += step.weight * step.change.squaredNorm();
            for (std::size_t c = 0; c < channels.size(); ++c) {
                turned[c] = channels[c].integral.between(step.from, step.to) / channels[c].activity;
            }
            for (std::size_t c = 0; c < channels.size(); ++c) {
                const auto row = static_cast<Eigen::Index>(3 * c);
                right.segment<3>(row) += turned[c] * pull;
                for (std::size_t d = 0; d < channels.size(); ++d) {
                    matrix.block<3, 3>(row, static_cast<Eigen::Index>(3 * d)) += turned[c] * turned[d] * square;
                }
            }
        }
    }

    /// Each channel about one axis, either way round, all of one scale: the way that explains most.
    [[nodiscard]] Gyroscope bestAxes(const std::array<std::size_t, 3>& chosen,
                                     const std::vector<RateChannel>& channels) const
    {
        constexpr std::array<std::array<int, 3>, 6> orders{
            {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};
        Gyroscope best;
        for (const auto& order : orders) {
            std::array<Eigen::Index, 3> row{};
            for (std::size_t a = 0; a < 3; ++a) {
                row.at(a) = static_cast<Eigen::Index>(3 * chosen.at(a)) + order.at(a);
            }
            for (unsigned signs = 0; signs < 8; ++signs) {
                std::array<double, 3> by{};
                for (std::size_t a = 0; a < 3; ++a) {
                    by.at(a) = channels[chosen.at(a)].activity * ((signs >> a & 1U) != 0 ? -1 : 1);
                }
                double pull = 0, square = 0;
                for (std::size_t a = 0; a < 3; ++a) {
                    pull += by.at(a) * right[row.at(a)];
                    for (std::size_t b = 0; b < 3; ++b) {
                        square += by.at(a) * by.at(b) * matrix(row.at(a), row.at(b));
                    }
                }
                const double explained = pull * pull / std::max(square * total, 1e-300);
                if (pull > 0 && explained > best.explained) {
                    best.explained = explained;
                    best.scale = pull / square;
                    best.axes.setZero();
                    for (std::size_t a = 0; a < 3; ++a) {
                        best.axes(order.at(a), static_cast<Eigen::Index>(a)) = by.at(a) < 0 ? -1 : 1;
                    }
                }
            }
        }
        return best;
    }
};

bool mayBelong(const Table& table, const RateChannel& a, const RateChannel& b)
{
    const int apart = b.place.bit - a.place.bit;
    const bool packed = !table.isText() && bitsOf(a.place.type) == 12;
    return (packed ? apart == 12 : apart >= table.widthOf(a.place)) && a.samples == b.samples && a.stride == b.stride;
}

void collect(const Table& table, std::size_t index, const std::vector<RateChannel>& channels,
             const std::vector<Step>& steps, std::vector<Gyroscope>& all)
{
    if (channels.size() < 3) {
        return;
    }
    const Equations equations(steps, channels);
    for (std::size_t x = 0; x < channels.size(); ++x) {
        for (std::size_t y = x + 1; y < channels.size(); ++y) {
            for (std::size_t z = y + 1; mayBelong(table, channels[x], channels[y]) && z < channels.size(); ++z) {
                if (!mayBelong(table, channels[y], channels[z])) {
                    continue;
                }
                auto gyroscope = equations.bestAxes({x, y, z}, channels);
                if (gyroscope.explained < halfExplained) {
                    continue;
                }
                gyroscope.table = index;
                gyroscope.triad = {
                    {channels[x].place, channels[y].place, channels[z].place}, channels[x].samples, channels[x].stride};
                gyroscope.bias = {channels[x].bias, channels[y].bias, channels[z].bias};
                if (!jumpsOver(table, gyroscope.triad)) {
                    gyroscope.resolution = resolutionOf(table, gyroscope.triad);
                    all.push_back(gyroscope);
                }
            }
        }
    }
}

/// Finer by at least half; else as with the accelerometer (teach_faces.cpp).
bool finer(const Table& table, const Gyroscope& a, const Gyroscope& b)
{
    const auto grain = [](const Gyroscope& g) { return std::max(g.resolution * g.scale, 1e-4); };
    const auto shifts = [&](const Gyroscope& g) {
        const auto type = g.triad.places[0].type;
        return !table.isText() && (bitsOf(type) == 12 || type == NumberType::Float16);
    };
    if (shifts(a) && shifts(b)) {
        return a.explained > b.explained; // shifted by half a number it looks as fine and is not
    }
    if (grain(a) < 0.5 * grain(b) || grain(b) < 0.5 * grain(a)) {
        return grain(a) < grain(b);
    }
    return plainer(table, a.triad, b.triad);
}

/// The finest of those that explain about as much as the best.
std::optional<Gyroscope> bestOf(const std::vector<Table>& tables, const std::vector<Gyroscope>& all)
{
    double most = 0;
    for (const auto& gyroscope : all) {
        most = std::max(most, gyroscope.explained);
    }
    std::optional<Gyroscope> best;
    for (const auto& gyroscope : all) {
        if (gyroscope.explained > most - asGood && (!best || finer(tables[gyroscope.table], gyroscope, *best))) {
            best = gyroscope;
        }
    }
    return best;
}

/// Turn rates in the accelerometer's axes at the gyroscope's own instants.
struct Rates {
    std::vector<double> time;
    std::vector<Vector3d> rate;
};

Rates ratesOf(const Table& table, const Gyroscope& gyroscope)
{
    Rates rates{sampleTimes(table, gyroscope.triad.samples), {}};
    std::array<std::vector<double>, 3> fields;
    for (std::size_t axis = 0; axis < 3; ++axis) {
        fields.at(axis) = turningOf(table, gyroscope.triad, axis, gyroscope.bias[static_cast<Eigen::Index>(axis)]);
    }
    for (std::size_t i = 0; i < rates.time.size(); ++i) {
        const Vector3d counts{fields[0][i], fields[1][i], fields[2][i]};
        rates.rate.push_back(gyroscope.scale * (gyroscope.axes * counts));
    }
    return rates;
}

/// A move from rest to rest.
struct Move {
    Vector3d from, to;
    std::vector<Vector3d> turns; ///< rad, step by step
};

std::vector<Move> movesOf(const Rates& rates, const Steps& steps, const Gravity& gravity)
{
    std::vector<Steps::Span> rests;
    for (const auto& span : steps.spans) {
        rests.push_back({span->from, span->from + 0.6});
        rests.push_back({span->to - 0.6, span->to});
    }
    std::sort(rests.begin(), rests.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
    std::vector<Move> moves;
    for (std::size_t i = 1; i < rests.size(); ++i) {
        const double begin = (rests[i - 1].from + rests[i - 1].to) / 2, end = (rests[i].from + rests[i].to) / 2;
        Move move{gravity.mean(rests[i - 1].from, rests[i - 1].to).normalized(),
                  gravity.mean(rests[i].from, rests[i].to).normalized(),
                  {}};
        if (end - begin < 0.3 || end - begin > 12 || move.from.dot(move.to) > 0.75) {
            continue;
        }
        const auto first = std::lower_bound(rates.time.begin(), rates.time.end(), begin) - rates.time.begin();
        for (auto k = static_cast<std::size_t>(first) + 1; k < rates.time.size() && rates.time[k] < end; ++k) {
            move.turns.push_back((rates.time[k] - rates.time[k - 1]) / 2 * (rates.rate[k] + rates.rate[k - 1]));
        }
        moves.push_back(std::move(move));
    }
    return moves;
}

/// rad, rms over the moves: where gravity ends by the gyroscope, `factor` times as large, against where it is.
double misfitOf(const std::vector<Move>& moves, double factor)
{
    double squares = 0;
    for (const auto& move : moves) {
        Vector3d direction = move.from;
        for (const auto& turn : move.turns) {
            // Second order of the rotation about -turn, drawn back to length one.
            const Vector3d by = -factor * turn;
            const Vector3d first = by.cross(direction);
            direction = (direction + first + by.cross(first) / 2).normalized();
        }
        squares += (direction - move.to).squaredNorm();
    }
    return std::sqrt(squares / static_cast<double>(moves.size()));
}

void refineScale(Gyroscope& gyroscope, const std::vector<Move>& moves)
{
    if (moves.size() < 3) {
        gyroscope.misfit = 1;
        return;
    }
    double low = 0.8, high = 1.25;
    constexpr double golden = 0.381966;
    for (int i = 0; i < 18; ++i) {
        const double a = low + golden * (high - low), b = high - golden * (high - low);
        (misfitOf(moves, a) < misfitOf(moves, b) ? high : low) = misfitOf(moves, a) < misfitOf(moves, b) ? b : a;
    }
    gyroscope.scale *= (low + high) / 2;
    gyroscope.misfit = misfitOf(moves, (low + high) / 2);
}

void measureTurns(Gyroscope& gyroscope, const Rates& rates, const Steps& steps, const Gravity& gravity)
{
    constexpr double slack = 0.2; // s: the radio's lateness at either end
    std::array<Integral, 3> turned;
    for (std::size_t axis = 0; axis < 3; ++axis) {
        std::vector<double> values;
        for (const auto& rate : rates.rate) {
            values.push_back(rate[static_cast<Eigen::Index>(axis)]);
        }
        turned.at(axis) = Integral(rates.time, values);
    }
    for (std::size_t turn = 0; turn < 3; ++turn) {
        const auto& span = steps.of(faces + turn);
        constexpr double piece = 0.25;
        for (double from = span.from - slack; from < span.to + slack; from += piece) {
            const double to = std::min(from + piece, span.to + slack);
            const Vector3d up = gravity.mean(from, to).normalized();
            const Vector3d by{turned[0].between(from, to), turned[1].between(from, to), turned[2].between(from, to)};
            gyroscope.turns.at(turn) += by.dot(up);
        }
    }
    const double sum = gyroscope.turns[0] + gyroscope.turns[1] + gyroscope.turns[2];
    gyroscope.mirrored = sum < 0;
    for (auto& turn : gyroscope.turns) {
        turn *= gyroscope.mirrored ? -1 : 1;
    }
}

} // namespace

GyroscopeSearch findGyroscope(const std::vector<Table>& tables, const Steps& steps, const Accelerometer& accelerometer,
                              const Gravity& gravity)
{
    const auto changes = stepsOf(gravity);
    std::vector<Gyroscope> all;
    GyroscopeSearch search;
    const auto own = tables[accelerometer.table].notifier;
    for (std::size_t t = 0; t < tables.size(); ++t) {
        // Of the accelerometer's notifier only the reading that holds it.
        if (tables[t].notifier == own && t != accelerometer.table) {
            continue;
        }
        for (const auto& group : placesOf(tables[t])) {
            const auto channels =
                rateChannels(tables[t], group, steps, t == accelerometer.table ? &accelerometer.triad : nullptr);
            collect(tables[t], t, channels, changes, all);
        }
    }
    search.somethingTurns = !all.empty();
    std::erase_if(all, [](const Gyroscope& gyroscope) { return gyroscope.explained < explainedAtLeast; });
    search.found = bestOf(tables, all);
    if (search.found) {
        auto& gyroscope = *search.found;
        const auto rates = ratesOf(tables[gyroscope.table], gyroscope);
        const double before = gyroscope.scale;
        refineScale(gyroscope, movesOf(rates, steps, gravity));
        measureTurns(gyroscope, rates, steps, gravity);
        for (auto& turn : gyroscope.turns) {
            turn *= gyroscope.scale / before;
        }
    }
    return search;
}

} // namespace fleetrung::sensor::teaching
