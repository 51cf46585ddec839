#include "geometry/exchange/dxf_writer.h"

#include "core/util/require.h"
#include "geometry/exchange/dxf_frame.h"
#include "geometry/exchange/dxf_tags.h"

#include <algorithm>

namespace pw::exchange {

namespace {

/// tan of a quarter angle: a bulge wants more places than a length in mm.
constexpr int kBulgeDecimals = 15;

} // namespace

DxfWriter::DxfWriter(DxfVersion version, units::System units, std::vector<DxfLayer> layers)
    : m_version(version), m_units(units), m_layers(std::move(layers)), m_nextHandle(frame::kFirstFree) {}

void DxfWriter::begin(std::string_view type, std::string_view marker, std::string_view layer) {
    util::require(
        std::any_of(m_layers.begin(), m_layers.end(), [&](const DxfLayer& l) { return l.name == layer; }),
        "a shape on a layer that the drawing does not have");
    tags::text(m_entities, 0, type);
    if (m_version == DxfVersion::R12) {
        tags::text(m_entities, 8, layer);
        return;
    }
    tags::handle(m_entities, 5, m_nextHandle++);
    tags::handle(m_entities, 330, frame::kModelSpace);
    tags::text(m_entities, 100, "AcDbEntity");
    tags::text(m_entities, 8, layer);
    tags::text(m_entities, 100, marker);
}

void DxfWriter::circle(std::string_view layer, const shape::Circle& circle) {
    util::require(circle.radius > 0, "a circle without a radius");
    begin("CIRCLE", "AcDbCircle", layer);
    tags::point(m_entities, 10, circle.centre);
    tags::real(m_entities, 40, circle.radius);
}

void DxfWriter::outline(std::string_view layer, const shape::Loop& loop) {
    util::require(loop.size() >= 2, "an outline of less than two corners");
    polyline(layer, loop.vertices, true);
}

void DxfWriter::openSide(std::string_view layer, const shape::Side& side) {
    polyline(layer, {{side.from, side.bulge}, {side.to, 0}}, false);
}

void DxfWriter::polyline(std::string_view layer, const std::vector<shape::Vertex>& corners, bool closed) {
    if (m_version == DxfVersion::R12) {
        begin("POLYLINE", {}, layer);
        tags::whole(m_entities, 66, 1);
        tags::point(m_entities, 10, {});
        tags::whole(m_entities, 70, closed ? 1 : 0);
        for (const shape::Vertex& vertex : corners) {
            begin("VERTEX", {}, layer);
            tags::point(m_entities, 10, vertex.at);
            if (vertex.bulge != 0)
                tags::real(m_entities, 42, vertex.bulge, kBulgeDecimals);
        }
        begin("SEQEND", {}, layer);
        return;
    }
    begin("LWPOLYLINE", "AcDbPolyline", layer);
    tags::whole(m_entities, 90, static_cast<int>(corners.size()));
    tags::whole(m_entities, 70, closed ? 1 : 0);
    tags::real(m_entities, 43, 0);
    for (const shape::Vertex& vertex : corners) {
        tags::flatPoint(m_entities, 10, vertex.at);
        if (vertex.bulge != 0)
            tags::real(m_entities, 42, vertex.bulge, kBulgeDecimals);
    }
}

void DxfWriter::point(std::string_view layer, shape::Point at) {
    begin("POINT", "AcDbPoint", layer);
    tags::point(m_entities, 10, at);
}

void DxfWriter::line(std::string_view layer, shape::Point from, shape::Point to) {
    begin("LINE", "AcDbLine", layer);
    tags::point(m_entities, 10, from);
    tags::point(m_entities, 11, to);
}

void DxfWriter::text(std::string_view layer, shape::Point leftEndOfBase, double height,
                     std::string_view spelled) {
    begin("TEXT", "AcDbText", layer);
    tags::point(m_entities, 10, leftEndOfBase);
    tags::real(m_entities, 40, height);
    tags::text(m_entities, 1, spelled);
    tags::text(m_entities, 7, "STANDARD");
    if (m_version == DxfVersion::R2000)
        tags::text(m_entities, 100, "AcDbText"); // the format has it twice
}

std::string DxfWriter::finish(const shape::Box& extents) const {
    const frame::Sheet sheet{m_units, m_layers, extents, m_nextHandle};
    if (m_version == DxfVersion::R12)
        return frame::beforeEntitiesR12(sheet) + m_entities + frame::afterEntitiesR12();
    return frame::beforeEntitiesR2000(sheet) + m_entities + frame::afterEntitiesR2000(sheet);
}

} // namespace pw::exchange
