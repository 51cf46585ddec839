#pragma once

#include <QString>

namespace pw::testing {

/// Writes the window in its usual states to PNG files in `folder`. 0 when all could be written.
int grabWindows(const QString& folder);

} // namespace pw::testing
