#include "mobile/views/track_words.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include <QCoreApplication>

namespace fleetrung::views
{
namespace
{

struct TrackWords {
    Q_DECLARE_TR_FUNCTIONS(TrackWords)
};

} // namespace

QString trackWord(const std::string& key)
{
    static const std::vector<std::pair<std::string, const char*>> words{
        {"block", QT_TRANSLATE_NOOP("TrackWords", "blocks")},
        {"standing", QT_TRANSLATE_NOOP("TrackWords", "standing start")},
        {"flying", QT_TRANSLATE_NOOP("TrackWords", "flying")},
        {"falling", QT_TRANSLATE_NOOP("TrackWords", "falling start")},
        {"rolling", QT_TRANSLATE_NOOP("TrackWords", "rolling start")},
        {"hand", QT_TRANSLATE_NOOP("TrackWords", "hand timed")},
        {"gates", QT_TRANSLATE_NOOP("TrackWords", "gates")},
        {"video", QT_TRANSLATE_NOOP("TrackWords", "video")},
        {"electronic", QT_TRANSLATE_NOOP("TrackWords", "electronic")},
        {"track", QT_TRANSLATE_NOOP("TrackWords", "track")},
        {"indoor", QT_TRANSLATE_NOOP("TrackWords", "indoor")},
        {"grass", QT_TRANSLATE_NOOP("TrackWords", "grass")},
        {"work-sprints", QT_TRANSLATE_NOOP("TrackWords", "Sprints")},
        {"work-flying", QT_TRANSLATE_NOOP("TrackWords", "Flying sprints")},
        {"work-resisted", QT_TRANSLATE_NOOP("TrackWords", "Resisted sprints")},
        {"work-hill", QT_TRANSLATE_NOOP("TrackWords", "Hill sprints")},
        {"work-easy", QT_TRANSLATE_NOOP("TrackWords", "Easy runs")},
        {"drop-jump", QT_TRANSLATE_NOOP("TrackWords", "Drop jump")},
        {"counter-movement", QT_TRANSLATE_NOOP("TrackWords", "Counter-movement jump")},
        {"squat-jump", QT_TRANSLATE_NOOP("TrackWords", "Squat jump")},
        {"standing-long", QT_TRANSLATE_NOOP("TrackWords", "Standing long jump")},
        {"long-jump", QT_TRANSLATE_NOOP("TrackWords", "Long jump")},
        {"bounds", QT_TRANSLATE_NOOP("TrackWords", "Bounds")},
        {"spikes", QT_TRANSLATE_NOOP("TrackWords", "spikes")},
        {"flats", QT_TRANSLATE_NOOP("TrackWords", "flats")},
    };
    const auto found = std::ranges::find(words, key, &std::pair<std::string, const char*>::first);
    if (found != words.end())
        return TrackWords::tr(found->second);
    QString word = QString::fromStdString(key).replace(QLatin1Char('-'), QLatin1Char(' '));
    return word.left(1).toUpper() + word.mid(1);
}

QString testName(const store::Sprint& run, const Units& units)
{
    const QString distance = units.distance(run.distance);
    if (run.start == "flying")
        return TrackWords::tr("Flying %1").arg(distance);
    if (run.start == "block")
        return TrackWords::tr("%1 from blocks").arg(distance);
    return run.start.empty() ? distance : TrackWords::tr("%1, %2").arg(distance, trackWord(run.start));
}

} // namespace fleetrung::views
