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

/// A prism and where it stands, once or more often.
struct StepPart {
    /// Closed wires: the rim counter-clockwise, then the holes clockwise.
    std::vector<std::vector<StepEdge>> wires;
    double thickness = 0;                  ///< mm
    std::string name;                      ///< spelled as it stands between the quotes in the file
    std::array<double, 3> colour{};        ///< sRGB
    std::vector<std::array<double, 3>> at; ///< mm; where its x, y, z = 0 comes to stand
};

struct StepRequest {
    std::vector<StepPart> parts; ///< one that stands at 0, 0, 0 once, or an assembly
    bool inches = false;
    std::string product, description; ///< spelled likewise; the product is the part itself or the assembly
};

/// The exported function: true and the file's text, or false and the reason.
using WriteStep = bool(const StepRequest& request, std::string& textOrReason);
inline constexpr const char* kWriteStepName = "pwWriteStep";

} // namespace pw::solid
