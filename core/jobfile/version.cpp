#include "core/jobfile/version.h"

#include "core/jobfile/read.h"
#include "core/jobfile/words.h"
#include "core/util/say.h"

namespace pw::jobfile {

std::optional<util::Problem> versionTrouble(const Tree& tree) {
    if (!tree.members())
        return util::Problem{"",
                             say("a job file is a group of figures in braces { }, not %1", {describe(tree)})};
    const std::string ours = std::to_string(kVersion);
    const Tree* version = tree.find("platewright");
    if (!version && tree.find("platewright_rack"))
        return util::Problem{"", say("this is a rack file, not a job file; name it in a job under \"rack\"")};
    if (!version || version->isNull())
        return util::Problem{"platewright",
                             say("the version is missing; a job file has \"platewright\": %1", {ours})};
    const double* number = version->number();
    if (number && *number > kVersion)
        return util::Problem{"platewright", say("made by a newer Platewright, version %1; this one reads %2",
                                                {describe(*version), ours})};
    // Older versions are migrated here once there are any.
    if (!number || *number != kVersion)
        return util::Problem{"platewright", say("%1 is no version of a job file; this one reads %2",
                                                {describe(*version), ours})};
    return {};
}

} // namespace pw::jobfile
