// The device's loudspeaker: tones and a voice (Qt Multimedia, Qt TextToSpeech). A device without either stays silent.
#pragma once

#include <memory>

#include <QString>

#include "mobile/feedback/cue.hpp"

namespace fleetrung::feedback
{

class Speaker
{
public:
    virtual ~Speaker() = default;
    virtual void play(Cue cue) = 0;
    /// In the voice of the program's language; what is being said is broken off: the latest value counts.
    virtual void say(const QString& words) = 0;
    [[nodiscard]] virtual bool hasVoice() const = 0;
};

[[nodiscard]] std::unique_ptr<Speaker> deviceSpeaker();

} // namespace fleetrung::feedback
