#include <algorithm>
#include <array>

#include "demo/simulator/sensor_plan.hpp"

namespace fleetrung::simulator
{
namespace
{

// Noise densities and scales of classes A-E: public documents of devices that carry such parts, read second-hand (the
// parts' own data sheets were not at hand); "old": from memory. A plus-minus figure for the offset is taken as two
// standard deviations, a "typical" one as one. Where a column was not given, the value of class A stands, and class A's
// offsets, all scale errors and the ranges are starting values of this project.
constexpr double counts16g = 1000.0 / 2048;    // milli-g
constexpr double counts2000 = 1000.0 / 16.384; // milli-degree/s
constexpr std::array<Part, 7> parts{{
    {"A", 160, 7, counts16g, counts2000, 20, 1.0, 0.005, 0.01, 16, 2000,
     "docs.luxonis.com, page of a device with class A part: 160 micro-g and 7 mdps per root Hz, 2048 LSB/g, 16.384 "
     "LSB/dps"},
    {"B", 60, 2.8, 0.488, 70, 20, 1.0, 0.005, 0.01, 16, 2000,
     "docs.luxonis.com, page of a device with class B part: 60 micro-g and 2.8 mdps per root Hz, 0.488 mg/LSB, 70 "
     "mdps/LSB"},
    {"C", 75, 2.8, counts16g, counts2000, 20, 0.5, 0.005, 0.01, 16, 2000,
     "blog.csdn.net/dongqingyueyue/article/details/103731233 (comparison table): gyroscope offset 0.5 dps typical"},
    {"D", 100, 4, counts16g, counts2000, 20, 1.0, 0.005, 0.01, 16, 2000,
     "same table: offsets +-40 mg, 1 dps typical, 10 dps at most"},
    {"E", 150, 14, counts16g, counts2000, 30, 1.0, 0.005, 0.01, 16, 2000,
     "same table (its columns are partly garbled): offsets +-60 mg, 1 dps typical, 3 dps at most"},
    {"old", 400, 5, counts16g, 1000.0 / 16.4, 30, 10, 0.01, 0.02, 16, 2000, "from memory: +-50 to 80 mg, +-20 dps"},
    {"perfect", 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, "no error of any kind: for tests"},
}};

} // namespace

std::span<const Part> allParts()
{
    return parts;
}

const Part* findPart(std::string_view name)
{
    const auto found = std::find_if(parts.begin(), parts.end(), [&](const Part& part) { return part.name == name; });
    return found == parts.end() ? nullptr : &*found;
}

} // namespace fleetrung::simulator
