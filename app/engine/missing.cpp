#include "app/engine/advice.h"

#include "core/util/say.h"

#include <array>

namespace pw::engine {

Missing missingFigure(const std::string& field) {
    struct Row {
        const char *field, *how;
    };
    static constexpr std::array<Row, 18> kRows{{
        {"stations.count", PW_SAY("Needed: how many stations. Count the pins")},
        {"stations.circle",
         PW_SAY("Needed: the pin circle. Measure over two opposite pins, then take off one pin")},
        {"stations.access_hole",
         PW_SAY("Needed: the access hole. Wide enough for the keeper with 3 mm to spare")},
        {"stations.land",
         PW_SAY("Needed: the land, the ring that bears on the retainer. Measure the retainer across")},
        {"stations.retainer", PW_SAY("Needed: the retainer. Measure it across")},
        {"plate.outline", PW_SAY("Needed: the plate's outline, a disc, bar, rectangle or polygon")},
        {"plate.outline.diameter", PW_SAY("Needed: the disc's diameter")},
        {"plate.outline.length", PW_SAY("Needed: the plate's length")},
        {"plate.outline.width", PW_SAY("Needed: the plate's width")},
        {"plate.outline.points", PW_SAY("Needed: the corners of the plate")},
        {"plate.thickness", PW_SAY("Needed: the plate's thickness. Measure clear of the burnt edge, in three "
                                   "places, and take the thinnest")},
        {"plate.bore", PW_SAY("Needed: the bore. A little over the screw's diameter")},
        {"plate.bore_thread",
         PW_SAY("Needed: the thread in the plate's bore, the same as the screw's, M24 or 1-8 for one")},
        {"plate.holes", PW_SAY("Needed: the size of an extra hole")},
        {"load", PW_SAY("Needed: a load. Give the springs, or the load in all")},
        {"work", PW_SAY("Needed: compress or pull")},
        {"screw.thread",
         PW_SAY("Needed: the screw's thread, M20 or 3/4-10. Or how far out the centre bears")},
        {"springs", PW_SAY("Needed: the springs' forces. Read two lengths on a scale")},
    }};
    for (const Row& row : kRows)
        if (field == row.field)
            return {field, say(row.how) + "."};
    return {field, say("Needed: %1.", {field})};
}

} // namespace pw::engine
