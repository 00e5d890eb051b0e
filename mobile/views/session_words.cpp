#include "mobile/views/session_words.hpp"

#include <QCoreApplication>

#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{
namespace
{

struct TrendsWords {
    Q_DECLARE_TR_FUNCTIONS(TrendsWords)
};

QString sideWord(plot::Side side)
{
    return side == plot::Side::Left ? TrendsWords::tr("left") : TrendsWords::tr("right");
}

QString loadWord(double kilograms, const Units& units)
{
    return kilograms > 0 ? units.mass(kilograms) : TrendsWords::tr("body mass");
}

QString kindWord(const std::string& kind)
{
    if (kind == "warm-up")
        return TrendsWords::tr("Warm-up");
    if (kind == "probe")
        return TrendsWords::tr("Probe set");
    return kind == "maintenance" ? TrendsWords::tr("Maintenance") : TrendsWords::tr("Work");
}

QString timingWord(const std::string& timing)
{
    return timing == "hand" ? TrendsWords::tr("hand timed") : QString::fromStdString(timing);
}

void addNote(QString& text, const std::string& note)
{
    if (!note.empty())
        text += TrendsWords::tr(" Note: %1").arg(QString::fromStdString(note));
}

QString setWords(const SetThen& set, const Units& units)
{
    QStringList parts;
    QString first = TrendsWords::tr("%1: %2").arg(kindWord(set.kind)).arg(set.repetitions);
    if (set.loadKg)
        first += TrendsWords::tr(" × %1").arg(loadWord(*set.loadKg, units));
    parts += first;
    if (set.side != plot::Side::Both)
        parts += sideWord(set.side);
    if (set.fastest)
        parts += TrendsWords::tr("fastest %1").arg(units.velocity(*set.fastest));
    if (set.velocityLoss)
        parts += TrendsWords::tr("loss %1").arg(units.percent(*set.velocityLoss));
    if (set.effort)
        parts += TrendsWords::tr("effort %1").arg(units.number(*set.effort, 0));
    QString text = parts.join(QStringLiteral(", ")) + QLatin1Char('.');
    addNote(text, set.note);
    return text;
}

QString jumpWords(const JumpThen& jump, const Units& units)
{
    QStringList parts;
    if (jump.boxHeight)
        parts += TrendsWords::tr("from %1").arg(units.length(*jump.boxHeight));
    if (jump.contact)
        parts += TrendsWords::tr("contact %1").arg(units.milliseconds(*jump.contact));
    if (jump.flight)
        parts += TrendsWords::tr("flight %1").arg(units.milliseconds(*jump.flight));
    if (jump.reactiveStrength)
        parts += TrendsWords::tr("RSI %1").arg(units.velocity(*jump.reactiveStrength));
    return TrendsWords::tr("Drop jump %1.").arg(parts.join(QStringLiteral(", ")));
}

} // namespace

QString pointWords(const LiftPoint& point, const Units& units)
{
    QStringList parts{units.day(point.day), engineText(point.rung)};
    if (point.side != plot::Side::Both)
        parts += sideWord(point.side);
    parts += point.uncertainty ? TrendsWords::tr("%1 ± %2").arg(units.milliseconds(point.seconds),
                                                                units.number(*point.uncertainty * 1000, 0))
                               : units.milliseconds(point.seconds);
    if (point.loadKg)
        parts += loadWord(*point.loadKg, units);
    QString text = parts.join(QStringLiteral(", ")) + QLatin1Char('.');
    addNote(text, point.note);
    return text;
}

QString pointWords(const RunPoint& run, const Units& units)
{
    QStringList parts{units.day(run.day), units.sprintTime(run.seconds)};
    if (run.windMps)
        parts += TrendsWords::tr("wind %1 m/s").arg(units.signedNumber(*run.windMps, 1));
    if (!run.timing.empty())
        parts += timingWord(run.timing);
    for (const auto& part : {run.surface, run.shoes})
        if (!part.empty())
            parts += QString::fromStdString(part);
    if (run.runIn)
        parts += TrendsWords::tr("run-in %1").arg(units.distance(*run.runIn));
    if (run.competition)
        parts += TrendsWords::tr("race");
    QString text = parts.join(QStringLiteral(", ")) + QLatin1Char('.');
    addNote(text, run.note);
    return text;
}

QStringList sessionWords(const LiftPoint& point, const Units& units)
{
    QStringList lines;
    for (const auto& set : point.sets)
        lines += setWords(set, units);
    for (const auto& jump : point.jumps)
        lines += jumpWords(jump, units);
    return lines;
}

} // namespace fleetrung::views
