#pragma once

#include "core/jobfile/tree.h"
#include "core/units/format.h"

namespace pw::gui {

enum class NewJob { CompressRing, CompressBar, PullBolts, PullStrongback };

/// A job with sound defaults where there is one and nothing where only a measurement can tell.
jobfile::Tree newJob(NewJob kind, units::System system);

} // namespace pw::gui
