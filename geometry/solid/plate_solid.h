#pragma once

#include "core/shape/region.h"
#include "core/units/format.h"
#include "core/units/quantity.h"
#include "core/util/result.h"

#include <string>
#include <vector>

/// Plates as solids, for other programs.
namespace pw::solid {

/// Parts of red, green and blue, each from 0 to 1 (sRGB).
struct Colour {
    double red = 0.62, green = 0.66, blue = 0.68; ///< bare steel
    bool operator==(const Colour&) const = default;
};

struct StepOptions {
    units::System units = units::System::Metric; ///< unit of the file: mm or inch
    std::string product;                         ///< name of the part, any UTF-8 text; empty: "Plate"
    std::string description; ///< stands in the head of the file: the warning of a plate that does not hold
    Colour colour;
};

/// A flat piece and where copies of it stand: the middle of its origin, and the z of its lower face.
struct Part {
    struct Place {
        shape::Point at; ///< mm
        units::Length z;
    };
    shape::Region region;
    units::Length thickness;
    std::string name; ///< any UTF-8 text; empty: "Part"
    Colour colour;
    std::vector<Place> places{{}};
};

/// The plate from z = 0 to z = thickness as a STEP file (ISO 10303-21, schema AP214): straight sides are
/// planes, arcs and circles true cylinders. The same input gives the same bytes, the time stamp is a fixed
/// one. Safe to call from several threads; one call works at a time. OpenCASCADE is loaded at the first call
/// (some 60 ms); fails with a message when its module is missing or refuses the shape.
util::Result<std::string> toStep(const shape::Region& region, units::Length thickness,
                                 const StepOptions& options = {});

/// Parts as one assembly that is called `options.product`; each has its own colour. There must be a part. The
/// library writes the colours of an assembly in an order of its own: the same parts, not always the same
/// bytes.
util::Result<std::string> toStep(const std::vector<Part>& parts, const StepOptions& options = {});

} // namespace pw::solid
