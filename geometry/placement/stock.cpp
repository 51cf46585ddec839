#include "geometry/placement/stock.h"

#include "core/util/say.h"
#include "geometry/outline/build.h"

#include <cmath>

namespace pw::placement {

namespace {

shape::Loop counterClockwise(const shape::Loop& loop) {
    return shape::signedArea(loop) < 0 ? shape::reversed(loop) : loop;
}

shape::Loop loopOf(const rack::StockHole& hole) {
    if (!hole.points.empty())
        return counterClockwise({hole.points});
    const shape::Point at{hole.form.at.x.mm(), hole.form.at.y.mm()};
    const job::HoleForm& form = hole.form.form;
    if (form.shape == job::HoleShape::Slot)
        return shape::slotLoop(at, form.length->mm(), form.width->mm(), form.turn ? form.turn->radian() : 0);
    return shape::circleLoop(at, hole.form.diameter->mm() / 2);
}

} // namespace

Lies liesOn(const shape::Loop& rim, const shape::Loop& loop) {
    if (shape::crosses(rim, loop))
        return Lies::Across;
    return shape::contains(rim, loop.vertices.front().at) ? Lies::Inside : Lies::Outside;
}

BuiltStock buildStock(const rack::Offcut& offcut) {
    BuiltStock built;
    std::vector<std::string> missing;
    auto rim = outline::buildOutline(offcut.outline, "outline", built.problems, missing);
    for (const std::string& field : missing)
        built.problems.push_back({field, say("Missing; the piece has no shape without it.")});
    if (!rim)
        return built;
    if (offcut.outline.shape == job::OutlineShape::Polygon && shape::signedArea({offcut.outline.points}) < 0)
        built.words.push_back(say("its corners run clockwise; taken the other way round"));
    built.stock.rim = std::move(*rim);
    const auto add = [&](shape::Loop loop, bool isHole, std::size_t index) {
        const std::string name = isHole ? say("hole %1", {index + 1}) : say("bad area %1", {index + 1});
        switch (liesOn(built.stock.rim, loop)) {
        case Lies::Outside:
            if (shape::contains(loop, built.stock.rim.vertices.front().at)) {
                built.problems.push_back(
                    {isHole ? "holes" : "bad_areas", say("%1 is larger than the piece.", {name})});
                return;
            }
            built.words.push_back(say("%1 lies off the piece; passed over", {name}));
            return;
        case Lies::Across:
            if (isHole)
                built.words.push_back(say("%1 runs over the edge; taken as a notch", {name}));
            break;
        case Lies::Inside:
            break;
        }
        built.stock.obstacles.push_back({std::move(loop), isHole, index});
    };
    for (std::size_t i = 0; i < offcut.holes.size(); ++i)
        add(loopOf(offcut.holes[i]), true, i);
    for (std::size_t i = 0; i < offcut.badAreas.size(); ++i)
        add(counterClockwise({offcut.badAreas[i].points}), false, i);
    return built;
}

} // namespace pw::placement
