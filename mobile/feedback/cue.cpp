#include "mobile/feedback/cue.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fleetrung::feedback
{
namespace
{

struct Note {
    double from = 0, to = 0; ///< Hz; 0 is a pause
    double seconds = 0;
};

// Pitches that a phone's small loudspeaker carries well; starting values of this project.
constexpr double high = 1320, middle = 990, low = 660, knock = 330;

std::vector<Note> notesOf(Cue cue)
{
    switch (cue) {
    case Cue::Inside:
        return {{middle, middle, 0.09}, {high, high, 0.14}};
    case Cue::Sooner:
        return {{high, high, 0.20}};
    case Cue::Later:
        return {{middle, middle, 0.09}, {low, low, 0.14}};
    case Cue::NoEvidence:
        return {{knock, knock, 0.10}};
    case Cue::Stop:
        return {{low, low, 0.13}, {0, 0, 0.06}, {low, low, 0.13}, {0, 0, 0.06}, {low, low, 0.22}};
    case Cue::Begun:
        return {{middle, middle, 0.08}};
    case Cue::Lost:
        return {{middle, knock, 0.45}};
    }
    return {};
}

void append(std::vector<std::int16_t>& samples, const Note& note)
{
    constexpr double loudness = 0.6 * 32767;
    constexpr double edge = 0.008; // s: a note that begins at once clicks
    const auto count = static_cast<int>(note.seconds * toneRate);
    double phase = 0;
    for (int i = 0; i < count; ++i) {
        const double time = static_cast<double>(i) / toneRate;
        const double pitch = note.from + (note.to - note.from) * time / note.seconds;
        const double gain = std::clamp(std::min(time, note.seconds - time) / edge, 0.0, 1.0);
        // With an overtone: a pure note is lost in the noise of plates.
        const double wave = pitch > 0 ? 0.8 * std::sin(phase) + 0.2 * std::sin(2 * phase) : 0;
        samples.push_back(static_cast<std::int16_t>(loudness * gain * wave));
        phase += 2 * std::numbers::pi * pitch / toneRate;
    }
}

} // namespace

std::vector<std::int16_t> tone(Cue cue)
{
    std::vector<std::int16_t> samples;
    for (const auto& note : notesOf(cue))
        append(samples, note);
    samples.push_back(0);
    return samples;
}

std::vector<int> shakes(Cue cue)
{
    switch (cue) {
    case Cue::Inside:
        return {40};
    case Cue::Sooner:
    case Cue::Later:
        return {40, 80, 40};
    case Cue::NoEvidence:
        return {15};
    case Cue::Stop:
        return {200, 100, 200, 100, 300};
    case Cue::Begun:
        return {25};
    case Cue::Lost:
        return {500};
    }
    return {};
}

} // namespace fleetrung::feedback
