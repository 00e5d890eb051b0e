// Pictures of every page and state, as the program draws them today.
#pragma once

#include <QQuickWindow>
#include <QString>

#include "mobile/views/app_view_model.hpp"

namespace fleetrung::app
{

/// Gives the day on which the pages of this store show most - in the middle of the season of the first athlete who has
/// one - and leaves its lifts half done, so that Bench has something to do. None for an empty store. Deletes sets: for
/// a copy of a store only.
[[nodiscard]] Expected<std::optional<CivilDate>> rehearseDay(logbook::Logbook& logbook);

/// Saves NAME-dark.png, NAME-light.png and NAME-large.png (200 % text) into the folder; gives how many,
/// 0 where the folder cannot be written.
int saveScreenshots(QQuickWindow& window, views::AppViewModel& app, views::LogThread& log, const QString& folder,
                    QSize size);

} // namespace fleetrung::app
