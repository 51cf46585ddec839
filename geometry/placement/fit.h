#pragma once

#include "geometry/placement/search.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Will a plate come out of a piece, and where is it best cut?
namespace pw::placement {

struct FitOptions {
    /// The first place that is good, or the best of many: pushed into every corner, turned along every edge.
    bool thorough = true;
    /// mm; a place with more to spare than this is never missed (a disc is placed exactly). Arcs of other
    /// plates are taken up to Slack::kRough larger on top of it.
    double tolerance = 0.15;
    double usableWidth = 40; ///< mm; what is narrower is no remainder
    /// Put it as far this way (radians) as it goes, whatever that wastes.
    std::optional<double> towards;
    std::function<bool()> stop;
};

struct Placement {
    Pose pose;
    double spare = 0;   ///< clearance beyond kerf and margin, mm
    double waste = 0;   ///< mm2 of the piece that is neither plate (its rim, holes counted in) nor usable
    double usable = 0;  ///< mm2 of usable remainder
    double biggest = 0; ///< mm2, the largest part of it
    double worth = 0;   ///< mm2, what it is good for (Rest::worth, parts beside the largest counted half)
    std::optional<std::size_t> bore; ///< obstacle of the stock that serves as the bore as it is
    double boreDiameter = 0;         ///< its diameter, mm
};

/// What keeps the plate off the piece.
enum class ShortOf { Nothing, Size, Holes, BadAreas };

struct FitAnswer {
    std::optional<Placement> place;
    bool settled = true; ///< false: too tight to say in the time allowed
    bool stopped = false;
    ShortOf shortOf = ShortOf::Nothing;
    /// Where nothing fits: how much the plate would have to be narrower (or the piece wider) to go in, mm,
    /// where it comes nearest; about right for other plates than discs.
    double missing = 0;
    Pose nearest;
};

/// A hole as large as the bore or a little larger serves as the bore as it is. ISO 273 lets a clearance hole
/// be up to about a fifth over the screw (coarse series); the verdict is then worked out with that bore.
inline constexpr double kBoreOver = 1.2, kBoreUnder = 0.1; // factor; mm

FitAnswer fitPlate(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
                   const FitOptions& options = {});

/// The plate's rim grown by the kerf: what the cut takes out of the piece.
shape::Loop cutLoop(const shape::Region& plate, double kerf);

/// Up to `most` plates on one piece, one after the other where each is best. The first that does not go in
/// ends it.
std::vector<Placement> fitSeveral(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
                                  std::size_t most, const FitOptions& options = {});

/// The piece with a plate's place taken out of it.
Stock withCut(const Stock& stock, const shape::Loop& cut);

} // namespace pw::placement
