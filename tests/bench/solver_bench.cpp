// What the solver costs against the number of unknowns, part by part, and a whole ladder. On a plane mesh
// meshing grows about as n log n, filling the matrix as n, and a direct factorisation in a good order as
// n^1.5 (George, SIAM J. Numer. Anal. 10 (1973) 345-363); the fits at the end of each series show how far
// that holds (RMS is the misfit).
#include "app/engine/ladder.h"
#include "core/jobfile/read.h"
#include "core/plate/bearing.h"
#include "core/plate/elastic.h"
#include "core/plate/plastic.h"
#include "core/plate/pressure.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/sector.h"

#include <benchmark/benchmark.h>
#include <cmath>
#include <numbers>

using namespace pw;

namespace {

/// A disc with six access holes, all of it: no symmetry used.
shape::Region sixHoleDisc() {
    shape::Region region;
    region.rim = shape::circleLoop({0, 0}, 70);
    region.holes.push_back({shape::circleLoop({0, 0}, 10), shape::Part::Bore, 0});
    for (int i = 0; i < 6; ++i)
        region.holes.push_back(
            {shape::circleLoop(shape::polar(50, i * std::numbers::pi / 3), 12), shape::Part::Access, i});
    return region;
}

/// Every step halves the triangles' area; each hole's edge and the open steel alike.
mesh::SizeField sizesAt(std::int64_t step) {
    const double finer = std::pow(2, -0.5 * static_cast<double>(step));
    return {.far = 14 * finer, .nearBore = 6 * finer, .nearAccess = 7 * finer, .grade = 0.5};
}

plate::Mesh meshAt(std::int64_t step) {
    return *mesh::makeMesh(outline::cutSector(sixHoleDisc(), {}), sizesAt(step), {400000});
}

Eigen::VectorXd liftedBySix(const plate::Mesh& mesh) {
    std::vector<plate::PressureRing> lands;
    for (int i = 0; i < 6; ++i)
        lands.push_back({shape::polar(50, i * std::numbers::pi / 3), 12, 17, 1250});
    Eigen::VectorXd forces = plate::pressureForces(mesh, {}, lands);
    forces += plate::balance(mesh, {}, forces, {{0, 0}, 10, 22, 0}).forces;
    return forces;
}

constexpr plate::Section kSection{12, 200000, 0.3};
constexpr plate::Sector kWhole{};

void countedBy(benchmark::State& state, int unknowns) {
    state.counters["unknowns"] = unknowns;
    state.SetComplexityN(unknowns);
}

void meshing(benchmark::State& state) {
    Eigen::Index nodes = 0;
    for (auto _ : state)
        nodes = meshAt(state.range(0)).nodeCount();
    countedBy(state, static_cast<int>(3 * nodes));
}

/// Element matrices, boundary and numbering: what a ladder's thicknesses share.
void makingTheModel(benchmark::State& state) {
    const plate::Mesh mesh = meshAt(state.range(0));
    int unknowns = 0;
    for (auto _ : state)
        unknowns = plate::PlateModel(mesh, kWhole).unknowns().count();
    countedBy(state, unknowns);
}

void loading(benchmark::State& state) {
    const plate::Mesh mesh = meshAt(state.range(0));
    for (auto _ : state)
        benchmark::DoNotOptimize(liftedBySix(mesh));
    countedBy(state, static_cast<int>(3 * mesh.nodeCount()));
}

plate::Stiffness filled(const plate::PlateModel& model) {
    plate::Stiffness stiffness(model.mesh(), model.unknowns());
    const Eigen::Matrix<double, plate::kElementUnknowns, 1> none =
        Eigen::Matrix<double, plate::kElementUnknowns, 1>::Zero();
    for (Eigen::Index t = 0; t < model.mesh().triangleCount(); ++t)
        stiffness.add(t,
                      plate::condense(plate::elasticStiffness(model.element(t), kSection), none).stiffness);
    return stiffness;
}

void assembly(benchmark::State& state) {
    const plate::PlateModel model(meshAt(state.range(0)), kWhole);
    double entries = 0;
    for (auto _ : state)
        entries = static_cast<double>(filled(model).lower().nonZeros());
    countedBy(state, model.unknowns().count());
    // Twelve bytes an entry: value and row.
    state.counters["matrix_MB"] = entries * 12 / 1e6;
}

/// As the first time: pattern and figures.
void factorAndSolve(benchmark::State& state) {
    const plate::PlateModel model(meshAt(state.range(0)), kWhole);
    const plate::Stiffness stiffness = filled(model);
    const Eigen::VectorXd right = model.rightSide(liftedBySix(model.mesh()));
    for (auto _ : state) {
        plate::SparseSolver solver;
        if (!solver.factor(stiffness.lower()))
            state.SkipWithError("no factorisation");
        benchmark::DoNotOptimize(solver.solve(right));
    }
    countedBy(state, model.unknowns().count());
}

/// As in every further step of a plastic path: figures only.
void factorAgain(benchmark::State& state) {
    const plate::PlateModel model(meshAt(state.range(0)), kWhole);
    const plate::Stiffness stiffness = filled(model);
    plate::SparseSolver solver;
    solver.factor(stiffness.lower());
    for (auto _ : state)
        benchmark::DoNotOptimize(solver.factor(stiffness.lower()));
    countedBy(state, model.unknowns().count());
}

void elasticField(benchmark::State& state) {
    const plate::PlateModel model(meshAt(state.range(0)), kWhole);
    const Eigen::VectorXd forces = liftedBySix(model.mesh());
    for (auto _ : state)
        benchmark::DoNotOptimize(plate::solveElastic(model, kSection, forces));
    countedBy(state, model.unknowns().count());
}

void plasticPath(benchmark::State& state) {
    const plate::PlateModel model(meshAt(state.range(0)), kWhole);
    const Eigen::VectorXd forces = liftedBySix(model.mesh());
    int factorisations = 0;
    for (auto _ : state)
        factorisations = plate::solvePlastic(model, 12, {200000, 0.3, 250}, forces)->factorisations;
    countedBy(state, model.unknowns().count());
    state.counters["factorisations"] = factorisations;
}

void wholeLadder(benchmark::State& state, const char* name) {
    const job::Job job =
        jobfile::readJob(*jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json")).job;
    std::size_t rungs = 0;
    for (auto _ : state)
        rungs = engine::ladder(job).rungs.size();
    state.counters["rungs"] = static_cast<double>(rungs);
}

double threeHalves(benchmark::IterationCount n) {
    return std::pow(static_cast<double>(n), 1.5);
}

} // namespace

// Steps 0..6: about 2 400 to 64 000 unknowns.
BENCHMARK(meshing)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(benchmark::oNLogN);
BENCHMARK(makingTheModel)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(benchmark::oN);
BENCHMARK(loading)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(benchmark::oN);
BENCHMARK(assembly)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(benchmark::oN);
BENCHMARK(factorAndSolve)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(threeHalves);
BENCHMARK(factorAgain)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(threeHalves);
BENCHMARK(elasticField)->DenseRange(0, 6)->Unit(benchmark::kMillisecond)->Complexity(threeHalves);
BENCHMARK(plasticPath)->DenseRange(0, 2)->Unit(benchmark::kMillisecond)->Complexity(threeHalves);
// Wall time: a ladder works two thicknesses at a time.
BENCHMARK_CAPTURE(wholeLadder, six_pin_disc, "mill_lane_six_pin")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK_CAPTURE(wholeLadder, polygon, "mill_lane_three_pin_polygon")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
