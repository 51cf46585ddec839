#pragma once

#include "core/job/job.h"
#include "core/loadpath/travel.h"
#include "core/plate/mesh.h"
#include "core/plate/trust.h"
#include "core/shape/region.h"
#include "core/util/result.h"
#include "core/verdict/check.h"

#include <Eigen/Core>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Everything `check` found out about a job, as plain data. Window, words and JSON all show this and nothing
/// else. A figure that was not computed is empty, never 0. Units stand in the names.
namespace pw::engine {

template<class T>
using Found = std::optional<T>;

struct LoadReport {
    Found<units::Range<units::Force>> total, perStation;
    Found<units::Energy> energy;
    std::string source; ///< "springs", "given", "hub", "wrench", "ram", "rated"
    bool operator==(const LoadReport&) const = default;
};

struct ByBookReport {
    double momentNmmPerMm = 0, stressMpa = 0, deflectionMm = 0, ligamentEfficiency = 1;
    std::string formula, source;
};

struct FieldReport {
    double peakStressMpa = 0;
    shape::Point peakAt;
    std::string peakPlace; ///< "at the bore edge", "at the edge of access hole 3", ...
    Found<double> boreEdgeStressMpa, accessHoleStressMpa, deflectionMm;
    double errorPercent = 0;
    plate::Trust trust;
    bool settled = false; ///< the peak is known to the 2 % that is asked for
    int unknowns = 0, sectorOf = 1;
    double solveMs = 0;
};

/// The field at one asked-for place. Moments in N.mm per mm, positive when they stretch the face that the
/// stations press on (the lower face in the stack); stresses on that face.
struct PointReport {
    double x = 0, y = 0, w = 0, Mx = 0, My = 0, Mxy = 0;
    double stress[3] = {0, 0, 0}; ///< x, y, xy
    double vonMises = 0;
    bool inside = false; ///< false: the place is not in the steel, the rest is nothing
};

struct PlateReport {
    Found<ByBookReport> byBook;
    Found<FieldReport> field;
    Found<double> firstYieldFactor, collapseFactor, setMm, setAtProofMm, massKg;
    bool collapseIsLowerBound = false;
    std::vector<PointReport> points;
    struct CurvePoint {
        double factor = 0, deflectionMm = 0;
    };
    /// What the worst stress and the deflection become when one thing about the load is other than taken.
    struct Spread {
        std::string what;
        double peakStressMpa = 0, deflectionMm = 0;
    };
    std::vector<Spread> spread;
    std::vector<CurvePoint> curve; ///< load over design load against deflection, up to collapse
};

struct ScrewReport {
    Found<units::Torque> torque; ///< at the design load, middling friction
    Found<units::Range<units::Torque>> torqueRange;
    Found<units::Torque> stopTorque;
    Found<units::Stress> stopPressure; ///< on a ram's gauge
    Found<units::Force> ratedLoad, stamp;
    Found<units::Range<double>> kFactor; ///< T = K F d at low and high friction
};

struct TravelReport {
    Found<units::Length> release, toSolid, threadLeft;
    Found<units::Length> threadNeeded; ///< usable length, or engagement of a turning screw
    std::vector<loadpath::ThreadMoment> moments;
};

/// What a hub asks for when it is pulled off; low and high.
struct HubReport {
    Found<units::Range<units::Stress>> pressure;
    Found<units::Range<units::Force>> pull;
    Found<units::Range<units::Temperature>> heatToFree;
    Found<units::Energy> jump; ///< let go at once at the design load
    std::vector<std::string> remarks;
};

/// The plate as its own load gauge: what a dial shows at a load.
struct GaugeRow {
    std::string what; ///< "a quarter", "design load", "proof"
    units::Force load;
    units::Length reading;
};

/// One line of the turns-and-torque card.
struct CardRow {
    double turns = 0;             ///< from where the load begins to move (squeeze) or from snug (pull)
    Found<units::Length> squeeze; ///< none for a pull
    units::Range<units::Force> load;
    units::Range<units::Torque> torque; ///< least load and friction to most
    Found<units::Range<units::Length>> reading;
};
struct Card {
    std::vector<CardRow> rows;
    std::vector<std::string> notes; ///< what too high too early and too low mean
};

struct ProofReport {
    Found<units::Force> load;
    Found<units::Torque> torque;
    Found<units::Length> reading, readingAt;
    units::Length returnWithin = units::Length::fromMm(0.02);
};

/// One change that was worked out and does mend a check.
struct Change {
    std::string check, what, field, value;
    verdict::Grade leaves = verdict::Grade::Incomplete; ///< the whole tool, once it is done
    bool operator==(const Change&) const = default;
};

/// A figure that is needed before there can be an answer.
struct Missing {
    std::string field; ///< path in the job file
    std::string how;   ///< "Needed: the spring's free length. Stand one loose spring up and measure it."
};

/// The solved field for drawing: values at the nodes of one sector, whose mirror images make the plate.
struct Picture {
    plate::Mesh mesh;
    plate::Sector sector;
    Eigen::VectorXd vonMises;   ///< MPa on the face, a value a node
    Eigen::VectorXd deflection; ///< mm, relative to the centre bearing, positive towards the screw's nut
};

struct Report {
    std::string title;
    verdict::Grade grade = verdict::Grade::Incomplete;
    std::string reason;                 ///< one or two short sentences, the plate or member first
    std::string weakest;                ///< id of a check, or empty
    std::vector<verdict::Check> checks; ///< weakest first
    LoadReport load;
    PlateReport plate;
    ScrewReport screw;
    HubReport hub;
    TravelReport travel;
    ProofReport proof;
    std::vector<GaugeRow> gauge;
    Card card;
    std::vector<std::string> assumptions, cautions, steps;
    std::size_t lastSteps = 0; ///< of steps: the first of letting up, or of the pull
    std::vector<Change> changes;
    std::vector<Missing> missing;
    util::Problems problems; ///< shapes that cannot be (hole outside the plate); makes the verdict incomplete
    units::System preferred = units::System::Metric;

    std::shared_ptr<const shape::Region> region; ///< the plate as built; none when it could not be
    std::vector<shape::Point> stations;          ///< station centres, mm
    Found<units::Length> landOutside, bearingInside, bearingOutside; ///< diameters, for drawing
    std::shared_ptr<const Picture> picture;                          ///< none when there is no field solution

    const verdict::Check* find(std::string_view id) const;
};

} // namespace pw::engine
