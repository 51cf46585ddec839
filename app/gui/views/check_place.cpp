#include "app/gui/views/check_place.h"

#include <array>

namespace pw::gui {

namespace {

using Role = SectionPart::Role;

struct Entry {
    std::string_view id; ///< the whole id, or its family with the dot
    PlanPart part;
    std::array<Role, 2> roles;
    int count; ///< of the roles
    bool springs = false;
};

// The first that fits counts: whole ids before their family.
constexpr Entry kEntries[] = {
    {"plate.hung_station", PlanPart::None, {Role::Plate, Role::Pin}, 2},
    {"plate.stuck_station", PlanPart::None, {Role::Plate, Role::Pin}, 2},
    {"plate.", PlanPart::None, {Role::Plate}, 1},
    {"land.", PlanPart::Land, {Role::Retainer}, 1},
    {"access.keeper", PlanPart::Keeper, {Role::Keeper}, 1},
    {"access.", PlanPart::Access, {Role::Bolt}, 1},
    {"centre.", PlanPart::Bearing, {Role::Washer}, 1},
    {"screw.", PlanPart::Bore, {Role::Screw}, 1},
    {"thread.nut", PlanPart::Bore, {Role::Nut, Role::Screw}, 2},
    {"thread.plate", PlanPart::Bore, {Role::Plate, Role::Screw}, 2},
    {"thread.bar", PlanPart::Bore, {Role::Bar, Role::Screw}, 2},
    {"thread.", PlanPart::Bore, {Role::Shaft, Role::Screw}, 2},
    {"travel.pin", PlanPart::Pin, {Role::Pin, Role::Retainer}, 2},
    {"travel.", PlanPart::Bore, {Role::Screw, Role::Nut}, 2},
    {"load.", PlanPart::None, {}, 0, true},
    {"springs.", PlanPart::None, {}, 0, true},
    {"back.", PlanPart::None, {Role::Bar}, 1},
    {"bolts.", PlanPart::Access, {Role::Bolt}, 1},
    {"legs.", PlanPart::Access, {Role::Leg}, 1},
    {"flange.", PlanPart::None, {Role::Hub}, 1},
    {"jaws.", PlanPart::None, {Role::Jaw}, 1},
    {"ram.", PlanPart::Bore, {Role::Screw}, 1},
    {"point.", PlanPart::Bore, {Role::Screw, Role::Shaft}, 2},
    {"cut.", PlanPart::Access, {Role::Plate}, 1},
    {"stock.fit", PlanPart::Piece, {Role::Plate}, 1},
    {"stock.", PlanPart::Rim, {Role::Plate}, 1},
};

} // namespace

CheckPlace placeOfCheck(std::string_view id) {
    for (const Entry& entry : kEntries)
        if (id == entry.id || (entry.id.ends_with('.') && id.starts_with(entry.id)))
            return {entry.part, {entry.roles.begin(), entry.roles.begin() + entry.count}, entry.springs};
    return {};
}

} // namespace pw::gui
