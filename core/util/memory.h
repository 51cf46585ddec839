#pragma once

namespace pw::util {

/// Keeps freed memory for the next solution instead of handing it back to the system: solving allocates and
/// frees some megabytes each time, and getting them anew costs more than half of a live edit. Call once, at
/// the start of a program.
void keepFreedMemory();

} // namespace pw::util
