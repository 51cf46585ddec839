// How long a frame of the bent view takes: the plate seen from aside, at the size it has in a 1366 x 768
// window and in a large one.
#include "app/engine/check.h"
#include "app/gui/views/bent_raster.h"
#include "app/gui/views/bent_shape.h"
#include "core/jobfile/read.h"

#include <benchmark/benchmark.h>

using namespace pw;

namespace {

void frame(benchmark::State& state, const char* name, QSize size, int over) {
    const auto job =
        jobfile::readJob(*jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json")).job;
    const auto report = engine::check(job, {.mend = false, .spread = false});
    const gui::BentShape shape = gui::bentShape(*report.picture);
    gui::Camera camera = gui::Camera::first();
    camera.fit(shape.radius, shape.low * 20, shape.high * 20, QRectF(QPointF(), QSizeF(size * over)));
    gui::BentRaster::Paint paint;
    for (int i = 0; i < 8; ++i)
        paint.bands.push_back(qRgb(30 * i, 100, 100));
    paint.top = 300;
    paint.yield = 205;
    gui::BentRaster raster;
    for (auto _ : state) {
        camera.turn({3, 0});
        raster.draw(shape, camera, 12, 20, size * over);
        benchmark::DoNotOptimize(raster.image(paint, over));
    }
    state.counters["triangles"] = static_cast<double>(shape.triangles.size());
}

} // namespace

BENCHMARK_CAPTURE(frame, at_1366, "mill_lane_six_pin_thin", QSize(718, 484), 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(frame, at_1366_polygon, "mill_lane_three_pin_polygon", QSize(718, 484), 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(frame, at_2560_turning, "mill_lane_six_pin_thin", QSize(1718, 940), 1)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(frame, at_2560_at_rest, "mill_lane_six_pin_thin", QSize(1718, 940), 2)
    ->Unit(benchmark::kMillisecond);

BENCHMARK_MAIN();
