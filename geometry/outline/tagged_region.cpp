#include "geometry/outline/tagged_region.h"

namespace pw::outline {

namespace {

using Kind = plate::MeshEdge::Kind;

Kind kindOf(shape::Part part) {
    switch (part) {
    case shape::Part::Rim:
        return Kind::Rim;
    case shape::Part::Bore:
        return Kind::Bore;
    case shape::Part::Access:
        return Kind::Access;
    case shape::Part::Extra:
        break;
    }
    return Kind::Extra;
}

TaggedLoop tagLoop(const shape::Loop& loop, Kind kind, int index) {
    TaggedLoop out;
    for (std::size_t i = 0; i < loop.size(); ++i)
        out.push_back({loop.side(i), kind, index});
    return out;
}

} // namespace

TaggedRegion tagged(const shape::Region& region) {
    TaggedRegion out;
    out.loops.push_back(tagLoop(region.rim, Kind::Rim, 0));
    for (const shape::Hole& hole : region.holes)
        out.loops.push_back(tagLoop(shape::reversed(hole.loop), kindOf(hole.part), hole.index));
    return out;
}

shape::Loop untagged(const TaggedLoop& loop) {
    shape::Loop out;
    for (const TaggedSide& s : loop)
        out.vertices.push_back({s.side.from, s.side.bulge});
    return out;
}

double area(const TaggedRegion& region) {
    double sum = 0;
    for (const TaggedLoop& loop : region.loops)
        sum += shape::signedArea(untagged(loop));
    return sum;
}

} // namespace pw::outline
