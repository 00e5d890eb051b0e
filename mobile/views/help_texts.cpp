#include "mobile/views/help_texts.hpp"

#include <algorithm>
#include <vector>

#include <QCoreApplication>

namespace fleetrung::views
{
namespace
{

struct HelpWords {
    Q_DECLARE_TR_FUNCTIONS(HelpWords)
};

struct Topic {
    const char* key;
    const char* title;
    const char* what;
    const char* formula;
    const char* source;
    const char* sure;
};

// The sources are those of the engine's public headers, which state each formula.
const std::vector<Topic> topics{
    {"time-to-peak", QT_TRANSLATE_NOOP("HelpWords", "Time to peak velocity"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "From the instant the bar begins to rise to the instant it is fastest. The season's "
                       "evidence: on one rung, at one load, it should come sooner."),
     QT_TRANSLATE_NOOP("HelpWords", "instant of peak velocity − instant of concentric start"),
     QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords",
                       "About 2 to 6 ms rms in simulated sets. A repetition with two peaks is no evidence. "
                       "It is not a stance's force peak.")},
    {"band", QT_TRANSLATE_NOOP("HelpWords", "Target band and contact times"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "The band is where time to peak velocity usually lies on this rung. The pale bands are "
                       "contact times of a sprint, for scale and no goal."),
     "", QT_TRANSLATE_NOOP("HelpWords", "A starting value of this project, later your own values."),
     QT_TRANSLATE_NOOP("HelpWords", "A guide: your own line on the rung counts.")},
    {"mean-velocity", QT_TRANSLATE_NOOP("HelpWords", "Mean velocity"),
     QT_TRANSLATE_NOOP("HelpWords", "How fast the bar rose on average, from its start to its end."),
     QT_TRANSLATE_NOOP("HelpWords", "way of the concentric phase ÷ its duration"),
     QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords", "About 4 mm/s rms in simulated sets; a day's value wanders by about 0.04 m/s.")},
    {"peak-velocity", QT_TRANSLATE_NOOP("HelpWords", "Peak velocity"),
     QT_TRANSLATE_NOOP("HelpWords", "The greatest speed of the bar on its way up. Told for lifts that throw or catch."),
     "", QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords", "About 7 mm/s rms in simulated sets; against cameras 24 mm/s.")},
    {"range", QT_TRANSLATE_NOOP("HelpWords", "Range"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "The vertical way of the bar. A rung of the ladder asks for its own range; a repetition "
                       "well below the set's median is flagged as partial."),
     "", QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords", "About 3 mm in simulated sets, 15 mm against cameras.")},
    {"velocity-loss", QT_TRANSLATE_NOOP("HelpWords", "Velocity loss"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "How much slower the last repetition was than the fastest of the set. The set ends at "
                       "the loss that the phase allows, however many repetitions that are."),
     QT_TRANSLATE_NOOP("HelpWords", "1 − last mean velocity ÷ fastest mean velocity"),
     QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source; the limits are starting values of this project."),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Two repetitions of the same effort differ by a few hundredths of a metre per second.")},
    {"left", QT_TRANSLATE_NOOP("HelpWords", "Repetitions left"),
     QT_TRANSLATE_NOOP("HelpWords", "A guess from the loss of velocity: how many more could have been done."),
     QT_TRANSLATE_NOOP("HelpWords", "left = done × (1 ÷ share − 1), share = loss ÷ loss at half ÷ 2"),
     QT_TRANSLATE_NOOP("HelpWords", "Starting values of this project; with five sets of your own, yours."),
     QT_TRANSLATE_NOOP("HelpWords", "Wide: the range is shown. The stop of a set never rests on it.")},
    {"decision", QT_TRANSLATE_NOOP("HelpWords", "What a decision rests on"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Step, hold, step back, ease or rest: each line is one test with its value and what is "
                       "allowed. A step needs sessions and days on the rung, a time to peak that came down by "
                       "more than it wanders, and velocity and strength that held."),
     "", QT_TRANSLATE_NOOP("HelpWords", "Rules of this project, each with its origin in the program's rules."),
     QT_TRANSLATE_NOOP("HelpWords", "A rule is no proof. Your answer is kept with it, and counts.")},
    {"typical-error", QT_TRANSLATE_NOOP("HelpWords", "Typical error"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "How far a session's value wanders by itself, from one session to the next. A change "
                       "counts only beyond it."),
     QT_TRANSLATE_NOOP("HelpWords", "standard deviation of differences of successive sessions ÷ √2"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000."),
     QT_TRANSLATE_NOOP("HelpWords", "It begins with a prior and becomes yours with the sessions.")},
    {"trend", QT_TRANSLATE_NOOP("HelpWords", "A trend over the season"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Each point is a session's probe set. Only points on the same rung are to be compared: a "
                       "shorter range is quicker anyway."),
     "",
     QT_TRANSLATE_NOOP("HelpWords",
                       "Lines are Theil-Sen lines (Theil 1950, Sen 1968): one bad day does not move them."),
     QT_TRANSLATE_NOOP("HelpWords", "Look at several weeks, never at one point.")},
    {"load-velocity", QT_TRANSLATE_NOOP("HelpWords", "Load and velocity"),
     QT_TRANSLATE_NOOP("HelpWords", "Heavier is slower, nearly along a line that is your own on each lift and rung."),
     QT_TRANSLATE_NOOP("HelpWords", "velocity = a + b × load, least squares and robust"),
     QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords", "Two loads far apart and a third between make it steady.")},
    {"maximum", QT_TRANSLATE_NOOP("HelpWords", "Estimated 1RM"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "The load at which the line meets the velocity that is published for one repetition at "
                       "most. Never load it to see whether it is right."),
     QT_TRANSLATE_NOOP("HelpWords", "load where the line meets the velocity at 1RM; interval after Fieller"),
     QT_TRANSLATE_NOOP("HelpWords", "Velocities at 1RM: published for a few lifts, named beside the number."),
     QT_TRANSLATE_NOOP("HelpWords", "Its 95 % interval is shown; people also differ in the velocity itself.")},
    {"warm-up-check", QT_TRANSLATE_NOOP("HelpWords", "Warm-up check"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "The velocity at two warm-up loads against your own at these loads. It can take load or "
                       "sets off today, never put any on."),
     "", QT_TRANSLATE_NOOP("HelpWords", "A rule of this project."),
     QT_TRANSLATE_NOOP("HelpWords", "A loss counts where both loads are slower by more than the typical error.")},
    {"contact", QT_TRANSLATE_NOOP("HelpWords", "Contact and flight"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "How long the foot is on the ground, and how long in the air after it. Contacts up to "
                       "250 ms count as fast."),
     "",
     QT_TRANSLATE_NOOP("HelpWords", "Schmidtbleicher 1992, in Komi (ed), Strength and Power in Sport; from memory."),
     QT_TRANSLATE_NOOP("HelpWords", "From video of 240 pictures a second ± 4 ms.")},
    {"jump-height", QT_TRANSLATE_NOOP("HelpWords", "Jump height"),
     QT_TRANSLATE_NOOP("HelpWords", "How high the body rose, from how long it flew."),
     QT_TRANSLATE_NOOP("HelpWords", "height = g × flight² ÷ 8"),
     QT_TRANSLATE_NOOP("HelpWords", "Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; from memory."),
     QT_TRANSLATE_NOOP("HelpWords", "It holds where the body lands as it took off: bent knees make it too high.")},
    {"rsi", QT_TRANSLATE_NOOP("HelpWords", "Reactive strength index, RSI"),
     QT_TRANSLATE_NOOP("HelpWords", "Height for the time on the ground: high and quick together."),
     QT_TRANSLATE_NOOP("HelpWords", "RSI = height ÷ contact time"),
     QT_TRANSLATE_NOOP("HelpWords", "Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511."),
     QT_TRANSLATE_NOOP("HelpWords", "A day's value wanders by about 7 %.")},
    {"top-speed", QT_TRANSLATE_NOOP("HelpWords", "Top speed and time constant"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "The speed that the splits point to, and how soon it is reached: after one time constant "
                       "63 % of it, after three 95 %."),
     QT_TRANSLATE_NOOP("HelpWords", "v(t) = top speed × (1 − exp(−t ÷ τ)), fitted to the splits"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Furusawa, Hill, Parkinson 1927; on splits Samozino et al. 2016, doi:10.1111/sms.12490."),
     QT_TRANSLATE_NOOP("HelpWords", "One standard error stands beside it. The model is no exact law.")},
    {"force-power", QT_TRANSLATE_NOOP("HelpWords", "Force and power of a sprint"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Horizontal force and power from the speed curve, your mass and the drag of the air."),
     QT_TRANSLATE_NOOP("HelpWords", "F = m × acceleration + k × (v − wind)²; P = F × v"),
     QT_TRANSLATE_NOOP("HelpWords", "Samozino et al. 2016, doi:10.1111/sms.12490; equations from memory."),
     QT_TRANSLATE_NOOP("HelpWords", "As sure as the curve; what was not typed (air, wind) is assumed and said.")},
    {"flying-speed", QT_TRANSLATE_NOOP("HelpWords", "Flying speed"),
     QT_TRANSLATE_NOOP("HelpWords", "Mean speed over a zone that is entered at full speed."),
     QT_TRANSLATE_NOOP("HelpWords", "zone ÷ time"), QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source."),
     QT_TRANSLATE_NOOP("HelpWords", "By hand a flying 20 m is 7 % off; gates and video are told beside it.")},
    {"wind", QT_TRANSLATE_NOOP("HelpWords", "Wind-aided"),
     QT_TRANSLATE_NOOP("HelpWords", "More than 2.0 m/s of wind from behind in a competition: the time is no best."), "",
     QT_TRANSLATE_NOOP("HelpWords", "World Athletics' technical rules; from memory."),
     QT_TRANSLATE_NOOP("HelpWords", "As the reading of the wind gauge.")},
    {"fast-metres", QT_TRANSLATE_NOOP("HelpWords", "Fast metres"),
     QT_TRANSLATE_NOOP("HelpWords", "Metres run at 90 and at 95 % of the best speed of the last 12 months, or above."),
     "", QT_TRANSLATE_NOOP("HelpWords", "Common practice, no source; the shares are this project's."),
     QT_TRANSLATE_NOOP("HelpWords",
                       "\"About\" stands where part of it is estimated from distance and time, or from effort.")},
    {"did-it-work", QT_TRANSLATE_NOOP("HelpWords", "Did it work?"),
     QT_TRANSLATE_NOOP("HelpWords",
                       "Whether the bar's quickness and the sprint times moved together beyond their trends. "
                       "Never called cause."),
     QT_TRANSLATE_NOOP("HelpWords", "Spearman's rank correlation at five lags, against turned seasons"),
     QT_TRANSLATE_NOOP("HelpWords", "Spearman 1904, Am J Psychol 15:72-101; the test is this project's."),
     QT_TRANSLATE_NOOP("HelpWords", "Without any relation it speaks in about 3 of 100 seasons.")},
};

QString said(const char* text)
{
    return *text == 0 ? QString() : HelpWords::tr(text);
}

} // namespace

std::optional<HelpText> helpText(const QString& topic)
{
    const auto found =
        std::ranges::find_if(topics, [&topic](const Topic& one) { return topic == QLatin1String(one.key); });
    if (found == topics.end())
        return std::nullopt;
    return HelpText{said(found->title), said(found->what), said(found->formula), said(found->source),
                    said(found->sure)};
}

QStringList helpTopics()
{
    QStringList keys;
    for (const auto& topic : topics)
        keys += QString::fromLatin1(topic.key);
    return keys;
}

} // namespace fleetrung::views
