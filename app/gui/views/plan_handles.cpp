#include "app/gui/views/plan_handles.h"

#include "app/gui/views/plan_piece.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::gui {

namespace {

constexpr double kDegree = std::numbers::pi / 180.0;

double angleOf(shape::Point p) {
    return std::atan2(p.y, p.x);
}

double snapTo(double value, double step) {
    const double snapped = std::round(value / step) * step;
    return snapped == 0 ? 0 : snapped; // no minus nought
}

/// From between two steps the first press goes to the nearer one in that direction.
double nextStep(double value, int direction, double step) {
    if (direction == 0)
        return value;
    const double at = value / step;
    const double next = direction > 0 ? std::floor(at + 1e-6) + 1 : std::ceil(at - 1e-6) - 1;
    return next == 0 ? 0 : next * step;
}

double stepOf(PlanPart part, units::System system, bool fine, double coarse) {
    if (isAngle(part))
        return fine ? 0.1 : 1.0;
    return stepMm(system, fine, coarse);
}

job::PointXY pointXY(shape::Point p) {
    return {units::Length::fromMm(p.x), units::Length::fromMm(p.y)};
}

/// The job with a size or angle changed (mm, or degrees for Start).
job::Job withFigure(job::Job job, PlanPart part, double value) {
    const auto mm = units::Length::fromMm(value);
    if (!job.plate.outline)
        job.plate.outline.emplace();
    switch (part) {
    case PlanPart::Rim:
        job.plate.outline->diameter = mm;
        break;
    case PlanPart::RimLength:
        job.plate.outline->length = mm;
        break;
    case PlanPart::RimWidth:
        job.plate.outline->width = mm;
        break;
    case PlanPart::Bore:
        job.plate.bore = mm;
        break;
    case PlanPart::Circle:
        job.stations.circle = mm;
        break;
    case PlanPart::Access:
        job.stations.accessHole = mm;
        break;
    case PlanPart::Start:
        job.stations.start = units::Angle::fromDegree(value);
        break;
    default:
        break;
    }
    return job;
}

/// The nearest of `distances` below reach: what lies under the cursor.
class Nearest {
public:
    explicit Nearest(double reach) : m_nearest(reach) {}
    void offer(double distance, Grab grab) {
        if (distance < m_nearest) {
            m_nearest = distance;
            m_best = grab;
        }
    }
    const Grab& best() const { return m_best; }

private:
    double m_nearest;
    Grab m_best;
};

void offerEdges(const PlanShape& shape, shape::Point p, double reach, Nearest& edges) {
    for (std::size_t i = 0; i < shape.stations.size(); ++i)
        if (shape.access > 0 && shape.hole.shape == job::HoleShape::Round)
            edges.offer(std::abs(shape::distance(p, shape.stations[i]) - shape.access / 2),
                        {PlanPart::Access, i});
    for (std::size_t i = 0; i < shape.extra.size(); ++i)
        if (shape.extra[i].diameter > 0)
            edges.offer(std::abs(shape::distance(p, shape.extra[i].at) - shape.extra[i].diameter / 2),
                        {PlanPart::ExtraSize, i});
    for (std::size_t i = 0; i < shape.keepClear.size(); ++i) {
        const shape::Circle& circle = shape.keepClear[i].circle;
        edges.offer(std::abs(shape::distance(p, circle.centre) - circle.radius), {PlanPart::ObstacleSize, i});
    }
    const double r = shape::norm(p);
    if (shape.bore > 0)
        edges.offer(std::abs(r - shape.bore / 2), {PlanPart::Bore, 0});
    if (shape.rimDiameter > 0)
        edges.offer(std::abs(r - shape.rimDiameter / 2), {PlanPart::Rim, 0});
    if (shape.rimLength > 0 && shape.rimWidth > 0) {
        if (std::abs(p.y) <= shape.rimWidth / 2 + reach)
            edges.offer(std::abs(std::abs(p.x) - shape.rimLength / 2), {PlanPart::RimLength, 0});
        if (std::abs(p.x) <= shape.rimLength / 2 + reach)
            edges.offer(std::abs(std::abs(p.y) - shape.rimWidth / 2), {PlanPart::RimWidth, 0});
    }
}

} // namespace

bool isPlace(PlanPart part) {
    return part == PlanPart::Extra || part == PlanPart::Corner || part == PlanPart::Station ||
           part == PlanPart::Obstacle || part == PlanPart::Piece;
}

bool isAngle(PlanPart part) {
    return part == PlanPart::Start || part == PlanPart::PieceTurn;
}

bool isOneOfMany(PlanPart part) {
    return (isPlace(part) && part != PlanPart::Piece) || part == PlanPart::ExtraSize ||
           part == PlanPart::ObstacleSize;
}

Grab grabAt(const PlanShape& shape, shape::Point p, double reach) {
    // A small hole would be all edge: its middle third moves it whatever the reach.
    const auto middleOf = [&](shape::Point centre, double diameter) {
        return shape::distance(p, centre) < diameter / 6;
    };
    for (std::size_t i = 0; i < shape.extra.size(); ++i)
        if (middleOf(shape.extra[i].at, shape.extra[i].diameter))
            return {PlanPart::Extra, i};
    if (shape.piece && isOnPiece(shape, p, reach) && shape::distance(p, shape.piece->knob) < reach)
        return {PlanPart::PieceTurn, 0};
    Nearest corners(reach);
    for (std::size_t i = 0; i < shape.corners.size(); ++i)
        corners.offer(shape::distance(p, shape.corners[i].at), {PlanPart::Corner, i});
    if (corners.best())
        return corners.best();
    Nearest edges(reach);
    offerEdges(shape, p, reach, edges);
    if (edges.best())
        return edges.best();
    // The inside of a hole comes before the pin circle that runs through it.
    for (std::size_t i = 0; i < shape.extra.size(); ++i)
        if (shape::contains(shape.extra[i].loop, p))
            return {PlanPart::Extra, i};
    for (std::size_t i = 0; i < shape.stations.size(); ++i)
        if (shape::distance(p, shape.stations[i]) < std::max(shape.access / 2, reach))
            return {shape.onCircle ? PlanPart::Start : PlanPart::Station, i};
    for (std::size_t i = 0; i < shape.keepClear.size(); ++i)
        if (shape::distance(p, shape.keepClear[i].circle.centre) < shape.keepClear[i].circle.radius)
            return {PlanPart::Obstacle, i};
    Nearest circle(reach);
    if (shape.circle > 0)
        circle.offer(std::abs(shape::norm(p) - shape.circle / 2), {PlanPart::Circle, 0});
    if (!circle.best() && isOnPiece(shape, p, reach))
        return {PlanPart::Piece, 0};
    return circle.best();
}

std::vector<Grab> grabs(const PlanShape& shape) {
    std::vector<Grab> all;
    if (shape.rimDiameter > 0)
        all.push_back({PlanPart::Rim, 0});
    if (shape.rimLength > 0)
        all.push_back({PlanPart::RimLength, 0});
    if (shape.rimWidth > 0)
        all.push_back({PlanPart::RimWidth, 0});
    for (std::size_t i = 0; i < shape.corners.size(); ++i)
        all.push_back({PlanPart::Corner, i});
    if (shape.circle > 0)
        all.push_back({PlanPart::Circle, 0});
    if (shape.access > 0 && !shape.stations.empty())
        all.push_back({PlanPart::Access, 0});
    if (shape.onCircle && !shape.stations.empty())
        all.push_back({PlanPart::Start, 0});
    if (shape.bore > 0)
        all.push_back({PlanPart::Bore, 0});
    if (!shape.onCircle)
        for (std::size_t i = 0; i < shape.stations.size(); ++i)
            all.push_back({PlanPart::Station, i});
    for (std::size_t i = 0; i < shape.extra.size(); ++i) {
        all.push_back({PlanPart::Extra, i});
        if (shape.extra[i].diameter > 0)
            all.push_back({PlanPart::ExtraSize, i});
    }
    for (std::size_t i = 0; i < shape.keepClear.size(); ++i) {
        all.push_back({PlanPart::Obstacle, i});
        all.push_back({PlanPart::ObstacleSize, i});
    }
    if (shape.piece) {
        all.push_back({PlanPart::Piece, 0});
        all.push_back({PlanPart::PieceTurn, 0});
    }
    return all;
}

std::string pathOf(PlanPart part) {
    switch (part) {
    case PlanPart::Rim:
        return "plate.outline.diameter";
    case PlanPart::RimLength:
        return "plate.outline.length";
    case PlanPart::RimWidth:
        return "plate.outline.width";
    case PlanPart::Bore:
        return "plate.bore";
    case PlanPart::Circle:
        return "stations.circle";
    case PlanPart::Access:
        return "stations.access_hole";
    case PlanPart::Start:
        return "stations.start";
    case PlanPart::Piece:
        return "piece.at";
    case PlanPart::PieceTurn:
        return "piece.turn";
    default:
        return {};
    }
}

double stepMm(units::System system, bool fine, double coarse) {
    if (!fine && coarse > 0)
        return coarse;
    if (system == units::System::Inch)
        return units::kMmPerInch / (fine ? 64 : 16);
    return fine ? 0.1 : 1.0;
}

double figureOf(const PlanShape& shape, PlanPart part) {
    switch (part) {
    case PlanPart::Rim:
        return shape.rimDiameter;
    case PlanPart::RimLength:
        return shape.rimLength;
    case PlanPart::RimWidth:
        return shape.rimWidth;
    case PlanPart::Bore:
        return shape.bore;
    case PlanPart::Circle:
        return shape.circle;
    case PlanPart::Access:
        return shape.access;
    case PlanPart::Start:
        return shape.start / kDegree;
    case PlanPart::PieceTurn:
        return shape.piece ? shape.piece->turn : 0;
    default:
        return 0;
    }
}

double dragged(const PlanShape& shape, const Grab& grab, shape::Point grabbedAt, shape::Point p,
               double before, units::System system, bool fine, double coarse) {
    const double step = stepOf(grab.part, system, fine, coarse);
    if (isAngle(grab.part)) {
        // The plate turns on the piece as much as the piece turns back under the plate.
        const double way = grab.part == PlanPart::PieceTurn ? -1 : 1;
        double turned = before + way * (angleOf(p) - angleOf(grabbedAt)) / kDegree;
        turned = std::remainder(snapTo(turned, step), 360.0);
        return turned == 0 ? 0 : turned; // no minus nought
    }
    // The figure grows by twice what the edge moves: sizes are measured across.
    double moved = 0;
    switch (grab.part) {
    case PlanPart::RimLength:
        moved = std::abs(p.x) - std::abs(grabbedAt.x);
        break;
    case PlanPart::RimWidth:
        moved = std::abs(p.y) - std::abs(grabbedAt.y);
        break;
    case PlanPart::Access: {
        const shape::Point c =
            grab.index < shape.stations.size() ? shape.stations[grab.index] : shape::Point{};
        moved = shape::distance(p, c) - shape::distance(grabbedAt, c);
        break;
    }
    case PlanPart::ExtraSize:
    case PlanPart::ObstacleSize: {
        const shape::Point c = settingOf(shape, grab).place;
        moved = shape::distance(p, c) - shape::distance(grabbedAt, c);
        break;
    }
    default:
        moved = shape::norm(p) - shape::norm(grabbedAt);
        break;
    }
    return std::max(snapTo(before + 2 * moved, step), step);
}

double stepped(PlanPart part, double value, int direction, units::System system, bool fine, double coarse) {
    const double step = stepOf(part, system, fine, coarse);
    const double next = nextStep(value, direction, step);
    if (isAngle(part)) {
        const double turned = std::remainder(next, 360.0);
        return turned == 0 ? 0 : turned;
    }
    return std::max(next, step);
}

std::string typedFigure(PlanPart part, double value, units::System system) {
    if (isAngle(part))
        return units::writtenNumber(std::round(value * 10) / 10, 6) + " deg";
    if (system == units::System::Metric)
        return units::writtenNumber(std::round(value * 100) / 100, 8) + " mm";
    // A no-break space is for reading; a file gets a plain one.
    return units::plainBlanks(units::writtenInchFraction(units::Length::fromMm(value)));
}

Setting settingOf(const PlanShape& shape, const Grab& grab) {
    const std::size_t i = grab.index;
    switch (grab.part) {
    case PlanPart::Extra:
    case PlanPart::ExtraSize:
        if (i < shape.extra.size())
            return {shape.extra[i].diameter, shape.extra[i].at};
        break;
    case PlanPart::Corner:
        if (i < shape.corners.size())
            return {0, shape.corners[i].at};
        break;
    case PlanPart::Station:
        if (i < shape.stations.size())
            return {0, shape.stations[i]};
        break;
    case PlanPart::Obstacle:
    case PlanPart::ObstacleSize:
        if (i < shape.keepClear.size())
            return {2 * shape.keepClear[i].circle.radius, shape.keepClear[i].circle.centre};
        break;
    case PlanPart::Piece:
        if (shape.piece)
            return {shape.piece->turn, shape.piece->at};
        break;
    default:
        return {figureOf(shape, grab.part), {}};
    }
    return {};
}

shape::Point draggedPlace(shape::Point grabbedAt, shape::Point p, shape::Point before, units::System system,
                          bool fine, double coarse) {
    const double step = stepMm(system, fine, coarse);
    const shape::Point to = before + (p - grabbedAt);
    return {snapTo(to.x, step), snapTo(to.y, step)};
}

shape::Point steppedPlace(shape::Point place, int right, int up, units::System system, bool fine,
                          double coarse) {
    const double step = stepMm(system, fine, coarse);
    return {nextStep(place.x, right, step), nextStep(place.y, up, step)};
}

job::Job withSetting(job::Job job, const PlanShape& shape, const Grab& grab, const Setting& setting) {
    const std::size_t i = grab.index;
    const auto size = units::Length::fromMm(setting.figure);
    switch (grab.part) {
    case PlanPart::Extra:
        if (i < shape.extra.size() && shape.extra[i].row < job.plate.holes.size())
            job.plate.holes[shape.extra[i].row].at = pointXY(setting.place);
        return job;
    case PlanPart::ExtraSize:
        if (i < shape.extra.size() && shape.extra[i].row < job.plate.holes.size())
            job.plate.holes[shape.extra[i].row].diameter = size;
        return job;
    case PlanPart::Corner:
        if (job.plate.outline && i < job.plate.outline->points.size())
            job.plate.outline->points[i].at = setting.place;
        return job;
    case PlanPart::Station:
        if (i < job.stations.at.size())
            job.stations.at[i] = pointXY(setting.place);
        return job;
    case PlanPart::Obstacle:
        if (i < job.keepClear.size())
            job.keepClear[i].at = pointXY(setting.place);
        return job;
    case PlanPart::ObstacleSize:
        if (i < job.keepClear.size())
            job.keepClear[i].diameter = size;
        return job;
    case PlanPart::Piece:
        if (job.piece)
            job.piece->at = pointXY(setting.place);
        return job;
    case PlanPart::PieceTurn:
        if (job.piece)
            job.piece->turn = units::Angle::fromDegree(setting.figure);
        return job;
    default:
        return withFigure(std::move(job), grab.part, setting.figure);
    }
}

std::optional<std::size_t> sideAt(const PlanShape& shape, shape::Point p, double reach) {
    if (shape.corners.size() < 3)
        return {};
    const shape::Loop loop{shape.corners};
    std::optional<std::size_t> best;
    double nearest = reach;
    for (std::size_t i = 0; i < loop.size(); ++i)
        if (const double d = loop.side(i).distanceTo(p); d < nearest) {
            nearest = d;
            best = i;
        }
    return best;
}

} // namespace pw::gui
