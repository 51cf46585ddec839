#include "core/plate/trust.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <cmath>

namespace pw::plate {

namespace {

/// Moment of the forces about the origin, of the whole plate. Mirror images cancel all of it where the plate
/// also turns onto itself, and the part about the line where it is only mirrored.
double momentOf(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& forces) {
    const Eigen::Vector2d moment = mesh.nodes * forces;
    if (sector.count == 1)
        return moment.norm();
    if (sector.count == 2)
        return 2 * std::abs(moment.dot(Eigen::Vector2d(std::cos(sector.line0), std::sin(sector.line0))));
    return 0;
}

bool within(double value, double bound) {
    return std::isfinite(value) && value <= bound;
}

} // namespace

Trust trustOf(const PlateModel& model, const Eigen::VectorXd& forces, const ElasticSolution& solution) {
    const Mesh& mesh = model.mesh();
    const double load = forces.cwiseMax(0).sum();
    const double size = (mesh.nodes.rowwise().maxCoeff() - mesh.nodes.rowwise().minCoeff()).maxCoeff();
    Trust trust;
    trust.residual = solution.residual;
    trust.held = solution.pinReaction;
    trust.imbalance = std::abs(forces.sum()) / load;
    trust.tipping = momentOf(mesh, model.sector(), forces) / (load * model.sector().count * size);
    return trust;
}

std::optional<std::string> doubtOf(const Trust& trust, const TrustBounds& bounds) {
    const auto part = [](double value) { return units::number(value, 2); };
    if (!within(trust.residual, bounds.residual))
        return say("the equations were not solved: %1 of the load is left over", {part(trust.residual)});
    if (!within(trust.imbalance, bounds.imbalance) || !within(trust.held, bounds.held))
        return say("loads and reactions do not balance: %1 of the load is left over",
                   {part(std::max(trust.imbalance, trust.held))});
    if (!within(trust.tipping, bounds.tipping))
        return say("loads and reactions turn the plate: %1 of load times size is left over",
                   {part(trust.tipping)});
    if (!trust.meshPercent)
        return say("the plate is too finely cut up for a second mesh to compare with");
    if (!within(*trust.meshPercent, bounds.meshPercent))
        return say("two meshes of the plate differ by %1 %; %2 % is allowed",
                   {part(*trust.meshPercent), part(bounds.meshPercent)});
    return std::nullopt;
}

} // namespace pw::plate
