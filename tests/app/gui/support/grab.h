#pragma once

#include <QString>

namespace pw::testing {

/// Writes the window in its usual states to PNG files in `folder`; only those with `part` in their name.
/// 0 when all could be written.
int grabWindows(const QString& folder, const char* part = "");

} // namespace pw::testing
