// The system's own way of giving files to other programs. Implemented in platform/, one file a system.
#pragma once

#include <functional>

#include <QStringList>

namespace fleetrung::feedback
{

/// Paths of whole files that stay where they are. Called on the interface's thread; what is chosen there is not told.
using OfferFiles = std::function<void(const QStringList& paths)>;

/// Empty where the system has no such sheet, as on a desk: there the folder is told.
[[nodiscard]] OfferFiles shareSheet();

} // namespace fleetrung::feedback
