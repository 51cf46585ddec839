#include "core/plate/bearing.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>

namespace pw::plate {

namespace {

/// The load's resultant over the allowed motions: total, then moments.
Eigen::VectorXd resultant(const Mesh& mesh, const Eigen::Matrix3Xd& allowed, const Eigen::VectorXd& forces) {
    return (rigidMotions(mesh) * allowed).transpose() * forces;
}

Eigen::VectorXd motionAt(const Eigen::Matrix3Xd& allowed, const RingPoint& p) {
    return allowed.transpose() * Eigen::Vector3d(1, p.at.x(), p.at.y());
}

void addForce(const Mesh& mesh, const RingPoint& p, double push, Eigen::VectorXd& forces) {
    for (int i = 0; i < 6; ++i)
        forces(mesh.triangles(i, p.triangle)) -= push * p.area * p.shape(i);
}

/// Pressure max(0, c . motion) over the ring that balances `load`: on the points that bear it is linear, so
/// the coefficients follow from a small system, and the points that bear from the coefficients, until neither
/// changes.
Eigen::VectorXd pushingPressure(const Eigen::Matrix3Xd& allowed, const std::vector<RingPoint>& points,
                                const Eigen::VectorXd& load) {
    constexpr int kMostRounds = 60;
    std::vector<char> bears(points.size(), 1);
    Eigen::VectorXd c = Eigen::VectorXd::Zero(load.size());
    for (int round = 0; round < kMostRounds; ++round) {
        Eigen::MatrixXd system = Eigen::MatrixXd::Zero(load.size(), load.size());
        for (std::size_t i = 0; i < points.size(); ++i)
            if (bears[i]) {
                const Eigen::VectorXd m = motionAt(allowed, points[i]);
                system += points[i].area * m * m.transpose();
            }
        c = system.fullPivLu().solve(load);
        bool changed = false;
        for (std::size_t i = 0; i < points.size(); ++i) {
            const char now = motionAt(allowed, points[i]).dot(c) > 0;
            changed = changed || now != bears[i];
            bears[i] = now;
        }
        if (!changed)
            break;
    }
    return c;
}

} // namespace

Reaction balance(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& forces,
                 const PressureRing& bearing) {
    const Eigen::Matrix3Xd allowed = allowedMotions(sector);
    const std::vector<RingPoint> points = ringPoints(mesh, bearing);
    Eigen::VectorXd load = resultant(mesh, allowed, forces);

    Reaction reaction;
    reaction.forces = Eigen::VectorXd::Zero(mesh.nodeCount());
    Eigen::VectorXd rest = Eigen::VectorXd::Zero(load.size());
    if (load.size() > 1 && load(0) > 0) {
        reaction.offset = load.tail(load.size() - 1).norm() / load(0);
        const double farthest = kFarthestPush * bearing.outside;
        if (reaction.offset > farthest) {
            const double keep = farthest / reaction.offset;
            rest.tail(load.size() - 1) = (1 - keep) * load.tail(load.size() - 1);
            load -= rest;
            reaction.screwMoment = rest.norm() * sector.count;
        }
    }
    const Eigen::VectorXd pushing = pushingPressure(allowed, points, load);
    double area = 0, bearingArea = 0;
    Eigen::MatrixXd whole = Eigen::MatrixXd::Zero(load.size(), load.size());
    for (const RingPoint& p : points) {
        const Eigen::VectorXd m = motionAt(allowed, p);
        const double push = std::max(0.0, m.dot(pushing));
        addForce(mesh, p, push, reaction.forces);
        area += p.area;
        bearingArea += push > 0 ? p.area : 0;
        whole += p.area * m * m.transpose();
    }
    reaction.lifted = area > 0 ? 1 - bearingArea / area : 0;
    // What is left over: the screw's moment, and the crumbs of the rounds above.
    const Eigen::VectorXd left = resultant(mesh, allowed, forces + reaction.forces);
    const Eigen::VectorXd slant = whole.fullPivLu().solve(left);
    for (const RingPoint& p : points)
        addForce(mesh, p, motionAt(allowed, p).dot(slant), reaction.forces);
    return reaction;
}

util::Result<Reaction> hardReaction(const Mesh& mesh, const Sector& sector, const Section& section,
                                    const Eigen::VectorXd& forces, const PressureRing& bearing) {
    constexpr double kStiffness = 10; // over E / t
    constexpr int kMostRounds = 40;
    const PlateModel model(mesh, sector, {}, Pins::None);
    const std::vector<RingPoint> points = ringPoints(mesh, bearing);
    const double bed = kStiffness * section.E / section.thickness;
    const Eigen::VectorXd right = model.rightSide(forces);

    std::vector<NodalMatrix> plateStiffness;
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        plateStiffness.push_back(condense(elasticStiffness(model.element(t), section),
                                          Eigen::Matrix<double, kElementUnknowns, 1>::Zero())
                                     .stiffness);
    Stiffness stiffness(mesh, model.unknowns());
    SparseSolver solver;
    std::vector<char> bears(points.size(), 1);
    Eigen::Matrix3Xd nodes;
    bool settled = false;
    for (int round = 0; round < kMostRounds && !settled; ++round) {
        stiffness.clear();
        std::vector<NodalMatrix> withBed = plateStiffness;
        for (std::size_t i = 0; i < points.size(); ++i)
            if (bears[i])
                for (int a = 0; a < 6; ++a)
                    for (int b = 0; b < 6; ++b)
                        withBed[points[i].triangle](3 * a, 3 * b) +=
                            bed * points[i].area * points[i].shape(a) * points[i].shape(b);
        for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
            stiffness.add(t, withBed[t]);
        if (!solver.factor(stiffness.lower()))
            return util::Problem{"centre", "the load tips the plate off its washer"};
        nodes = model.unknowns().toNodes(solver.solve(right));
        settled = true;
        std::size_t bearingCount = 0;
        for (std::size_t i = 0; i < points.size(); ++i) {
            double w = 0;
            for (int a = 0; a < 6; ++a)
                w += points[i].shape(a) * nodes(0, mesh.triangles(a, points[i].triangle));
            const char now = w > 0;
            settled = settled && now == bears[i];
            bears[i] = now;
            bearingCount += now != 0;
        }
        if (bearingCount == 0)
            return util::Problem{"centre", "the load tips the plate off its washer"};
    }
    Reaction reaction;
    reaction.forces = Eigen::VectorXd::Zero(mesh.nodeCount());
    double area = 0, bearingArea = 0;
    for (const RingPoint& p : points) {
        double w = 0;
        for (int a = 0; a < 6; ++a)
            w += p.shape(a) * nodes(0, mesh.triangles(a, p.triangle));
        const double push = bed * std::max(0.0, w);
        addForce(mesh, p, push, reaction.forces);
        area += p.area;
        bearingArea += push > 0 ? p.area : 0;
    }
    reaction.lifted = area > 0 ? 1 - bearingArea / area : 0;
    const Eigen::Matrix3Xd allowed = allowedMotions(sector);
    const Eigen::VectorXd load = resultant(mesh, allowed, forces);
    if (load.size() > 1 && load(0) > 0) {
        reaction.offset = load.tail(load.size() - 1).norm() / load(0);
        // The washer is square to the screw, so the push's own resultant says what the screw bends by.
        reaction.screwMoment =
            resultant(mesh, allowed, reaction.forces).tail(load.size() - 1).norm() * sector.count;
    }
    // Crumbs of the last round, spread evenly so that the plate is in balance to rounding.
    const Eigen::VectorXd left = resultant(mesh, allowed, forces + reaction.forces);
    Eigen::MatrixXd whole = Eigen::MatrixXd::Zero(load.size(), load.size());
    for (const RingPoint& p : points)
        whole += p.area * motionAt(allowed, p) * motionAt(allowed, p).transpose();
    const Eigen::VectorXd slant = whole.fullPivLu().solve(left);
    for (const RingPoint& p : points)
        addForce(mesh, p, motionAt(allowed, p).dot(slant), reaction.forces);
    return reaction;
}

} // namespace pw::plate
