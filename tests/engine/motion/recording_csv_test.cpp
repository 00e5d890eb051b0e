#include "engine/motion/recording_csv.hpp"

#include <catch2/catch.hpp>

using namespace fleetrung;
using namespace fleetrung::motion;

namespace
{

const std::string names = "time_s,acc_x_mps2,acc_y_mps2,acc_z_mps2,gyr_x_radps,gyr_y_radps,gyr_z_radps\n";

Recording imported(const std::string& text, const ColumnMap& map = {})
{
    const auto result = importRecording(text, map);
    if (!result)
        FAIL(describe(result.error()));
    return result->recording;
}

Error refusal(const std::string& text, const ColumnMap& map = {})
{
    const auto result = importRecording(text, map);
    REQUIRE_FALSE(result);
    CHECK(result.error().code == Code::InvalidInput);
    INFO(describe(result.error()));
    CHECK_FALSE(result.error().message.empty());
    return result.error();
}

} // namespace

TEST_CASE("a recording in SI units is taken as it stands, whatever the order of its columns", "[recording]")
{
    const auto recording = imported("gyr_z_radps,acc_z_mps2,time_s,gyr_x_radps,acc_x_mps2,acc_y_mps2,gyr_y_radps\n"
                                    "0.3,9.81,0.005,0.1,-0.5,0.25,0.2\r\n"
                                    "0.6,9.80,0.010,0.4,-0.4,0.35,+5e-1\n");
    REQUIRE(recording.samples.size() == 2);
    CHECK(recording.hasGyroscope);
    CHECK(recording.samples[0].time == 0.005);
    CHECK(recording.samples[0].specificForce == Eigen::Vector3d(-0.5, 0.25, 9.81));
    CHECK(recording.samples[1].angularRate == Eigen::Vector3d(0.4, 0.5, 0.6));
}

TEST_CASE("every unit of time, acceleration and turning is brought to SI", "[recording]")
{
    const std::string clock = GENERATE("time_s", "time_ms", "time_us");
    const std::string stamps = clock == "time_s" ? "1.5" : clock == "time_ms" ? "1500" : "1500000";
    const auto recording =
        imported(clock + ",acc_x_g,acc_y_g,acc_z_g,gyr_x_dps,gyr_y_dps,gyr_z_dps\n" + stamps + ",0,-2,1,180,-90,0\n");
    REQUIRE(recording.samples.size() == 1);
    const auto& sample = recording.samples.front();
    CHECK(sample.time == Approx(1.5).epsilon(1e-15));
    // Standard gravity, 9.80665 m/s2: exact by definition (3rd General Conference on Weights and Measures, 1901).
    CHECK(sample.specificForce.isApprox(Eigen::Vector3d(0, -19.6133, 9.80665), 1e-15));
    CHECK(sample.angularRate.isApprox(Eigen::Vector3d(3.14159265358979324, -1.57079632679489662, 0), 1e-15));
}

TEST_CASE("a counter and a rate make the clock, and a lost sample stays a gap", "[recording]")
{
    const auto recording = imported("# rate_hz: 200\nsample,acc_x_g,acc_y_g,acc_z_g\n10,0,0,1\n11,0,0,1\n14,0,0,1\n");
    REQUIRE(recording.samples.size() == 3);
    CHECK(recording.samples[0].time == Approx(0.05));
    CHECK(recording.samples[1].time == Approx(0.055));
    CHECK(recording.samples[2].time == Approx(0.07));
    CHECK_FALSE(recording.hasGyroscope);
}

TEST_CASE("with a rate alone the rows are counted from zero", "[recording]")
{
    const auto recording = imported("# rate_hz: 100\nacc_x_g,acc_y_g,acc_z_g\n0,0,1\n0,0,1\n");
    REQUIRE(recording.samples.size() == 2);
    CHECK(recording.samples[0].time == 0);
    CHECK(recording.samples[1].time == Approx(0.01));
}

TEST_CASE("the file's own clock is used where a rate is stated as well", "[recording]")
{
    const auto recording = imported("# rate_hz: 100\ntime_s,acc_x_g,acc_y_g,acc_z_g\n5,0,0,1\n5.02,0,0,1\n");
    CHECK(recording.samples[1].time == 5.02);
}

TEST_CASE("semicolons carry decimal commas or decimal points, never both", "[recording]")
{
    const std::string header = "time_s;acc_x_mps2;acc_y_mps2;acc_z_mps2\n";
    CHECK(imported(header + "0;0,5;-1,25;9,81\n").samples[0].specificForce == Eigen::Vector3d(0.5, -1.25, 9.81));
    CHECK(imported(header + "0;0.5;-1.25;9.81\n").samples[0].specificForce == Eigen::Vector3d(0.5, -1.25, 9.81));
    CHECK(refusal(header + "0;0,5;-1,25;9,81\n1;0,5;-1.25;9,81\n").place == "line 3, column acc_y_mps2");
    CHECK(refusal(header + "0;1.009,81;0;9,81\n").place == "line 2, column acc_x_mps2");
}

TEST_CASE("tabs delimit too", "[recording]")
{
    const auto recording = imported("time_s\tacc_x_mps2\tacc_y_mps2\tacc_z_mps2\n0\t1\t2\t3\n");
    CHECK(recording.samples[0].specificForce == Eigen::Vector3d(1, 2, 3));
}

TEST_CASE("the comments above the header say lift, load, athlete and start", "[recording]")
{
    const auto result =
        importRecording("\xEF\xBB\xBF# lift: half-squat\n#load_kg: 120.5\n\n# athlete: M\xC3\xA4rta: left\n"
                        "# started: 2026-03-30T17:05:09+02:00\n# anything else\n" +
                        names + "0,0,0,9.8,0,0,0\n");
    REQUIRE(result);
    CHECK(result->lift == "half-squat");
    CHECK(result->loadKg == 120.5);
    CHECK(result->athlete == "M\xC3\xA4rta: left");
    CHECK(result->started == "2026-03-30T17:05:09+02:00");
}

TEST_CASE("comments that are not there are not made up", "[recording]")
{
    const auto result = importRecording(names + "0,0,0,9.8,0,0,0\n");
    REQUIRE(result);
    CHECK_FALSE(result->lift);
    CHECK_FALSE(result->loadKg);
    CHECK_FALSE(result->athlete);
    CHECK_FALSE(result->started);
}

TEST_CASE("a load that is no number is refused with its line", "[recording]")
{
    CHECK(refusal("\n# load_kg: heavy\n" + names + "0,0,0,9.8,0,0,0\n").place == "line 2");
    CHECK(refusal("# load_kg: -5\n" + names + "0,0,0,9.8,0,0,0\n").place == "line 1");
    CHECK(refusal("# rate_hz: 0\nacc_x_g,acc_y_g,acc_z_g\n0,0,1\n").place == "line 1");
}

TEST_CASE("other columns are left alone even where they hold text and nan", "[recording]")
{
    const auto recording =
        imported("note,time_s,acc_x_g,acc_y_g,acc_z_g,height_m\nwarm-up,0,0,0,1,nan\n\"a, b\",1,0,0,1,\n");
    CHECK(recording.samples.size() == 2);
}

TEST_CASE("another program's columns are read through a map", "[recording]")
{
    const auto map = parseColumnMap("time_ms=t, acc_x_g = ax,acc_y_g=ay,acc_z_g=az");
    REQUIRE(map);
    const auto recording = imported("t,ax,ay,az\n250,0,0,1\n", *map);
    CHECK(recording.samples[0].time == 0.25);
    CHECK(recording.samples[0].specificForce.z() == 9.80665);
}

TEST_CASE("the map decides where a quantity stands twice", "[recording]")
{
    const std::string text = "time_s,acc_x_g,acc_y_g,acc_z_g,smooth_x\n0,5,0,1,7\n";
    CHECK(imported(text, {{"acc_x_mps2", "smooth_x"}}).samples[0].specificForce.x() == 7);
    CHECK(refusal(text, {{"acc_x_mps2", "absent"}}).place == "line 1, column absent");
}

TEST_CASE("a map that cannot be meant is refused", "[recording]")
{
    for (const std::string text :
         {"acc_x_mps2", "acc_x_mps2=", "=ax", "acceleration=ax", "time_s=a,time_s=b", "time_s=a,,"}) {
        CAPTURE(text);
        const auto map = parseColumnMap(text);
        REQUIRE_FALSE(map);
        CHECK(map.error().code == Code::InvalidInput);
        CHECK(map.error().place == "column map");
    }
    CHECK(parseColumnMap("")->empty());
}

TEST_CASE("a missing column is named, with the line of the header", "[recording]")
{
    CHECK(refusal("time_s,acc_x_mps2,acc_z_mps2\n0,0,9.8\n").place == "line 1, column acc_y_mps2");
    CHECK(refusal("# lift: free\nacc_x_g,acc_y_g,acc_z_g\n0,0,1\n").place == "line 2, column time_s");
    CHECK(refusal("time_s,acc_x_g,acc_y_g,acc_z_g,gyr_x_dps\n0,0,0,1,0\n").place == "line 1, column gyr_y_radps");
    CHECK(refusal("sample,acc_x_g,acc_y_g,acc_z_g\n0,0,0,1\n").place == "line 1, column time_s");
}

TEST_CASE("column names are exact: capitals are another name", "[recording]")
{
    CHECK(refusal("Time_s,acc_x_g,acc_y_g,acc_z_g\n0,0,0,1\n").place == "line 1, column time_s");
}

TEST_CASE("a quantity that stands twice is refused, not chosen", "[recording]")
{
    CHECK(refusal("time_s,time_ms,acc_x_g,acc_y_g,acc_z_g\n0,0,0,0,1\n").place == "line 1, column time_ms");
    CHECK(refusal("time_s,acc_x_g,acc_x_g,acc_y_g,acc_z_g\n0,0,0,0,1\n").place == "line 1, column acc_x_g");
}

TEST_CASE("what is no finite number is refused with line and column", "[recording]")
{
    const std::string cell =
        GENERATE("oops", "nan", "NaN", "inf", "-Infinity", "", " ", "1.2.3", "0x10", "1e999", "1 2", "--1", "9,8");
    CAPTURE(cell);
    const auto error = refusal("# c\n" + names + "0,0,0,9.8,0,0,0\n\n0.01,0,0,\"" + cell + "\",0,0,0\n");
    CHECK(error.place == "line 5, column acc_z_mps2");
}

TEST_CASE("the error names the column as the file does", "[recording]")
{
    const auto map = parseColumnMap("time_s=t,acc_x_g=ax,acc_y_g=ay,acc_z_g=az");
    CHECK(refusal("t,ax,ay,az\n0,0,0,1\n1,0,oops,1\n", *map).place == "line 3, column ay");
}

TEST_CASE("rows of one time with different readings are refused with the line of the second", "[recording]")
{
    CHECK(refusal(names + "0,0,0,9.8,0,0,0\n0,0,0,9.9,0,0,0\n").place == "line 3, column time_s");
    CHECK(refusal("# rate_hz: 50\nsample,acc_x_g,acc_y_g,acc_z_g\n2,0,0,1\n3,0,0,1\n2,0,0.1,1\n4,0,0,1\n").place ==
          "line 5, column sample");
}

TEST_CASE("doubled and late rows are put in order and told", "[recording]")
{
    const auto result = importRecording(names + "0,1,0,9.8,0,0,0\n0.02,3,0,9.8,0,0,0\n0.01,2,0,9.8,0,0,0\n"
                                                "0.01,2,0,9.8,0,0,0\n0.03,4,0,9.8,0,0,0\n");
    REQUIRE(result);
    REQUIRE(result->recording.samples.size() == 4);
    for (int i = 0; i < 4; ++i)
        CHECK(result->recording.samples[static_cast<std::size_t>(i)].specificForce.x() == i + 1);
    REQUIRE(result->findings.size() == 2);
    CHECK(result->findings[0].fault == Fault::Doubled);
    CHECK(result->findings[1].fault == Fault::Late);
    CHECK(importRecording(names + "0,1,0,9.8,0,0,0\n0.02,3,0,9.8,0,0,0\n")->findings.empty());
}

TEST_CASE("rows whose time runs backwards throughout are refused, not taken for a clock that steps", "[recording]")
{
    std::string text = names;
    for (int i = 400; i > 0; --i)
        text += std::to_string(i) + "e-2," + std::to_string(i) + ",0,9.8,0,0,0\n";
    CHECK(refusal(text).message.find("sort") != std::string::npos);
}

TEST_CASE("a file without samples is refused", "[recording]")
{
    CHECK(refusal("").place == "line 1");
    CHECK(refusal(" \n\r\n\t\n").place == "line 1");
    CHECK(refusal("\xEF\xBB\xBF").place == "line 1");
    CHECK(refusal("# lift: free\n").place == "line 1");
    CHECK(refusal("# lift: free\n" + names).place == "line 2");
}

TEST_CASE("a row that is cut off is refused with its line", "[recording]")
{
    CHECK(refusal(names + "0,0,0,9.8,0,0,0\n0.01,0,0\n").place == "line 3");
    CHECK(refusal(names + "0,0,0,9.8,0,0,0,0\n").place == "line 2");
}

TEST_CASE("bytes that are no text are refused", "[recording]")
{
    CHECK(refusal(std::string("PK\3\4\0\0\0", 7)).message.find("not a text file") != std::string::npos);
}

TEST_CASE("messages carry no control bytes out of the file to the terminal", "[recording]")
{
    CHECK(refusal("time_s,acc_x_g,acc_y_g,acc_z_g\n0,\x1b[31mred,0,1\n").message.find('\x1b') == std::string::npos);
    CHECK(refusal("time_s,acc_x_g,acc_y_g,\x1b[31mred\n0,0,0,1\n").message.find('\x1b') == std::string::npos);
}
