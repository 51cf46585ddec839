#include "core/plate/plastic.h"

#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::plate {

namespace {

using ElementVector = Eigen::Matrix<double, kElementUnknowns, 1>;
using ElementLayers = std::array<LayerStress, kPoints>;

/// All that a plate remembers of what was done to it.
struct State {
    Eigen::VectorXd unknowns;
    std::vector<Eigen::Vector2d> bubbles;
    std::vector<ElementLayers> layers;
    double factor = 0;
};

class Stepper {
public:
    Stepper(const PlateModel& model, double thickness, const YieldingSteel& steel, Eigen::VectorXd right)
        : m_model(model), m_steel(steel), m_section{thickness, steel.E, steel.nu}, m_right(std::move(right)),
          m_stiffness(model.mesh(), model.unknowns()) {
        for (Eigen::Index t = 0; t < model.mesh().triangleCount(); ++t)
            m_elastic.push_back(elasticStiffness(model.element(t), m_section));
        m_force = m_right.cwiseAbs().maxCoeff();
    }

    State atRest() const {
        State s;
        s.unknowns = Eigen::VectorXd::Zero(m_model.unknowns().count());
        s.bubbles.assign(m_model.mesh().triangleCount(), Eigen::Vector2d::Zero());
        ElementLayers none;
        for (LayerStress& point : none)
            point.fill(Eigen::Vector3d::Zero());
        s.layers.assign(m_model.mesh().triangleCount(), none);
        return s;
    }

    /// Load times unknowns: the deflection the load works through.
    double workDeflection(const Eigen::VectorXd& unknowns) const { return m_right.dot(unknowns); }

    /// From `from` to a given work deflection (the factor follows) or to a given factor. False when Newton
    /// fails.
    bool toDeflection(const State& from, double deflection, State& to) {
        return step(from, true, deflection, to);
    }
    bool toFactor(const State& from, double factor, State& to) { return step(from, false, factor, to); }

    int factorisations() const { return m_factorisations; }
    double residualLeft() const { return m_residualLeft; }
    /// d factor / d work deflection at the last converged tangent.
    double tangent() const { return m_tangent; }

private:
    static constexpr int kMaxIterations = 25;
    static constexpr int kMaxHalvings = 4;
    static constexpr double kTolerance = 1e-6; ///< of the largest nodal force at factor 1

    bool step(const State& from, bool byDeflection, double target, State& to) {
        to = from;
        std::vector<Eigen::Vector2d> bubbleForce(to.bubbles.size());
        std::vector<Eigen::Matrix<double, 2, kNodal>> bubbleNodal(to.bubbles.size());
        double last = 0, lastSize = 0;
        int halvings = 0;
        State before;
        for (int i = 0; i < kMaxIterations; ++i) {
            // Taking load off starts elastic: the tangent that led up here would send the first step far
            // astray.
            const bool elastic = i == 0 && !byDeflection && target < from.factor;
            const Eigen::VectorXd inner = assemble(from, to, elastic, bubbleForce, bubbleNodal);
            const Eigen::VectorXd rest = to.factor * m_right - inner;
            const double gap = byDeflection ? target - workDeflection(to.unknowns) : target - to.factor;
            const double size = rest.cwiseAbs().maxCoeff() / (m_force * std::max(1.0, std::abs(to.factor)));
            const bool onTarget =
                std::abs(gap) < 1e-9 * std::max(std::abs(target), byDeflection ? std::abs(last) : 1.0);
            if (!std::isfinite(size))
                return false;
            if (i > 0 && onTarget && size < kTolerance) {
                m_residualLeft = std::max(m_residualLeft, size);
                return true;
            }
            if (i > 8 && size > 1e3)
                return false;
            // A full step that leaves more out of balance than it found went too far: half of it instead. The
            // first step is taken as it is, it only goes to the target.
            if (i > 1 && size > lastSize && halvings < kMaxHalvings) {
                ++halvings;
                --i;
                halfway(before, to);
                continue;
            }
            halvings = 0;
            lastSize = size;
            before.unknowns = to.unknowns;
            before.bubbles = to.bubbles;
            before.factor = to.factor;
            ++m_factorisations;
            if (!m_solver.factor(m_stiffness.lower()))
                return false;
            const Eigen::VectorXd along = m_solver.solve(m_right), correction = m_solver.solve(rest);
            const double softness = workDeflection(along);
            m_tangent = 1 / softness;
            const double factorStep = byDeflection ? (gap - workDeflection(correction)) / softness : gap;
            const Eigen::VectorXd move = correction + factorStep * along;
            to.unknowns += move;
            to.factor += factorStep;
            last = target;
            for (Eigen::Index t = 0; t < m_model.mesh().triangleCount(); ++t)
                to.bubbles[t] += bubbleForce[t] - bubbleNodal[t] * m_model.gather(t, move);
        }
        return false;
    }

    /// Back to the middle between `before` and `to`; the layers are worked out anew from there.
    static void halfway(const State& before, State& to) {
        to.unknowns = 0.5 * (before.unknowns + to.unknowns);
        to.factor = 0.5 * (before.factor + to.factor);
        for (std::size_t t = 0; t < to.bubbles.size(); ++t)
            to.bubbles[t] = 0.5 * (before.bubbles[t] + to.bubbles[t]);
    }

    /// Inner forces and tangent at `to` (the elastic one when `elastic`), stresses updated from those of
    /// `from`.
    Eigen::VectorXd assemble(const State& from, State& to, bool elastic,
                             std::vector<Eigen::Vector2d>& bubbleForce,
                             std::vector<Eigen::Matrix<double, 2, kNodal>>& bubbleNodal) {
        Eigen::VectorXd inner = Eigen::VectorXd::Zero(m_model.unknowns().count());
        m_stiffness.clear();
        for (Eigen::Index t = 0; t < m_model.mesh().triangleCount(); ++t) {
            const ElementGeometry& g = m_model.element(t);
            ElementVector now, before;
            now << m_model.gather(t, to.unknowns), to.bubbles[t];
            before << m_model.gather(t, from.unknowns), from.bubbles[t];
            ElementVector force = m_section.shear() * (g.shearPerStiffness * now);
            std::array<Eigen::Matrix3d, kPoints> tangents;
            bool yielding = false;
            for (int i = 0; i < kPoints; ++i) {
                const SectionUpdate u = updateSection(m_steel, m_section.thickness, from.layers[t][i],
                                                      g.curvature[i] * (now - before), to.layers[t][i]);
                force.noalias() += g.area[i] * (g.curvature[i].transpose() * u.moments);
                tangents[i] = u.tangent;
                yielding = yielding || (u.yielding && !elastic);
            }
            ElementMatrix stiffness;
            if (yielding) {
                stiffness = m_section.shear() * g.shearPerStiffness;
                for (int i = 0; i < kPoints; ++i) {
                    const StrainMatrix db = g.area[i] * tangents[i] * g.curvature[i];
                    stiffness.noalias() += g.curvature[i].transpose() * db;
                }
            }
            const Condensed c = condense(yielding ? stiffness : m_elastic[t], -force);
            bubbleForce[t] = c.bubbleForce;
            bubbleNodal[t] = c.bubbleNodal;
            m_stiffness.add(t, c.stiffness);
            m_model.scatter(t, -c.force, inner);
        }
        return inner;
    }

    const PlateModel& m_model;
    YieldingSteel m_steel;
    Section m_section;
    Eigen::VectorXd m_right;
    double m_force = 0;
    std::vector<ElementMatrix> m_elastic;
    Stiffness m_stiffness;
    SparseSolver m_solver;
    int m_factorisations = 0;
    double m_tangent = 0, m_residualLeft = 0;
};

/// A path takes about 40; where a neck of a hundredth of the plate yields first, some hundreds. Past this
/// what was carried so far stands as a lower bound.
constexpr int kMostFactorisations = 500;

/// The factor at which the outermost layer first yields, from the elastic state at factor 1.
double firstLayerYield(const State& elastic, const YieldingSteel& steel) {
    double worst = 0;
    for (const ElementLayers& element : elastic.layers)
        for (const LayerStress& point : element)
            for (const Eigen::Vector3d& s : point)
                worst = std::max(worst, s(0) * s(0) - s(0) * s(1) + s(1) * s(1) + 3 * s(2) * s(2));
    return worst > 0 ? steel.yield / std::sqrt(worst) : 0;
}

} // namespace

util::Result<PlasticPath> solvePlastic(const PlateModel& model, double thickness, const YieldingSteel& steel,
                                       const Eigen::VectorXd& nodalForces, const PlasticOptions& options) {
    const Eigen::VectorXd right = model.rightSide(nodalForces);
    const double load = nodalForces.cwiseMax(0).sum();
    util::require(load > 0, "a plastic solution without a load");

    // Elastic state at factor 1, from a steel that cannot yield.
    YieldingSteel elasticSteel = steel;
    elasticSteel.yield = 1e30;
    Stepper elasticStepper(model, thickness, elasticSteel, right);
    State elastic;
    if (!elasticStepper.toFactor(elasticStepper.atRest(), 1, elastic))
        return util::Problem{"plate", say("the plate's stiffness has no solution")};
    const double first = firstLayerYield(elastic, steel);
    util::require(first > 0, "a load that bends nothing");
    const double elasticDeflection = elasticStepper.workDeflection(elastic.unknowns);
    const double yieldDeflection = first * elasticDeflection;

    Stepper stepper(model, thickness, steel, right);
    PlasticPath path;
    path.residual.resize(options.unloadFrom.size());
    const auto record = [&](const State& s) {
        path.curve.push_back({s.factor, stepper.workDeflection(s.unknowns) / load});
    };
    path.curve.push_back({0, 0});

    // Straight to first yield.
    State now = elastic;
    const auto scale = [](State& s, double f) {
        s.unknowns *= f;
        s.factor *= f;
        for (auto& b : s.bubbles)
            b *= f;
        for (auto& element : s.layers)
            for (auto& point : element)
                for (auto& layer : point)
                    layer *= f;
    };
    const double yieldFactor = first * 0.999999;
    scale(now, yieldFactor);
    record(now);

    const auto unload = [&](std::size_t i, const State& from) {
        const double factor = options.unloadFrom[i];
        if (factor <= yieldFactor) {
            path.residual[i] = Eigen::VectorXd::Zero(model.mesh().nodeCount());
            return;
        }
        State loaded, free;
        if (stepper.toFactor(from, factor, loaded) && stepper.toFactor(loaded, 0, free))
            path.residual[i] = model.unknowns().toNodes(free.unknowns).row(0).transpose();
        else
            path.unloadingFailed = true;
    };
    std::size_t nextUnload = 0;
    while (nextUnload < options.unloadFrom.size() && options.unloadFrom[nextUnload] <= yieldFactor)
        unload(nextUnload++, now);

    // Static theorem: the elastic moments grown to where the worst point is plastic through are carried. 1.5
    // is the shape factor of a solid section; 1.4 leaves room for what lies between the quadrature points.
    path.collapseFactor = 1.4 * first;
    if (path.collapseFactor >= options.enough) {
        path.factorisations = stepper.factorisations() + elasticStepper.factorisations();
        return path;
    }
    const double elasticTangent = 1 / elasticDeflection;
    double stride = 0.3; // of the deflection reached
    constexpr double kSmallestStride = 1e-3, kLargestStride = 0.5;
    while (stepper.factorisations() < kMostFactorisations) {
        const double reached = stepper.workDeflection(now.unknowns);
        if (options.progress &&
            !options.progress(std::min(1.0, reached / (options.collapseDeflection * yieldDeflection))))
            return util::Problem{"", "stopped"};
        const double goal = std::min(reached * (1 + stride), options.collapseDeflection * yieldDeflection);
        State next;
        if (!stepper.toDeflection(now, goal, next) || next.factor < now.factor * (1 - 1e-3)) {
            stride /= 3;
            if (stride < kSmallestStride)
                break;
            continue;
        }
        while (nextUnload < options.unloadFrom.size() && options.unloadFrom[nextUnload] <= next.factor)
            unload(nextUnload++, now);
        const double secant = (next.factor - now.factor) / (goal - reached);
        now = std::move(next);
        record(now);
        path.collapseFactor = now.factor;
        if (secant < options.collapseTangent * elasticTangent ||
            goal >= options.collapseDeflection * yieldDeflection * (1 - 1e-9)) {
            path.collapsed = true;
            break;
        }
        if (now.factor >= options.enough)
            break;
        stride = std::min(stride * 1.3, kLargestStride);
    }
    if (path.curve.size() < 3)
        return util::Problem{"plate", say("the bending past yield could not be followed")};
    path.factorisations = stepper.factorisations() + elasticStepper.factorisations();
    path.residualLeft = std::max(stepper.residualLeft(), elasticStepper.residualLeft());
    return path;
}

} // namespace pw::plate
