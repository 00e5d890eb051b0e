#include "mobile/views/report_words.hpp"

#include <array>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include "mobile/views/engine_words.hpp"
#include "mobile/views/plot_words.hpp"

namespace fleetrung::views
{
namespace
{

struct ReportWords {
    Q_DECLARE_TR_FUNCTIONS(ReportWords)
};

// What the pages and the summary write, values as %1, %2. Of two that fit the one above counts.
constexpr std::array written{
    // The first page.
    QT_TRANSLATE_NOOP("ReportWords", "SEASON REPORT"),
    QT_TRANSLATE_NOOP("ReportWords", "Season report"),
    QT_TRANSLATE_NOOP("ReportWords", "no medical advice"),
    QT_TRANSLATE_NOOP("ReportWords", "page %1 of %2"),
    QT_TRANSLATE_NOOP("ReportWords", "page %1"),
    QT_TRANSLATE_NOOP("ReportWords", "born %1"),
    QT_TRANSLATE_NOOP("ReportWords", "up to %1"),
    QT_TRANSLATE_NOOP("ReportWords", "weeks of the season"),
    QT_TRANSLATE_NOOP("ReportWords", "planned training days done"),
    QT_TRANSLATE_NOOP("ReportWords", "sessions in the log"),
    QT_TRANSLATE_NOOP("ReportWords", "repetitions in the log"),
    QT_TRANSLATE_NOOP("ReportWords", "days lost"),
    QT_TRANSLATE_NOOP("ReportWords", "What happened"),
    QT_TRANSLATE_NOOP("ReportWords", "The season ran %1, from %2 to %3."),
    QT_TRANSLATE_NOOP("ReportWords", "Week %1 of %2: the season began on %3 and is planned to %4."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 of %2 planned training days were done."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 of 1 planned training day was done."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 days were lost: %2."),
    QT_TRANSLATE_NOOP("ReportWords", "1 day was lost: %1."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 with %2 and %3 are in the log, all measured by a sensor."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 with %2 and %3 are in the log, all typed in."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 with %2 and %3 are in the log, %4 of them measured by a sensor."),
    QT_TRANSLATE_NOOP("ReportWords", "%1: from %2 to %3 in %4; on %5 since %6."),
    QT_TRANSLATE_NOOP("ReportWords", "%1: on %2 since %3."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 became shorter on %2."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 became longer on %2."),
    QT_TRANSLATE_NOOP("ReportWords", "No change of %1 beyond its day-to-day error on %2."),
    QT_TRANSLATE_NOOP("ReportWords", "%1: %2; best %3 s on %4 (wind %5 m/s), best of the first day %6 s."),
    QT_TRANSLATE_NOOP("ReportWords", "%1: %2; best %3 s on %4, best of the first day %5 s."),
    QT_TRANSLATE_NOOP("ReportWords", "%1 decisions were taken (%2); %3 followed, %4 changed by the athlete; of those "
                                     "that are no hold, %5 still open."),
    QT_TRANSLATE_NOOP("ReportWords", "1 decision was taken (%1); %2 followed, %3 changed by the athlete; of those that "
                                     "are no hold, %4 still open."),
    QT_TRANSLATE_NOOP("ReportWords", "Pain of 3 or more out of 10 was noted on %1 (%2)."),
    QT_TRANSLATE_NOOP("ReportWords", "Pain of 3 or more out of 10 was noted on %1."),
    QT_TRANSLATE_NOOP("ReportWords", "%1, left"),
    QT_TRANSLATE_NOOP("ReportWords", "%1, right"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 sets"),
    QT_TRANSLATE_NOOP("ReportWords", "1 set"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 repetitions"),
    QT_TRANSLATE_NOOP("ReportWords", "1 repetition"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 changes of rung"),
    QT_TRANSLATE_NOOP("ReportWords", "1 change of rung"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 runs"),
    QT_TRANSLATE_NOOP("ReportWords", "1 run"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 hold"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 step"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 step back"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 ease"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 rest"),
    QT_TRANSLATE_NOOP("ReportWords", "illness %1"),
    QT_TRANSLATE_NOOP("ReportWords", "travel %1"),
    QT_TRANSLATE_NOOP("ReportWords", "exams %1"),
    QT_TRANSLATE_NOOP("ReportWords", "injury %1"),
    QT_TRANSLATE_NOOP("ReportWords", "no reason given %1"),
    QT_TRANSLATE_NOOP("ReportWords", "Competitions"),
    QT_TRANSLATE_NOOP("ReportWords", "Day"),
    QT_TRANSLATE_NOOP("ReportWords", "Competition"),
    QT_TRANSLATE_NOOP("ReportWords", "Grade"),
    QT_TRANSLATE_NOOP("ReportWords", "Result"),
    QT_TRANSLATE_NOOP("ReportWords", "main"),
    QT_TRANSLATE_NOOP("ReportWords", "ahead"),
    QT_TRANSLATE_NOOP("ReportWords", "Cautions"),
    QT_TRANSLATE_NOOP("ReportWords", "This report is no medical advice."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "Work with a licensed coach or clinician; local rules and facility codes come first."),
    QT_TRANSLATE_NOOP("ReportWords", "Pain, injury, pregnancy: clear it with a clinician before training on."),
    QT_TRANSLATE_NOOP("ReportWords", "Under 18: with a guardian's consent and clearance."),
    QT_TRANSLATE_NOOP("ReportWords", "Heavy lifts over a short range: safety bars set and a spotter there."),
    QT_TRANSLATE_NOOP("ReportWords", "Landings are limited: keep to the contacts planned for a session."),
    QT_TRANSLATE_NOOP("ReportWords", "Estimates of the one-repetition maximum are estimates."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "Target bands are starting values, for show: where a rung should lead, not a mark to be forced."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "That strength over shorter ranges carries over better to sprinting is the working "
                      "premise, with evidence on both sides."),
    QT_TRANSLATE_NOOP("ReportWords", "Nothing here shows cause."),
    // Ladders.
    QT_TRANSLATE_NOOP("ReportWords", "%1 ladder"),
    QT_TRANSLATE_NOOP("ReportWords", "Rung"),
    QT_TRANSLATE_NOOP("ReportWords", "Planned"),
    QT_TRANSLATE_NOOP("ReportWords", "Taken"),
    QT_TRANSLATE_NOOP("ReportWords", "Sets"),
    QT_TRANSLATE_NOOP("ReportWords", "Repetitions"),
    QT_TRANSLATE_NOOP("ReportWords", "Load"),
    QT_TRANSLATE_NOOP("ReportWords", "body mass"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 against the target band"),
    QT_TRANSLATE_NOOP("ReportWords", "Within each rung"),
    QT_TRANSLATE_NOOP("ReportWords",
                      "Entry: mean of the first three sessions; latest: mean of the last three; a change "
                      "is called one from 1.35 typical errors on."),
    QT_TRANSLATE_NOOP("ReportWords", "Sessions"),
    QT_TRANSLATE_NOOP("ReportWords", "Entry"),
    QT_TRANSLATE_NOOP("ReportWords", "Latest"),
    QT_TRANSLATE_NOOP("ReportWords", "Change"),
    QT_TRANSLATE_NOOP("ReportWords", "Typical error"),
    QT_TRANSLATE_NOOP("ReportWords", "Target band"),
    QT_TRANSLATE_NOOP("ReportWords", "Verdict"),
    QT_TRANSLATE_NOOP("ReportWords", "quicker"),
    QT_TRANSLATE_NOOP("ReportWords", "slower"),
    QT_TRANSLATE_NOOP("ReportWords", "no clear change"),
    QT_TRANSLATE_NOOP("ReportWords", "%1: load and velocity"),
    QT_TRANSLATE_NOOP("ReportWords", "No line: %1."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "The fastest repetition at each load of %1 sessions on this rung, %2 points, a robust line."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "The fastest repetition at each load of 1 session on this rung, %1 points, a robust line."),
    QT_TRANSLATE_NOOP("ReportWords", "No velocity at 1RM is published for this lift: it points to no 1RM."),
    QT_TRANSLATE_NOOP("ReportWords", "Estimated 1RM %1 (95 %: %2 to %3), where the line meets %4 m/s (%5)."),
    QT_TRANSLATE_NOOP("ReportWords", "Estimated 1RM %1, where the line meets %2 m/s (%3)."),
    QT_TRANSLATE_NOOP("ReportWords", "An estimate is an estimate."),
    // Decisions.
    QT_TRANSLATE_NOOP("ReportWords", "Decisions and their reasons"),
    QT_TRANSLATE_NOOP("ReportWords", "Holds and rests in a row stand in one line, with the reason of the last; of a "
                                     "hold only what was not met is shown."),
    QT_TRANSLATE_NOOP("ReportWords", "Every decision with all its numbers stands in the tables."),
    QT_TRANSLATE_NOOP("ReportWords", "Ladder"),
    QT_TRANSLATE_NOOP("ReportWords", "Decision"),
    QT_TRANSLATE_NOOP("ReportWords", "Reason and evidence"),
    QT_TRANSLATE_NOOP("ReportWords", "Answer"),
    QT_TRANSLATE_NOOP("ReportWords", "Evidence: %1."),
    QT_TRANSLATE_NOOP("ReportWords", "%1: met"),
    QT_TRANSLATE_NOOP("ReportWords", "%1: not met"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 followed, %2 open"),
    QT_TRANSLATE_NOOP("ReportWords", "followed"),
    QT_TRANSLATE_NOOP("ReportWords", "open"),
    QT_TRANSLATE_NOOP("ReportWords", "changed"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 (%2 times)"),
    QT_TRANSLATE_NOOP("ReportWords", "Hold at %1"),
    QT_TRANSLATE_NOOP("ReportWords", "Ease at %1"),
    QT_TRANSLATE_NOOP("ReportWords", "Rest at %1"),
    QT_TRANSLATE_NOOP("ReportWords", "Hold, %1 to %2"),
    QT_TRANSLATE_NOOP("ReportWords", "Step, %1 to %2"),
    QT_TRANSLATE_NOOP("ReportWords", "Step back, %1 to %2"),
    QT_TRANSLATE_NOOP("ReportWords", "Hold"),
    QT_TRANSLATE_NOOP("ReportWords", "Ease"),
    QT_TRANSLATE_NOOP("ReportWords", "Rest"),
    // The track.
    QT_TRANSLATE_NOOP("ReportWords", "Sprint times"),
    QT_TRANSLATE_NOOP("ReportWords",
                      "Only times of the same test are comparable; wind, surface and shoes stand beside each."),
    QT_TRANSLATE_NOOP("ReportWords", "When"),
    QT_TRANSLATE_NOOP("ReportWords", "Best"),
    QT_TRANSLATE_NOOP("ReportWords", "Wind"),
    QT_TRANSLATE_NOOP("ReportWords", "Surface"),
    QT_TRANSLATE_NOOP("ReportWords", "Shoes"),
    QT_TRANSLATE_NOOP("ReportWords", "Timing"),
    QT_TRANSLATE_NOOP("ReportWords", "Run-in"),
    QT_TRANSLATE_NOOP("ReportWords", "Other times (wind, m/s)"),
    QT_TRANSLATE_NOOP("ReportWords", "%1, race"),
    QT_TRANSLATE_NOOP("ReportWords", "flying %1 m"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 m from blocks"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 m standing"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 m falling"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 m rolling"),
    QT_TRANSLATE_NOOP("ReportWords", "block"),
    QT_TRANSLATE_NOOP("ReportWords", "standing"),
    QT_TRANSLATE_NOOP("ReportWords", "falling"),
    QT_TRANSLATE_NOOP("ReportWords", "rolling"),
    QT_TRANSLATE_NOOP("ReportWords", "race"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 % more fast metres than the mean of the four weeks before"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 % more metres than the mean of the four weeks before"),
    QT_TRANSLATE_NOOP("ReportWords", "fast metres after four weeks without"),
    QT_TRANSLATE_NOOP("ReportWords", "metres after four weeks without"),
    QT_TRANSLATE_NOOP("ReportWords", "lift at two loads at least 10 % apart; a third and a fourth steady the line"),
    QT_TRANSLATE_NOOP("ReportWords", "%1: speed by the splits"),
    QT_TRANSLATE_NOOP("ReportWords", "Runs"),
    QT_TRANSLATE_NOOP("ReportWords", "Top speed, m/s"),
    QT_TRANSLATE_NOOP("ReportWords", "Fit within, ms"),
    QT_TRANSLATE_NOOP("ReportWords", "Power, W/kg"),
    QT_TRANSLATE_NOOP("ReportWords", "Left out"),
    QT_TRANSLATE_NOOP("ReportWords", "Speed over the way on %1, and how far each split lies from the curve"),
    QT_TRANSLATE_NOOP("ReportWords", "%1: no curve, %2"),
    QT_TRANSLATE_NOOP("ReportWords", "Without force and power: %1"),
    QT_TRANSLATE_NOOP("ReportWords", "The run with the greatest top speed stands for its time."),
    QT_TRANSLATE_NOOP("ReportWords", "± is one standard error."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "F0 and power: greatest horizontal force and power for each kilogram, with the drag of the air."),
    QT_TRANSLATE_NOOP("ReportWords", "A flying start gives none of these."),
    QT_TRANSLATE_NOOP("ReportWords", "Track by week"),
    QT_TRANSLATE_NOOP("ReportWords", "Fast metres: metres at 90 and 95 % of the best speed of the 12 months before."),
    QT_TRANSLATE_NOOP("ReportWords", "A week above 1.3 times the mean of the four before it is said."),
    QT_TRANSLATE_NOOP("ReportWords", "Week"),
    QT_TRANSLATE_NOOP("ReportWords", "week %1, %2"),
    QT_TRANSLATE_NOOP("ReportWords", "week %1"),
    QT_TRANSLATE_NOOP("ReportWords", "Sprint days"),
    QT_TRANSLATE_NOOP("ReportWords", "Metres"),
    QT_TRANSLATE_NOOP("ReportWords", "At 90 %"),
    QT_TRANSLATE_NOOP("ReportWords", "At 95 %"),
    QT_TRANSLATE_NOOP("ReportWords", "Resisted"),
    QT_TRANSLATE_NOOP("ReportWords", "Hill"),
    QT_TRANSLATE_NOOP("ReportWords", "Contacts"),
    QT_TRANSLATE_NOOP("ReportWords", "More than usual"),
    QT_TRANSLATE_NOOP("ReportWords", "* Part of it is estimated: runs without splits, or work counted by its effort."),
    QT_TRANSLATE_NOOP("ReportWords", "Work on the track"),
    QT_TRANSLATE_NOOP("ReportWords", "Kind"),
    QT_TRANSLATE_NOOP("ReportWords", "Effort"),
    QT_TRANSLATE_NOOP("ReportWords", "sled %1"),
    QT_TRANSLATE_NOOP("ReportWords", "slope %1 %"),
    QT_TRANSLATE_NOOP("ReportWords", "best %1 s"),
    QT_TRANSLATE_NOOP("ReportWords", "best %1 s %2"),
    QT_TRANSLATE_NOOP("ReportWords", "wind %1 m/s"),
    QT_TRANSLATE_NOOP("ReportWords", "run-in %1 m"),
    QT_TRANSLATE_NOOP("ReportWords", "sprints"),
    QT_TRANSLATE_NOOP("ReportWords", "flying"),
    QT_TRANSLATE_NOOP("ReportWords", "resisted"),
    QT_TRANSLATE_NOOP("ReportWords", "hill"),
    QT_TRANSLATE_NOOP("ReportWords", "easy"),
    QT_TRANSLATE_NOOP("ReportWords", "track"),
    QT_TRANSLATE_NOOP("ReportWords", "indoor"),
    QT_TRANSLATE_NOOP("ReportWords", "grass"),
    QT_TRANSLATE_NOOP("ReportWords", "spikes"),
    QT_TRANSLATE_NOOP("ReportWords", "flats"),
    QT_TRANSLATE_NOOP("ReportWords", "hand"),
    QT_TRANSLATE_NOOP("ReportWords", "gates"),
    QT_TRANSLATE_NOOP("ReportWords", "video"),
    QT_TRANSLATE_NOOP("ReportWords", "electronic"),
    QT_TRANSLATE_NOOP("ReportWords", "Jumps"),
    QT_TRANSLATE_NOOP("ReportWords", "Jump"),
    QT_TRANSLATE_NOOP("ReportWords", "Box"),
    QT_TRANSLATE_NOOP("ReportWords", "Contact, median"),
    QT_TRANSLATE_NOOP("ReportWords", "Best height or distance"),
    QT_TRANSLATE_NOOP("ReportWords", "Best reactive strength"),
    QT_TRANSLATE_NOOP("ReportWords", "Reactive strength: jump height over contact time."),
    QT_TRANSLATE_NOOP("ReportWords", "drop jump"),
    QT_TRANSLATE_NOOP("ReportWords", "standing long jump"),
    QT_TRANSLATE_NOOP("ReportWords", "standing triple jump"),
    QT_TRANSLATE_NOOP("ReportWords", "counter-movement jump"),
    QT_TRANSLATE_NOOP("ReportWords", "%1 bounds"),
    // Whether it worked.
    QT_TRANSLATE_NOOP("ReportWords", "Did it work?"),
    QT_TRANSLATE_NOOP("ReportWords", "Not judged: %1"),
    QT_TRANSLATE_NOOP("ReportWords",
                      "The bar within each rung beside the sprint against the season's trend, week by week."),
    QT_TRANSLATE_NOOP("ReportWords",
                      "Times as they are would always go together: ranges grow shorter and summer comes."),
    QT_TRANSLATE_NOOP("ReportWords", "Sprint"),
    QT_TRANSLATE_NOOP("ReportWords", "Weeks with both"),
    QT_TRANSLATE_NOOP("ReportWords", "needed"),
    QT_TRANSLATE_NOOP("ReportWords", "Rungs"),
    QT_TRANSLATE_NOOP("ReportWords", "Rank correlation"),
    QT_TRANSLATE_NOOP("ReportWords", "95 %, for show"),
    QT_TRANSLATE_NOOP("ReportWords", "Chance reaches"),
    QT_TRANSLATE_NOOP("ReportWords", "the same week"),
    QT_TRANSLATE_NOOP("ReportWords", "This is no proof of cause."),
    // Planned against done.
    QT_TRANSLATE_NOOP("ReportWords", "Planned against done"),
    QT_TRANSLATE_NOOP("ReportWords", "Phase"),
    QT_TRANSLATE_NOOP("ReportWords", "From – to"),
    QT_TRANSLATE_NOOP("ReportWords", "Days planned"),
    QT_TRANSLATE_NOOP("ReportWords", "Days done"),
    QT_TRANSLATE_NOOP("ReportWords", "Sets planned"),
    QT_TRANSLATE_NOOP("ReportWords", "Sets done"),
    QT_TRANSLATE_NOOP("ReportWords", "Days lost"),
    QT_TRANSLATE_NOOP("ReportWords", "Why"),
    QT_TRANSLATE_NOOP("ReportWords", "illness"),
    QT_TRANSLATE_NOOP("ReportWords", "travel"),
    QT_TRANSLATE_NOOP("ReportWords", "exams"),
    QT_TRANSLATE_NOOP("ReportWords", "injury"),
    QT_TRANSLATE_NOOP("ReportWords", "Pain noted"),
    QT_TRANSLATE_NOOP("ReportWords", "Pain"),
    QT_TRANSLATE_NOOP("ReportWords", "Where"),
    QT_TRANSLATE_NOOP("ReportWords", "Note"),
};

/// What a clause falls into where it is no known phrase as a whole: lists first, then what stands in brackets.
constexpr std::array lists{" · ", "; "};
constexpr std::array seams{": ", ", ", " – "};

QString clause(const QString& english);

std::optional<QString> known(const QString& english)
{
    static const Phrases phrases("ReportWords", written);
    if (auto said = phrases.told(english, clause))
        return said;
    if (auto said = enginePhrases().told(english, clause))
        return said;
    if (english.front().isUpper()) { // a name at the head of a sentence: "Flying 20 m"
        const QString small = english.front().toLower() + english.mid(1);
        for (const auto* book : {&phrases, &enginePhrases()})
            if (auto said = book->told(small, clause))
                return said->front().toUpper() + said->mid(1);
    }
    const QString engine = engineText(english);
    return engine == english ? std::nullopt : std::optional(engine);
}

/// "gain since entry 61 ± 9 ms": a name before its value.
std::optional<QString> nameAndValue(const QString& english)
{
    static const QRegularExpression form(
        QStringLiteral("^(\\D*[^\\d\\s(]) ([+\\x{2212}]?\\d[\\d.]*(?: ± [\\d.]+)?(?: [^\\s(,;]+)?)$"));
    const auto match = form.match(english);
    if (!match.hasMatch())
        return std::nullopt;
    return clause(match.captured(1)) + QLatin1Char(' ') + clause(match.captured(2));
}

/// Forms whose values are numbers alone: as phrases they would fit whole sentences and lists.
std::optional<QString> ofNumbers(const QString& english)
{
    static const QRegularExpression share(QStringLiteral("^(\\d+) of (\\d+)$"));
    if (const auto match = share.match(english); match.hasMatch())
        return ReportWords::tr("%1 of %2").arg(match.captured(1), match.captured(2));
    static const QRegularExpression change(
        QStringLiteral("^([^;]+) \\((\\d+) to (\\d+) ms, typical error (\\d+) ms\\)$"));
    if (const auto match = change.match(english); match.hasMatch())
        return ReportWords::tr("%1 (%2 to %3 ms, typical error %4 ms)")
            .arg(clause(match.captured(1)), match.captured(2), match.captured(3), match.captured(4));
    return std::nullopt;
}

/// "at least 38 (met)": what stands before brackets, and what stands in them.
std::optional<QString> bracketed(const QString& english)
{
    static const QRegularExpression form(QStringLiteral("^(.+?) \\((.+)\\)$"));
    const auto match = form.match(english);
    if (!match.hasMatch())
        return std::nullopt;
    return clause(match.captured(1)) + QStringLiteral(" (") + clause(match.captured(2)) + QLatin1Char(')');
}

template <std::size_t Count>
std::optional<QString> parted(const QString& english, const std::array<const char*, Count>& between)
{
    for (const char* seam : between)
        if (const QString mark = QString::fromUtf8(seam); english.contains(mark)) {
            QStringList said;
            for (const auto& part : english.split(mark))
                said += clause(part);
            return said.join(mark);
        }
    return std::nullopt;
}

QString clause(const QString& english)
{
    static const QRegularExpression letters(QStringLiteral("[A-Za-z]{2}"));
    if (!letters.match(english).hasMatch())
        return english;
    if (auto said = ofNumbers(english))
        return *said;
    if (auto said = known(english))
        return *said;
    if (auto said = parted(english, lists))
        return *said;
    if (auto said = bracketed(english))
        return *said;
    if (auto said = parted(english, seams))
        return *said;
    return nameAndValue(english).value_or(english);
}

/// Sentence by sentence: a page sets several down as one text.
QString sentences(const QString& english)
{
    static const QRegularExpression between(QStringLiteral("(?<=[.!?]) (?=[A-Z0-9±])"));
    QStringList said;
    for (const auto& sentence : english.split(between))
        said += clause(sentence);
    return said.join(QLatin1Char(' '));
}

/// "5 January 2026", "5 Jan": as the report writes days, which is English.
QString withLocalDays(const QString& text, const Units& units)
{
    if (units.language() == QLocale::English)
        return units.withLocalDates(text);
    static const QStringList months{QStringLiteral("Jan"), QStringLiteral("Feb"), QStringLiteral("Mar"),
                                    QStringLiteral("Apr"), QStringLiteral("May"), QStringLiteral("Jun"),
                                    QStringLiteral("Jul"), QStringLiteral("Aug"), QStringLiteral("Sep"),
                                    QStringLiteral("Oct"), QStringLiteral("Nov"), QStringLiteral("Dec")};
    static const QRegularExpression day(
        QStringLiteral("\\b(\\d{1,2}) (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\\b(?: (\\d{4}))?"));
    QString local;
    qsizetype end = 0;
    for (auto found = day.globalMatch(text); found.hasNext();) {
        const auto match = found.next();
        const auto month = static_cast<unsigned>(months.indexOf(match.captured(2)) + 1);
        const bool withYear = !match.captured(3).isEmpty();
        const CivilDate date{std::chrono::year{withYear ? match.captured(3).toInt() : 2000} /
                             std::chrono::month{month} /
                             std::chrono::day{match.captured(1).toUInt()}}; // a leap year where none is said
        local += text.mid(end, match.capturedStart() - end);
        local += withYear ? units.dayNumber(date) : units.dayAndMonth(date);
        end = match.capturedEnd();
    }
    return units.withLocalDates(local + text.mid(end));
}

QString withLocalNumbers(QString text, const Units& units)
{
    static const QRegularExpression point(QStringLiteral("(?<![\\w./:])(\\d+)\\.(\\d+)(?![\\w./])"));
    return text.replace(point, QStringLiteral("\\1") + units.decimalMark() + QStringLiteral("\\2"));
}

} // namespace

pdf::Wording reportWording(const Units& units)
{
    pdf::Wording wording;
    wording.tell = [units](const QString& english) {
        return withLocalNumbers(withLocalDays(sentences(english), units), units);
    };
    wording.show = [units, tell = wording.tell](plot::Plot picture) {
        auto shown = shownPlot(std::move(picture), units).plot;
        for (auto& tick : shown.x.ticks)
            tick.label = tell(QString::fromStdString(tick.label)).toStdString();
        return shown;
    };
    return wording;
}

} // namespace fleetrung::views
