#pragma once

#include "app/engine/plate_field.h"

namespace pw::engine {

/// One station that does not carry: its keeper hangs.
struct HungStation {
    int station = 0;           ///< the worst one, from 0
    double collapseFactor = 0; ///< of the loads that are left
    bool reached = false;      ///< false: carried at least that much
    double tipOffset = 0;      ///< mm from the middle to the resultant, the worst of all stations
    int tipStation = 0;
    /// Statics of the station whose loss bends the screw most: what is left of the load (N) and the moment
    /// the centre bearing cannot balance by pushing (N.mm, see plate::balance); 0 where it can.
    int screwStation = 0;
    double loadLeft = 0, screwMoment = 0;
};
/// Nothing to say with fewer than two loaded stations.
util::Result<Found<HungStation>> hungStation(const PlateTask& task, double yield,
                                             const FieldOptions& options = {});

/// Beyond this the factor of a hung station is not followed: twice what the verdict asks for.
inline constexpr double kHungEnough = 3.0;

/// The extra force at one station that is rusted fast which brings the worst place of the plate to `stress`
/// (elastic; the centre's answer taken as it is when the station carries double).
struct StuckStation {
    int station = 0;
    double extraForce = 0; ///< N, beyond the design load
};
util::Result<Found<StuckStation>> stuckStation(const PlateTask& task, double stress,
                                               const FieldOptions& options = {});

/// How far the plate's slope tilts a retainer, mm across it; the worst station.
struct RetainerTilt {
    int station = 0;
    double tilt = 0;
};
Found<RetainerTilt> retainerTilt(const PlateField& field, const PlateTask& task, double retainer);

/// The same plate with one thing about its load changed.
struct Moved {
    std::string what;
    double peakStressMpa = 0, deflectionMm = 0;
};
/// Force on the inner or outer half of the lands, a hard washer, a bearing no wider than the nut's face (0:
/// unknown).
std::vector<Moved> whatMovesTheAnswer(const PlateField& field, const PlateTask& task, double startAngle,
                                      double nutFaceRadius);

} // namespace pw::engine
