#include "geometry/outline/clearance.h"

#include "core/shape/nearest.h"

#include <algorithm>

namespace pw::outline {

std::vector<Ligament> ligaments(const shape::Region& region) {
    std::vector<Ligament> out;
    const auto add = [&](const shape::Loop& a, shape::Part partA, int ia, const shape::Hole& b) {
        const shape::Nearest near = shape::nearest(a, b.loop);
        out.push_back(
            {partA, ia, b.part, b.index, near.distance, 0.5 * (near.onA + near.onB), near.onA, near.onB});
    };
    for (std::size_t i = 0; i < region.holes.size(); ++i) {
        const shape::Hole& a = region.holes[i];
        add(region.rim, shape::Part::Rim, 0, a);
        for (std::size_t j = i + 1; j < region.holes.size(); ++j)
            add(a.loop, a.part, a.index, region.holes[j]);
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const Ligament& a, const Ligament& b) { return a.width < b.width; });
    return out;
}

} // namespace pw::outline
