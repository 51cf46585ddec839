#pragma once

#include "app/engine/report.h"
#include "core/job/job.h"

#include <QString>
#include <string>

namespace pw::gui {

/// What counts when the figure at `path` is left out, as it would be typed ("0.5 mm", "oiled"); empty when
/// nothing stands in for it. From the same defaults that the check uses; `report` (may be null) adds what it
/// worked out.
QString assumedText(const std::string& path, const job::Job& job, const engine::Report* report,
                    units::System system);

} // namespace pw::gui
