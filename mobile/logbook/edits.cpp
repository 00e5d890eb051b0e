#include "mobile/logbook/edits.hpp"

#include <tuple>

#include "engine/base/json.hpp"
#include "mobile/logbook/failure.hpp"
#include "mobile/logbook/repetition_mapping.hpp"

namespace fleetrung::logbook
{
namespace
{

/// Another version of the engine may put the ends of a repetition a little elsewhere.
constexpr double tolerance = 0.1; // s

RepetitionView* heldBy(std::vector<RepetitionView>& repetitions, double time)
{
    RepetitionView* nearest = nullptr;
    for (auto& view : repetitions)
        if (time >= view.row.eccentricStart - tolerance && time <= view.row.concentricEnd + tolerance &&
            (nearest == nullptr || std::abs(view.row.peakTime - time) < std::abs(nearest->row.peakTime - time)))
            nearest = &view;
    return nearest;
}

void relabel(RepetitionView& view, const std::string& value)
{
    if (value == "evidence" || value == "no-evidence")
        view.evidence = value == "evidence";
    else
        view.side = value == "left" ? store::Side::Left : value == "right" ? store::Side::Right : store::Side::Both;
}

struct AddedValue {
    const char* key;
    std::optional<double> TypedRepetitions::*value;
};

constexpr std::array<AddedValue, 4> addedValues{{{"mean_velocity_mps", &TypedRepetitions::meanVelocity},
                                                 {"peak_velocity_mps", &TypedRepetitions::peakVelocity},
                                                 {"time_to_peak_velocity_s", &TypedRepetitions::timeToPeak},
                                                 {"range_m", &TypedRepetitions::range}}};

std::string addedText(const TypedRepetitions& values)
{
    Json json = Json::object();
    for (const auto& added : addedValues)
        if (const auto& value = values.*added.value)
            json[added.key] = *value;
    return jsonText(json);
}

/// What cannot be read of it is left empty: the repetition itself was still done.
RepetitionView addedView(const store::EditEvent& event, int ordinal)
{
    TypedRepetitions values;
    if (const auto json = parseJson(event.value); json && json->is_object())
        for (const auto& added : addedValues)
            if (json->contains(added.key) && (*json)[added.key].is_number())
                values.*added.value = (*json)[added.key].get<double>();
    RepetitionView view{typedRow(values, ordinal)};
    view.row.id = event.id;
    view.row.eccentricStart = view.row.concentricStart = view.row.peakTime = view.row.concentricEnd = event.atTime;
    return view;
}

} // namespace

void applyEdits(std::vector<RepetitionView>& repetitions, std::vector<store::EditEvent> events)
{
    std::ranges::sort(events, {}, [](const auto& event) { return std::tuple(event.counter, event.origin, event.id); });
    for (const auto& event : events) {
        if (event.kind == store::EditKind::Add) {
            repetitions.push_back(addedView(event, static_cast<int>(repetitions.size()) + 1));
            continue;
        }
        auto* view = heldBy(repetitions, event.atTime);
        if (view == nullptr)
            continue;
        if (event.kind == store::EditKind::Relabel)
            relabel(*view, event.value);
        else
            view->deleted = event.kind == store::EditKind::Delete;
    }
}

// What Logbook offers of it
// -----------------------------------------------------------------------------------------------

Expected<store::EditEvent> Logbook::eventAt(const Identifier& repetition) const
{
    store::EditEvent event;
    if (const auto added = store_->find<store::EditEvent>(repetition)) {
        event.set = added->set;
        event.capture = added->capture;
        event.atTime = added->atTime;
        return event;
    }
    const auto row = store_->find<store::Repetition>(repetition);
    if (!row)
        return failure(row);
    const auto analysis = store_->find<store::Analysis>(row->analysis);
    if (!analysis)
        return failure(analysis);
    event.set = analysis->set;
    event.capture = analysis->capture;
    event.atTime = row->peakTime;
    return event;
}

Expected<void> Logbook::edit(const Identifier& repetition, store::EditKind kind, const std::string& value,
                             const Moment& now)
{
    auto event = eventAt(repetition);
    if (!event)
        return failure(event);
    event->id = newIdentifier_();
    event->kind = kind;
    event->value = value;
    event->made = now;
    return outcome(store_->insert(std::move(*event)));
}

Expected<Identifier> Logbook::addRepetition(const Identifier& set, double atTime, const TypedRepetitions& values,
                                            const Moment& now)
{
    store::EditEvent event;
    event.id = newIdentifier_();
    event.set = set;
    event.atTime = atTime;
    event.kind = store::EditKind::Add;
    event.value = addedText(values);
    event.made = now;
    const Identifier id = event.id;
    return store_->insert(std::move(event)).map([&](bool) { return id; });
}

Expected<void> Logbook::deleteRepetition(const Identifier& repetition, const Moment& now)
{
    return edit(repetition, store::EditKind::Delete, "", now);
}

Expected<void> Logbook::restoreRepetition(const Identifier& repetition, const Moment& now)
{
    return edit(repetition, store::EditKind::Undelete, "", now);
}

Expected<void> Logbook::relabelSide(const Identifier& repetition, store::Side side, const Moment& now)
{
    constexpr std::array<const char*, 3> names{"both", "left", "right"};
    return edit(repetition, store::EditKind::Relabel, names.at(static_cast<std::size_t>(side)), now);
}

Expected<void> Logbook::relabelEvidence(const Identifier& repetition, bool evidence, const Moment& now)
{
    return edit(repetition, store::EditKind::Relabel, evidence ? "evidence" : "no-evidence", now);
}

} // namespace fleetrung::logbook
