#include "mobile/views/engine_words.hpp"

#include <vector>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

namespace fleetrung::views
{
namespace
{

// The engine's names and sentences as it writes them, values as %1, %2. Of two that fit the one above counts.
const std::vector<const char*> known{
    // Reasons of a day's lift.
    QT_TRANSLATE_NOOP("EngineWords", "lift"),
    QT_TRANSLATE_NOOP("EngineWords", "rung"),
    QT_TRANSLATE_NOOP("EngineWords", "load"),
    QT_TRANSLATE_NOOP("EngineWords", "sets"),
    QT_TRANSLATE_NOOP("EngineWords", "probe"),
    QT_TRANSLATE_NOOP("EngineWords", "set stop"),
    QT_TRANSLATE_NOOP("EngineWords", "contacts"),
    QT_TRANSLATE_NOOP("EngineWords", "maintenance"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is the rung that the plan puts here, in %2."),
    QT_TRANSLATE_NOOP("EngineWords", "No load is known on this ladder yet: find one of effort 7 of 10."),
    QT_TRANSLATE_NOOP("EngineWords", "From %1, down to what the plates make."),
    QT_TRANSLATE_NOOP("EngineWords", "the last work load, never more on a longer range"),
    QT_TRANSLATE_NOOP("EngineWords", "the last work load"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 x the full squat's estimated maximum"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 x the last load on the rung before"),
    QT_TRANSLATE_NOOP("EngineWords", "the load of effort 7 of 10"),
    QT_TRANSLATE_NOOP("EngineWords", "at most %1 % more under 18"),
    QT_TRANSLATE_NOOP("EngineWords", "at most %1 % more in 28 days"),
    QT_TRANSLATE_NOOP("EngineWords", "at most %1 % more in 7 days"),
    QT_TRANSLATE_NOOP("EngineWords", "the load of %1"),
    QT_TRANSLATE_NOOP("EngineWords",
                      "First time on this rung: stop adding at effort 7 of 10, whatever the number says."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 less today, by the decision."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "%1 sets of %2 are the rung's own; %3 and the competitions near leave %4 of that."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 sets of %2 are the rung's own."),
    QT_TRANSLATE_NOOP("EngineWords", "The decision takes it down to %1."),
    QT_TRANSLATE_NOOP("EngineWords", "Three repetitions with full intent, at the same load for the whole stay on the "
                                     "rung: the only thing that counts as evidence."),
    QT_TRANSLATE_NOOP("EngineWords", "Three jumps with full intent: the only thing that counts as evidence."),
    QT_TRANSLATE_NOOP("EngineWords", "In %1 a set ends when velocity has fallen by %2 from its fastest repetition."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "At most %1 drop-jump contacts today: our limits for a session and for seven days."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 was last lifted %2 days ago: two heavy sets keep its strength."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "%1 was last lifted %2 days ago, longer than it should be: two heavy sets keep its strength."),
    QT_TRANSLATE_NOOP("EngineWords", "A heavy lift stands on a sprint day, after the run, so that low days stay low."),
    QT_TRANSLATE_NOOP("EngineWords", "A lifting day of the week."),
    QT_TRANSLATE_NOOP("EngineWords", "A light, fast ladder: it may stand on any lifting day, before the heavy ones."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 ladders share %2 places a session: it is this one's turn."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 stands in for %2, which loads the place that hurts."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "%1 rests: the contacts of these days are done, and drop jumps need %2 days between."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 rests: %2"),
    QT_TRANSLATE_NOOP("EngineWords", "A primer, light and fast, by choice. It is no evidence."),
    // Names, evidence, decisions, cautions.
    QT_TRANSLATE_NOOP("EngineWords", "Squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Step-up"),
    QT_TRANSLATE_NOOP("EngineWords", "Clean"),
    QT_TRANSLATE_NOOP("EngineWords", "Hinge"),
    QT_TRANSLATE_NOOP("EngineWords", "Pull"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump"),
    QT_TRANSLATE_NOOP("EngineWords", "Ankle"),
    QT_TRANSLATE_NOOP("EngineWords", "Full squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Parallel squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Half squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Quarter squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Quarter squat from pins"),
    QT_TRANSLATE_NOOP("EngineWords", "Short drop squat"),
    QT_TRANSLATE_NOOP("EngineWords", "Full"),
    QT_TRANSLATE_NOOP("EngineWords", "Parallel"),
    QT_TRANSLATE_NOOP("EngineWords", "Half"),
    QT_TRANSLATE_NOOP("EngineWords", "Quarter"),
    QT_TRANSLATE_NOOP("EngineWords", "Quarter from pins"),
    QT_TRANSLATE_NOOP("EngineWords", "Short drop"),
    QT_TRANSLATE_NOOP("EngineWords", "Step-up, %1"),
    QT_TRANSLATE_NOOP("EngineWords", "Clean from the floor, caught low"),
    QT_TRANSLATE_NOOP("EngineWords", "Power clean from the floor"),
    QT_TRANSLATE_NOOP("EngineWords", "Power clean from blocks at the knee"),
    QT_TRANSLATE_NOOP("EngineWords", "Power clean from the hang"),
    QT_TRANSLATE_NOOP("EngineWords", "Power clean from the hang, fast drop"),
    QT_TRANSLATE_NOOP("EngineWords", "Romanian deadlift to mid-shin"),
    QT_TRANSLATE_NOOP("EngineWords", "Romanian deadlift to the knee"),
    QT_TRANSLATE_NOOP("EngineWords", "Quarter hinge"),
    QT_TRANSLATE_NOOP("EngineWords", "Pull from the floor"),
    QT_TRANSLATE_NOOP("EngineWords", "Pull from knee blocks"),
    QT_TRANSLATE_NOOP("EngineWords", "Pull from mid-thigh blocks"),
    QT_TRANSLATE_NOOP("EngineWords", "High pull from mid-thigh"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump, %1, entry"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump, %1, on the way up"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump, %1, on the way down"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump, %1, quickest contact"),
    QT_TRANSLATE_NOOP("EngineWords", "Drop jump, %1"),
    QT_TRANSLATE_NOOP("EngineWords", "Calf raise through full range"),
    QT_TRANSLATE_NOOP("EngineWords", "Calf raise, upper half"),
    QT_TRANSLATE_NOOP("EngineWords", "Loaded ankle hops"),
    QT_TRANSLATE_NOOP("EngineWords", "general preparation"),
    QT_TRANSLATE_NOOP("EngineWords", "special preparation"),
    QT_TRANSLATE_NOOP("EngineWords", "pre-competition"),
    QT_TRANSLATE_NOOP("EngineWords", "competition"),
    QT_TRANSLATE_NOOP("EngineWords", "taper"),
    QT_TRANSLATE_NOOP("EngineWords", "transition"),
    QT_TRANSLATE_NOOP("EngineWords", "time to peak velocity"),
    QT_TRANSLATE_NOOP("EngineWords", "time to peak"),
    QT_TRANSLATE_NOOP("EngineWords", "drop time"),
    QT_TRANSLATE_NOOP("EngineWords", "contact time"),
    QT_TRANSLATE_NOOP("EngineWords", "sessions on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "days on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "days past the latest date"),
    QT_TRANSLATE_NOOP("EngineWords", "days until the next rung's phase"),
    QT_TRANSLATE_NOOP("EngineWords", "days away from this ladder"),
    QT_TRANSLATE_NOOP("EngineWords", "days since a heavy ladder stepped"),
    QT_TRANSLATE_NOOP("EngineWords", "strength against the first four sessions"),
    QT_TRANSLATE_NOOP("EngineWords", "probe velocity against entry"),
    QT_TRANSLATE_NOOP("EngineWords", "valid repetitions"),
    QT_TRANSLATE_NOOP("EngineWords", "reactive strength index"),
    QT_TRANSLATE_NOOP("EngineWords", "sleep"),
    QT_TRANSLATE_NOOP("EngineWords", "pain"),
    QT_TRANSLATE_NOOP("EngineWords", "%1, gain since entry"),
    QT_TRANSLATE_NOOP("EngineWords", "%1, last two sooner than the six before"),
    QT_TRANSLATE_NOOP("EngineWords", "%1, later than before"),
    QT_TRANSLATE_NOOP("EngineWords", "slower than usual at %1"),
    QT_TRANSLATE_NOOP("EngineWords", "days to %1"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 sessions"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 session"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 days"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 day"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 of 10"),
    QT_TRANSLATE_NOOP("EngineWords", "at least %1, counted as done: strength is up, speed is not"),
    QT_TRANSLATE_NOOP("EngineWords", "at least %1 to be seen, for show"),
    QT_TRANSLATE_NOOP("EngineWords", "at least %1 to be seen"),
    QT_TRANSLATE_NOOP("EngineWords", "at least %1"),
    QT_TRANSLATE_NOOP("EngineWords", "at most %1"),
    QT_TRANSLATE_NOOP("EngineWords", "above %1, levelled off"),
    QT_TRANSLATE_NOOP("EngineWords", "above %1"),
    QT_TRANSLATE_NOOP("EngineWords", "under %1"),
    QT_TRANSLATE_NOOP("EngineWords", "more than %1"),
    QT_TRANSLATE_NOOP("EngineWords", "%1, for show"),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "On %1 time to peak came down from %2 to %3, more than it wanders by itself, and velocity held: go to %4."),
    QT_TRANSLATE_NOOP("EngineWords", "Stay on this box: %1."),
    QT_TRANSLATE_NOOP("EngineWords", "Stay on %1: %2."),
    QT_TRANSLATE_NOOP("EngineWords", "At the latest the next step comes after %1."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is the last rung: it is kept to the last competition."),
    QT_TRANSLATE_NOOP("EngineWords", "No session on this rung yet."),
    QT_TRANSLATE_NOOP("EngineWords", "Fewer than three sessions with a measured %1 on this rung."),
    QT_TRANSLATE_NOOP("EngineWords", "The time for %1 ended on %2: go to %3."),
    QT_TRANSLATE_NOOP("EngineWords", "No gain is claimed."),
    QT_TRANSLATE_NOOP("EngineWords", "Contact is quick and the reactive strength index holds: go to %1."),
    QT_TRANSLATE_NOOP("EngineWords", "Stay here if heels strike."),
    QT_TRANSLATE_NOOP("EngineWords", "The last two sessions came %1 later than the six before: %2 % less load."),
    QT_TRANSLATE_NOOP("EngineWords", "A very poor night: %1 % fewer sets, no step."),
    QT_TRANSLATE_NOOP("EngineWords", "You chose not to lift today."),
    QT_TRANSLATE_NOOP("EngineWords", "The rung waits."),
    QT_TRANSLATE_NOOP("EngineWords", "See a clinician before you go on."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "Pain of %1 of 10 where this lift loads: it rests today, a lift that does not load that place may stand in."),
    QT_TRANSLATE_NOOP("EngineWords", "This day lies outside the season."),
    QT_TRANSLATE_NOOP("EngineWords", "Transition: active rest, no primary lifts."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is today: no lifting."),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is in %2: nothing heavy."),
    QT_TRANSLATE_NOOP("EngineWords", "A light, fast primer of at most %1 repetitions at %2 or less is allowed."),
    QT_TRANSLATE_NOOP("EngineWords", "The step to %1 is ready, but another heavy ladder stepped %2: it waits."),
    QT_TRANSLATE_NOOP("EngineWords", "today"),
    QT_TRANSLATE_NOOP("EngineWords", "yesterday"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 days ago"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more session on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more sessions on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more day on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more days on this rung"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 until the phase in which %2 begins"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is no sooner than at entry, and only %2 are more than it wanders by itself"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 is %2 sooner than at entry, and only %3 are more than it wanders by itself"),
    QT_TRANSLATE_NOOP("EngineWords", "strength is down by %1 % on this rung; a maintenance set is added"),
    QT_TRANSLATE_NOOP("EngineWords", "only %1 % of the last repetitions kept the full range of this rung"),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "Find a load of effort 7 of 10 for %1 repetitions; about %2 of it is the probe load for the whole stay."),
    QT_TRANSLATE_NOOP("EngineWords", "A low day: no heavy lifts without sprints before them."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "Fleetrung is no medical advice. Work with a licensed coach or clinician; local rules and the facility's codes "
        "come first. Do not train through pain, injury or illness; in pregnancy ask a clinician first."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "A guardian must have agreed and a clinician must have cleared you. Somebody qualified watches every session. "
        "Load grows by at most 10 %, on at most three days a week that do not follow each other."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Use safety bars and a spotter. Technique comes before load: stop the set when it breaks."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "A shorter range lets more weight on your back than you can hold lower down. Set the safety bars "
                      "just below the lowest point, have a spotter, and stay within the load shown."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Keep the back as it was at the start of the pull. Stop with any pain in the back."),
    QT_TRANSLATE_NOOP("EngineWords", "Land on the front of the foot on a firm, even surface. Stop when heels strike or "
                                     "contact grows long. No more than the contacts shown, two or three days between."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Pain is a reason to stop, not a number to beat. With strong or sharp pain, limping, or new pain "
                      "in the hamstring see a clinician before you sprint or lift again."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "A 1RM estimated from repetitions or velocity is an estimate. Do not put it on the bar untested."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "That strength built through shorter ranges carries over better to sprinting is the working "
                      "premise, with evidence on both sides (for: Rhea et al. 2016, Human Movement 17(1):43-49; "
                      "against: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261)."),
    // Names of rules.
    QT_TRANSLATE_NOOP("EngineWords", "Refused by the athlete"),
    QT_TRANSLATE_NOOP("EngineWords", "Pain"),
    QT_TRANSLATE_NOOP("EngineWords", "Pain: another lift"),
    QT_TRANSLATE_NOOP("EngineWords", "Outside the season"),
    QT_TRANSLATE_NOOP("EngineWords", "Transition"),
    QT_TRANSLATE_NOOP("EngineWords", "Travel, exams, illness or injury"),
    QT_TRANSLATE_NOOP("EngineWords", "A new macrocycle"),
    QT_TRANSLATE_NOOP("EngineWords", "Layoff"),
    QT_TRANSLATE_NOOP("EngineWords", "Rest before a competition"),
    QT_TRANSLATE_NOOP("EngineWords", "Ease: later than before"),
    QT_TRANSLATE_NOOP("EngineWords", "Ease: a poor night"),
    QT_TRANSLATE_NOOP("EngineWords", "Step by date"),
    QT_TRANSLATE_NOOP("EngineWords", "Up to the next box"),
    QT_TRANSLATE_NOOP("EngineWords", "Step for evidence"),
    QT_TRANSLATE_NOOP("EngineWords", "Step by exposure, by choice"),
    QT_TRANSLATE_NOOP("EngineWords", "No response"),
    QT_TRANSLATE_NOOP("EngineWords", "One heavy step in seven days"),
    // Of pictures.
    QT_TRANSLATE_NOOP("EngineWords", "taken"),
    QT_TRANSLATE_NOOP("EngineWords", "planned"),
    QT_TRANSLATE_NOOP("EngineWords", "main one"),
    QT_TRANSLATE_NOOP("EngineWords", "probe set"),
    QT_TRANSLATE_NOOP("EngineWords", "target band"),
    QT_TRANSLATE_NOOP("EngineWords", "a run"),
    QT_TRANSLATE_NOOP("EngineWords", "best of the day"),
    QT_TRANSLATE_NOOP("EngineWords", "no evidence"),
    QT_TRANSLATE_NOOP("EngineWords", "left"),
    QT_TRANSLATE_NOOP("EngineWords", "right"),
    QT_TRANSLATE_NOOP("EngineWords", "fitted"),
    QT_TRANSLATE_NOOP("EngineWords", "top speed"),
    QT_TRANSLATE_NOOP("EngineWords", "mean speed"),
    QT_TRANSLATE_NOOP("EngineWords", "left out"),
    QT_TRANSLATE_NOOP("EngineWords", "a split"),
    QT_TRANSLATE_NOOP("EngineWords", "usual error"),
    QT_TRANSLATE_NOOP("EngineWords", "your line"),
    QT_TRANSLATE_NOOP("EngineWords", "the line"),
    QT_TRANSLATE_NOOP("EngineWords", "fastest at a load"),
    QT_TRANSLATE_NOOP("EngineWords", "fastest repetition of a day"),
    QT_TRANSLATE_NOOP("EngineWords", "estimated 1RM"),
    QT_TRANSLATE_NOOP("EngineWords", "chance reaches"),
    QT_TRANSLATE_NOOP("EngineWords", "first steps"),
    QT_TRANSLATE_NOOP("EngineWords", "now"),
    QT_TRANSLATE_NOOP("EngineWords", "week %1"),
    QT_TRANSLATE_NOOP("EngineWords", "Above the line: later than fitted."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "Each mark is a repetition, from concentric onset. Sprint contact times are for scale, not a goal."),
    QT_TRANSLATE_NOOP("EngineWords", "Each mark is a repetition, from concentric onset."),
    QT_TRANSLATE_NOOP("EngineWords", "Lower is faster. Beside the best of a day: wind in m/s, tail wind positive."),
    QT_TRANSLATE_NOOP("EngineWords", "Lower is faster."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Times of different rungs are not to be compared: a shorter range is quicker anyway."),
    QT_TRANSLATE_NOOP("EngineWords", "No fit."),
    QT_TRANSLATE_NOOP("EngineWords", "No measured loads yet."),
    QT_TRANSLATE_NOOP("EngineWords", "No probe sets yet."),
    QT_TRANSLATE_NOOP("EngineWords", "No runs yet."),
    QT_TRANSLATE_NOOP("EngineWords", "No weeks with both yet."),
    // Whether it worked.
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "In the weeks when the bar was quicker within a rung, %1 were better than the season's trend %2: %3; %4."),
    QT_TRANSLATE_NOOP("EngineWords", "It shows that they moved together, not that one caused the other."),
    QT_TRANSLATE_NOOP("EngineWords", "Not shown: when the bar was quicker within a rung, %1 were not better than the "
                                     "season's trend by more than chance (at best %2: %3; %4)."),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "The strongest relation goes the other way: when the bar was quicker, times were slower %1 (%2)."),
    QT_TRANSLATE_NOOP("EngineWords", "That is no proof that there is no relation."),
    QT_TRANSLATE_NOOP("EngineWords", "Not shown: beside their trends the bar or the sprint times did not vary."),
    QT_TRANSLATE_NOOP("EngineWords", "Not enough: %1, on %2, all in the same conditions."),
    QT_TRANSLATE_NOOP("EngineWords", "Not enough: %1, all in the same conditions."),
    QT_TRANSLATE_NOOP("EngineWords", "Not enough: %1, on %2 (%3)."),
    QT_TRANSLATE_NOOP("EngineWords", "Not enough: %1 (%2)."),
    QT_TRANSLATE_NOOP("EngineWords",
                      "Each counts in a further week, with the bar measured in that week and the four before."),
    QT_TRANSLATE_NOOP("EngineWords", "rank correlation %1 over %2 and %3"),
    QT_TRANSLATE_NOOP("EngineWords", "sprint times (each in its own conditions)"),
    QT_TRANSLATE_NOOP("EngineWords", "sprint times (%1)"),
    QT_TRANSLATE_NOOP("EngineWords", "in the same week"),
    QT_TRANSLATE_NOOP("EngineWords", "chance alone gives as much in %1 of 100 such seasons"),
    QT_TRANSLATE_NOOP("EngineWords", "less than %1"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 weeks later"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 week later"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 weeks"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 week"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 rungs"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 rung"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more tests"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more test"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more rungs"),
    QT_TRANSLATE_NOOP("EngineWords", "%1 more rung"),
    QT_TRANSLATE_NOOP("EngineWords", "That shorter ranges carry over better to sprinting is the working premise of the "
                                     "ladders, with evidence on both sides; one athlete's season does not settle it."),
    // Regions of the body.
    QT_TRANSLATE_NOOP("EngineWords", "ankle"),
    QT_TRANSLATE_NOOP("EngineWords", "back"),
    QT_TRANSLATE_NOOP("EngineWords", "calf"),
    QT_TRANSLATE_NOOP("EngineWords", "elbow"),
    QT_TRANSLATE_NOOP("EngineWords", "foot"),
    QT_TRANSLATE_NOOP("EngineWords", "groin"),
    QT_TRANSLATE_NOOP("EngineWords", "hamstring"),
    QT_TRANSLATE_NOOP("EngineWords", "hip"),
    QT_TRANSLATE_NOOP("EngineWords", "knee"),
    QT_TRANSLATE_NOOP("EngineWords", "neck"),
    QT_TRANSLATE_NOOP("EngineWords", "shin"),
    QT_TRANSLATE_NOOP("EngineWords", "shoulder"),
    QT_TRANSLATE_NOOP("EngineWords", "thigh"),
    QT_TRANSLATE_NOOP("EngineWords", "wrist"),
    // Units as they are spoken.
    QT_TRANSLATE_NOOP("EngineWords", "milliseconds"),
    QT_TRANSLATE_NOOP("EngineWords", "seconds"),
    QT_TRANSLATE_NOOP("EngineWords", "metres"),
    QT_TRANSLATE_NOOP("EngineWords", "metres per second"),
    QT_TRANSLATE_NOOP("EngineWords", "metres a second"),
    QT_TRANSLATE_NOOP("EngineWords", "kilograms"),
    QT_TRANSLATE_NOOP("EngineWords", "pounds"),
    QT_TRANSLATE_NOOP("EngineWords", "weeks"),
    // What a season may not be.
    QT_TRANSLATE_NOOP("EngineWords", "\"%1\" lies before the season has begun"),
    QT_TRANSLATE_NOOP("EngineWords", "\"%1\" lies after the season's end"),
    QT_TRANSLATE_NOOP("EngineWords", "a season is at most %1 days long"),
    QT_TRANSLATE_NOOP("EngineWords", "a season needs at least one competition"),
    QT_TRANSLATE_NOOP("EngineWords", "mark at least one competition with \"main\": true"),
    QT_TRANSLATE_NOOP("EngineWords", "name at least one day of the week with lifts"),
    QT_TRANSLATE_NOOP("EngineWords", "choose at least one ladder"),
    QT_TRANSLATE_NOOP("EngineWords", "no drop jumps under %1; leave this ladder out"),
    QT_TRANSLATE_NOOP(
        "EngineWords",
        "under %1 no lifting is planned: children take part from about that age, when they can follow instructions"),
    QT_TRANSLATE_NOOP("EngineWords", "under 18 a guardian must have agreed before a plan is made"),
    QT_TRANSLATE_NOOP("EngineWords", "under 18 lifts stand on at most three days a week; choose fewer days"),
    QT_TRANSLATE_NOOP("EngineWords", "under 18 lifting days must not follow each other; leave a day between"),
    QT_TRANSLATE_NOOP("EngineWords", "the block ends before it begins"),
    QT_TRANSLATE_NOOP("EngineWords", "the block must lie inside the season"),
    QT_TRANSLATE_NOOP("EngineWords", "two blocks of the same kind share days; make one of them"),
    QT_TRANSLATE_NOOP("EngineWords",
                      "%1 minutes hold %2 primary lifts; choose fewer, or say why in lifts_per_session_override"),
    QT_TRANSLATE_NOOP("EngineWords", "\"%1\" has a longer range than the rung above it; longest range first"),
    QT_TRANSLATE_NOOP("EngineWords", "\"%1\" has earlier phases than the rung above it"),
    QT_TRANSLATE_NOOP("EngineWords", "the latest phase must not come before the earliest"),
    QT_TRANSLATE_NOOP("EngineWords", "there is no such rung"),
    QT_TRANSLATE_NOOP("EngineWords", "the ladder must join inside the season"),
    // Files.
    QT_TRANSLATE_NOOP("EngineWords", "cannot be written: %1"),
    QT_TRANSLATE_NOOP("EngineWords", "cannot be read: %1"),
    QT_TRANSLATE_NOOP("EngineWords", "the report cannot be written here (%1); choose another folder"),
    QT_TRANSLATE_NOOP("EngineWords", "the report could not be finished (%1); free some space or choose another folder"),
    QT_TRANSLATE_NOOP("EngineWords", "the report could not be set; nothing was written"),
};

} // namespace

struct Phrases::Pattern {
    const char* text;
    QRegularExpression form; ///< values as groups

    /// "at least %1" -> ^at least (.+?)$, with the text's own signs escaped.
    explicit Pattern(const char* english) : text(english)
    {
        static const QRegularExpression place(QStringLiteral("\\\\%\\d"));
        QString escaped = QRegularExpression::escape(QString::fromUtf8(english));
        form.setPattern(QStringLiteral("^") + escaped.replace(place, QStringLiteral("(.+?)")) + QStringLiteral("$"));
    }
};

Phrases::Phrases(const char* context, std::span<const char* const> english)
    : context_(context), patterns_(english.begin(), english.end())
{
}

Phrases::~Phrases() = default;

std::optional<QString> Phrases::told(const QString& english, const std::function<QString(const QString&)>& value) const
{
    for (const auto& [text, form] : patterns_) {
        const auto match = form.match(english);
        if (!match.hasMatch())
            continue;
        QString said = QCoreApplication::translate(context_, text);
        for (int group = match.lastCapturedIndex(); group >= 1; --group) // %10 before %1
            said.replace(QStringLiteral("%%1").arg(group), value(match.captured(group)));
        return said;
    }
    return std::nullopt;
}

const Phrases& enginePhrases()
{
    static const Phrases phrases("EngineWords", known);
    return phrases;
}

namespace
{

std::optional<QString> whole(const QString& text)
{
    return enginePhrases().told(text, [](const QString& value) { return engineText(value); });
}

} // namespace

QString engineText(const QString& english)
{
    if (english.isEmpty())
        return english;
    if (const auto said = whole(english))
        return *said;
    // Several sentences: each by itself. A name at the head of a sentence may be in small letters elsewhere.
    static const QRegularExpression between(QStringLiteral("(?<=[.!?]) (?=[A-Z0-9])"));
    const QStringList sentences = english.split(between);
    if (sentences.size() == 1) {
        const QString capital = english.left(1).toUpper() + english.mid(1);
        const auto said = capital == english ? std::nullopt : whole(capital);
        return said.value_or(english);
    }
    QStringList said;
    for (const auto& sentence : sentences)
        said += engineText(sentence);
    return said.join(QLatin1Char(' '));
}

QString engineText(const std::string& english)
{
    return engineText(QString::fromStdString(english));
}

QString errorText(const Error& error)
{
    const QString message = engineText(error.message);
    return error.place.empty() ? message : QString::fromStdString(error.place) + QStringLiteral(": ") + message;
}

} // namespace fleetrung::views
