#pragma once

#include "core/job/job.h"
#include "core/util/result.h"

#include <optional>
#include <string_view>

/// Names that the job file may use only if our tables know them. Each answer is what is wrong with a name
/// that we do not know, or nothing when all is well.
namespace pw::jobfile {

std::optional<util::Problem> threadTrouble(std::string_view text);

/// The field is the key at fault within the material, or empty.
std::optional<util::Problem> materialTrouble(const job::Material& material);

/// A bare number is a grade of the thread's own standard. While the thread is not known ("" or wrong) a name
/// that any thread may have will do.
std::optional<util::Problem> screwGradeTrouble(std::string_view name, std::string_view thread);
std::optional<util::Problem> nutGradeTrouble(std::string_view name, std::string_view thread);

} // namespace pw::jobfile
