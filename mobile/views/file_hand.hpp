// Files for other programs: where the platform hands them out. A folder of documents here; a share service on a phone.
#pragma once

#include <functional>

#include <QByteArray>
#include <QString>

#include "engine/base/error.hpp"

namespace fleetrung::views
{

struct FileHand {
    /// The bytes handed out last under that name; empty where there are none.
    std::function<QByteArray(const QString& name)> last;
    /// Gives where it is now, for the user to read.
    std::function<Expected<QString>(const QString& name, const QByteArray& bytes)> hand;
};

[[nodiscard]] FileHand folderHand(const QString& folder);

/// "Outdoor 2026, Mira Example.ics": without what a file system refuses.
[[nodiscard]] QString fileName(const QString& words, const QString& ending);

} // namespace fleetrung::views
