#include "core/rack/rack.h"
#include "geometry/outline/build.h"
#include "geometry/placement/fit.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/plate_bytes.h"

/// A plate on a piece: where it is said to fit, it fits by walking along its edge and asking how far the
/// steel goes, and by nothing of the search's own.

namespace {

using namespace pw;

constexpr double kSlack = 1e-3; ///< mm

/// How far a point is from the nearest edge of the loop; negative outside.
double depth(const shape::Loop& loop, shape::Point p) {
    const double away = shape::distanceTo(loop, p);
    return shape::contains(loop, p) ? away : -away;
}

void expectFits(const shape::Region& plate, const placement::Stock& stock, const placement::Spacing& spacing,
                const placement::Placement& place) {
    const auto put = [&](const shape::Loop& loop) {
        return shape::moved(shape::turned(loop, place.pose.turn), place.pose.at);
    };
    const shape::Loop rim = put(plate.rim);
    for (std::size_t i = 0; i < rim.size(); ++i)
        for (int k = 0; k < 8; ++k) {
            const shape::Point p = rim.side(i).pointAt(k / 8.0);
            PW_HOLDS(depth(stock.rim, p) >= spacing.clear() - kSlack, "over the piece's edge");
        }
    for (std::size_t n = 0; n < stock.obstacles.size(); ++n) {
        const shape::Loop& thing = stock.obstacles[n].loop;
        // In the way, unless a hole of the plate takes it in, or it is the bore.
        bool swallowed = place.bore == n;
        for (const shape::Hole& hole : plate.holes) {
            const shape::Loop edge = put(hole.loop);
            bool inside = true;
            for (std::size_t i = 0; i < thing.size() && inside; ++i)
                for (int k = 0; k < 8 && inside; ++k)
                    inside = depth(edge, thing.side(i).pointAt(k / 8.0)) >= spacing.kerf - kSlack;
            swallowed |= inside;
        }
        if (swallowed)
            continue;
        for (std::size_t i = 0; i < rim.size(); ++i)
            for (int k = 0; k < 8; ++k)
                PW_HOLDS(depth(thing, rim.side(i).pointAt(k / 8.0)) <= -spacing.clear() + kSlack,
                         "in a hole or bad area");
        for (std::size_t i = 0; i < thing.size(); ++i)
            PW_HOLDS(depth(rim, thing.vertices[i].at) <= -spacing.clear() + kSlack,
                     "over a hole or bad area");
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    FuzzedDataProvider bytes(data, size);
    fuzz::PlateBytes figures(bytes);
    const placement::Spacing spacing{figures.between(0, 4), figures.between(0, 10)};
    const bool thorough = figures.pick(8) == 0;
    rack::Offcut offcut;
    offcut.name = "piece";
    offcut.outline = figures.outline();
    const int holes = figures.pick(4);
    for (int i = 0; i < holes; ++i) {
        rack::StockHole hole;
        hole.form = figures.hole();
        hole.form.form.shape = figures.pick(2) ? job::HoleShape::Round : job::HoleShape::Slot;
        if (hole.form.form.shape == job::HoleShape::Slot &&
            !(hole.form.form.length && hole.form.form.width &&
              *hole.form.form.length >= *hole.form.form.width))
            hole.form.form.shape = job::HoleShape::Round;
        offcut.holes.push_back(hole);
    }
    if (figures.pick(3) == 0) {
        const double x = figures.between(-90, 90), y = figures.between(-90, 90), r = figures.between(2, 30);
        offcut.badAreas.push_back({{{{x, y}, 0}, {{x + r, y}, 0}, {{x, y + r}, 0}}, ""});
    }
    if (offcut.outline.shape == job::OutlineShape::Polygon &&
        (offcut.outline.points.size() < 3 || shape::crossesItself({offcut.outline.points})))
        return 0; // refused by the reader of racks
    const placement::BuiltStock built = placement::buildStock(offcut);
    if (!built.problems.empty())
        return 0;
    const outline::Built plate = outline::buildRegion(figures.plate());
    if (!plate.ok())
        return 0;
    placement::FitOptions options;
    options.thorough = thorough;
    const placement::FitAnswer answer = placement::fitPlate(plate.region, built.stock, spacing, options);
    if (!answer.place)
        return 0;
    PW_HOLDS(std::isfinite(answer.place->waste) && std::isfinite(answer.place->usable), "waste");
    expectFits(plate.region, built.stock, spacing, *answer.place);
    return 0;
}
