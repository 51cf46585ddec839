#pragma once

#include "core/util/result.h"
#include "geometry/mesh/size_field.h"
#include "geometry/outline/tagged_region.h"

namespace pw::mesh {

/// Limits on what is worth solving.
struct MeshLimits {
    int mostTriangles = 60000;
};

/// Six-node triangles on the piece of plate, its boundary on the true lines and arcs, every Jacobian
/// positive. Repeatable, and safe in several threads at once. Problems: edges that touch or cross, material
/// in several pieces, no area, more triangles than the limit.
///
///   plate::Mesh mesh = *makeMesh(outline::tagged(region), {.far = 8, .nearBore = 3, .nearAccess = 3});
util::Result<plate::Mesh> makeMesh(const outline::TaggedRegion& region, const SizeField& size,
                                   const MeshLimits& limits = {});

} // namespace pw::mesh
