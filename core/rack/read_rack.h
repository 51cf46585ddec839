#pragma once

#include "core/jobfile/tree.h"
#include "core/rack/rack.h"
#include "core/util/result.h"

#include <string>
#include <vector>

namespace pw::rack {

inline constexpr int kRackVersion = 1;
inline constexpr std::size_t kMostOffcuts = 20000;

/// Something said about one piece: why it is left out, or how its figures were mended.
struct Remark {
    std::size_t row = 0; ///< of `offcuts` in the file, from 0
    std::string name;    ///< as typed, or "piece 3" when it has none
    std::string field;   ///< "offcuts[2].thickness", or empty
    std::string message;
    bool operator==(const Remark&) const = default;
};

/// A rack as far as it could be understood. A piece with a wrong figure is left out and named in `refused`,
/// once for each wrong figure; the rest stands. `mended` says what was put right without asking: points
/// written twice, a name that another piece has, a count of nothing.
struct RackReading {
    Rack rack;
    std::vector<Remark> refused, mended;
    util::Problems problems; ///< of the file as a whole
    std::vector<std::string> unknownKeys;
};

/// Never fails. Thickness and outline are needed, all else may be left out.
RackReading readRack(const jobfile::Tree& tree);

} // namespace pw::rack
