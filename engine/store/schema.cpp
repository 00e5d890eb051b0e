#include "engine/store/migrate.hpp"

namespace fleetrung::store
{
namespace
{

// Every table begins with the four columns of `Row`. Texts that name a choice are lower case; days are "2026-03-30"; an
// instant is four columns: NAME_utc_s, NAME_offset_min, NAME_zone, NAME_day. A measured value has its standard
// uncertainty beside it in NAME_u. A step that was in use is never edited: append another.
constexpr std::string_view rowsStep1 = R"sql(
CREATE TABLE lamport (
    only    INTEGER PRIMARY KEY CHECK (only = 1),
    counter INTEGER NOT NULL
) STRICT;
INSERT INTO lamport VALUES (1, 0);

CREATE TABLE field_stamp (
    row_id  BLOB NOT NULL,
    field   TEXT NOT NULL,
    counter INTEGER NOT NULL,
    device  BLOB NOT NULL,
    PRIMARY KEY (row_id, field)
) STRICT, WITHOUT ROWID;

CREATE TABLE device (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    name TEXT NOT NULL
) STRICT;

CREATE TABLE athlete (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    name TEXT NOT NULL CHECK (name <> ''),
    event TEXT NOT NULL,
    born_day TEXT,
    stature_m REAL CHECK (stature_m BETWEEN 0.5 AND 2.6),
    body_mass_kg REAL CHECK (body_mass_kg BETWEEN 15 AND 300),
    training_years REAL CHECK (training_years >= 0),
    guardian_consent INTEGER NOT NULL CHECK (guardian_consent IN (0, 1)),
    note TEXT NOT NULL
) STRICT;

CREATE TABLE season (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    name TEXT NOT NULL,
    start_day TEXT NOT NULL,
    finish_day TEXT NOT NULL CHECK (finish_day >= start_day),
    setup TEXT NOT NULL
) STRICT;
CREATE INDEX season_of_athlete ON season (athlete, start_day);

CREATE TABLE session (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    season BLOB REFERENCES season,
    begun_utc_s INTEGER NOT NULL, begun_offset_min INTEGER NOT NULL, begun_zone TEXT NOT NULL, begun_day TEXT NOT NULL,
    kind TEXT NOT NULL,
    effort REAL CHECK (effort BETWEEN 1 AND 10),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX session_of_athlete ON session (athlete, begun_day, deleted);

CREATE TABLE lift_set (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    session BLOB NOT NULL REFERENCES session,
    ordinal INTEGER NOT NULL,
    done_utc_s INTEGER NOT NULL, done_offset_min INTEGER NOT NULL, done_zone TEXT NOT NULL, done_day TEXT NOT NULL,
    lift TEXT NOT NULL CHECK (lift <> ''),
    ladder TEXT NOT NULL,
    rung TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('warm-up', 'probe', 'work', 'maintenance')),
    side TEXT NOT NULL CHECK (side IN ('both', 'left', 'right')),
    load_kg REAL NOT NULL CHECK (load_kg BETWEEN 0 AND 1000),
    repetitions_planned INTEGER NOT NULL CHECK (repetitions_planned >= 0),
    repetitions_done INTEGER CHECK (repetitions_done >= 0),
    box_height_m REAL CHECK (box_height_m BETWEEN 0 AND 2),
    effort REAL CHECK (effort BETWEEN 1 AND 10),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX lift_set_of_session ON lift_set (session, ordinal);

CREATE TABLE capture (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    lift_set BLOB NOT NULL REFERENCES lift_set,
    sensor TEXT NOT NULL,
    placement TEXT NOT NULL,
    content_hash TEXT NOT NULL CHECK (length(content_hash) = 64),
    samples INTEGER NOT NULL CHECK (samples >= 0),
    has_gyroscope INTEGER NOT NULL CHECK (has_gyroscope IN (0, 1)),
    traits TEXT NOT NULL,
    clock_fit TEXT NOT NULL,
    UNIQUE (lift_set, sensor, placement)
) STRICT;

CREATE TABLE analysis (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    lift_set BLOB NOT NULL REFERENCES lift_set,
    capture BLOB REFERENCES capture,
    engine_version TEXT NOT NULL,
    settings_hash TEXT NOT NULL,
    accepted INTEGER NOT NULL CHECK (accepted IN (0, 1)),
    sampling_rate_hz REAL NOT NULL
) STRICT;
CREATE INDEX analysis_of_set ON analysis (lift_set);
CREATE INDEX analysis_of_capture ON analysis (capture);

CREATE TABLE repetition (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    analysis BLOB NOT NULL REFERENCES analysis,
    ordinal INTEGER NOT NULL,
    side TEXT NOT NULL CHECK (side IN ('both', 'left', 'right')),
    eccentric_start_s REAL NOT NULL, concentric_start_s REAL NOT NULL, peak_s REAL NOT NULL, concentric_end_s REAL NOT NULL,
    flags INTEGER NOT NULL,
    mean_velocity_mps REAL, mean_velocity_mps_u REAL,
    mean_propulsive_velocity_mps REAL, mean_propulsive_velocity_mps_u REAL,
    peak_velocity_mps REAL, peak_velocity_mps_u REAL,
    time_to_peak_velocity_s REAL, time_to_peak_velocity_s_u REAL,
    range_m REAL, range_m_u REAL,
    displacement_to_peak_m REAL, displacement_to_peak_m_u REAL,
    concentric_duration_s REAL, concentric_duration_s_u REAL,
    velocity_at_100ms_mps REAL, velocity_at_100ms_mps_u REAL,
    velocity_at_200ms_mps REAL, velocity_at_200ms_mps_u REAL,
    eccentric_peak_velocity_mps REAL, eccentric_peak_velocity_mps_u REAL,
    eccentric_duration_s REAL, eccentric_duration_s_u REAL,
    reversal_time_s REAL, reversal_time_s_u REAL
) STRICT;
CREATE INDEX repetition_of_analysis ON repetition (analysis, ordinal);

CREATE TABLE edit_event (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    lift_set BLOB NOT NULL REFERENCES lift_set,
    capture BLOB REFERENCES capture,
    at_s REAL NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('delete', 'undelete', 'relabel', 'add')),
    value TEXT NOT NULL,
    made_utc_s INTEGER NOT NULL, made_offset_min INTEGER NOT NULL, made_zone TEXT NOT NULL, made_day TEXT NOT NULL
) STRICT;
CREATE INDEX edit_event_of_set ON edit_event (lift_set);

CREATE TABLE sprint (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    session BLOB REFERENCES session,
    run_utc_s INTEGER NOT NULL, run_offset_min INTEGER NOT NULL, run_zone TEXT NOT NULL, run_day TEXT NOT NULL,
    distance_m REAL NOT NULL CHECK (distance_m > 0),
    time_s REAL NOT NULL CHECK (time_s > 0),
    splits TEXT NOT NULL,
    start TEXT NOT NULL,
    run_in_m REAL NOT NULL CHECK (run_in_m >= 0),
    timing TEXT NOT NULL,
    surface TEXT NOT NULL,
    shoes TEXT NOT NULL,
    wind_mps REAL CHECK (wind_mps BETWEEN -20 AND 20),
    temperature_c REAL CHECK (temperature_c BETWEEN -40 AND 60),
    effort REAL CHECK (effort BETWEEN 1 AND 10),
    competition INTEGER NOT NULL CHECK (competition IN (0, 1)),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX sprint_of_athlete ON sprint (athlete, run_day);

CREATE TABLE jump (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    session BLOB REFERENCES session,
    done_utc_s INTEGER NOT NULL, done_offset_min INTEGER NOT NULL, done_zone TEXT NOT NULL, done_day TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind <> ''),
    side TEXT NOT NULL CHECK (side IN ('both', 'left', 'right')),
    box_height_m REAL CHECK (box_height_m BETWEEN 0 AND 2),
    contact_s REAL CHECK (contact_s > 0), contact_s_u REAL,
    flight_s REAL CHECK (flight_s > 0), flight_s_u REAL,
    height_m REAL CHECK (height_m > 0), height_m_u REAL,
    distance_m REAL CHECK (distance_m > 0), distance_m_u REAL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX jump_of_athlete ON jump (athlete, done_day);

CREATE TABLE wellness (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    asked_utc_s INTEGER NOT NULL, asked_offset_min INTEGER NOT NULL, asked_zone TEXT NOT NULL, asked_day TEXT NOT NULL,
    sleep_h REAL CHECK (sleep_h BETWEEN 0 AND 24),
    soreness REAL CHECK (soreness BETWEEN 0 AND 10),
    pain REAL CHECK (pain BETWEEN 0 AND 10),
    pain_where TEXT NOT NULL,
    sharp_pain INTEGER NOT NULL CHECK (sharp_pain IN (0, 1)),
    limping INTEGER NOT NULL CHECK (limping IN (0, 1)),
    new_hamstring_pain INTEGER NOT NULL CHECK (new_hamstring_pain IN (0, 1)),
    refused INTEGER NOT NULL CHECK (refused IN (0, 1)),
    body_mass_kg REAL CHECK (body_mass_kg BETWEEN 15 AND 300),
    note TEXT NOT NULL
) STRICT;
CREATE INDEX wellness_of_athlete ON wellness (athlete, asked_day);

CREATE TABLE lost_day (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    day TEXT NOT NULL,
    why TEXT NOT NULL
) STRICT;
CREATE INDEX lost_day_of_athlete ON lost_day (athlete, day);

CREATE TABLE decision (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    season BLOB NOT NULL REFERENCES season,
    day TEXT NOT NULL,
    made_utc_s INTEGER NOT NULL, made_offset_min INTEGER NOT NULL, made_zone TEXT NOT NULL, made_day TEXT NOT NULL,
    ladder TEXT NOT NULL,
    action TEXT NOT NULL,
    rule TEXT NOT NULL,
    rung_from TEXT NOT NULL,
    rung_to TEXT NOT NULL,
    evidence TEXT NOT NULL,
    reason TEXT NOT NULL,
    answer TEXT NOT NULL CHECK (answer IN ('none', 'followed', 'changed')),
    changed_to TEXT NOT NULL,
    why TEXT NOT NULL
) STRICT;
CREATE INDEX decision_of_athlete ON decision (athlete, day);
)sql";

// What decisions were made from, in which order they were taken, and training groups. The indices serve a squad's day:
// where each athlete stands without reading old evidence.
constexpr std::string_view rowsStep2 = R"sql(
CREATE TABLE document (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB REFERENCES athlete,
    day TEXT,
    kind TEXT NOT NULL CHECK (kind IN ('day-input', 'season-data', 'warm-up-check')),
    content BLOB NOT NULL CHECK (length(content) > 0)
) STRICT;
CREATE INDEX document_of_athlete ON document (athlete, day);

ALTER TABLE decision ADD COLUMN input BLOB REFERENCES document;
ALTER TABLE decision ADD COLUMN rules BLOB REFERENCES document;
ALTER TABLE decision ADD COLUMN ordinal INTEGER NOT NULL DEFAULT 0 CHECK (ordinal >= 0);
ALTER TABLE decision ADD COLUMN load_factor REAL NOT NULL DEFAULT 1;
UPDATE decision SET load_factor = json_extract(evidence, '$.load_factor')
    WHERE json_valid(evidence) AND json_type(evidence, '$.load_factor') IN ('real', 'integer');
CREATE INDEX decision_of_season ON decision (season, day, ladder);
CREATE INDEX decision_of_input ON decision (input);
CREATE INDEX decision_moves ON decision (season, day) WHERE rung_from <> rung_to OR answer = 'changed';
CREATE INDEX decision_eased ON decision (season, day) WHERE load_factor < 1;

ALTER TABLE athlete ADD COLUMN training_group TEXT NOT NULL DEFAULT '';
)sql";

// Sensors this device knows, and maps that were taught or imported.
constexpr std::string_view rowsStep3 = R"sql(
CREATE TABLE sensor (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    address TEXT NOT NULL CHECK (address <> ''),
    name TEXT NOT NULL,
    placement TEXT NOT NULL CHECK (placement IN ('bar', 'shoe', 'waist')),
    map TEXT NOT NULL,
    calibration TEXT NOT NULL,
    last_used_utc_s INTEGER
) STRICT;

CREATE TABLE sensor_map (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    key TEXT NOT NULL CHECK (key <> ''),
    name TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT;
)sql";

// The track log: work that is counted, test days, and what a run's fit and its steps need.
constexpr std::string_view rowsStep4 = R"sql(
CREATE TABLE track_work (
    id BLOB PRIMARY KEY NOT NULL CHECK (length(id) = 16), origin BLOB NOT NULL, counter INTEGER NOT NULL,
    deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
    athlete BLOB NOT NULL REFERENCES athlete,
    session BLOB REFERENCES session,
    done_utc_s INTEGER NOT NULL, done_offset_min INTEGER NOT NULL, done_zone TEXT NOT NULL, done_day TEXT NOT NULL,
    kind TEXT NOT NULL CHECK (kind <> ''),
    distance_m REAL NOT NULL CHECK (distance_m > 0),
    repetitions INTEGER NOT NULL CHECK (repetitions BETWEEN 1 AND 200),
    best_time_s REAL CHECK (best_time_s > 0),
    rest_s REAL CHECK (rest_s >= 0),
    effort REAL CHECK (effort BETWEEN 1 AND 10),
    load_kg REAL CHECK (load_kg BETWEEN 0 AND 500),
    slope_percent REAL CHECK (slope_percent BETWEEN -50 AND 50),
    wind_mps REAL CHECK (wind_mps BETWEEN -20 AND 20),
    timing TEXT NOT NULL,
    surface TEXT NOT NULL,
    shoes TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;
CREATE INDEX track_work_of_athlete ON track_work (athlete, done_day);

ALTER TABLE sprint ADD COLUMN test INTEGER NOT NULL DEFAULT 0 CHECK (test IN (0, 1));
ALTER TABLE sprint ADD COLUMN reaction_s REAL CHECK (reaction_s BETWEEN 0 AND 2);
ALTER TABLE sprint ADD COLUMN beam_m REAL CHECK (beam_m BETWEEN 0 AND 10);
ALTER TABLE sprint ADD COLUMN altitude_m REAL CHECK (altitude_m BETWEEN -500 AND 6000);
ALTER TABLE sprint ADD COLUMN contact_s REAL CHECK (contact_s BETWEEN 0.02 AND 1);
ALTER TABLE sprint ADD COLUMN step_length_m REAL CHECK (step_length_m BETWEEN 0.3 AND 4);

ALTER TABLE jump ADD COLUMN test INTEGER NOT NULL DEFAULT 0 CHECK (test IN (0, 1));
ALTER TABLE jump ADD COLUMN repetitions INTEGER NOT NULL DEFAULT 1 CHECK (repetitions BETWEEN 1 AND 100);
ALTER TABLE jump ADD COLUMN surface TEXT NOT NULL DEFAULT '';
ALTER TABLE jump ADD COLUMN shoes TEXT NOT NULL DEFAULT '';
)sql";

constexpr std::string_view capturesStep1 = R"sql(
CREATE TABLE samples (
    content_hash TEXT PRIMARY KEY NOT NULL CHECK (length(content_hash) = 64),
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE piece (
    recording BLOB NOT NULL CHECK (length(recording) = 16),
    ordinal INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    UNIQUE (recording, ordinal)
) STRICT;
)sql";

// What is needed to finish a set whose recording was cut off.
constexpr std::string_view capturesStep2 = R"sql(
CREATE TABLE unfinished (
    recording BLOB PRIMARY KEY NOT NULL CHECK (length(recording) = 16),
    facts TEXT NOT NULL,
    clock_fit TEXT NOT NULL
) STRICT, WITHOUT ROWID;
)sql";

constexpr std::array rowsSteps{rowsStep1, rowsStep2, rowsStep3, rowsStep4};
constexpr std::array capturesSteps{capturesStep1, capturesStep2};

constexpr Schema rows{0x464C5267, "store", rowsSteps};                 // "FLRg"
constexpr Schema captures{0x464C5263, "captures file", capturesSteps}; // "FLRc"

} // namespace

const Schema& rowsSchema()
{
    return rows;
}

const Schema& capturesSchema()
{
    return captures;
}

} // namespace fleetrung::store
