#include "app/engine/plate_report.h"

#include "core/plate/field_at.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

namespace {

using Kind = plate::MeshEdge::Kind;

/// Edges are found to within this, mm: rays meet them up to rounding and the sides' parabolas.
constexpr double kEdgeSlack = 0.05;

/// The edge a node lies on, if any.
const plate::MeshEdge* edgeOf(const plate::Mesh& mesh, int node) {
    for (const plate::MeshEdge& edge : mesh.edges)
        if (edge.kind != Kind::Symmetry &&
            std::find(edge.nodes.begin(), edge.nodes.end(), node) != edge.nodes.end())
            return &edge;
    return nullptr;
}

std::string placeOf(const PlateField& field, const PlateTask& task) {
    const plate::Mesh& mesh = field.model->mesh();
    if (const plate::MeshEdge* edge = edgeOf(mesh, field.peakNode)) {
        const bool alike = field.model->sector().count > 1;
        switch (edge->kind) {
        case Kind::Bore:
            return say("at the bore edge");
        case Kind::Access:
            return alike ? say("at the edges of the access holes")
                         : say("at the edge of access hole %1", {edge->index + 1});
        case Kind::Extra:
            return say("at the edge of extra hole %1", {edge->index + 1});
        default:
            return say("at the rim");
        }
    }
    const Eigen::Vector2d p = mesh.nodes.col(field.peakNode);
    return std::hypot(p.x() - task.bearing.centre.x, p.y() - task.bearing.centre.y) <= task.bearing.outside
               ? say("under the centre bearing")
               : say("between the holes");
}

/// The innermost steel on a ray: the bore's edge, or the middle.
shape::Point rayStart(const shape::Region& region, double angle) {
    const double reach =
        4 * std::hypot(shape::bounds(region.rim).width(), shape::bounds(region.rim).height());
    const shape::Side ray{{0, 0}, shape::polar(reach, angle)};
    shape::Point start{0, 0};
    for (const shape::Hole& hole : region.holes) {
        if (hole.part != shape::Part::Bore)
            continue;
        for (std::size_t i = 0; i < hole.loop.size(); ++i)
            for (shape::Point p : shape::crossings(ray, hole.loop.side(i)))
                if (shape::norm(p) > shape::norm(start))
                    start = p;
    }
    return start;
}

Found<double> liftAt(const plate::FieldAt& at, const PlateField& field, shape::Point p) {
    const auto place = at.find(p, kEdgeSlack);
    if (!place)
        return std::nullopt;
    return at.value(*place, field.deflection.transpose());
}

} // namespace

Found<shape::Point> rayExit(const shape::Region& region, double angle) {
    const double reach =
        4 * std::hypot(shape::bounds(region.rim).width(), shape::bounds(region.rim).height());
    const shape::Side ray{{0, 0}, shape::polar(reach, angle)};
    Found<shape::Point> exit;
    for (std::size_t i = 0; i < region.rim.size(); ++i)
        for (shape::Point p : shape::crossings(ray, region.rim.side(i)))
            if (!exit || shape::norm(p) > shape::norm(*exit))
                exit = p;
    return exit;
}

Found<double> rimDeflection(const PlateField& field, const PlateTask& task, double startAngle) {
    const plate::FieldAt at(field.model->mesh(), field.model->sector());
    const auto exit = rayExit(task.region, startAngle);
    if (!exit)
        return std::nullopt;
    const auto inner = liftAt(at, field, rayStart(task.region, startAngle)), outer = liftAt(at, field, *exit);
    if (!inner || !outer)
        return std::nullopt;
    return *outer - *inner;
}

FieldReport fieldReport(const PlateField& field, const PlateTask& task, double startAngle, double solveMs) {
    FieldReport report;
    const plate::Mesh& mesh = field.model->mesh();
    const double t = task.section.thickness;
    report.peakStressMpa = field.peakStress;
    report.peakAt = {mesh.nodes(0, field.peakNode), mesh.nodes(1, field.peakNode)};
    report.peakPlace = placeOf(field, task);
    for (const plate::EdgeMoment& edge : field.edges) {
        const double stress = std::abs(6 * edge.moment / (t * t));
        if (edge.kind == Kind::Bore)
            report.boreEdgeStressMpa = std::max(report.boreEdgeStressMpa.value_or(0), stress);
        if (edge.kind == Kind::Access)
            report.accessHoleStressMpa = std::max(report.accessHoleStressMpa.value_or(0), stress);
    }
    report.deflectionMm = rimDeflection(field, task, startAngle);
    report.errorPercent = field.errorPercent;
    report.settled = field.settled;
    report.trust = field.trust;
    report.unknowns = field.model->unknowns().count();
    report.sectorOf = field.model->sector().count;
    report.solveMs = solveMs;
    return report;
}

std::vector<PointReport> pointReports(const PlateField& field, const PlateTask& task,
                                      const std::vector<shape::Point>& places) {
    const plate::FieldAt at(field.model->mesh(), field.model->sector());
    const double t = task.section.thickness;
    std::vector<PointReport> points;
    for (shape::Point p : places) {
        PointReport report{.x = p.x, .y = p.y};
        if (const auto place = at.find(p, kEdgeSlack)) {
            const Eigen::Vector3d m = at.moments(*place, field.moments.nodes);
            report.inside = true;
            report.w = at.value(*place, field.deflection.transpose());
            report.Mx = m(0);
            report.My = m(1);
            report.Mxy = m(2);
            for (int k = 0; k < 3; ++k)
                report.stress[k] = 6 * m(k) / (t * t);
            report.vonMises = plate::faceVonMises(m, t);
        }
        points.push_back(report);
    }
    return points;
}

Picture pictureOf(const PlateField& field, const PlateTask& task) {
    Picture picture{field.model->mesh(), field.model->sector(), {}, field.deflection};
    picture.vonMises.resize(picture.mesh.nodeCount());
    for (Eigen::Index i = 0; i < picture.mesh.nodeCount(); ++i)
        picture.vonMises(i) = plate::faceVonMises(field.moments.nodes.col(i), task.section.thickness);
    return picture;
}

Found<DialReading> dialReading(const PlateField& field, const PlateTask& task, double startAngle,
                               double factor) {
    constexpr double kFoot = 3; // mm beyond the bearing's edge: room for the dial's foot (common practice)
    const auto exit = rayExit(task.region, startAngle);
    if (!exit)
        return std::nullopt;
    const plate::FieldAt at(field.model->mesh(), field.model->sector());
    const double inner = task.bearing.outside + kFoot;
    const auto low = liftAt(at, field, shape::polar(inner, startAngle)), high = liftAt(at, field, *exit);
    if (!low || !high)
        return std::nullopt;
    return DialReading{units::Length::fromMm(std::abs(*high - *low) * factor), units::Length::fromMm(inner)};
}

} // namespace pw::engine
