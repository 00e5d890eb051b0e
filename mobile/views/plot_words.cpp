#include "mobile/views/plot_words.hpp"

#include <variant>

#include <QCoreApplication>

#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{
namespace
{

void translate(std::string& words)
{
    words = engineText(words).toStdString();
}

/// "0.6" is "0,6" where the user writes it so; the picture builders know no locale.
void localise(std::string& label, const std::string& decimalMark)
{
    const auto point = label.find('.');
    const auto isDigit = [&label](std::size_t at) { return at < label.size() && label[at] >= '0' && label[at] <= '9'; };
    if (point != std::string::npos && point > 0 && isDigit(point - 1) && isDigit(point + 1))
        label.replace(point, 1, decimalMark);
}

void translate(plot::Axis& axis, const std::string& decimalMark)
{
    translate(axis.title);
    translate(axis.spokenUnit);
    for (auto& tick : axis.ticks) {
        translate(tick.label);
        if (axis.kind == plot::Axis::Kind::Number)
            localise(tick.label, decimalMark);
    }
}

class TranslateWords
{
public:
    explicit TranslateWords(std::string decimalMark) : decimalMark_(std::move(decimalMark)) {}

    void operator()(plot::Mark& mark) const
    {
        translate(mark.name);
        translate(mark.series);
        localise(mark.label, decimalMark_);
    }
    void operator()(auto& named) const { translate(named.name); }

private:
    std::string decimalMark_;
};

struct SpokenWords {
    Q_DECLARE_TR_FUNCTIONS(SpokenWords)
};

plot::SpokenPhrases spokenPhrases(const QString& decimalMark)
{
    const auto said = [](const QString& phrase) { return phrase.toStdString(); };
    plot::SpokenPhrases phrases;
    phrases.decimalMark = said(decimalMark);
    phrases.week = said(SpokenWords::tr("week %1"));
    phrases.weeks = said(SpokenWords::tr("week %1 to %2"));
    phrases.range = said(SpokenWords::tr("%1 from %2 to %3"));
    phrases.across = said(SpokenWords::tr("Across: %1."));
    phrases.up = said(SpokenWords::tr("Up: %1."));
    phrases.band = said(SpokenWords::tr("%1: %2 to %3."));
    phrases.tread = said(SpokenWords::tr("%1 from %2"));
    phrases.stair = said(SpokenWords::tr("%1: %2."));
    phrases.extremes = said(SpokenWords::tr("%1: lowest %2, highest %3."));
    phrases.noEvidence = said(SpokenWords::tr("%1 (no evidence)"));
    phrases.markAt = said(SpokenWords::tr("%1 at %2"));
    phrases.markIn = said(SpokenWords::tr("%1 in %2"));
    phrases.oneMark = said(SpokenWords::tr("%1, 1 mark: %2."));
    phrases.marks = said(SpokenWords::tr("%1, %2 marks: %3."));
    phrases.ends = said(SpokenWords::tr("first %1; last %2; lowest %3, highest %4"));
    phrases.nowOn = said(SpokenWords::tr("Now on %1."));
    phrases.latest = said(SpokenWords::tr("Latest: %1."));
    phrases.latestInside = said(SpokenWords::tr("Latest: %1, inside the target band."));
    phrases.latestOutside = said(SpokenWords::tr("Latest: %1, outside the target band."));
    phrases.inWeek = said(SpokenWords::tr("In %1: %2."));
    phrases.chosen = said(SpokenWords::tr("Chosen: %1 in %2."));
    return phrases;
}

} // namespace

plot::PlotValue shownPlot(plot::Plot plot, const Units& units)
{
    translate(plot.title);
    translate(plot.note);
    translate(plot.empty);
    translate(plot.x, units.decimalMark().toStdString());
    translate(plot.y, units.decimalMark().toStdString());
    for (auto& part : plot.strip)
        translate(part.name);
    for (auto& primitive : plot.primitives)
        std::visit(TranslateWords(units.decimalMark().toStdString()), primitive);
    for (auto& entry : plot.legend)
        translate(entry.text);
    return {std::move(plot), spokenPhrases(units.decimalMark())};
}

} // namespace fleetrung::views
