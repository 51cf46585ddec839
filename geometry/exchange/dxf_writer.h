#pragma once

#include "core/shape/loop.h"
#include "geometry/exchange/dxf.h"

#include <string>
#include <string_view>
#include <vector>

namespace pw::exchange {

/// A layer and its colour index (1 to 255).
struct DxfLayer {
    std::string name;
    int colour = 7;
};

/// Collects shapes and puts the frame of a whole file round them. Knows the format, not the plate.
/// Coordinates come in drawing units; text comes spelled (see dxf_text.h).
class DxfWriter {
public:
    DxfWriter(DxfVersion version, units::System units, std::vector<DxfLayer> layers);

    void circle(std::string_view layer, const shape::Circle& circle);
    void outline(std::string_view layer, const shape::Loop& loop);  ///< closed polyline, arcs as bulges
    void openSide(std::string_view layer, const shape::Side& side); ///< open polyline of one side
    void point(std::string_view layer, shape::Point at);
    void line(std::string_view layer, shape::Point from, shape::Point to);
    void text(std::string_view layer, shape::Point leftEndOfBase, double height, std::string_view spelled);

    /// The file. `extents` is the box round everything drawn.
    std::string finish(const shape::Box& extents) const;

private:
    void polyline(std::string_view layer, const std::vector<shape::Vertex>& corners, bool closed);
    void begin(std::string_view type, std::string_view marker, std::string_view layer);

    DxfVersion m_version;
    units::System m_units;
    std::vector<DxfLayer> m_layers;
    std::string m_entities;
    int m_nextHandle;
};

} // namespace pw::exchange
