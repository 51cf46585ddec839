#pragma once

namespace pw {

/// What the program calls itself: "0.1.0", or in a clone between releases "0.1.0+12.g8a93623". It names the
/// source and nothing else: no time, no host, no folder (resources/package/version.cmake).
const char* versionText();

} // namespace pw
