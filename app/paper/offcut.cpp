#include "app/paper/offcut.h"

#include "geometry/placement/stock.h"

#include <algorithm>

namespace pw::paper {

std::optional<Offcut> offcutOf(const job::Job& job, const rack::RackReading& rack) {
    if (!job.piece || !job.piece->at)
        return std::nullopt;
    const auto known = std::ranges::find(rack.rack.offcuts, job.piece->name, &rack::Offcut::name);
    if (known == rack.rack.offcuts.end())
        return std::nullopt;
    const placement::BuiltStock built = placement::buildStock(*known);
    if (!built.problems.empty())
        return std::nullopt;
    Offcut offcut;
    offcut.name = known->name;
    offcut.outline = built.stock.rim;
    for (const placement::Obstacle& thing : built.stock.obstacles)
        offcut.holes.push_back(thing.loop);
    offcut.at = {job.piece->at->x.mm(), job.piece->at->y.mm()};
    if (job.piece->turn)
        offcut.turn = job.piece->turn->radian();
    return offcut;
}

} // namespace pw::paper
