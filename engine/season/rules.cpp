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

constexpr auto members = std::to_array<std::pair<std::string_view, double Rules::*>>({
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
    {"load_correction_limit", &Rules::loadCorrectionLimit},
    {"load_correction_pairs", &Rules::loadCorrectionPairs},
    {"load_correction_sessions", &Rules::loadCorrectionSessions},
    {"load_correction_spread", &Rules::loadCorrectionSpread},
    {"strength_days", &Rules::strengthDays},
    {"strength_level", &Rules::strengthLevel},
    {"strength_error", &Rules::strengthError},
    {"maintenance_days", &Rules::maintenanceDays},
    {"maintenance_latest_days", &Rules::maintenanceLatestDays},
    {"maintenance_lost_days", &Rules::maintenanceLostDays},
    {"maintenance_clear_days", &Rules::maintenanceClearDays},
    {"warm_up_low", &Rules::warmUpLow},
    {"warm_up_very_low", &Rules::warmUpVeryLow},
    {"warm_up_load", &Rules::warmUpLoad},
    {"warm_up_sets_off", &Rules::warmUpSetsOff},
    {"warm_up_strong_load", &Rules::warmUpStrongLoad},
    {"warm_up_strong_sets", &Rules::warmUpStrongSets},
    {"warm_up_sessions", &Rules::warmUpSessions},
    {"speed_loss", &Rules::speedLoss},
    {"speed_loss_errors", &Rules::speedLossErrors},
    {"speed_days", &Rules::speedDays},
    {"speed_wind", &Rules::speedWind},
    {"speed_error", &Rules::speedError},
    {"speed_strength", &Rules::speedStrength},
    {"side_limit", &Rules::sideLimit},
    {"side_errors", &Rules::sideErrors},
    {"side_sessions", &Rules::sideSessions},
    {"jump_contacts_week", &Rules::jumpContactsWeek},
    {"heavy_share", &Rules::heavyShare},
    {"heavy_effort", &Rules::heavyEffort},
    {"lowest_age", &Rules::lowestAge},
    {"jump_lowest_age", &Rules::jumpLowestAge},
    {"exam_volume", &Rules::examVolume},
    {"race_gap_days", &Rules::raceGapDays},
    {"race_lead_days", &Rules::raceLeadDays},
});

constexpr double largestShare = 3; ///< shares and factors above this are slips of the pen
constexpr double largestNumber = 1000;

NumberText readNumber(ObjectReader& reader, std::string_view key)
{
    NumberText number{std::string(key), 0, reader.text("unit"), reader.text("origin"), reader.text("about")};
    const bool share = number.unit == "share" || number.unit == "factor";
    number.value = reader.number("value", 0, share ? largestShare : largestNumber);
    return number;
}

/// "{step_sessions} sessions" with the number in place: a rule's words cannot drift from its numbers.
std::string withNumbers(std::string text, const Rules& rules, ObjectReader& reader)
{
    for (auto open = text.find('{'); open != std::string::npos; open = text.find('{', open)) {
        const auto close = text.find('}', open);
        const auto* number =
            close == std::string::npos ? nullptr : findNumber(rules, text.substr(open + 1, close - open - 1));
        if (number == nullptr) {
            reader.refuse("text", "a number is named in { } that is none of \"numbers\"");
            return text;
        }
        const auto shown = numberText(*number);
        text.replace(open, close - open + 1, shown);
        open += shown.size();
    }
    return text;
}

RuleText readRule(ObjectReader& reader, const Rules& rules)
{
    RuleText rule;
    rule.key = reader.text("key");
    rule.group = reader.text("group");
    if (rule.group != "decision" && rule.group != "evidence" && rule.group != "day")
        reader.refuse("group", "decision, evidence or day is needed here");
    if (findRule(rules, rule.key) != nullptr)
        reader.refuse("key", "this rule stands twice");
    rule.title = reader.text("title");
    rule.text = withNumbers(reader.text("text"), rules, reader);
    rule.numbers = reader.texts("numbers");
    for (const auto& key : rule.numbers)
        if (findNumber(rules, key) == nullptr)
            reader.refuse("numbers", "there is no number \"" + key + "\"");
    return rule;
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
    auto data = parseSeasonData(laddersFile(), rulesFile(), cautionsFile());
    return data ? std::move(*data) : SeasonData{};
}

Error inFile(const char* name, const Error& error)
{
    return {error.code, std::string(name) + ": " + error.place, error.message};
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
            numbers.object(key, [&, name = key, wanted = member](ObjectReader& reader) {
                rules.numbers.push_back(readNumber(reader, name));
                rules.*wanted = rules.numbers.back().value;
            });
        }
    });
    top.eachObject("rules", [&](ObjectReader& reader) { rules.texts.push_back(readRule(reader, rules)); });
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

Expected<SeasonData> parseSeasonData(std::string_view ladders, std::string_view rules, std::string_view cautions)
{
    SeasonData data;
    auto readLadders = parseLadders(ladders);
    if (!readLadders)
        return tl::unexpected(inFile("ladders", readLadders.error()));
    auto readRules = parseRules(rules);
    if (!readRules)
        return tl::unexpected(inFile("rules", readRules.error()));
    auto readCautions = parseCautions(cautions);
    if (!readCautions)
        return tl::unexpected(inFile("cautions", readCautions.error()));
    data.ladders = std::move(*readLadders);
    data.rules = std::move(*readRules);
    data.cautions = std::move(*readCautions);
    data.version = identifierText(hashIdentifier(std::array{ladders, rules, cautions}));
    return data;
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
