#include "geometry/outline/place.h"

#include <algorithm>
#include <numbers>
#include <numeric>

namespace pw::outline {

namespace {

using shape::Box;

/// A plate's box in the turn that makes it lower.
struct Lying {
    Box box;
    double turn = 0;
};

Lying lyingOf(const shape::Region& plate, double wide, double gap) {
    const Box upright = bounds(plate.rim);
    const double quarter = std::numbers::pi / 2;
    const Lying as{upright, 0}, over{bounds(shape::turned(plate.rim, quarter)), quarter};
    const bool lower = over.box.height() < as.box.height() - 1e-9;
    return lower && over.box.width() + 2 * gap <= wide ? over : as;
}

} // namespace

shape::Region placed(const shape::Region& plate, const Place& place) {
    const auto put = [&](const shape::Loop& loop) {
        return moved(shape::turned(loop, place.turn), place.at);
    };
    shape::Region out{put(plate.rim), {}};
    for (const shape::Hole& hole : plate.holes)
        out.holes.push_back({put(hole.loop), hole.part, hole.index});
    return out;
}

util::Result<std::vector<Place>> setOut(const std::vector<shape::Region>& plates, double wide, double high,
                                        double gap) {
    constexpr double kSlack = 1e-9; // mm
    std::vector<Lying> lying;
    for (const shape::Region& plate : plates)
        lying.push_back(lyingOf(plate, wide, gap));
    std::vector<std::size_t> order(plates.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return lying[a].box.height() > lying[b].box.height();
    });
    std::vector<Place> places(plates.size());
    double x = gap, y = gap, row = 0;
    for (const std::size_t i : order) {
        const Box& box = lying[i].box;
        if (x + box.width() + gap > wide + kSlack && x > gap) {
            y += row + gap;
            x = gap;
            row = 0;
        }
        if (x + box.width() + gap > wide + kSlack || y + box.height() + gap > high + kSlack)
            return util::Problem{"",
                                 "plate " + std::to_string(i + 1) +
                                     " has no room left on the piece. Take a larger piece, or fewer plates"};
        places[i] = {shape::Point{x, y} - box.low, lying[i].turn};
        x += box.width() + gap;
        row = std::max(row, box.height());
    }
    return places;
}

} // namespace pw::outline
