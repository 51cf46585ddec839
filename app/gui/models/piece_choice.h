#pragma once

#include "app/gui/models/fields.h"
#include "core/rack/read_rack.h"

#include <memory>

/// What the rack's file has to say to the fields of the group "piece".
namespace pw::gui {

/// The rack as far as it could be read.
struct RackState {
    std::shared_ptr<const rack::RackReading> reading; ///< null: there is none
    QString rackTrouble, pieceTrouble;
};

/// The field with the rack's pieces to choose from, and with what is wrong with rack or piece under it.
Field withRack(Field field, const jobfile::Tree& tree, const RackState& rack, units::System system);

/// The job with its plate from the piece of this name: thickness, steel and tests are the piece's, and the
/// plate lies where it fits, or where it comes nearest. A name that the rack does not have is put in as it
/// is.
jobfile::Tree onPieceNamed(jobfile::Tree tree, const rack::RackReading* rack, const std::string& name);

} // namespace pw::gui
