// The pages of the season report, set down in order. Internal to this folder.
#pragma once

#include "engine/report/season_report.hpp"
#include "mobile/pdf/page_flow.hpp"
#include "mobile/pdf/season_pdf.hpp"
#include <string>
#include <string_view>

namespace fleetrung::pdf
{

/// UTF-8 of the engine as Qt's text.
[[nodiscard]] inline QString qtText(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

void setSummary(PageFlow& flow, const report::SeasonReport& report, Units units);
void setLadders(PageFlow& flow, const report::SeasonReport& report, Units units);
void setTrack(PageFlow& flow, const report::SeasonReport& report, Units units);
void setDidItWork(PageFlow& flow, const report::SeasonReport& report);
/// Of the runs of one test; nothing where none has a fit.
void setSprintFits(PageFlow& flow, const report::SeasonReport& report, const std::string& test);
void setTrackWork(PageFlow& flow, const report::SeasonReport& report, Units units);
void setJumps(PageFlow& flow, const report::SeasonReport& report, Units units);
void setDecisions(PageFlow& flow, const report::SeasonReport& report, Units units);
void setPlanAgainstDone(PageFlow& flow, const report::SeasonReport& report);

/// "125 kg", "276 lb"; "61.5 kg" where it is not whole.
[[nodiscard]] QString massText(double kilograms, Units units);
/// "20 cm", "8 in".
[[nodiscard]] QString heightText(double metres, Units units);
/// "−" of the page: what is not known.
[[nodiscard]] QString notKnown();

} // namespace fleetrung::pdf
