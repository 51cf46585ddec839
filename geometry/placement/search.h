#pragma once

#include "geometry/placement/slack.h"

#include <cstddef>
#include <functional>
#include <vector>

namespace pw::placement {

struct SearchLimits {
    double tolerance = 0.2; ///< mm; a place with more slack than this is never missed
    std::size_t mostLooks = 300000;
    std::size_t extraLooks = 150; ///< once a place is found, for others apart from it
    std::size_t mostPlaces = 8;
    std::function<bool()> stop; ///< asked now and then; true ends the search
};

/// A spot where the plate's pivot may lie.
struct Spot {
    Point pivot;
    double turn = 0;
    double slack = 0;
};

struct SearchResult {
    std::vector<Spot> places; ///< that fit, each some way from the others; the one with the most slack first
    Spot best;                ///< the most slack seen, fitting or not
    bool settled = true;      ///< false: given up after mostLooks, so that a tight place may have been missed
    std::size_t looks = 0;
};

/// Where on the piece the plate fits, by halving boxes of places (x, y, turn) and dropping those whose middle
/// is further from fitting than the box is wide. With `turn` only that turn is tried, with `pivot` only that
/// middle.
SearchResult findPlaces(const Slack& slack, const SearchLimits& limits,
                        std::optional<double> turn = std::nullopt, std::optional<Point> pivot = std::nullopt);

/// Pushed as far along the direction as it goes, sliding along what it meets; still fits.
Spot pushed(const Slack& slack, Spot spot, double direction, double finest = 0.02);

/// Moved and turned a little to where it is freer. `finest`: the last step, mm.
Spot eased(const Slack& slack, Spot spot, double step, double finest, bool mayTurn);

} // namespace pw::placement
