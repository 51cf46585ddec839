#pragma once

#include "app/engine/report.h"
#include "core/job/job.h"
#include "core/spring/pack.h"

#include <optional>
#include <QRectF>
#include <string>
#include <vector>

/// The section through the stack, without painting: what stands where along the screw's axis, and what the
/// travel of the plate makes of springs and thread.
namespace pw::gui {

/// How the plate travels: from assembled, squeezed towards the hub until the keepers are free, then let up
/// until the last spring is free. Lengths in mm. Of a pull: from seated until the hub is off.
struct StackTravel {
    bool isPull = false;
    double squeeze = 0;               ///< of the plate, from assembled
    std::optional<double> release;    ///< from squeezed until free; none when it is not known
    std::optional<double> lead;       ///< of the screw
    std::optional<double> threadLeft; ///< when free
    spring::PackLoads pack;

    bool moves() const { return squeeze > 0 || release.value_or(0) > 0; }
    /// Where "squeezed" stands on the slider, 0..1: the squeeze is short and the letting up long, so each
    /// gets a part of the slider of its own.
    double squeezedPlace() const;
    /// How far the plate has gone towards the hub from assembled at a place of the slider.
    double towardsHub(double place) const;
    /// Whole way back to the place.
    double placeOf(double towardsHub, bool lettingUp) const;
};

StackTravel stackTravel(const job::Job& job, const engine::Report* report);

/// Figures at one place of the slider; what is not known is empty.
struct StackState {
    double towardsHub = 0;
    std::optional<units::Length> springLength; ///< of the first spring
    std::optional<units::Length> shortOfSolid; ///< least of all springs
    spring::Coils coils = spring::Coils::Unknown;
    std::optional<units::Range<units::Force>> force; ///< of the whole pack
    std::optional<units::Length> threadLeft;         ///< over what must stay engaged
    std::optional<double> turns; ///< of the nut since the step before: squeezing, or letting up
    std::vector<double> lengths; ///< of each spring of the pack, mm
};
StackState stateAt(const StackTravel& travel, double place);

/// A part cut by the plane through the axis and a station: the half above the axis, mirrored below it.
struct SectionPart {
    enum class Role { Plate, Retainer, Pin, Keeper, Hub, Shaft, Bar, Screw, Nut, Washer, Bolt, Leg, Jaw };
    enum class Hatch { None, Rising, Falling };
    Role role = Role::Plate;
    double x0 = 0, x1 = 0;    ///< along the axis, mm; the hub is to the right
    double low = 0, high = 0; ///< from the axis, mm
    bool known = true;        ///< false: its size was not given and is drawn dashed
    Hatch hatch = Hatch::None;
    bool operator==(const SectionPart&) const = default;
};

/// A coil of wire cut through.
struct SectionCoil {
    double x = 0, high = 0, wire = 0; ///< middle and diameter, mm
    std::size_t spring = 0;
};

struct Section {
    std::vector<SectionPart> parts; ///< in the order of painting
    std::vector<SectionCoil> coils;
    std::vector<bool> springSolid;                     ///< one for each spring
    double springFrom = 0, springTo = 0, springAt = 0; ///< for the size line: ends and height of the coils
    double threadFrom = 0, threadTo = 0;               ///< thread outside the nut; equal when there is none
    double stationAt = 0;                              ///< height of the station's centre line; 0: none
    double left = 0, right = 0, high = 0;
    bool anyGuessed = false;

    const SectionPart* find(SectionPart::Role role) const;
};

/// The stack with the plate at a place of its travel. Never fails: what is not given is drawn in a usual
/// proportion and marked as not known.
Section sectionAt(const job::Job& job, const StackTravel& travel, double place);

/// The box (mm) that holds the section at every place, so that the drawing does not jump while it moves.
QRectF sectionBounds(const job::Job& job, const StackTravel& travel);

/// Places of the coils of one spring between its two ends: the first and last touch the ends.
std::vector<double> coilPlaces(double from, double length, double wire, double coils);

} // namespace pw::gui
