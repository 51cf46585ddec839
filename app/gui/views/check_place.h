#pragma once

#include "app/gui/models/fields.h"
#include "app/gui/views/section_geometry.h"

#include <string_view>
#include <vector>

namespace pw::gui {

/// What a check is about, where it can be seen: a part of the plan, parts of the section.
struct CheckPlace {
    PlanPart part = PlanPart::None;
    std::vector<SectionPart::Role> section;
    bool springs = false; ///< the coils of the section
};

/// By the check's id. Every family of ids has a place; nothing for an id that is not known.
CheckPlace placeOfCheck(std::string_view id);

} // namespace pw::gui
