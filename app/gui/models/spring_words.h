#pragma once

#include "core/jobfile/read.h"
#include "core/units/format.h"

#include <QStringList>

namespace pw::gui {

/// What the figures of spring `index` come to, in sentences: how fast it rises, what it pushes with built in
/// and squeezed; then the pairs of readings that cannot both be right, and whatever else does not agree.
/// Empty while there is nothing to go by.
QStringList springWords(const jobfile::Tree& tree, const jobfile::Reading& reading, std::size_t index,
                        units::System system);

} // namespace pw::gui
