#pragma once

/// Factors that more than one member of the load path is checked by.
namespace pw::loadpath {

/// Strength of steel in bearing over its yield: AISC 360 J7, from memory.
constexpr double kBearingOfYield = 1.8;

/// The round face of a nut or head over its flats, and flats over thread diameter where no table has the
/// size: from memory.
constexpr double kFaceOfFlats = 0.95, kFlatsOfDiameter = 1.5;

} // namespace pw::loadpath
