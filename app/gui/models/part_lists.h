#pragma once

#include "app/gui/models/fields.h"

#include <optional>
#include <QStringList>

/// Things of which a job may have several, as rows that close to a sentence and open to fields: extra holes,
/// corners of a polygon, stations, what stands in the way, caliper readings.
namespace pw::gui {

/// A change to the whole job that a word in a list makes.
struct RowAction {
    QString words;  ///< on the screen
    QString spoken; ///< in full, for undo and for those who cannot see which row it stands in
    std::function<void(jobfile::Tree&)> make{}; ///< empty: not now
    std::string opens{};                        ///< row to open afterwards
};

struct PartRow {
    std::string path; ///< of the thing in the job file, or a name that tells it from the others
    QString words;    ///< closed: what it is, in one line
    std::vector<Field> fields;
    std::vector<RowAction> actions; ///< "Remove" and the like
    bool alwaysOpen = false;        ///< fields stand without being asked for
};

struct PartList {
    QString title;
    std::vector<PartRow> rows;
    std::vector<RowAction> actions; ///< "Add a hole"
    QStringList notes;              ///< what follows from all of them
    bool folds = false; ///< nothing out of the ordinary in it: only its title stands, until it is asked for
};

/// The lists of a group, in order. `system` is the unit in which new things are written.
std::vector<PartList> partLists(const jobfile::Tree& tree, const std::string& group, units::System system);

/// The row that belongs to a part of the plan; empty when it has none.
std::string rowOf(PlanPart part, std::size_t index);

} // namespace pw::gui
