#include "app/engine/lopsided.h"

#include "app/engine/plate_report.h"
#include "core/plate/field_at.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

namespace {

std::vector<int> loadedStations(const PlateTask& task) {
    std::vector<int> loaded;
    for (std::size_t i = 0; i < task.stations.size(); ++i)
        if (task.stations[i].force > 0)
            loaded.push_back(static_cast<int>(i));
    return loaded;
}

/// Stations that no symmetry maps onto one another.
std::vector<int> differentStations(const PlateTask& task, const plate::Sector& sector) {
    std::vector<int> different;
    for (int i : loadedStations(task)) {
        const shape::Point folded = sector.fold(task.stations[i].centre);
        const bool known = std::any_of(different.begin(), different.end(), [&](int j) {
            return shape::distance(sector.fold(task.stations[j].centre), folded) <
                   1e-6 * (1 + shape::norm(folded));
        });
        if (!known)
            different.push_back(i);
    }
    return different;
}

PlateTask without(PlateTask task, int station) {
    task.stations[station].force = 0;
    return task;
}

double loadOf(const PlateTask& task) {
    double total = 0;
    for (const plate::PressureRing& ring : task.stations)
        total += ring.force;
    return total;
}

/// mm from the middle to the resultant of the stations' forces.
double offsetOf(const PlateTask& task) {
    shape::Point moment{0, 0};
    double total = 0;
    for (const plate::PressureRing& ring : task.stations) {
        moment = moment + ring.force * ring.centre;
        total += ring.force;
    }
    return total > 0 ? shape::distance(moment * (1 / total), task.bearing.centre) : 0;
}

/// Moments at the nodes, free edges put in.
Eigen::Matrix3Xd momentsOf(const plate::PlateModel& model, const plate::Section& section,
                           const plate::ElasticSolution& elastic) {
    Eigen::Matrix3Xd nodes = plate::recoverMoments(model, section, elastic.pointMoments).nodes;
    plate::putIn(nodes, plate::freeEdgeMoments(model, section, elastic));
    return nodes;
}

double peakOf(const Eigen::Matrix3Xd& moments, double thickness) {
    double peak = 0;
    for (Eigen::Index i = 0; i < moments.cols(); ++i)
        peak = std::max(peak, plate::faceVonMises(moments.col(i), thickness));
    return peak;
}

} // namespace

util::Result<Found<HungStation>> hungStation(const PlateTask& task, double yield,
                                             const FieldOptions& options) {
    const std::vector<int> loaded = loadedStations(task);
    if (loaded.size() < 2)
        return Found<HungStation>();
    const auto first = firstModel(task, 1, options);
    if (!first)
        return first.problem();
    const plate::PlateModel& model = **first;
    std::vector<int> candidates = differentStations(task, model.sector());
    HungStation hung;
    for (int i : candidates) {
        const PlateTask left = without(task, i);
        const double offset = offsetOf(left), load = loadOf(left);
        if (offset > hung.tipOffset) {
            hung.tipOffset = offset;
            hung.tipStation = i;
        }
        const double moment = load * std::max(0.0, offset - plate::kFarthestPush * task.bearing.outside);
        if (hung.loadLeft == 0 || moment > hung.screwMoment) {
            hung.screwStation = i;
            hung.loadLeft = load;
            hung.screwMoment = moment;
        }
    }
    if (candidates.size() > 1 && model.sector().count == 1) {
        // No symmetry: the elastic peak picks the worst, all from one factorisation.
        const plate::ElasticSolver solver(model, task.section);
        double worst = -1;
        int worstStation = candidates.front();
        for (int i : candidates) {
            auto forces = loadOn(model.mesh(), model.sector(), without(task, i));
            if (!forces)
                return forces.problem();
            const auto elastic = solver.solve(forces->forces);
            if (!elastic)
                return elastic.problem();
            const double peak = peakOf(momentsOf(model, task.section, *elastic), task.section.thickness);
            if (peak > worst)
                worst = peak, worstStation = i;
        }
        candidates = {worstStation};
    }
    hung.collapseFactor = 1e30;
    for (int i : candidates) {
        const auto path = solveFolding(without(task, i), yield, kHungEnough, options);
        if (!path)
            return path.problem();
        if (path->collapseFactor < hung.collapseFactor) {
            hung.collapseFactor = path->collapseFactor;
            hung.reached = path->collapsed;
            hung.station = i;
        }
    }
    return Found<HungStation>(hung);
}

util::Result<Found<StuckStation>> stuckStation(const PlateTask& task, double stress,
                                               const FieldOptions& options) {
    const std::vector<int> loaded = loadedStations(task);
    if (loaded.size() < 2)
        return Found<StuckStation>();
    // The longest lever.
    StuckStation stuck;
    stuck.station = *std::max_element(loaded.begin(), loaded.end(), [&](int a, int b) {
        return shape::norm(task.stations[a].centre) < shape::norm(task.stations[b].centre) - 1e-6;
    });
    PlateTask doubled = task;
    const double own = doubled.stations[stuck.station].force;
    doubled.stations[stuck.station].force = 2 * own;
    const auto first = firstModel(doubled, kCoarse, options);
    if (!first)
        return first.problem();
    const plate::PlateModel& model = **first;
    const plate::ElasticSolver solver(model, task.section);
    std::vector<Eigen::Matrix3Xd> moments;
    for (const PlateTask* each : {&task, const_cast<const PlateTask*>(&doubled)}) {
        auto forces = loadOn(model.mesh(), model.sector(), *each);
        if (!forces)
            return forces.problem();
        const auto elastic = solver.solve(forces->forces);
        if (!elastic)
            return elastic.problem();
        moments.push_back(momentsOf(model, task.section, *elastic));
    }
    // Least X with von Mises(M0 + X/own (M1 - M0)) = stress at any node: a quadratic at each.
    const double t = task.section.thickness, limit = stress * t * t / 6;
    const auto product = [](const Eigen::Vector3d& a, const Eigen::Vector3d& b) {
        return a(0) * b(0) + a(1) * b(1) - (a(0) * b(1) + a(1) * b(0)) / 2 + 3 * a(2) * b(2);
    };
    double least = 1e30;
    for (Eigen::Index i = 0; i < moments[0].cols(); ++i) {
        const Eigen::Vector3d m = moments[0].col(i), d = moments[1].col(i) - m;
        const double a = product(d, d), b = 2 * product(m, d), c = product(m, m) - limit * limit;
        if (c >= 0) {
            least = 0;
        } else if (a > 0) {
            least = std::min(least, (-b + std::sqrt(b * b - 4 * a * c)) / (2 * a));
        }
    }
    stuck.extraForce = least * own;
    return Found<StuckStation>(stuck);
}

Found<RetainerTilt> retainerTilt(const PlateField& field, const PlateTask& task, double retainer) {
    const plate::FieldAt at(field.model->mesh(), field.model->sector());
    Found<RetainerTilt> worst;
    for (int i : loadedStations(task)) {
        const plate::PressureRing& ring = task.stations[i];
        const double distance = shape::norm(ring.centre);
        if (distance == 0 || ring.inside <= 0)
            continue;
        const shape::Point out = ring.centre * (ring.inside / distance);
        const auto inner = at.find(ring.centre - out, 0.05), outer = at.find(ring.centre + out, 0.05);
        if (!inner || !outer)
            continue;
        const double rise =
            at.value(*outer, field.deflection.transpose()) - at.value(*inner, field.deflection.transpose());
        const double tilt = std::abs(rise) / (2 * ring.inside) * retainer;
        if (!worst || tilt > worst->tilt)
            worst = RetainerTilt{i, tilt};
    }
    return worst;
}

std::vector<Moved> whatMovesTheAnswer(const PlateField& field, const PlateTask& task, double startAngle,
                                      double nutFaceRadius) {
    const plate::PlateModel& model = *field.model;
    const plate::ElasticSolver solver(model, task.section);
    const plate::FieldAt at(model.mesh(), model.sector());
    std::vector<Moved> moved;
    const auto tryOut = [&](const std::string& what, const PlateTask& changed) {
        const auto forces = loadOn(model.mesh(), model.sector(), changed);
        if (!forces)
            return;
        const auto elastic = solver.solve(forces->forces);
        if (!elastic)
            return;
        PlateField other;
        other.model = field.model;
        other.deflection = plate::fromRingPlane(model.mesh(), model.sector(),
                                                elastic->nodes.row(0).transpose(), changed.bearing);
        Moved row{what, peakOf(momentsOf(model, task.section, *elastic), task.section.thickness), 0};
        if (const auto deflection = rimDeflection(other, changed, startAngle))
            row.deflectionMm = *deflection;
        moved.push_back(row);
    };
    const auto onHalf = [&](plate::RingHalf half) {
        PlateTask changed = task;
        for (plate::PressureRing& ring : changed.stations)
            ring.half = half;
        return changed;
    };
    tryOut(say("force on the inner half of the lands"), onHalf(plate::RingHalf::Inner));
    tryOut(say("force on the outer half of the lands"), onHalf(plate::RingHalf::Outer));
    PlateTask hard = task;
    hard.hardContact = !task.hardContact;
    tryOut(task.hardContact ? say("even pressure under the washer") : say("a hard flat washer"), hard);
    if (nutFaceRadius > task.bearing.inside && nutFaceRadius < task.bearing.outside - 0.1) {
        PlateTask thin = task;
        thin.bearing.outside = nutFaceRadius;
        tryOut(say("a washer too thin to spread"), thin);
    }
    return moved;
}

} // namespace pw::engine
