// An invented 30-week season of an invented athlete, and sessions made for it. Sessions are made, not measured.
#pragma once

#include <string>
#include <vector>

#include "engine/season/decision.hpp"

namespace fleetrung::season::example
{

inline CivilDate on(const char* text)
{
    return *parseDate(text);
}

/// 30 weeks from Monday 2026-01-05 to the main race on Sunday 2026-08-02.
inline std::string seasonText()
{
    return R"({
  "name": "Outdoor season",
  "start": "2026-01-05",
  "competitions": [
    {"date": "2026-06-14", "name": "Spring meeting", "priority": "C"},
    {"date": "2026-07-04", "name": "Regional race", "priority": "B"},
    {"date": "2026-08-02", "name": "The main race", "priority": "A", "main": true}
  ],
  "training_days": ["mon", "wed", "fri"],
  "sprint_days": ["mon", "wed", "fri"],
  "session_minutes": 90,
  "box_heights_cm": [45, 35, 25, 15, 10, 20, 30, 40],
  "equipment": ["bar", "rack", "pins", "blocks"],
  "ladders": ["squat", "clean", "drop-jump"],
  "athlete": {"name": "Example", "birth_date": "2001-04-12", "training_years": 6, "body_mass_kg": 72}
})";
}

inline SeasonSetup setup()
{
    return *parseSetup(seasonText());
}

/// `text` of the season with one piece of text exchanged.
inline std::string seasonWith(const std::string& piece, const std::string& other)
{
    auto text = seasonText();
    const auto at = text.find(piece);
    return at == std::string::npos ? std::string("piece not found") : text.replace(at, piece.size(), other);
}

inline SessionEvidence session(CivilDate day, const std::string& rung, double timeMs, double velocity = 0.70,
                               const std::string& ladder = "squat")
{
    SessionEvidence evidence;
    evidence.day = day;
    evidence.ladder = ladder;
    evidence.rung = rung;
    evidence.loadKg = 100;
    evidence.timeToPeak = reps::Measured{timeMs / 1000, 0.004};
    evidence.meanVelocity = reps::Measured{velocity, 0.01};
    evidence.peakVelocity = reps::Measured{velocity * 1.6, 0.02};
    return evidence;
}

/// Sessions every `gap` days from `first`, one for each time.
inline std::vector<SessionEvidence> sessions(CivilDate first, int gap, const std::string& rung,
                                             const std::vector<double>& timesMs, const std::string& ladder = "squat")
{
    std::vector<SessionEvidence> result;
    for (std::size_t i = 0; i < timesMs.size(); ++i)
        result.push_back(session(first + std::chrono::days(gap * static_cast<int>(i)), rung, timesMs[i], 0.70, ladder));
    return result;
}

/// A day on the squat ladder alone: standing on `rung` since `since`.
inline DayInput squatDay(const char* today, const std::string& rung, const char* since,
                         std::vector<SessionEvidence> history = {})
{
    auto alone = setup();
    alone.ladders = {"squat"};
    DayInput input;
    input.plan = *planSeason(alone);
    input.states = {{"squat", {{rung, on(since)}}, {}, {}}};
    input.history = std::move(history);
    input.today = on(today);
    return input;
}

inline Decision decideSquat(const DayInput& input)
{
    return decideDay(input).at(0);
}

} // namespace fleetrung::season::example
