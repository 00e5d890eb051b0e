// The season report as a document to hand to a coach: PDF/A-1b, real text, vector pictures, opaque colours only.
// Needs a QGuiApplication (also with QT_QPA_PLATFORM=offscreen). The same report gives the same text on every page;
// the bytes differ (creation time).
#pragma once

#include <functional>

#include <QString>

#include "engine/base/error.hpp"
#include "engine/report/season_report.hpp"
#include "mobile/plot/plot.hpp"

namespace fleetrung::pdf
{

enum class PageSize { A4, Letter };

/// Of loads, body mass, stature and box heights. Times, velocities and the track stay metric.
enum class Units { Metric, PoundsAndInches };

/// The report's words in another language: the pages are written in English, and each text is told as it is set down.
/// Names that people gave pass through it too and should come out as they are. English where a function is empty.
struct Wording {
    std::function<QString(const QString& english)> tell;
    std::function<plot::Plot(plot::Plot picture)> show;
};

/// Never leaves half a file: the document is written beside `path` and renamed when it is whole.
/// Fails with StoreFailed where the place cannot be written, with InvalidArgument without a QGuiApplication.
[[nodiscard]] Expected<void> writeSeasonPdf(const report::SeasonReport& report, const QString& path,
                                            PageSize size = PageSize::A4, Units units = Units::Metric,
                                            const Wording& wording = {});

} // namespace fleetrung::pdf
