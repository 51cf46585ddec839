#pragma once

#include "geometry/exchange/dxf_writer.h"

#include <string>
#include <vector>

/// The parts of a DXF file round its ENTITIES, after the public DXF reference for releases 12 and 2000.
namespace pw::exchange::frame {

/// Handle of the block record of the model space: the owner of every entity.
inline constexpr int kModelSpace = 0x20;
/// Handles from here on are free for entities.
inline constexpr int kFirstFree = 0x100;

struct Sheet {
    units::System units = units::System::Metric;
    std::vector<DxfLayer> layers;
    shape::Box extents;
    int nextHandle = kFirstFree; ///< above every handle in use
};

std::string beforeEntitiesR2000(const Sheet& sheet);
std::string afterEntitiesR2000(const Sheet& sheet);
std::string beforeEntitiesR12(const Sheet& sheet);
std::string afterEntitiesR12();

} // namespace pw::exchange::frame
