#include <cmath>

#include "engine/base/numbers.hpp"
#include "platform/desk/sprint_output.hpp"
#include "platform/desk/text_table.hpp"

namespace fleetrung::desk
{
namespace
{

std::string withError(double value, double error, int decimals, const char* unit)
{
    return fixedText(value, decimals) + " ±" + fixedText(error, decimals) + " " + unit;
}

std::string splitTable(const sprint::SprintFit& fit)
{
    TextTable table;
    table.addColumn("distance", "m");
    table.addColumn("time", "s");
    table.addColumn("off the fit", "ms");
    table.addColumn("", "", TextTable::Align::Left);
    for (const auto& s : fit.residuals)
        table.addRow({shortestText(s.split.distance), fixedText(s.split.time, 3), fixedText(s.residual * 1000, 0),
                      s.used ? "" : "left out"});
    return table.text();
}

} // namespace

std::string sprintText(const SprintResult& result)
{
    const auto& fit = result.fit;
    std::string text = "top speed " + withError(fit.model.vmax, fit.vmaxError, 2, "m/s") + ", tau " +
                       withError(fit.model.tau, fit.tauError, 3, "s") + ", first acceleration " +
                       fixedText(fit.model.vmax / fit.model.tau, 2) + " m/s2\n";
    if (fit.offsetFree)
        text += "first movement at " + withError(fit.startOffset, fit.offsetError, 3, "s") + " of the clock (fitted)\n";
    else if (fit.startOffset != 0)
        text += "first movement at " + fixedText(fit.startOffset, 3) + " s of the clock\n";
    if (const auto& p = result.profile)
        text += "F0 " + fixedText(p->f0, 0) + " N, v0 " + fixedText(p->v0, 2) + " m/s, Pmax " + fixedText(p->pmax, 0) +
                " W, ratio of force at 0.3 s " + fixedText(p->rfMax * 100, 1) + " %, falling by " +
                fixedText(-p->drf * 100, 1) + " % a m/s\n";
    text += "\n" + splitTable(fit) + "\n";
    for (const auto& note : fit.notes)
        text += note + "\n";
    return text + "v = top speed (1 - exp(-t / tau)); ± is the standard error" +
           (fit.vmaxError > 0 ? "" : " (0: no split is left to judge by)") + "; the splits lie " +
           fixedText(fit.residualRms * 1000, 0) + " ms rms from the fit.\n";
}

} // namespace fleetrung::desk
