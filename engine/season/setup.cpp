#include "engine/season/setup.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/identifier.hpp"
#include "engine/base/numbers.hpp"
#include "engine/season/setup_parts.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::string_view, 4> blockKeys{"travel", "exam", "illness", "injury"};
constexpr std::array<std::string_view, 4> blockNames{"Travel", "Exams", "Illness", "Injury"};
constexpr std::array<std::string_view, 14> regionKeys{"ankle", "back",      "calf",  "elbow", "foot",
                                                      "groin", "hamstring", "hip",   "knee",  "neck",
                                                      "shin",  "shoulder",  "thigh", "wrist"};

bool covers(const Block& block, CivilDate day)
{
    return block.from <= day && day <= block.to;
}

bool stops(const Block& block, const std::vector<std::string>& regions)
{
    if (block.kind == Block::Kind::Exam)
        return false;
    return block.kind != Block::Kind::Injury || block.region.empty() ||
           std::find(regions.begin(), regions.end(), block.region) != regions.end();
}

/// Differences of heights are compared in whole millimetres.
double apart(const EnteredLength& box, double height)
{
    return roundTo(std::abs(box.metres() - height), 1000);
}

} // namespace

std::optional<int> ageOn(const AthleteFacts& athlete, CivilDate day)
{
    if (!athlete.birthDate)
        return std::nullopt;
    const std::chrono::year_month_day born(*athlete.birthDate), now(day);
    const int years = static_cast<int>(now.year()) - static_cast<int>(born.year());
    const bool before = now.month() < born.month() ||
                        (now.month() == born.month() && now.day() < born.day()); // 29 February: from 1 March
    return years - (before ? 1 : 0);
}

int liftCapOfMinutes(const SeasonSetup& setup, const Rules& rules)
{
    return static_cast<int>(
        std::max(1.0, std::min(rules.liftsPerSession, setup.sessionMinutes / rules.minutesPerLift)));
}

int liftCap(const SeasonSetup& setup, const Rules& rules)
{
    return setup.liftsPerSession > 0 ? setup.liftsPerSession : liftCapOfMinutes(setup, rules);
}

std::string_view blockKey(Block::Kind kind)
{
    return blockKeys[static_cast<std::size_t>(kind)];
}

std::string_view blockName(Block::Kind kind)
{
    return blockNames[static_cast<std::size_t>(kind)];
}

std::string blockText(const Block& block)
{
    return std::string(blockName(block.kind)) + " from " + dateText(block.from) + " to " + dateText(block.to) +
           (block.note.empty() ? "" : " (" + block.note + ")");
}

bool isRegion(std::string_view region)
{
    return std::find(regionKeys.begin(), regionKeys.end(), region) != regionKeys.end();
}

SeasonData dataFor(const SeasonSetup& setup, const SeasonData& standard)
{
    auto data = standard;
    std::vector<std::string> parts{standard.version};
    for (const auto& ladder : setup.ownLadders)
        if (findLadder(standard.ladders, ladder.key) == nullptr) {
            data.ladders.push_back(ladder);
            parts.push_back(jsonText(ladderJson(ladder)));
        }
    if (parts.size() > 1) {
        const std::vector<std::string_view> views(parts.begin(), parts.end());
        data.version = identifierText(hashIdentifier(views));
    }
    return data;
}

const Ladder* ladderOf(const SeasonSetup& setup, const SeasonData& data, std::string_view key)
{
    const auto* own = findLadder(setup.ownLadders, key);
    return own != nullptr ? own : findLadder(data.ladders, key);
}

CivilDate ladderStart(const SeasonSetup& setup, std::string_view ladder)
{
    const auto found = std::find_if(setup.ladderStarts.begin(), setup.ladderStarts.end(),
                                    [&](const LadderStart& start) { return start.ladder == ladder; });
    return found == setup.ladderStarts.end() ? setup.start : std::max(setup.start, found->from);
}

const EnteredLength* boxFor(const Rung& rung, const SeasonSetup& setup)
{
    if (!rung.box)
        return nullptr;
    const double wanted = rung.box->metres();
    const auto nearest =
        std::min_element(setup.boxHeights.begin(), setup.boxHeights.end(),
                         [&](const auto& a, const auto& b) { return apart(a, wanted) < apart(b, wanted); });
    return nearest == setup.boxHeights.end() || apart(*nearest, wanted) > boxTolerance ? nullptr : &*nearest;
}

std::string rungName(const Rung& rung, const SeasonSetup& setup, LengthUnit unit)
{
    if (!rung.box)
        return rung.name;
    const auto* box = boxFor(rung, setup);
    return rungNameWith(rung, box == nullptr ? *rung.box : *box, unit);
}

std::string rungName(const Rung& rung, const SeasonSetup& setup)
{
    const auto* box = boxFor(rung, setup);
    return box == nullptr ? rung.name : rungNameWith(rung, *box, box->unit);
}

const Block* restBlockOn(const SeasonSetup& setup, const std::vector<std::string>& regions, CivilDate day)
{
    const auto found = std::find_if(setup.blocks.begin(), setup.blocks.end(),
                                    [&](const Block& block) { return covers(block, day) && stops(block, regions); });
    return found == setup.blocks.end() ? nullptr : &*found;
}

const Block* blockOn(const SeasonSetup& setup, Block::Kind kind, CivilDate day)
{
    const auto found = std::find_if(setup.blocks.begin(), setup.blocks.end(),
                                    [&](const Block& block) { return block.kind == kind && covers(block, day); });
    return found == setup.blocks.end() ? nullptr : &*found;
}

} // namespace fleetrung::season
