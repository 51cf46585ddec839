#pragma once

#include "app/engine/report.h"
#include "core/job/job.h"
#include "core/jobfile/tree.h"
#include "core/units/format.h"

#include <memory>
#include <QString>

namespace pw::gui {

/// What a printed sheet is made from.
struct PageData {
    jobfile::Tree tree;
    job::Job job;
    std::shared_ptr<const engine::Report> report; ///< never null
    units::System units = units::System::Metric;
    QString title, file; ///< file: its name, or nothing
};

} // namespace pw::gui
