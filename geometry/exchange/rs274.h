#pragma once

#include "core/units/format.h"
#include "core/util/result.h"
#include "geometry/exchange/cut_path.h"

#include <optional>
#include <string>

namespace pw::exchange {

/// Where X0 Y0 is.
enum class Datum {
    LowLeft,    ///< `margin` left of and below everything, leads too: no coordinate is negative
    PlateOrigin ///< the plate's own: the middle of its bore; of plates set out on a piece, its corner
};

/// Heights of the torch above the plate, for a table that does not keep them by itself.
struct TorchHeights {
    Length travel, pierce, cut;
    bool operator==(const TorchHeights&) const = default;
};

struct Rs274Options {
    units::System units = units::System::Metric; ///< mm (G21) or inch (G20)
    std::string title;                           ///< any UTF-8 text
    std::string material;                        ///< any UTF-8 text
    std::string warning; ///< first line, operator message, and a stop before the first pierce; empty for none
    Datum datum = Datum::LowLeft;
    Length margin = Length::fromMm(5);
    std::string torchOn = "M3", torchOff = "M5"; ///< words of the table's control; letters, figures, points
    std::optional<TorchHeights> heights;         ///< none: no Z word is written
    bool sayArcMode = false; ///< write G91.1, which the report does not know but later controls do
};

/// The path as a program after the RS274/NGC report (Kramer, Proctor, Messina: NISTIR 6556, 2000): G0 G1 G2
/// G3, G4 P in seconds, G17 G20 or G21 G40 G90 G94, M3 and M5 for the torch, M2. I and J are offsets from the
/// start of the arc, the report's only way. No arc turns through more than half a circle, none of less than a
/// few last places is written. Coordinates to 0.0001 mm or 0.00001 in, always with a point. Comments are
/// printable ASCII without round brackets or signs that a control acts on; other signs become "_". The torch
/// is off at the first line and at the last.
util::Result<std::string> toRs274(const CutPath& path, const Rs274Options& options = {});

} // namespace pw::exchange
