#include "app/engine/flange.h"

#include "app/engine/check.h"
#include "app/engine/refined_sizes.h"
#include "core/plate/annular.h"
#include "core/plate/free_edge.h"
#include "core/plate/patch.h"
#include "core/plate/plastic.h"
#include "core/plate/recovery.h"
#include "core/util/say.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/sector.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::engine {

namespace {

using std::numbers::pi;

constexpr double kFullRing = 0.95;   ///< of the circle through the jaws' middle
constexpr double kTooWide = 1.05;    ///< of the rim: jaws that do not fit beside each other
constexpr double kRefine = 0.7;      ///< how much finer each mesh is than the one before
constexpr double kLeastGrip = 0.002; ///< of the flange's overhang: jaws smaller than that grip nothing
constexpr double kNarrow = 0.2;      ///< overhang over root radius: a jaw relieves none of the others there
constexpr double kReach = 6;  ///< overhangs beside a jaw; its moments are gone there (1e-4 of the peak)
constexpr double kEnough = 6; ///< times the load: folding beyond that is of no interest

const plate::EdgeSupport kRoot{plate::MeshEdge::Kind::Bore, 0, true, true, true};

std::optional<util::Problem> wrong(const FlangeTask& task) {
    const auto positive = [](double value) { return std::isfinite(value) && value > 0; };
    for (const auto& [value, field] : {std::pair{task.outside, "hub.flange.outside"},
                                       {task.root, "hub.flange.root"},
                                       {task.thickness, "hub.flange.thickness"},
                                       {task.width, "hub.jaws.width"},
                                       {task.overlap, "hub.jaws.overlap"}})
        if (!positive(value))
            return util::Problem{field, say("must be more than 0")};
    if (!positive(task.force))
        return util::Problem{"load", say("the pull on the flange must be more than 0")};
    if (task.root >= task.outside)
        return util::Problem{"hub.flange.root", say("must be less than \"outside\"; are the two swapped?")};
    if (task.overlap >= (task.outside - task.root) / 2 * (1 - 1e-9))
        return util::Problem{"hub.jaws.overlap",
                             say("the jaws would reach the root of the flange: there is (outside - root) / 2 "
                                 "= %1 mm of it, and the overlap must be less. Measure from the rim inwards",
                                 {units::number((task.outside - task.root) / 2)})};
    const double leastGrip = kLeastGrip * (task.outside - task.root) / 2;
    for (const auto& [value, field] :
         {std::pair{task.width, "hub.jaws.width"}, std::pair{task.overlap, "hub.jaws.overlap"}})
        if (value < leastGrip)
            return util::Problem{field, say("%1 mm is no grip on a flange of this size; measure again",
                                            {units::number(value)})};
    if (task.jaws < 1)
        return util::Problem{"hub.jaws.count", say("must be at least 2")};
    if (task.jaws * task.width > kTooWide * pi * task.outside)
        return util::Problem{"hub.jaws.width", say("the jaws do not fit round the flange: %1 of them are "
                                                   "wider than its rim. The width is that of one jaw",
                                                   {task.jaws})};
    if (task.jaws == 1 && !isFullRing(task))
        return util::Problem{"hub.jaws.count",
                             say("one jaw cannot pull straight: use 2 or more, evenly spaced")};
    return std::nullopt;
}

plate::Section sectionOf(const FlangeTask& task) {
    return {task.thickness, task.material.E.mpa(), task.material.nu};
}

double radialStress(double moment, double thickness) {
    return 6 * std::abs(moment) / (thickness * thickness);
}

double largestPrincipal(const Eigen::Vector3d& m, double thickness) {
    const double middle = (m(0) + m(1)) / 2, radius = std::hypot((m(0) - m(1)) / 2, m(2));
    return radialStress(std::abs(middle) + radius, thickness);
}

util::Result<plate::AnnularSolution> spreadAllRound(const FlangeTask& task) {
    const plate::Section section = sectionOf(task);
    const double a = task.outside / 2, from = a - task.overlap;
    plate::AnnularPlate ring{
        .outer = a, .inner = task.root / 2, .rigidity = section.bending()(0, 0), .poisson = section.nu};
    ring.innerEdge = plate::Edge::Fixed;
    ring.rings.push_back({from, a, task.force / (pi * (a * a - from * from))});
    return plate::solveAnnular(ring);
}

FlangeField fullRing(const FlangeTask& task, const plate::AnnularSolution& solution) {
    FlangeField field;
    field.fullRing = field.settled = true;
    field.jaw = {task.force / task.jaws, false};
    field.appliedForce = task.force;
    field.clampForce = solution.innerReaction() * pi * task.root;
    const double a = task.outside / 2, b = task.root / 2;
    constexpr int kSteps = 200;
    for (int i = 0; i <= kSteps; ++i) {
        const double r = b + (a - b) * i / kSteps;
        const plate::AnnularState state = solution.at(r);
        const Eigen::Vector3d m(state.radialMoment, state.tangentialMoment, 0);
        field.principal = std::max(field.principal, largestPrincipal(m, task.thickness));
        const double mises = plate::faceVonMises(m, task.thickness);
        if (mises > field.vonMises)
            field.vonMises = mises, field.peakAt = {r, 0};
    }
    field.rootRadial = field.rootRadialSpread = radialStress(solution.inner().radialMoment, task.thickness);
    field.rootAt = {b, 0};
    field.deflection = std::abs(solution.outer().deflection) +
                       std::abs(solution.shearIntegral(b, a)) / sectionOf(task).shear();
    return field;
}

/// One mesh: half a jaw's part of the ring, or all of it.
class FlangeOnMesh {
public:
    FlangeOnMesh(const FlangeTask& task, const FlangeOptions& options)
        : m_task(task), m_options(options), m_share(jawShare(task.jaws, task.force)) {
        int jaws = task.jaws, first = m_share.oneSlack ? 1 : 0; // the slack one is jaw 0, and pulls nothing
        // On a narrow flange jaws far apart do not feel each other: more of them change nothing, and half a
        // jaw's part gets shorter.
        const double reach = (task.width / 2 + kReach * (task.outside - task.root) / 2) / (task.root / 2);
        const int alone = static_cast<int>(std::min(pi / reach, 1e6));
        const bool isNarrow = task.outside - task.root <= kNarrow * task.root;
        if (options.useSymmetry && (isNarrow || !m_share.oneSlack)) {
            m_wholeFlange = 2.0 * (jaws - first);
            jaws = std::max(jaws, alone);
            first = 0;
            m_sector.count = 2 * jaws;
        } else if (options.useSymmetry) {
            m_wholeFlange = m_sector.count = 2; // only the line through the slack jaw is left
        }
        m_ring.rim = shape::circleLoop({0, 0}, task.outside / 2);
        m_ring.holes.push_back({shape::circleLoop({0, 0}, task.root / 2), shape::Part::Bore, 0});
        const double a = task.outside / 2;
        for (int i = first; i < jaws; ++i)
            m_patches.push_back({a - task.overlap, a, 2 * pi * i / jaws,
                                 task.width / 2 / (a - task.overlap / 2), m_share.force});
    }

    util::Result<FlangeField> settle() {
        FlangeField field;
        mesh::SizeField size = firstSizes();
        for (int level = 0; level < m_options.mostLevels; ++level) {
            if (m_options.progress && !m_options.progress(level / static_cast<double>(m_options.mostLevels)))
                throw Stopped{};
            auto mesh = mesh::makeMesh(outline::cutSector(m_ring, m_sector), size, {m_options.mostTriangles});
            if (!mesh && level > 0) // too fine to go on: keep what we have, not settled
                return field;
            if (!mesh)
                return util::Problem{"hub.flange.root", say("the flange is too narrow beside its size to be "
                                                            "worked out; measure outside and root again")};
            const auto model = std::make_shared<const plate::PlateModel>(
                std::move(*mesh), m_sector, std::vector{kRoot}, plate::Pins::None);
            auto next = solveOn(*model);
            if (!next)
                return next.problem();
            next->levels = level + 1;
            next->errorPercent = 100;
            if (level > 0) {
                const auto moved = [](double now, double before) { return 100 * std::abs(now / before - 1); };
                next->errorPercent =
                    std::max({moved(next->vonMises, field.vonMises), moved(next->principal, field.principal),
                              moved(next->rootRadial, field.rootRadial)});
                next->settled = next->errorPercent <= m_options.settledPercent;
            }
            field = *next;
            if (level == 0)
                m_first = model;
            if (field.settled)
                break;
            size.background = refinedSizes(model->mesh(), m_triangleError, kRefine);
        }
        return field;
    }

    /// Load factor at which the flange folds, on the first mesh: fine enough for a factor, and quick.
    void fold(FlangeField& field) const {
        plate::PlasticOptions plastic;
        plastic.unloadFrom.clear();
        plastic.enough = kEnough;
        plastic.progress = m_options.progress;
        const auto path =
            plate::solvePlastic(*m_first, m_task.thickness,
                                {m_task.material.E.mpa(), m_task.material.nu, m_task.material.yield.mpa()},
                                plate::patchForces(m_first->mesh(), m_sector, m_patches), plastic);
        if (!path) {
            if (m_options.progress && path.problem().message == "stopped")
                throw Stopped{};
            return; // not known: left empty
        }
        field.collapseFactor = path->collapseFactor;
        field.collapseReached = path->collapsed;
    }

private:
    /// Coarse: the error shows where to be finer. A wide ring is not meshed finer than its overhang needs.
    mesh::SizeField firstSizes() const {
        const double overhang = (m_task.outside - m_task.root) / 2;
        mesh::SizeField size;
        size.far = overhang / 2.5;
        size.nearBore = overhang / 4;
        size.nearRim = std::max(std::min({overhang / 3, m_task.width / 2, m_task.overlap}), overhang / 6);
        size.grade = 0.5;
        return size;
    }

    util::Result<FlangeField> solveOn(const plate::PlateModel& model) {
        const plate::Section section = sectionOf(m_task);
        const plate::Mesh& mesh = model.mesh();
        const Eigen::VectorXd forces = plate::patchForces(mesh, m_sector, m_patches);
        const auto elastic = plate::solveElastic(model, section, forces);
        if (!elastic)
            return elastic.problem();
        plate::RecoveredMoments moments = plate::recoverMoments(model, section, elastic->pointMoments);
        m_triangleError = moments.triangleError;
        plate::putIn(moments.nodes, rimOnly(plate::freeEdgeMoments(model, section, *elastic)));
        const plate::HeldEdge root = plate::heldEdgeMoments(model, section, *elastic, forces, kRoot);
        plate::putIn(moments.nodes, root, section.nu);

        FlangeField field;
        field.jaw = m_share;
        field.sectorOf = m_sector.count;
        field.unknowns = model.unknowns().count();
        field.appliedForce = forces.sum() * m_wholeFlange;
        field.clampForce = root.force * m_wholeFlange;
        field.deflection = elastic->nodes.row(0).cwiseAbs().maxCoeff();
        for (int i = 0; i < mesh.nodeCount(); ++i) {
            const Eigen::Vector3d m = moments.nodes.col(i);
            field.principal = std::max(field.principal, largestPrincipal(m, m_task.thickness));
            const double mises = plate::faceVonMises(m, m_task.thickness);
            if (mises > field.vonMises)
                field.vonMises = mises, field.peakAt = {mesh.nodes(0, i), mesh.nodes(1, i)};
        }
        for (const plate::HeldMoment& m : root.moments)
            if (const double stress = radialStress(m.across, m_task.thickness); stress > field.rootRadial)
                field.rootRadial = stress, field.rootAt = {mesh.nodes(0, m.node), mesh.nodes(1, m.node)};
        return field;
    }

    static std::vector<plate::EdgeMoment> rimOnly(std::vector<plate::EdgeMoment> edges) {
        std::erase_if(edges, [](const plate::EdgeMoment& e) { return e.kind != plate::MeshEdge::Kind::Rim; });
        return edges;
    }

    const FlangeTask& m_task;
    const FlangeOptions& m_options;
    JawShare m_share;
    plate::Sector m_sector;
    double m_wholeFlange = 1; ///< times what the sector has
    shape::Region m_ring;
    std::vector<plate::PressurePatch> m_patches;
    std::shared_ptr<const plate::PlateModel> m_first;
    Eigen::VectorXd m_triangleError;
};

} // namespace

JawShare jawShare(int jaws, double force) {
    return jaws >= 4 ? JawShare{force / (jaws - 1), true} : JawShare{force / jaws, false};
}

bool isFullRing(const FlangeTask& task) {
    return task.jaws * task.width >= kFullRing * pi * (task.outside - task.overlap);
}

util::Result<FlangeField> solveFlange(const FlangeTask& task, const FlangeOptions& options) {
    if (const auto problem = wrong(task))
        return *problem;
    const auto spread = spreadAllRound(task);
    if (!spread)
        return spread.problem();
    if (isFullRing(task))
        return fullRing(task, *spread);
    FlangeOnMesh flange(task, options);
    auto field = flange.settle();
    if (!field)
        return field;
    field->rootRadialSpread = radialStress(spread->inner().radialMoment, task.thickness);
    if (options.collapse && !task.material.brittle)
        flange.fold(*field);
    return field;
}

} // namespace pw::engine
