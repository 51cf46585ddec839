#pragma once

#include "geometry/exchange/dxf.h"
#include "geometry/exchange/dxf_writer.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::exchange {

/// A figure with its unit, as plain ASCII: "12.7 mm", "0.5 in".
std::string sized(Length length, units::System system);

/// "Drill 6 x %%c8 mm: too small to burn", one line for each size ("%%c" is the diameter sign of the format).
std::vector<std::string> drillLines(const std::vector<DrilledHole>& drilled, units::System system);

/// Draws in mm into a file in mm or inches.
class DxfSheet {
public:
    DxfSheet(const DxfOptions& options, std::vector<DxfLayer> layers);

    void edge(const char* layer, const shape::Loop& loop); ///< a circle as a CIRCLE
    void path(const char* layer, const shape::Loop& loop); ///< always a polyline: it has a start and a sense
    void lead(const char* layer, const shape::Side& side);
    void centre(const char* layer, shape::Point at);
    /// A cross small enough to be drilled away, and the hole's circle when `withCircle`.
    void cross(const char* layer, const DrilledHole& hole, bool withCircle);
    /// Words above and below what was drawn so far, never on it: a table that cuts them cuts scrap.
    void words(const std::vector<std::string>& spelled, const std::string& warning);

    std::string finish() const;

private:
    void note(shape::Point at, double height, const std::string& spelled);
    shape::Loop scaled(shape::Loop loop) const;
    void take(const shape::Box& box);

    double m_scale;
    DxfWriter m_writer;
    std::optional<shape::Box> m_extents;
};

} // namespace pw::exchange
