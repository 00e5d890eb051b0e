#include <catch2/catch.hpp>

#include <cmath>

#include <QSignalSpy>

#include "mobile/views/calibration_view_model.hpp"

using namespace fleetrung;
using namespace fleetrung::views;

namespace Catch
{
template <> struct StringMaker<QString> {
    static std::string convert(const QString& text) { return text.toStdString(); }
};
} // namespace Catch

namespace
{

const QString address = QStringLiteral("C4:10:00:00:4F:2A");

/// A sensor whose x axis reads 3 % too much and whose z axis is off by 0.2 m/s2, laid down by hand.
struct Bench {
    Preferences preferences;
    CalibrationViewModel view{&preferences};
    double time = 0;

    Bench()
    {
        preferences.setLocale(QLocale(QLocale::German, QLocale::Germany));
        view.begin(address, QStringLiteral("Bar sensor"));
    }

    void lie(const Eigen::Vector3d& up, double seconds)
    {
        for (int i = 0; i < static_cast<int>(seconds * 100); ++i)
            send(9.80665 * up.normalized() + Eigen::Vector3d::Constant(0.004 * std::sin(1.7 * i)), {});
    }
    void move()
    {
        for (int i = 0; i < 60; ++i)
            send({3 * std::sin(0.3 * i), 4 * std::cos(0.2 * i), 9 + 3 * std::sin(0.5 * i)}, {1.5, -1, 0.7});
    }
    void lay(const Eigen::Vector3d& up)
    {
        move();
        lie(up, 2.5);
    }
    int ticked() const
    {
        int count = 0;
        for (const auto& row : faces().all())
            count += row.value(QStringLiteral("taken")).toBool() ? 1 : 0;
        return count;
    }
    bool taken(int pose) const { return faces().all().at(pose).value(QStringLiteral("taken")).toBool(); }
    const Rows& faces() const { return *const_cast<CalibrationViewModel&>(view).faces(); }

private:
    void send(const Eigen::Vector3d& force, const Eigen::Vector3d& rate)
    {
        const Eigen::Vector3d read{force.x() * 1.03, force.y(), force.z() + 0.2};
        view.addSamples(address, {{time += 0.01, read, rate}});
    }
};

} // namespace

TEST_CASE("Each side that has lain still long enough is ticked, opposite sides together", "[calibration]")
{
    Bench bench;
    CHECK(bench.view.next() == 0);
    CHECK(bench.view.countText() == QStringLiteral("0 of 6 sides"));
    bench.lay({0, 0, 1});
    CHECK(bench.taken(0));
    CHECK(bench.view.next() == 1);
    bench.lay({1, 0, 0}); // another than was asked for
    CHECK(bench.ticked() == 2);
    CHECK_FALSE(bench.taken(1)); // opposite the first: that axis has one side only
    bench.lay({0, 0, -1});
    CHECK(bench.taken(1));
    CHECK(bench.view.countText() == QStringLiteral("3 of 6 sides"));
}

TEST_CASE("A slanted sensor is asked to lie flat, and nothing is ticked", "[calibration]")
{
    Bench bench;
    bench.lay({0, 0.6, 0.8});
    CHECK(bench.ticked() == 0);
    CHECK(bench.view.nowText() == QStringLiteral("It lies slanted: lay it flat."));
    CHECK(bench.view.nowMark() == CalibrationViewModel::Wrong);
}

TEST_CASE("Six sides tell how far it was off before and is now, and are saved", "[calibration]")
{
    Bench bench;
    for (const Eigen::Vector3d& up : {Eigen::Vector3d(0, 0, 1), Eigen::Vector3d(0, 0, -1), Eigen::Vector3d(0, 1, 0),
                                      Eigen::Vector3d(0, -1, 0), Eigen::Vector3d(1, 0, 0), Eigen::Vector3d(-1, 0, 0)})
        bench.lay(up);
    REQUIRE(bench.view.complete());
    CHECK(bench.view.beforeText() == QStringLiteral("0,30 m/s²")); // 3 % of gravity: the x axis
    CHECK(bench.view.afterText() == QStringLiteral("0,00 m/s²"));
    std::optional<motion::Calibration> saved;
    QObject::connect(&bench.view, &CalibrationViewModel::saved, &bench.view,
                     [&saved](const QString&, const motion::Calibration& calibration) { saved = calibration; });
    bench.view.save();
    REQUIRE(saved);
    CHECK(saved->sixFaces);
    CHECK(saved->scale.x() == Approx(1 / 1.03).epsilon(0.001));
    CHECK(saved->offset.z() == Approx(0.2).epsilon(0.02));
}

TEST_CASE("Samples of another sensor are not taken", "[calibration]")
{
    Bench bench;
    std::vector<motion::Sample> samples;
    for (int i = 0; i < 300; ++i)
        samples.push_back({i * 0.01, {0, 0, 9.81}, Eigen::Vector3d::Zero()});
    bench.view.addSamples(QStringLiteral("another"), samples);
    CHECK(bench.view.countText() == QStringLiteral("0 of 6 sides"));
}
