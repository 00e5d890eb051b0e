#include "engine/season/rules.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/identifier.hpp"
#include "engine/base/json.hpp"
#include "engine/season/object_reader.hpp"
#include "engine/season/season_files.hpp"

namespace fleetrung::season
{
namespace
{

constexpr std::array<std::pair<std::string_view, double Rules::*>, 63> members{{
    {"load_tolerance", &Rules::loadTolerance},
    {"range_tolerance", &Rules::rangeTolerance},
    {"range_tolerance_share", &Rules::rangeToleranceShare},
    {"prior_sessions", &Rules::priorSessions},
    {"maximum_gap_days", &Rules::maximumGapDays},
    {"typical_error_floor", &Rules::typicalErrorFloor},
    {"mean_velocity_error", &Rules::meanVelocityError},
    {"peak_velocity_error", &Rules::peakVelocityError},
    {"contact_error", &Rules::contactError},
    {"baseline_sessions", &Rules::baselineSessions},
    {"step_sessions", &Rules::stepSessions},
    {"step_days", &Rules::stepDays},
    {"step_gain", &Rules::stepGain},
    {"step_velocity_loss", &Rules::stepVelocityLoss},
    {"step_valid_share", &Rules::stepValidShare},
    {"no_response_sessions", &Rules::noResponseSessions},
    {"no_response_days", &Rules::noResponseDays},
    {"no_response_gain", &Rules::noResponseGain},
    {"strength_sessions", &Rules::strengthSessions},
    {"strength_lost", &Rules::strengthLost},
    {"must_step_put_off_days", &Rules::mustStepPutOffDays},
    {"heavy_step_days", &Rules::heavyStepDays},
    {"ease_gain", &Rules::easeGain},
    {"ease_strong_gain", &Rules::easeStrongGain},
    {"ease_load", &Rules::easeLoad},
    {"ease_strong_load", &Rules::easeStrongLoad},
    {"ease_sets", &Rules::easeSets},
    {"poor_night_hours", &Rules::poorNightHours},
    {"layoff_days", &Rules::layoffDays},
    {"layoff_step_back_days", &Rules::layoffStepBackDays},
    {"layoff_long_days", &Rules::layoffLongDays},
    {"layoff_load", &Rules::layoffLoad},
    {"layoff_late_load", &Rules::layoffLateLoad},
    {"layoff_late_sets", &Rules::layoffLateSets},
    {"layoff_late_days", &Rules::layoffLateDays},
    {"pain_swap", &Rules::painSwap},
    {"pain_stop", &Rules::painStop},
    {"growth_limit", &Rules::growthLimit},
    {"load_week", &Rules::loadWeek},
    {"load_month", &Rules::loadMonth},
    {"short_range_limit", &Rules::shortRangeLimit},
    {"short_range_limit_young", &Rules::shortRangeLimitYoung},
    {"young_training_years", &Rules::youngTrainingYears},
    {"sensorless_small", &Rules::sensorlessSmall},
    {"sensorless_large", &Rules::sensorlessLarge},
    {"taper_days", &Rules::taperDays},
    {"taper_volume", &Rules::taperVolume},
    {"minor_taper_days", &Rules::minorTaperDays},
    {"minor_taper_volume", &Rules::minorTaperVolume},
    {"competition_rest_days", &Rules::competitionRestDays},
    {"primer_load", &Rules::primerLoad},
    {"primer_repetitions", &Rules::primerRepetitions},
    {"minutes_per_lift", &Rules::minutesPerLift},
    {"lifts_per_session", &Rules::liftsPerSession},
    {"young_days_per_week", &Rules::youngDaysPerWeek},
    {"jump_contacts", &Rules::jumpContacts},
    {"jump_contacts_young", &Rules::jumpContactsYoung},
    {"jump_rest_days", &Rules::jumpRestDays},
    {"jump_height_young", &Rules::jumpHeightYoung},
    {"jump_heavy_mass", &Rules::jumpHeavyMass},
    {"jump_heavy_height", &Rules::jumpHeavyHeight},
    {"jump_contact_limit", &Rules::jumpContactLimit},
    {"jump_index_error", &Rules::jumpIndexError},
}};

constexpr double largestShare = 3; ///< shares and factors above this are slips of the pen
constexpr double largestNumber = 1000;

double readNumber(ObjectReader& reader)
{
    const auto unit = reader.text("unit");
    (void)reader.text("origin");
    (void)reader.text("about");
    const bool share = unit == "share" || unit == "factor";
    return reader.number("value", 0, share ? largestShare : largestNumber);
}

PhaseRule readPhaseRule(ObjectReader& reader, std::size_t place)
{
    PhaseRule rule;
    const auto kind = phaseFromKey(reader.text("phase"));
    if (!kind || static_cast<std::size_t>(*kind) != place)
        reader.refuse("phase", "the six phases must stand in their order, transition first");
    rule.kind = kind.value_or(PhaseKind::Transition);
    rule.share = reader.number("share", 0, 1);
    rule.minimumDays = reader.integer("minimum_days", 0, 400);
    rule.maximumDays = reader.integer("maximum_days", 0, 400);
    if (rule.maximumDays != 0 && rule.maximumDays < rule.minimumDays)
        reader.refuse("maximum_days", "this is less than the minimum");
    rule.setStop = reader.number("set_stop", 0.01, 0.6);
    rule.volume = reader.number("volume", 0, 2);
    (void)reader.text("origin");
    (void)reader.text("about");
    return rule;
}

SeasonData readStandardData()
{
    // The files are part of the library and a test reads them one by one; a failure here would be an empty plan.
    SeasonData data;
    if (auto ladders = parseLadders(laddersFile()))
        data.ladders = std::move(*ladders);
    if (auto rules = parseRules(rulesFile()))
        data.rules = std::move(*rules);
    if (auto cautions = parseCautions(cautionsFile()))
        data.cautions = std::move(*cautions);
    data.version = identifierText(hashIdentifier(std::array{laddersFile(), rulesFile(), cautionsFile()}));
    return data;
}

} // namespace

Expected<Rules> parseRules(std::string_view text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    Rules rules{};
    ObjectReader top(*json, "", problem);
    top.integer("format", 1, 1);
    if (!top.has("numbers"))
        top.refuse("numbers", "this key is missing");
    top.object("numbers", [&](ObjectReader& numbers) {
        for (const auto& [key, member] : members) {
            if (!numbers.has(key))
                numbers.refuse(key, "this number is missing");
            numbers.object(key, [&, wanted = member](ObjectReader& reader) { rules.*wanted = readNumber(reader); });
        }
    });
    top.eachObject("phases",
                   [&](ObjectReader& reader) { rules.phases.push_back(readPhaseRule(reader, rules.phases.size())); });
    if (rules.phases.size() != static_cast<std::size_t>(PhaseKind::Taper) + 1)
        top.refuse("phases", "all six phases are needed");
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return rules;
}

Expected<std::vector<Caution>> parseCautions(std::string_view text)
{
    const auto json = parseJson(text);
    if (!json)
        return tl::unexpected(json.error());
    ReadProblem problem;
    std::vector<Caution> cautions;
    ObjectReader top(*json, "", problem);
    top.integer("format", 1, 1);
    top.eachObject("cautions", [&](ObjectReader& reader) {
        cautions.push_back({reader.text("key"), reader.text("title"), reader.text("text")});
    });
    top.finish();
    if (problem.first)
        return tl::unexpected(*problem.first);
    return cautions;
}

const SeasonData& standardSeasonData()
{
    static const SeasonData data = readStandardData();
    return data;
}

const Caution* findCaution(const SeasonData& data, std::string_view key)
{
    const auto found = std::find_if(data.cautions.begin(), data.cautions.end(),
                                    [&](const Caution& caution) { return caution.key == key; });
    return found == data.cautions.end() ? nullptr : &*found;
}

} // namespace fleetrung::season
