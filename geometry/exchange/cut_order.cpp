#include "geometry/exchange/cut_order.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <optional>

namespace pw::exchange {

namespace {

constexpr double kDetour = 100; ///< mm
constexpr double kDetourShare = 1.5;
constexpr double kTie = 1e-6; ///< mm; what rounding decides is no nearer

} // namespace

std::vector<std::size_t> cutOrder(const std::vector<CutPlace>& cuts, shape::Point from, double heatReach) {
    std::vector<std::size_t> left(cuts.size()), order;
    std::iota(left.begin(), left.end(), std::size_t{0});
    while (!left.empty()) {
        const auto nearest = [&](bool coolOnly) {
            std::optional<std::size_t> best;
            double least = std::numeric_limits<double>::infinity();
            for (std::size_t k = 0; k < left.size(); ++k) {
                const CutPlace& cut = cuts[left[k]];
                const double away = distance(from, cut.pierce);
                if (away >= least - kTie)
                    continue;
                if (coolOnly && !order.empty() && clearance(*cut.loop, *cuts[order.back()].loop) < heatReach)
                    continue;
                best = k;
                least = away;
            }
            return best;
        };
        std::size_t next = *nearest(false);
        const double least = distance(from, cuts[left[next]].pierce);
        if (const auto cool = nearest(true); cool && distance(from, cuts[left[*cool]].pierce) - least <=
                                                         std::max(kDetour, kDetourShare * least))
            next = *cool;
        order.push_back(left[next]);
        from = cuts[left[next]].end;
        left.erase(left.begin() + static_cast<std::ptrdiff_t>(next));
    }
    return order;
}

} // namespace pw::exchange
