#include "app/engine/advice.h"

#include <array>

namespace pw::engine {

Missing missingFigure(const std::string& field) {
    struct Row {
        const char *field, *how;
    };
    static constexpr std::array<Row, 19> kRows{{
        {"stations.count", "Needed: how many stations. Count the pins"},
        {"stations.circle", "Needed: the pin circle. Measure over two opposite pins, then take off one pin"},
        {"stations.access_hole", "Needed: the access hole. Wide enough for the keeper with 3 mm to spare"},
        {"stations.land",
         "Needed: the land, the ring that bears on the retainer. Measure the retainer across"},
        {"stations.retainer", "Needed: the retainer. Measure it across"},
        {"plate.outline", "Needed: the plate's outline, a disc, bar, rectangle or polygon"},
        {"plate.outline.diameter", "Needed: the disc's diameter"},
        {"plate.outline.length", "Needed: the plate's length"},
        {"plate.outline.width", "Needed: the plate's width"},
        {"plate.outline.points", "Needed: the corners of the plate"},
        {"plate.thickness",
         "Needed: the plate's thickness. Measure clear of the burnt edge, in three places, and take the "
         "thinnest"},
        {"plate.bore", "Needed: the bore. A little over the screw's diameter"},
        {"plate.bore_thread",
         "Needed: the thread in the plate's bore, the same as the screw's, M24 or 1-8 for one"},
        {"plate.holes", "Needed: the size of an extra hole"},
        {"load", "Needed: a load. Give the springs, or the load in all"},
        {"work", "Needed: compress or pull"},
        {"screw.thread", "Needed: the screw's thread, M20 or 3/4-10. It decides the centre bearing"},
        {"centre.bearing_outside", "Needed: the centre bearing. Measure the washer across"},
        {"springs", "Needed: the springs' forces. Read two lengths on a scale"},
    }};
    for (const Row& row : kRows)
        if (field == row.field)
            return {field, std::string(row.how) + "."};
    return {field, "Needed: " + field + "."};
}

} // namespace pw::engine
