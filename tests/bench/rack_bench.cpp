#include "app/engine/rack.h"
#include "core/jobfile/read.h"
#include "core/util/memory.h"

#include <benchmark/benchmark.h>

#include <random>
#include <string>

/// A thousand pieces ranked for one job, as `platewright rack` does it.
namespace pw {
namespace {

job::Job sample(const char* name) {
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json");
    return jobfile::readJob(*tree).job;
}

/// Invented pieces of 25 thicknesses (as a vernier reads them) and four steels; a third has holes or bad
/// areas.
rack::RackReading manyPieces(std::size_t count, unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) {
        return low + (high - low) * (random() / 4294967296.0);
    };
    rack::RackReading rack;
    for (std::size_t i = 0; i < count; ++i) {
        rack::Offcut piece;
        piece.name = "piece " + std::to_string(i);
        piece.row = i;
        const double t = 6 + static_cast<int>(between(0, 25)) * 0.6;
        piece.thickness = {units::Length::fromMm(t), units::Length::fromMm(t)};
        const char* steels[] = {"S235", "S355", "A36", "unknown scrap"};
        piece.steel.emplace().name = steels[static_cast<int>(between(0, 4))];
        piece.steelIs = rack::SteelIs::Known;
        const double size = between(90, 330);
        switch (static_cast<int>(between(0, 3))) {
        case 0:
            piece.outline.diameter = units::Length::fromMm(size);
            break;
        case 1:
            piece.outline.shape = job::OutlineShape::Rectangle;
            piece.outline.length = units::Length::fromMm(size);
            piece.outline.width = units::Length::fromMm(size * between(0.4, 1));
            break;
        default:
            piece.outline.shape = job::OutlineShape::Polygon;
            for (int k = 0; k < 9; ++k)
                piece.outline.points.push_back({shape::polar(size * between(0.45, 0.7), 0.698 * k), 0});
        }
        for (int k = 0; i % 3 == 0 && k < 3; ++k) {
            rack::StockHole hole;
            hole.form.at = {units::Length::fromMm(between(-0.3, 0.3) * size),
                            units::Length::fromMm(between(-0.2, 0.2) * size)};
            hole.form.diameter = units::Length::fromMm(between(8, 26));
            piece.holes.push_back(hole);
        }
        rack.rack.offcuts.push_back(std::move(piece));
    }
    return rack;
}

void rankAThousand(benchmark::State& state, const char* name) {
    const job::Job job = sample(name);
    const rack::RackReading rack = manyPieces(1000, 7);
    std::size_t fit = 0;
    for (auto _ : state) {
        const engine::RackAnswer answer = engine::rankRack(job, rack);
        fit = 0;
        for (const engine::PieceAnswer& piece : answer.pieces)
            fit += piece.fits;
    }
    state.counters["fit"] = static_cast<double>(fit);
}
BENCHMARK_CAPTURE(rankAThousand, symmetric_disc, "mill_lane_six_pin")
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
BENCHMARK_CAPTURE(rankAThousand, bar, "mill_lane_two_pin_bar")->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
} // namespace pw
