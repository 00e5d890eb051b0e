// fleetrung-teach-check: teaches random layouts and counts what comes of it.
#include <algorithm>
#include <iostream>
#include <vector>

#include <CLI/CLI.hpp>

#include "engine/base/numbers.hpp"
#include "tests/teach/score.hpp"

namespace
{

using namespace fleetrung;

void show(const char* what, const std::vector<sensor::Field>& fields)
{
    for (const auto& field : fields) {
        std::cout << "  " << what << " channel " << static_cast<int>(field.channel) << " type "
                  << static_cast<int>(field.type) << (field.order == sensor::ByteOrder::Little ? " little" : " big")
                  << " bit " << field.bit << " offset " << field.offset << " scale " << field.scale << "\n";
    }
}

void show(const sensor::SensorMap& map)
{
    for (const auto& stream : map.streams) {
        const auto& binary = stream.binary;
        std::cout << " rate " << stream.rate << " length " << binary.length << " samples " << binary.samples << " of "
                  << binary.sampleBits << " bits from bit " << binary.firstBit
                  << (stream.counts == sensor::Counts::Packets ? " packets" : " samples") << " counted, wrap "
                  << stream.counterWrap << ", prefix '" << stream.lines.prefix << "'\n";
        show("packet", binary.packetFields);
        show("sample", binary.sampleFields);
        for (const auto& column : stream.lines.columns) {
            std::cout << "  channel " << static_cast<int>(column.channel) << " column " << column.column << " key '"
                      << column.key << "' scale " << column.scale << "\n";
        }
    }
}

void show(std::uint64_t seed)
{
    const auto layout = tests::layoutOf(seed);
    std::cout << "rate " << layout.rate << " loss " << layout.loss << " interval " << layout.interval << " payload "
              << layout.payload << layout.words << "\ntrue map\n";
    show(layout.map);
    const auto taught = tests::teachLayout(seed);
    for (const auto& sure : taught.sureness) {
        std::cout << sure.what << " " << sure.sure << ": " << sure.why << "\n";
    }
    if (taught.map) {
        std::cout << "taught map\n";
        show(*taught.map);
    }
    const auto scored = tests::scoreLayout(seed);
    std::cout << (scored.outcome == tests::Outcome::Right    ? "right"
                  : scored.outcome == tests::Outcome::Repeat ? "repeat"
                                                             : "WRONG")
              << " " << scored.why << " force " << scored.force << " turning " << scored.turning << "\n";
}

} // namespace

int main(int argc, char** argv)
{
    CLI::App app("Teaches random sensor layouts and counts right, repeat and wrong.");
    int layouts = 500;
    std::uint64_t seed = 1, one = 0;
    bool check = false;
    app.add_option("--layouts", layouts, "how many");
    app.add_option("--seed", seed, "of the first; each layout has the next one");
    app.add_option("--layout", one, "show the layout of this seed only");
    app.add_flag("--check", check, "fail below 95 % right");
    CLI11_PARSE(app, argc, argv);
    if (one > 0) {
        show(one);
        return 0;
    }
    int right = 0, repeat = 0, wrong = 0;
    std::vector<double> seconds;
    for (int i = 0; i < layouts; ++i) {
        const auto here = seed + static_cast<std::uint64_t>(i);
        const auto scored = tests::scoreLayout(here);
        seconds.push_back(scored.seconds);
        right += scored.outcome == tests::Outcome::Right ? 1 : 0;
        repeat += scored.outcome == tests::Outcome::Repeat ? 1 : 0;
        wrong += scored.outcome == tests::Outcome::Wrong ? 1 : 0;
        if (scored.outcome != tests::Outcome::Right) {
            std::cout << "seed " << here << (scored.outcome == tests::Outcome::Wrong ? " WRONG: " : " repeat: ")
                      << scored.why << " (" << tests::layoutOf(here).words << " )\n";
        }
    }
    std::sort(seconds.begin(), seconds.end());
    std::cout << "seeds " << seed << " to " << seed + static_cast<std::uint64_t>(layouts) - 1 << ": " << right
              << " right, " << repeat << " asked to repeat a step, " << wrong << " wrong; median "
              << seconds[seconds.size() / 2] << " s, longest " << seconds.back() << " s a teaching\n";
    return check && right < 0.95 * layouts ? 1 : 0;
}
