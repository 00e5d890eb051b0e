// Pictures of every page and state, as the program draws them today.
#pragma once

#include <QQuickWindow>
#include <QString>

#include "mobile/views/app_view_model.hpp"

namespace fleetrung::app
{

/// The day on which pages of this store show most: the latest day with lifts of the first athlete who has a season.
/// None for an empty store.
[[nodiscard]] Expected<std::optional<CivilDate>> busiestDay(const logbook::Logbook& logbook);

/// Saves NAME-dark.png, NAME-light.png and NAME-large.png (200 % text) into the folder; gives how many,
/// 0 where the folder cannot be written.
int saveScreenshots(QQuickWindow& window, views::AppViewModel& app, views::LogThread& log, const QString& folder);

} // namespace fleetrung::app
