#pragma once

#include "core/util/result.h"
#include "geometry/exchange/cut_plan.h"
#include "geometry/exchange/cut_rates.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::exchange {

/// One pierce and the cut that follows it.
struct Burn {
    shape::Side leadIn; ///< starts at the pierce
    /// Line of the torch's middle, from the start of the cut and in the direction of travel: clockwise round
    /// the outside, counter-clockwise inside a hole. So the plate is on the right hand everywhere, which is
    /// the squarer edge of a plasma whose gas swirls clockwise; common practice, no published source.
    shape::Loop loop;
    std::optional<shape::Side> leadOut; ///< ends where the torch goes off; without it: where the cut began
    bool outside = false;
    std::size_t plate = 0; ///< of the plates given
    shape::Part part = shape::Part::Rim;
    int index = 0; ///< as in shape::Hole

    shape::Point pierce() const { return leadIn.from; }
    shape::Point end() const { return leadOut ? leadOut->to : leadIn.to; }
    double length() const; ///< mm, leads counted in
};

/// What the table does, in order, and what is left for the drill and the saw.
struct CutPath {
    CutSettings settings;
    CutRates rates;
    std::vector<Burn> burns;          ///< in order: a plate's insides, then its outside; one for each pierce
    std::vector<DrilledHole> drilled; ///< pilot centres; nothing is burned there
    std::vector<CutEdge> sawn;        ///< shaped holes that cannot be burned, at their finished size
    std::vector<std::string> notes;   ///< what does not come out as drawn, sentences
    shape::Box extents;               ///< round all of it, leads too
    double cutLength = 0;             ///< mm, leads counted in
    double travelLength = 0;          ///< mm with the torch off, from the low left corner of the extents
    double seconds = 0;               ///< cutting, piercing, travelling; no time for speeding up
};

/// "bore", "access hole 2", "hole 1", "outside".
std::string nameOf(shape::Part part, int index);

/// The path of the torch round every plate of a sheet, each already in the sheet's place.
///
/// The line runs half a kerf beside the finished edge, in the scrap. `growth` is not taken off: it is what an
/// edge comes out wide of the line by whatever is done. Leads start in the scrap, in a hole or outside the
/// rim and clear of every other cut by a kerf; the pierce stays one kerf from the torch's line (its crater is
/// about two kerfs wide). A hole under the least worth burning (job::leastBurnedHole), or without room for a
/// pierce, is drilled. Lead radius: half the thickness, at least two kerfs. Cuts closer than three
/// thicknesses share their heat. Common practice, all of it, no published source.
///
/// A plate inside another's hole is cut before that one. Problems: nothing is burned with this process; no
/// kerf; plates that overlap.
util::Result<CutPath> makeCutPath(const std::vector<shape::Region>& plates, const CutSettings& settings,
                                  const CutRates& rates);

} // namespace pw::exchange
