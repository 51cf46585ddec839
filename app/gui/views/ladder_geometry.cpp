#include "app/gui/views/ladder_geometry.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

double ladderHeight(double marginOverWanted) {
    if (!(marginOverWanted > 0))
        return -1;
    return std::clamp(std::log2(marginOverWanted) / kMostDoublings, -1.0, 1.0);
}

std::optional<double> markHeight(const engine::Rung& rung) {
    if (!rung.marginOverWanted)
        return {};
    const double height = ladderHeight(*rung.marginOverWanted);
    return rung.grade == verdict::Grade::Holds ? std::max(height, 0.0) : std::min(height, 0.0);
}

int LadderLayout::at(double x) const {
    if (pitch <= 0 || x < left)
        return -1;
    const int rung = first + static_cast<int>((x - left) / pitch);
    return shows(rung) ? rung : -1;
}

LadderLayout LadderLayout::showing(int rung) const {
    LadderLayout moved = *this;
    if (rung < 0 || rung >= all)
        return moved;
    moved.first = std::clamp(moved.first, rung - count + 1, rung);
    moved.first = std::clamp(moved.first, 0, std::max(0, all - count));
    return moved;
}

LadderLayout LadderLayout::fit(int rungs, int focus, double left, double right, double least, double most) {
    LadderLayout layout;
    layout.all = rungs;
    layout.left = left;
    const double room = std::max(0.0, right - left);
    layout.count = std::clamp(static_cast<int>(room / std::max(least, 1.0)), std::min(1, rungs), rungs);
    if (layout.count <= 0)
        return layout;
    layout.pitch = std::min(room / layout.count, most);
    // What matters in the middle, what is thicker and thinner on both sides of it.
    layout.first = std::clamp(std::max(focus, 0) - layout.count / 2, 0, rungs - layout.count);
    return layout;
}

int rungOf(const engine::Ladder& ladder, units::Length thickness) {
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i)
        if (std::abs(ladder.rungs[i].thickness.mm() - thickness.mm()) < 0.02)
            return static_cast<int>(i);
    return -1;
}

double placeAmong(const engine::Ladder& ladder, units::Length thickness) {
    const auto& rungs = ladder.rungs;
    if (rungs.empty())
        return 0;
    for (std::size_t i = 0; i + 1 < rungs.size(); ++i) {
        const double low = rungs[i].thickness.mm(), high = rungs[i + 1].thickness.mm();
        if (thickness.mm() <= high)
            return static_cast<double>(i) + std::max(0.0, (thickness.mm() - low) / (high - low));
    }
    return static_cast<double>(rungs.size() - 1);
}

int focusOf(const engine::Ladder& ladder, std::optional<units::Length> thickness) {
    if (thickness)
        return static_cast<int>(std::lround(placeAmong(ladder, *thickness)));
    for (std::size_t i = 0; i < ladder.rungs.size(); ++i)
        if (ladder.rungs[i].grade == verdict::Grade::Holds)
            return static_cast<int>(i);
    return 0;
}

} // namespace pw::gui
