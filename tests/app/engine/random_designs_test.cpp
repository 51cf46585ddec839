// What must hold for any plate, on two hundred sound ones. No figure here is ours: each property follows from
// the theory (balance, superposition, symmetry, similarity of plates of one shape, and for collapse that the
// limit load belongs to the plate and not to the load it is counted in).
#include "core/plate/bearing.h"
#include "geometry/outline/symmetry.h"
#include "tests/support/random_designs.h"
#include "tests/support/sanitized.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

using namespace pw;
using namespace pw::engine;
using pw::testing::Design;

namespace {

constexpr std::uint32_t kFewSeed = 20240;
constexpr int kFewDesigns = pw::testing::kSanitized ? 40 : 200;

const std::vector<Design>& designs() {
    static const std::vector<Design> made = [] {
        std::printf("seed %u\n", kFewSeed);
        pw::testing::RandomDesigns random(kFewSeed);
        std::vector<Design> all;
        for (int i = 0; i < kFewDesigns; ++i) {
            all.push_back(random.next());
            all.back().words = "design " + std::to_string(i) + " of seed " + std::to_string(kFewSeed) + ": " +
                               all.back().words;
        }
        return all;
    }();
    return made;
}

/// What a plate answers, in figures that do not depend on where its nodes are.
struct Answer {
    double work = 0;   ///< N.mm
    double travel = 0; ///< highest less lowest place, mm
    double peak = 0;   ///< MPa
    bool settled = false;
};

Answer answerOf(const PlateField& field) {
    return {2 * field.elastic.strainEnergy * field.model->sector().count,
            field.deflection.maxCoeff() - field.deflection.minCoeff(), field.peakStress, field.settled};
}

std::shared_ptr<const PlateField> fieldOf(const PlateTask& task) {
    auto field = solvePlateField(task);
    if (!field) {
        ADD_FAILURE() << field.problem().message;
        return nullptr;
    }
    return std::make_shared<const PlateField>(std::move(*field));
}

/// Each design's own field, solved once for all tests that want it.
const PlateField* ownField(std::size_t i) {
    static std::vector<std::shared_ptr<const PlateField>> fields(kFewDesigns);
    if (!fields[i])
        fields[i] = fieldOf(designs()[i].task);
    return fields[i].get();
}

double loadOn(const PlateTask& task) {
    double load = 0;
    for (const plate::PressureRing& ring : task.stations)
        load += ring.force;
    return load;
}

plate::Sector sectorOf(const PlateTask& task) {
    std::vector<outline::LoadedPlace> places;
    for (const plate::PressureRing& ring : task.stations)
        places.push_back({ring.centre, ring.outside, ring.force});
    return outline::findSector(task.region, places);
}

struct Worst {
    double work = 0, travel = 0, peak = 0;
};

/// Two meshes of one plate: 0.5 % in work and deflection; each peak is known to 2 %, so 4 % between them.
void expectAlike(const Answer& a, const Answer& b, Worst& worst) {
    const double work = std::abs(a.work / b.work - 1), travel = std::abs(a.travel / b.travel - 1);
    EXPECT_LT(work, 0.005);
    EXPECT_LT(travel, 0.005);
    worst.work = std::max(worst.work, work);
    worst.travel = std::max(worst.travel, travel);
    if (a.settled && b.settled) {
        const double peak = std::abs(a.peak / b.peak - 1);
        EXPECT_LT(peak, 0.04);
        worst.peak = std::max(worst.peak, peak);
    }
}

void print(const char* what, int count, const Worst& worst) {
    std::printf("%s: %d plates, worst difference in work %.3f %%, travel %.3f %%, peak %.2f %%\n", what,
                count, 100 * worst.work, 100 * worst.travel, 100 * worst.peak);
}

template<class Change>
PlateTask changed(const PlateTask& task, const Change& change) {
    PlateTask out = task;
    out.region.rim = change(task.region.rim);
    for (shape::Hole& hole : out.region.holes)
        hole.loop = change(hole.loop);
    return out;
}

PlateTask turnedTask(const PlateTask& task, double angle) {
    PlateTask out = changed(task, [&](const shape::Loop& l) { return shape::turned(l, angle); });
    for (plate::PressureRing& ring : out.stations)
        ring.centre = shape::rotated(ring.centre, angle);
    return out;
}

PlateTask mirroredTask(const PlateTask& task, double axis) {
    PlateTask out = changed(task, [&](const shape::Loop& l) { return shape::mirrored(l, axis); });
    for (plate::PressureRing& ring : out.stations)
        ring.centre = shape::rotated({ring.centre.x, -ring.centre.y}, 2 * axis);
    return out;
}

/// All lengths times `s`, forces times s^2: the same stresses.
PlateTask rescaledTask(const PlateTask& task, double s) {
    PlateTask out = changed(task, [&](shape::Loop l) {
        for (shape::Vertex& v : l.vertices)
            v.at = s * v.at;
        return l;
    });
    for (plate::PressureRing& ring : out.stations)
        ring = {s * ring.centre, s * ring.inside, s * ring.outside, s * s * ring.force};
    out.bearing = {s * task.bearing.centre, s * task.bearing.inside, s * task.bearing.outside, 0};
    out.section.thickness *= s;
    return out;
}

} // namespace

TEST(RandomDesigns, SolveWithFiniteFiguresAndReactionsThatEqualTheLoads) {
    double worstReaction = 0;
    int settled = 0, symmetric = 0;
    for (std::size_t i = 0; i < kFewDesigns; ++i) {
        SCOPED_TRACE(designs()[i].words);
        const PlateTask& task = designs()[i].task;
        const PlateField* field = ownField(i);
        ASSERT_TRUE(field);
        EXPECT_TRUE(field->elastic.nodes.allFinite());
        EXPECT_TRUE(field->moments.nodes.allFinite());
        EXPECT_TRUE(field->deflection.allFinite());
        EXPECT_TRUE(std::isfinite(field->peakStress) && field->peakStress > 0);
        EXPECT_GT(field->elastic.strainEnergy, 0);
        EXPECT_LT(field->elastic.pinReaction, 1e-9);
        const double load = loadOn(task), part = load / field->model->sector().count;
        EXPECT_NEAR(field->forces.sum(), 0, 1e-9 * part);
        const Eigen::VectorXd lifting =
            plate::pressureForces(field->model->mesh(), field->model->sector(), task.stations);
        EXPECT_NEAR(lifting.sum(), part, 1e-9 * part);
        if (field->model->sector().count == 1) { // moments too, where symmetry does not see to them
            const double arm = shape::bounds(task.region.rim).width();
            EXPECT_LT((field->model->mesh().nodes * field->forces).norm(), 1e-9 * load * arm);
        }
        worstReaction = std::max(worstReaction, field->elastic.pinReaction);
        settled += field->settled;
        symmetric += field->model->sector().count > 1;
    }
    std::printf("%d of %d settled, %d with symmetry, worst reaction %.1e of the load\n", settled, kFewDesigns,
                symmetric, worstReaction);
    EXPECT_GT(symmetric, kFewDesigns / 4); // both ways of solving are tried
    EXPECT_LT(symmetric, kFewDesigns * 3 / 4);
    EXPECT_GT(settled, kFewDesigns * 9 / 10);
}

TEST(RandomDesigns, WholePlateAnswersLikeItsSector) {
    Worst worst;
    int compared = 0;
    for (std::size_t i = 0; i < kFewDesigns; ++i) {
        SCOPED_TRACE(designs()[i].words);
        const PlateTask& task = designs()[i].task;
        const plate::Sector sector = sectorOf(task);
        // The whole of a plate with many stations is large: a few of those will do.
        if (sector.count == 1 || (task.stations.size() > 5 && i % 4 != 0))
            continue;
        const PlateField* field = ownField(i);
        PlateTask spoilt = task; // by a hair: one station out of line by a millionth, and all loads
        spoilt.stations[0].centre = shape::rotated(spoilt.stations[0].centre, 1e-6) * (1 + 1e-6);
        for (std::size_t k = 0; k < spoilt.stations.size(); ++k)
            spoilt.stations[k].force *= 1 + 1e-7 * static_cast<double>(k * k + k % 3);
        const auto whole = fieldOf(spoilt);
        ASSERT_TRUE(field && whole);
        EXPECT_EQ(whole->model->sector().count, 1);
        EXPECT_LT(whole->elastic.pinReaction, 1e-9);
        expectAlike(answerOf(*whole), answerOf(*field), worst);
        ++compared;
    }
    print("sector against whole plate", compared, worst);
    EXPECT_GT(compared, kFewDesigns / 5);
}

TEST(RandomDesigns, TurningMirroringAndRescalingChangeNothing) {
    Worst worst;
    int compared = 0;
    pw::testing::RandomDesigns random(kFewSeed + 1);
    for (std::size_t i = 0; i < kFewDesigns; ++i) {
        SCOPED_TRACE(designs()[i].words);
        const PlateTask& task = designs()[i].task;
        const double by = random.between(0.2, 3);
        if (sectorOf(task).count == 1 && i % 4 != 0)
            continue;
        const PlateField* field = ownField(i);
        const bool rescale = compared % 3 == 2;
        const auto moved = fieldOf(compared % 3 == 0   ? turnedTask(task, by)
                                   : compared % 3 == 1 ? mirroredTask(task, by)
                                                       : rescaledTask(task, by));
        ASSERT_TRUE(field && moved);
        Answer other = answerOf(*moved);
        if (rescale) {
            other.work /= by * by * by;
            other.travel /= by;
        }
        EXPECT_EQ(moved->model->sector().count, field->model->sector().count);
        expectAlike(other, answerOf(*field), worst);
        ++compared;
    }
    print("turned, mirrored, rescaled", compared, worst);
    EXPECT_GT(compared, kFewDesigns * 3 / 8);
}

TEST(RandomDesigns, SumOfTwoLoadsBendsAsTheLoadsOfTheSum) {
    double worst = 0;
    int compared = 0;
    for (std::size_t i = 0; i < kFewDesigns; ++i) {
        SCOPED_TRACE(designs()[i].words);
        const PlateTask& task = designs()[i].task;
        if (sectorOf(task).count == 1 && i % 4 != 0)
            continue;
        const PlateField* field = ownField(i);
        ASSERT_TRUE(field);
        const plate::PlateModel& model = *field->model;
        // A second load that any sector allows: an even ring round the bearing.
        Eigen::VectorXd second =
            plate::pressureForces(model.mesh(), model.sector(),
                                  {{{0, 0}, task.bearing.outside, 1.5 * task.bearing.outside, loadOn(task)}});
        second += plate::balance(model.mesh(), model.sector(), second, task.bearing).forces;
        const auto one = plate::solveElastic(model, task.section, second);
        const auto sum = plate::solveElastic(model, task.section, 1.5 * field->forces + second);
        ASSERT_TRUE(one && sum);
        const Eigen::VectorXd parts = 1.5 * field->elastic.unknowns + one->unknowns;
        const double difference = (sum->unknowns - parts).norm() / sum->unknowns.norm();
        EXPECT_LT(difference, 1e-8); // the solver's rounding only
        worst = std::max(worst, difference);
        ++compared;
    }
    std::printf("sum of loads: %d plates, worst difference %.1e\n", compared, worst);
    EXPECT_GT(compared, kFewDesigns * 3 / 8);
}

TEST(RandomDesigns, CollapseLoadDoesNotDependOnTheLoadItIsCountedIn) {
    double worst = 0;
    int compared = 0, general = 0;
    for (std::size_t i = 0; i < kFewDesigns; ++i) {
        SCOPED_TRACE(designs()[i].words);
        PlateTask task = designs()[i].task;
        // Small sectors, and a few of the others: bending past yield costs fifty solutions.
        const plate::Sector sector = sectorOf(task);
        const bool small = sector.count >= 4 && i % 2 == 0;
        if (!small && (sector.count > 1 || general >= 2 || task.stations.size() > 4))
            continue;
        general += !small;
        const auto once = solvePlateSet(task, 250);
        ASSERT_TRUE(once) << once.problem().message;
        const double grow = once->path.collapseFactor / 1.3; // to a load not far from collapse
        for (plate::PressureRing& ring : task.stations)
            ring.force *= grow;
        const auto more = solvePlateSet(task, 250);
        ASSERT_TRUE(more) << more.problem().message;
        EXPECT_TRUE(once->path.collapsed && more->path.collapsed);
        // 1 %: the load still rises by about that over the step in which collapse is called.
        const double difference = std::abs(grow * more->path.collapseFactor / once->path.collapseFactor - 1);
        EXPECT_LT(difference, 0.01);
        // Both loads were carried, so their set is known.
        ASSERT_TRUE(more->setMm && more->setAtProofMm);
        EXPECT_GT(*more->setAtProofMm, *more->setMm);
        EXPECT_GT(*more->setMm, 0);
        double before = 0;
        for (const plate::PlasticPath::Point& p : once->path.curve) {
            EXPECT_TRUE(std::isfinite(p.factor) && std::isfinite(p.deflection));
            EXPECT_GE(p.factor, before * (1 - 1e-3)); // nothing in the steel softens
            before = p.factor;
        }
        worst = std::max(worst, difference);
        ++compared;
    }
    std::printf("collapse: %d plates, worst difference %.2f %%\n", compared, 100 * worst);
    EXPECT_GT(compared, kFewDesigns * 3 / 20);
}
