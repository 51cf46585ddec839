#include "core/jobfile/version.h"

#include "core/jobfile/read.h"
#include "core/jobfile/words.h"

namespace pw::jobfile {

std::optional<util::Problem> versionTrouble(const Tree& tree) {
    if (!tree.members())
        return util::Problem{"", "a job file is a group of figures in braces { }, not " + describe(tree)};
    const std::string ours = std::to_string(kVersion);
    const Tree* version = tree.find("platewright");
    if (!version && tree.find("platewright_rack"))
        return util::Problem{"", "this is a rack file, not a job file; name it in a job under \"rack\""};
    if (!version || version->isNull())
        return util::Problem{"platewright",
                             "the version is missing; a job file has \"platewright\": " + ours};
    const double* number = version->number();
    if (number && *number > kVersion)
        return util::Problem{"platewright", "made by a newer Platewright, version " + describe(*version) +
                                                "; this one reads " + ours};
    // Older versions are migrated here once there are any.
    if (!number || *number != kVersion)
        return util::Problem{"platewright",
                             describe(*version) + " is no version of a job file; this one reads " + ours};
    return {};
}

} // namespace pw::jobfile
