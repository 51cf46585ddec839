#pragma once

#include "core/job/job.h"
#include "core/jobfile/tree.h"
#include "core/units/format.h"

#include <QString>
#include <string>

namespace pw::engine {
struct Report;
}

namespace pw::gui {

/// What a closed group says: the whole group in one plain line. `report` may be null.
QString groupSentence(const std::string& group, const jobfile::Tree& tree, const job::Job& job,
                      const engine::Report* report, units::System system);

} // namespace pw::gui
