#pragma once

#include <array>
#include <string>
#include <vector>

/// What goes to and from the module that knows OpenCASCADE. Plain data only: the module links no code of
/// ours.
namespace pw::solid {

/// A straight line, an arc, or a full circle (then `from` and `to` are the same point on it). mm.
struct StepEdge {
    enum class Kind { Line, Arc, Circle } kind = Kind::Line;
    std::array<double, 2> from{}, to{}, centre{};
    double radius = 0;
    bool counterClockwise = true;
};

struct StepRequest {
    /// Closed wires: the rim counter-clockwise, then the holes clockwise.
    std::vector<std::vector<StepEdge>> wires;
    double thickness = 0; ///< mm
    bool inches = false;
    std::string product, description; ///< spelled as they stand between the quotes in the file
    std::array<double, 3> colour{};   ///< sRGB
};

/// The exported function: true and the file's text, or false and the reason.
using WriteStep = bool(const StepRequest& request, std::string& textOrReason);
inline constexpr const char* kWriteStepName = "pwWriteStep";

} // namespace pw::solid
