// What the store must know of each record: its table, its fields in the order of the schema's columns, and how a filter
// reaches it from above. A new field: a column in a new migration step, a member in records.hpp, a line here.
#pragma once

#include <string_view>

#include "engine/store/records.hpp"

namespace fleetrung::store
{

/// SQL pieces of one table's queries; an empty text means that the filter's field says nothing of this table.
struct Reach {
    std::string_view joins = "";
    std::string_view alive = ""; ///< rows above are not deleted
    std::string_view athlete = "";
    std::string_view season = "";
    std::string_view session = "";
    std::string_view set = "";
    std::string_view analysis = "";
    std::string_view ladder = "";
    std::string_view day = "";
    std::string_view accepted = "";
    std::string_view order = "";
};

template <class R> struct Table;

template <> struct Table<Device> {
    static constexpr std::string_view name = "device";
    static constexpr Reach reach{};
    static void fields(auto& row, auto&& visit) { visit("name", row.name); }
};

template <> struct Table<Athlete> {
    static constexpr std::string_view name = "athlete";
    static constexpr Reach reach{.athlete = "athlete.id", .order = "athlete.name"};
    static void fields(auto& row, auto&& visit)
    {
        visit("name", row.name);
        visit("event", row.event);
        visit("born_day", row.born);
        visit("stature_m", row.statureM);
        visit("body_mass_kg", row.bodyMassKg);
        visit("training_years", row.trainingYears);
        visit("guardian_consent", row.guardianConsent);
        visit("note", row.note);
        visit("training_group", row.group);
    }
};

template <> struct Table<Season> {
    static constexpr std::string_view name = "season";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = season.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "season.athlete",
                                 .season = "season.id",
                                 .order = "season.start_day"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("name", row.name);
        visit("start_day", row.start);
        visit("finish_day", row.finish);
        visit("setup", row.setup);
    }
};

template <> struct Table<Session> {
    static constexpr std::string_view name = "session";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = session.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "session.athlete",
                                 .season = "session.season",
                                 .session = "session.id",
                                 .day = "session.begun_day",
                                 .order = "session.begun_day, session.begun_utc_s"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("season", row.season);
        visit("begun", row.begun);
        visit("kind", row.kind);
        visit("effort", row.effort);
        visit("note", row.note);
    }
};

template <> struct Table<LiftSet> {
    static constexpr std::string_view name = "lift_set";
    static constexpr Reach reach{.joins = " JOIN session ON session.id = lift_set.session"
                                          " JOIN athlete ON athlete.id = session.athlete",
                                 .alive = "session.deleted = 0 AND athlete.deleted = 0",
                                 .athlete = "session.athlete",
                                 .season = "session.season",
                                 .session = "lift_set.session",
                                 .set = "lift_set.id",
                                 .ladder = "lift_set.ladder",
                                 .day = "session.begun_day",
                                 .order = "session.begun_day, session.begun_utc_s, session.id, lift_set.ordinal"};
    static void fields(auto& row, auto&& visit)
    {
        visit("session", row.session);
        visit("ordinal", row.ordinal);
        visit("done", row.done);
        visit("lift", row.lift);
        visit("ladder", row.ladder);
        visit("rung", row.rung);
        visit("kind", row.kind);
        visit("side", row.side);
        visit("load_kg", row.loadKg);
        visit("repetitions_planned", row.repetitionsPlanned);
        visit("repetitions_done", row.repetitionsDone);
        visit("box_height_m", row.boxHeightM);
        visit("effort", row.effort);
        visit("note", row.note);
    }
};

template <> struct Table<Capture> {
    static constexpr std::string_view name = "capture";
    static constexpr Reach reach{.joins = " JOIN lift_set ON lift_set.id = capture.lift_set"
                                          " JOIN session ON session.id = lift_set.session"
                                          " JOIN athlete ON athlete.id = session.athlete",
                                 .alive = "lift_set.deleted = 0 AND session.deleted = 0 AND athlete.deleted = 0",
                                 .athlete = "session.athlete",
                                 .season = "session.season",
                                 .session = "lift_set.session",
                                 .set = "capture.lift_set",
                                 .ladder = "lift_set.ladder",
                                 .day = "session.begun_day",
                                 .order = "session.begun_day, session.begun_utc_s, session.id, lift_set.ordinal"};
    static void fields(auto& row, auto&& visit)
    {
        visit("lift_set", row.set);
        visit("sensor", row.sensor);
        visit("placement", row.placement);
        visit("content_hash", row.contentHash);
        visit("samples", row.samples);
        visit("has_gyroscope", row.hasGyroscope);
        visit("traits", row.traits);
        visit("clock_fit", row.clockFit);
    }
};

template <> struct Table<Analysis> {
    static constexpr std::string_view name = "analysis";
    static constexpr Reach reach{.joins = " JOIN lift_set ON lift_set.id = analysis.lift_set"
                                          " JOIN session ON session.id = lift_set.session"
                                          " JOIN athlete ON athlete.id = session.athlete",
                                 .alive = "lift_set.deleted = 0 AND session.deleted = 0 AND athlete.deleted = 0",
                                 .athlete = "session.athlete",
                                 .season = "session.season",
                                 .session = "lift_set.session",
                                 .set = "analysis.lift_set",
                                 .analysis = "analysis.id",
                                 .ladder = "lift_set.ladder",
                                 .day = "session.begun_day",
                                 .accepted = "analysis.accepted = 1",
                                 .order = "session.begun_day, session.begun_utc_s, session.id, lift_set.ordinal"};
    static void fields(auto& row, auto&& visit)
    {
        visit("lift_set", row.set);
        visit("capture", row.capture);
        visit("engine_version", row.engineVersion);
        visit("settings_hash", row.settingsHash);
        visit("accepted", row.accepted);
        visit("sampling_rate_hz", row.samplingRateHz);
    }
};

template <> struct Table<Repetition> {
    static constexpr std::string_view name = "repetition";
    static constexpr Reach reach{
        .joins = " JOIN analysis ON analysis.id = repetition.analysis JOIN lift_set ON lift_set.id = analysis.lift_set"
                 " JOIN session ON session.id = lift_set.session JOIN athlete ON athlete.id = session.athlete",
        .alive = "analysis.deleted = 0 AND lift_set.deleted = 0 AND session.deleted = 0 AND athlete.deleted = 0",
        .athlete = "session.athlete",
        .season = "session.season",
        .session = "lift_set.session",
        .set = "analysis.lift_set",
        .analysis = "repetition.analysis",
        .ladder = "lift_set.ladder",
        .day = "session.begun_day",
        .accepted = "analysis.accepted = 1",
        .order =
            "session.begun_day, session.begun_utc_s, session.id, lift_set.ordinal, analysis.id, repetition.ordinal"};
    static void fields(auto& row, auto&& visit)
    {
        visit("analysis", row.analysis);
        visit("ordinal", row.ordinal);
        visit("side", row.side);
        visit("eccentric_start_s", row.eccentricStart);
        visit("concentric_start_s", row.concentricStart);
        visit("peak_s", row.peakTime);
        visit("concentric_end_s", row.concentricEnd);
        visit("flags", row.flags);
        visit("mean_velocity_mps", row.meanVelocity);
        visit("mean_propulsive_velocity_mps", row.meanPropulsiveVelocity);
        visit("peak_velocity_mps", row.peakVelocity);
        visit("time_to_peak_velocity_s", row.timeToPeakVelocity);
        visit("range_m", row.range);
        visit("displacement_to_peak_m", row.displacementToPeak);
        visit("concentric_duration_s", row.concentricDuration);
        visit("velocity_at_100ms_mps", row.velocityAt100ms);
        visit("velocity_at_200ms_mps", row.velocityAt200ms);
        visit("eccentric_peak_velocity_mps", row.eccentricPeakVelocity);
        visit("eccentric_duration_s", row.eccentricDuration);
        visit("reversal_time_s", row.reversalTime);
    }
};

template <> struct Table<EditEvent> {
    static constexpr std::string_view name = "edit_event";
    static constexpr Reach reach{.joins = " JOIN lift_set ON lift_set.id = edit_event.lift_set"
                                          " JOIN session ON session.id = lift_set.session"
                                          " JOIN athlete ON athlete.id = session.athlete",
                                 .alive = "lift_set.deleted = 0 AND session.deleted = 0 AND athlete.deleted = 0",
                                 .athlete = "session.athlete",
                                 .season = "session.season",
                                 .session = "lift_set.session",
                                 .set = "edit_event.lift_set",
                                 .ladder = "lift_set.ladder",
                                 .day = "session.begun_day"};
    static void fields(auto& row, auto&& visit)
    {
        visit("lift_set", row.set);
        visit("capture", row.capture);
        visit("at_s", row.atTime);
        visit("kind", row.kind);
        visit("value", row.value);
        visit("made", row.made);
    }
};

template <> struct Table<Sprint> {
    static constexpr std::string_view name = "sprint";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = sprint.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "sprint.athlete",
                                 .session = "sprint.session",
                                 .day = "sprint.run_day",
                                 .order = "sprint.run_day, sprint.run_utc_s"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("session", row.session);
        visit("run", row.run);
        visit("distance_m", row.distance);
        visit("time_s", row.time);
        visit("splits", row.splits);
        visit("start", row.start);
        visit("run_in_m", row.runIn);
        visit("timing", row.timing);
        visit("surface", row.surface);
        visit("shoes", row.shoes);
        visit("wind_mps", row.windMps);
        visit("temperature_c", row.temperatureC);
        visit("effort", row.effort);
        visit("competition", row.competition);
        visit("note", row.note);
        visit("test", row.test);
        visit("reaction_s", row.reactionS);
        visit("beam_m", row.beamM);
        visit("altitude_m", row.altitudeM);
        visit("contact_s", row.contactS);
        visit("step_length_m", row.stepLengthM);
    }
};

template <> struct Table<TrackWork> {
    static constexpr std::string_view name = "track_work";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = track_work.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "track_work.athlete",
                                 .session = "track_work.session",
                                 .day = "track_work.done_day",
                                 .order = "track_work.done_day, track_work.done_utc_s"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("session", row.session);
        visit("done", row.done);
        visit("kind", row.kind);
        visit("distance_m", row.distance);
        visit("repetitions", row.repetitions);
        visit("best_time_s", row.bestTimeS);
        visit("rest_s", row.restS);
        visit("effort", row.effort);
        visit("load_kg", row.loadKg);
        visit("slope_percent", row.slopePercent);
        visit("wind_mps", row.windMps);
        visit("timing", row.timing);
        visit("surface", row.surface);
        visit("shoes", row.shoes);
        visit("note", row.note);
    }
};

template <> struct Table<Jump> {
    static constexpr std::string_view name = "jump";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = jump.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "jump.athlete",
                                 .session = "jump.session",
                                 .day = "jump.done_day",
                                 .order = "jump.done_day, jump.done_utc_s"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("session", row.session);
        visit("done", row.done);
        visit("kind", row.kind);
        visit("side", row.side);
        visit("box_height_m", row.boxHeightM);
        visit("contact_s", row.contact);
        visit("flight_s", row.flight);
        visit("height_m", row.height);
        visit("distance_m", row.distance);
        visit("note", row.note);
        visit("test", row.test);
        visit("repetitions", row.repetitions);
        visit("surface", row.surface);
        visit("shoes", row.shoes);
    }
};

template <> struct Table<Wellness> {
    static constexpr std::string_view name = "wellness";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = wellness.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "wellness.athlete",
                                 .day = "wellness.asked_day",
                                 .order = "wellness.asked_day, wellness.asked_utc_s"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("asked", row.asked);
        visit("sleep_h", row.sleepHours);
        visit("soreness", row.soreness);
        visit("pain", row.pain);
        visit("pain_where", row.painWhere);
        visit("sharp_pain", row.sharpPain);
        visit("limping", row.limping);
        visit("new_hamstring_pain", row.newHamstringPain);
        visit("refused", row.refused);
        visit("body_mass_kg", row.bodyMassKg);
        visit("note", row.note);
    }
};

template <> struct Table<LostDay> {
    static constexpr std::string_view name = "lost_day";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = lost_day.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "lost_day.athlete",
                                 .day = "lost_day.day",
                                 .order = "lost_day.day"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("day", row.day);
        visit("why", row.why);
    }
};

template <> struct Table<Decision> {
    static constexpr std::string_view name = "decision";
    static constexpr Reach reach{.joins = " JOIN athlete ON athlete.id = decision.athlete",
                                 .alive = "athlete.deleted = 0",
                                 .athlete = "decision.athlete",
                                 .season = "decision.season",
                                 .ladder = "decision.ladder",
                                 .day = "decision.day",
                                 .order = "decision.day, decision.made_utc_s, decision.counter, decision.ordinal"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("season", row.season);
        visit("day", row.day);
        visit("made", row.made);
        visit("ladder", row.ladder);
        visit("action", row.action);
        visit("rule", row.rule);
        visit("rung_from", row.rungFrom);
        visit("rung_to", row.rungTo);
        visit("evidence", row.evidence);
        visit("reason", row.reason);
        visit("answer", row.answer);
        visit("changed_to", row.changedTo);
        visit("why", row.why);
        visit("input", row.input);
        visit("rules", row.rules);
        visit("ordinal", row.ordinal);
        visit("load_factor", row.loadFactor);
    }
};

template <> struct Table<DecisionOutline> {
    static constexpr std::string_view name = "decision";
    static constexpr Reach reach = Table<Decision>::reach;
    static void fields(auto& row, auto&& visit)
    {
        visit("season", row.season);
        visit("day", row.day);
        visit("made_utc_s", row.madeUtcSeconds);
        visit("ladder", row.ladder);
        visit("action", row.action);
        visit("rung_from", row.rungFrom);
        visit("rung_to", row.rungTo);
        visit("answer", row.answer);
        visit("changed_to", row.changedTo);
        visit("ordinal", row.ordinal);
        visit("load_factor", row.loadFactor);
    }
};

template <> struct Table<Document> {
    static constexpr std::string_view name = "document";
    static constexpr Reach reach{.joins = " LEFT JOIN athlete ON athlete.id = document.athlete",
                                 .alive = "coalesce(athlete.deleted, 0) = 0",
                                 .athlete = "document.athlete",
                                 .day = "document.day",
                                 .order = "document.day"};
    static void fields(auto& row, auto&& visit)
    {
        visit("athlete", row.athlete);
        visit("day", row.day);
        visit("kind", row.kind);
        visit("content", row.content);
    }
};

template <> struct Table<Sensor> {
    static constexpr std::string_view name = "sensor";
    static constexpr Reach reach{.order = "sensor.name"};
    static void fields(auto& row, auto&& visit)
    {
        visit("address", row.address);
        visit("name", row.name);
        visit("placement", row.placement);
        visit("map", row.map);
        visit("calibration", row.calibration);
        visit("last_used_utc_s", row.lastUsedUtcSeconds);
    }
};

template <> struct Table<SensorMap> {
    static constexpr std::string_view name = "sensor_map";
    static constexpr Reach reach{.order = "sensor_map.name"};
    static void fields(auto& row, auto&& visit)
    {
        visit("key", row.key);
        visit("name", row.name);
        visit("text", row.text);
    }
};

/// The columns of `Row`, then the record's own.
template <class R> void visitRow(R& row, auto&& visit)
{
    visit("id", row.id);
    visit("origin", row.origin);
    visit("counter", row.counter);
    visit("deleted", row.deleted);
    Table<std::remove_const_t<R>>::fields(row, visit);
}

} // namespace fleetrung::store
