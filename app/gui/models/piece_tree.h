#pragma once

#include "core/jobfile/tree.h"
#include "core/rack/rack.h"
#include "core/units/format.h"
#include "core/util/result.h"

#include <functional>
#include <string>

/// Edits of one piece of the rack as typed. All plain: a tree in, a tree changed. `at` is the piece's path in
/// the rack's tree, "offcuts[2]"; lengths in mm, written in the unit of `system`.
namespace pw::gui {

/// A piece that can be worked with at once: a rectangle with its thickness still to be measured.
jobfile::Tree newPiece(const std::string& name, units::System system);

/// What a figure as typed comes to, mm; nothing when it is none.
std::optional<double> mmOf(const jobfile::Tree* value);

/// From where places on the piece are measured, in its own coordinates: the lower left corner of a bar or
/// rectangle, else the origin (the middle of a disc, the zero of a polygon).
shape::Point zeroOf(const jobfile::Tree& tree, const std::string& at);

/// A figure of a place [x, y] at `path`, counted from `zero` along `axis`, as it would be typed.
jobfile::Tree placeFrom(const jobfile::Tree& tree, const std::string& path, std::size_t axis, double zero,
                        units::System system);

/// Another length or width; holes and bad areas stay where they were measured, from the lower left corner.
void putSide(jobfile::Tree& tree, const std::string& at, const std::string& key, const jobfile::Tree& value,
             units::System system);

/// The edits that jobs have for their outline (job_rows.h), done to the piece's.
void withOutline(jobfile::Tree& tree, const std::string& at, const std::function<void(jobfile::Tree&)>& edit);

/// The outline as far as it can be read.
job::Outline outlineAt(const jobfile::Tree& tree, const std::string& at);

/// A bad area or hole whose points are the corners of an upright rectangle.
struct UprightBox {
    shape::Point low;
    double wide = 0, high = 0;
};
std::optional<UprightBox> boxAt(const jobfile::Tree& tree, const std::string& pointsPath);
void putBox(jobfile::Tree& tree, const std::string& pointsPath, const UprightBox& box, units::System system);

/// "0 0; 330 0; 330 70 mm": points in order round the edge, x and y apart by a blank or comma, one from the
/// next by a semicolon or a line. A figure without a unit counts in that of `system`.
util::Result<jobfile::Tree> pointsFrom(const std::string& text, units::System system);

/// "300, 210, 290, 205; 360": four sides in order round the piece and the diagonal from the corner between
/// the fourth and the first side to the one opposite. The corners, the first side along x.
///   Each half is a triangle with known sides (law of cosines); the diagonal tells a square-on piece from a
///   leaning one.
util::Result<jobfile::Tree> fourSides(const std::string& text, units::System system);

} // namespace pw::gui
