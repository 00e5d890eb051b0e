#include "mobile/feedback/speaker.hpp"

#include <array>

#include <QAudioFormat>
#include <QAudioSink>
#include <QBuffer>
#include <QMediaDevices>
#include <QTextToSpeech>

namespace fleetrung::feedback
{
namespace
{

QAudioFormat toneFormat()
{
    QAudioFormat format;
    format.setSampleRate(toneRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

/// Loudspeaker and voice are opened at the first sound: most who never turn them on never wait for them.
class Device : public Speaker
{
public:
    void play(Cue cue) override
    {
        if (!sink_) {
            const auto output = QMediaDevices::defaultAudioOutput();
            if (output.isNull() || !output.isFormatSupported(toneFormat()))
                return;
            sink_ = std::make_unique<QAudioSink>(output, toneFormat());
        }
        sink_->stop();
        const auto samples = tone(cue);
        buffer_.close();
        buffer_.setData(reinterpret_cast<const char*>(samples.data()), // the bytes of 16-bit samples
                        static_cast<qsizetype>(samples.size() * sizeof(samples[0])));
        buffer_.open(QIODevice::ReadOnly);
        sink_->start(&buffer_);
    }

    void say(const QString& words) override
    {
        if (!hasVoice())
            return;
        voice_->stop();
        voice_->say(words);
    }

    [[nodiscard]] bool hasVoice() const override
    {
        if (!voice_ && !looked_) {
            looked_ = true;
            if (!QTextToSpeech::availableEngines().isEmpty())
                voice_ = std::make_unique<QTextToSpeech>();
        }
        return voice_ && voice_->state() != QTextToSpeech::Error;
    }

private:
    QBuffer buffer_; // outlives the sink, which reads it
    std::unique_ptr<QAudioSink> sink_;
    mutable std::unique_ptr<QTextToSpeech> voice_;
    mutable bool looked_ = false;
};

} // namespace

std::unique_ptr<Speaker> deviceSpeaker()
{
    return std::make_unique<Device>();
}

} // namespace fleetrung::feedback
