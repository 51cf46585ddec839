#pragma once

#include "app/gui/models/part_lists.h"

/// The questions about one piece of the rack, as plain data.
namespace pw::gui {

struct PieceSection {
    QString title;
    std::vector<Field> fields;
    std::vector<PartList> lists{};
};

/// In the order in which a piece is measured. `at` is its path in the rack's tree, "offcuts[2]".
std::vector<PieceSection> pieceSections(const jobfile::Tree& tree, const std::string& at,
                                        units::System system);

} // namespace pw::gui
