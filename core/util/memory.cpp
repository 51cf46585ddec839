#include "core/util/memory.h"

#include <malloc.h>

namespace pw::util {

void keepFreedMemory() {
    mallopt(M_MMAP_THRESHOLD, 64 << 20);
    mallopt(M_TRIM_THRESHOLD, 128 << 20);
}

} // namespace pw::util
