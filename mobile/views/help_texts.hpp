// What each number on the screen is: in plain words, as a formula, where it comes from, and how sure it is.
#pragma once

#include <optional>

#include <QString>
#include <QStringList>

namespace fleetrung::views
{

struct HelpText {
    QString title;
    QString what;    ///< one or two sentences
    QString formula; ///< empty where there is none
    QString source;  ///< published, common practice, or of this project
    QString sure;    ///< how far it may be off
};

/// In the language of the user; none for a topic that there is not.
[[nodiscard]] std::optional<HelpText> helpText(const QString& topic);
[[nodiscard]] QStringList helpTopics();

} // namespace fleetrung::views
