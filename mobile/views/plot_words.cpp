#include "mobile/views/plot_words.hpp"

#include <variant>

#include "mobile/views/engine_words.hpp"

namespace fleetrung::views
{
namespace
{

void translate(std::string& words)
{
    words = engineText(words).toStdString();
}

void translate(plot::Axis& axis)
{
    translate(axis.title);
    for (auto& tick : axis.ticks)
        translate(tick.label);
}

struct TranslateWords {
    void operator()(plot::Mark& mark) const
    {
        translate(mark.name);
        translate(mark.series);
    }
    void operator()(auto& named) const { translate(named.name); }
};

} // namespace

plot::PlotValue shownPlot(plot::Plot plot)
{
    translate(plot.title);
    translate(plot.note);
    translate(plot.empty);
    translate(plot.x);
    translate(plot.y);
    for (auto& part : plot.strip)
        translate(part.name);
    for (auto& primitive : plot.primitives)
        std::visit(TranslateWords(), primitive);
    for (auto& entry : plot.legend)
        translate(entry.text);
    return {std::move(plot)};
}

} // namespace fleetrung::views
