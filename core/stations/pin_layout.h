#pragma once

#include "core/job/job.h"
#include "core/shape/loop.h"
#include "core/util/result.h"

#include <optional>
#include <utility>
#include <vector>

/// Where the pins are, from caliper readings over and between pairs of them.
namespace pw::stations {

using units::Length;

/// How good one reading with a vernier over two round pins is. Common practice, no published source.
inline constexpr double kReadingErrorMm = 0.1;

/// One caliper figure and what the layout makes of it.
struct PinFigure {
    int first = 1, second = 2; ///< pins, from 1
    bool over = true;          ///< outside to outside; otherwise between them
    Length read;
    Length fitted;    ///< what it should have been
    double offMm = 0; ///< read less fitted
    bool leftOut = false;
};

/// How much the readings leave open, from little to much.
enum class PinFreedom {
    EvenCircle, ///< they fix a size only; the pins are taken to divide it evenly
    OnCircle,   ///< and each pin's angle; the pins are taken to lie on one circle
    Free        ///< each pin's own place
};

struct PinLayout {
    PinFreedom freedom = PinFreedom::EvenCircle;
    std::vector<shape::Point> pins; ///< mm, about the middle of the nearest circle, counter-clockwise;
                                    ///< turned so that pin 1's place in an even division is on x
    Length pin;                     ///< across one pin: as given, or worked out
    bool pinWorkedOut = false;
    Length circle;                  ///< diameter of the circle nearest to all pins
    Length evenCircle;              ///< diameter of the evenly divided circle nearest to all pins
    std::vector<Length> fromEven;   ///< how far each pin is from its place on that
    std::vector<PinFigure> figures; ///< in the order read, over before between
    int spare = 0;                  ///< figures beyond those that are needed: with none a slip does not show
    double scatterMm = 0;           ///< root mean square of `offMm` where there is something to spare
    double magnified = 1;           ///< how much an error of a reading may grow in a pin's place
    /// Figures any one of which may be wrong: without it the others agree. One: that is the one, and it was
    /// left out. Several: one more reading would tell.
    std::vector<std::size_t> doubtful;
    double doubtfulByMm = 0; ///< of a single one: read less what the others say
    bool doubtfulIsOtherWay =
        false;             ///< it fits when taken between the pins instead of over them, or the other way
    bool disagree = false; ///< the figures do not agree, and no single one is to blame

    Length worstFromEven() const;
};

/// Least squares on all figures, read = |p_i - p_j| +- pin, the pins' places (or their angles and one radius)
/// and, when it is not given, the pin unknown; turned and mirrored so that the pins count counter-clockwise.
/// Levenberg (1944) and Marquardt (1963), started from even division. What the readings fix is told from the
/// smallest singular value of their derivatives: six pins read over neighbours and opposites alone can shift
/// along a circle without changing any reading to first order, since the six lie on a conic (Bolker and Roth,
/// 1980), so that more than their angles cannot be had from those.
///
/// A figure is doubted when it is more than three reading errors from what fits, and found by leaving each
/// out in turn. Problems: fewer than two pins or more than 24, no figures, a pin that no figure touches, no
/// pin diameter and not both kinds of figures, a between that is no distance at all.
util::Result<PinLayout> findPinLayout(const std::vector<job::PinReading>& readings, int count,
                                      std::optional<Length> pin, double readingErrorMm = kReadingErrorMm);

/// Pairs to read next, so that first a slip shows and then each pin's own place: neighbours, opposites, every
/// second one. From 1; those already read are left out.
enum class PinPairs { Neighbours, Opposite, EverySecond };
std::vector<std::pair<int, int>> pinPairs(PinPairs which, int count,
                                          const std::vector<job::PinReading>& have = {});

} // namespace pw::stations
