#pragma once

#include "app/engine/ladder.h"

#include <optional>
#include <QRectF>
#include <vector>

/// The ladder's arithmetic, without painting.
namespace pw::gui {

/// Height of a margin over the wanted one, on a scale of doublings: 0 on the line, 1 at kMostDoublings above
/// it, -1 as many below; further out is held at the end. Nothing for what is not above zero: it hangs at -1.
inline constexpr double kMostDoublings = 2.5;
double ladderHeight(double marginOverWanted);

/// Where a rung's mark goes: what holds stands on the line, all else hangs from it, also where what spoils it
/// is no matter of the weakest link's margin. Nothing when its margin is not known.
std::optional<double> markHeight(const engine::Rung& rung);

/// Which rungs are shown and where. Rungs stand side by side; where there are more than fit, those around
/// the one that matters are shown and the rest is scrolled to.
struct LadderLayout {
    int first = 0, count = 0; ///< rungs shown
    int all = 0;
    double left = 0, pitch = 0; ///< px

    double middleOf(int rung) const { return left + (rung - first + 0.5) * pitch; }
    bool shows(int rung) const { return rung >= first && rung < first + count; }
    /// The rung under a place, -1 for none.
    int at(double x) const;
    /// The same moved so that the rung is in sight.
    LadderLayout showing(int rung) const;

    /// `least` is the narrowest a rung may be, `most` the widest (px).
    static LadderLayout fit(int rungs, int focus, double left, double right, double least, double most);
};

/// The rung of a thickness, within 0.02 mm; -1 when it is none of them.
int rungOf(const engine::Ladder& ladder, units::Length thickness);
/// Where a thickness lies between the rungs, counted in rungs; held at the ends.
double placeAmong(const engine::Ladder& ladder, units::Length thickness);

/// The rung that the ladder is first looked at for: the current one, else the thinnest that holds.
int focusOf(const engine::Ladder& ladder, std::optional<units::Length> thickness);

} // namespace pw::gui
