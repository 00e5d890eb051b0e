// Files for other programs: where the platform hands them out. A folder of documents here; a share service on a phone.
#pragma once

#include <functional>

#include <QByteArray>
#include <QString>
#include <QStringList>

#include "engine/base/error.hpp"

namespace fleetrung::views
{

struct FileHand {
    /// The bytes handed out last under that name; empty where there are none.
    std::function<QByteArray(const QString& name)> last;
    /// Names of the files there that end so (".json"), for the user to choose one; sorted.
    std::function<QStringList(const QString& ending)> names;
    /// Where files are put and looked for, for the user to read.
    QString place;
    /// Gives where it is now, for the user to read. The name may begin with a folder: "Outdoor 2026/sets.csv".
    std::function<Expected<QString>(const QString& name, const QByteArray& bytes)> hand;
    /// Offers files that were handed out to the system's share sheet; empty where it has none.
    std::function<void(const QStringList& paths)> offer = {};
};

[[nodiscard]] FileHand folderHand(const QString& folder);

/// "Outdoor 2026, Mira Example.ics": without what a file system refuses.
/// "Outdoor 2026, Mira Example": likewise.
[[nodiscard]] QString folderName(const QString& words);
[[nodiscard]] QString fileName(const QString& words, const QString& ending);

} // namespace fleetrung::views
