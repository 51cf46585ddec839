// The speeds that were asked for, measured: one live edit (mesh, solve, checks), symmetric and general
// plates.
#include "app/engine/check.h"
#include "app/engine/flange_checks.h"
#include "app/engine/plate_field.h"
#include "app/engine/work_estimate.h"
#include "core/jobfile/read.h"
#include "core/util/memory.h"

#include <benchmark/benchmark.h>
#include <numbers>

using namespace pw;

namespace {

job::Job sample(const char* name) {
    return jobfile::readJob(*jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json")).job;
}

/// A six-hole disc; `uneven` makes the loads differ so that no symmetry is left.
engine::PlateTask sixHoles(bool uneven) {
    engine::PlateTask task;
    task.region.rim = shape::circleLoop({0, 0}, 70);
    task.region.holes.push_back({shape::circleLoop({0, 0}, 10), shape::Part::Bore, 0});
    for (int i = 0; i < 6; ++i) {
        const shape::Point p = shape::polar(50, i * std::numbers::pi / 3);
        task.region.holes.push_back({shape::circleLoop(p, 12), shape::Part::Access, i});
        task.stations.push_back({p, 12, 17, 1250 + (uneven ? 7.0 * i * i : 0.0)});
    }
    task.bearing = {{0, 0}, 10, 22, 0};
    task.section = {12, 200000, 0.3};
    return task;
}

void wholeCheck(benchmark::State& state, const char* name) {
    const job::Job job = sample(name);
    for (auto _ : state)
        benchmark::DoNotOptimize(engine::check(job));
}

/// What is said before a check costs less than its tenth part.
void estimate(benchmark::State& state, const char* name) {
    const job::Job job = sample(name);
    for (auto _ : state)
        benchmark::DoNotOptimize(engine::estimateWork(job));
}

void elasticEdit(benchmark::State& state, bool uneven) {
    const engine::PlateTask task = sixHoles(uneven);
    engine::FieldOptions options;
    options.settledPercent = 3;
    int unknowns = 0;
    for (auto _ : state) {
        auto field = engine::solvePlateField(task, options);
        unknowns = field->model->unknowns().count();
    }
    state.counters["unknowns"] = unknowns;
}

/// A cast flange of 160 mm under narrow jaws: field until settled, and all its checks.
void flange(benchmark::State& state, int jaws) {
    job::Job job;
    job.hub.emplace();
    const auto mm = [](double v) { return units::Length::fromMm(v); };
    job.hub->flange = job::Flange{mm(160), mm(90), mm(12), {}};
    job.hub->jaws = job::Jaws{jaws, mm(20), mm(15)};
    for (auto _ : state) {
        std::vector<std::string> assumptions;
        benchmark::DoNotOptimize(engine::flangeChecks(job, units::Force::fromN(12000), 1, assumptions));
    }
}

void setAndFolding(benchmark::State& state, bool uneven) {
    const engine::PlateTask task = sixHoles(uneven);
    for (auto _ : state)
        benchmark::DoNotOptimize(engine::solvePlateSet(task, 250));
}

} // namespace

BENCHMARK_CAPTURE(elasticEdit, symmetric_disc, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(elasticEdit, general_plate, true)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(setAndFolding, symmetric_disc, false)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(setAndFolding, general_plate, true)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(flange, two_jaws, 2)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(flange, three_jaws, 3)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(flange, four_jaws_one_slack, 4)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(estimate, six_pin_disc, "mill_lane_six_pin")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(estimate, polygon, "mill_lane_three_pin_polygon")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeCheck, six_pin_disc, "mill_lane_six_pin")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeCheck, two_pin_bar, "mill_lane_two_pin_bar")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(wholeCheck, polygon, "mill_lane_three_pin_polygon")->Unit(benchmark::kMillisecond);

int main(int argc, char** argv) {
    pw::util::keepFreedMemory(); // as the program does
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
