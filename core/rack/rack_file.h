#pragma once

#include "core/jobfile/tree.h"
#include "core/rack/rack.h"
#include "core/util/result.h"

#include <filesystem>
#include <optional>

/// The rack as a file: `{"platewright_rack": 1, "offcuts": [...]}`. The tree as typed is the truth, as with a
/// job: edits are made in it, so that what was typed and keys we do not know are saved as they came.
namespace pw::rack {

/// What is wrong with a rack file as a whole: no group of figures, no version, a newer one, a job file.
std::optional<util::Problem> rackVersionTrouble(const jobfile::Tree& tree);

/// Text, syntax and version checked.
util::Result<jobfile::Tree> loadRackTree(const std::filesystem::path& file);

/// Written whole or not at all. What the file held before is kept beside it as NAME~ if it was a whole rack
/// and another one; a broken file never takes the place of a good copy.
util::Status saveRackTree(const jobfile::Tree& tree, const std::filesystem::path& file);

/// A piece as the file keeps it, in mm.
jobfile::Tree toTree(const Offcut& offcut);

/// An empty rack.
jobfile::Tree newRackTree();

} // namespace pw::rack
