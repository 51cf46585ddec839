#pragma once

#include "geometry/placement/curve.h"
#include "geometry/placement/stock.h"

#include <limits>
#include <optional>
#include <vector>

namespace pw::placement {

/// What must be left between cut and edge, mm.
struct Spacing {
    double kerf = 0;   ///< width of the cut
    double margin = 0; ///< steel left beyond the cut, towards edges, holes and bad areas
    double clear() const { return kerf + margin; }
};

/// Where a plate's origin lies in the piece's coordinates, and how far its x axis is turned (radians,
/// counter-clockwise).
struct Pose {
    Point at;
    double turn = 0;
    bool operator==(const Pose&) const = default;
};

shape::Loop placed(const shape::Loop& loop, const Pose& pose);

/// Is the plate clear of everything, by exact distances between lines and arcs, to within 1e-6 mm? A hole or
/// bad area of the piece is either clear of the rim by the spacing, or inside one of the plate's own holes
/// with the kerf to spare (what is cut there needs steel on the side that falls out). `asBore`: this obstacle
/// is taken as the plate's bore as it stands.
bool fits(const shape::Region& plate, const Stock& stock, const Spacing& spacing, const Pose& pose,
          std::optional<std::size_t> asBore = std::nullopt);

/// How far a plate at a place is from touching: positive, the least clearance beyond the spacing; negative,
/// at least so far must it move before it fits. Changes by no more than the plate is moved. Arcs of the
/// plate's rim are taken up to `kRough` larger than they are, but for a disc, which is exact.
class Slack {
public:
    static constexpr double kRough = 0.04; ///< mm

    Slack(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
          std::optional<std::size_t> asBore = std::nullopt);

    /// `pivot` is where the middle of the plate lies, in the piece. What is certainly under `floor` may come
    /// out as any figure under it.
    double at(Point pivot, double turn, double floor = -std::numeric_limits<double>::infinity()) const;

    Pose poseOf(Point pivot, double turn) const;
    Point pivotOf(const Pose& pose) const;
    double reach() const { return m_reach; } ///< of the rim from the pivot
    double inner() const { return m_inner; } ///< a disc of this radius round the pivot is plate
    double clear() const { return m_clear; }
    const shape::Box& bounds() const { return m_rim.box(); } ///< of the piece
    /// The plate looks the same when turned by this; 0: turning changes nothing.
    double period() const { return m_period; }

private:
    struct Thing { ///< of the piece
        Curve curve;
        std::vector<Point> points;           ///< of a polygon around it
        std::vector<std::size_t> swallowers; ///< plate holes large enough
    };
    double rimSlack(Point pivot, double c, double s, double floor) const;
    double outside(const Thing& thing, Point pivot, double c, double s) const;
    double inside(const Thing& thing, const Curve& hole, Point pivot, double c, double s) const;
    double findPeriod() const;

    Curve m_rim;                 ///< of the piece
    std::vector<Point> m_reflex; ///< its corners that point inward
    std::vector<Thing> m_things;
    Curve m_plate;               ///< rim, with the pivot as origin
    std::vector<Curve> m_holes;  ///< of the plate, likewise
    std::vector<Point> m_points; ///< round the plate's rim, likewise
    Point m_pivot;               ///< in plate coordinates
    double m_clear, m_kerf, m_reach = 0, m_inner = 0, m_period = 0;
};

} // namespace pw::placement
