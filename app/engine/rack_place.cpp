#include "app/engine/rack_place.h"

#include "app/engine/rack.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::engine {

namespace fs = std::filesystem;

namespace {

/// Is the file below the folder, once every link on the way is followed? What cannot be followed is not.
bool isBelow(const fs::path& folder, const fs::path& file) {
    std::error_code error;
    const fs::path base = fs::weakly_canonical(folder.empty() ? fs::path(".") : folder, error);
    if (error)
        return false;
    const fs::path place = fs::weakly_canonical(file, error);
    // What is left a link after that leads to nothing today; where it will lead tomorrow nobody knows.
    if (error || fs::is_symlink(place, error))
        return false;
    const auto [inBase, inPlace] = std::ranges::mismatch(base, place);
    return inBase == base.end() && inPlace != place.end();
}

} // namespace

util::Result<fs::path> rackToRead(const job::Job& job, const fs::path& jobFile) {
    fs::path file = rackFileOf(job, jobFile);
    if (file.empty())
        return file;
    const bool isSaved = !jobFile.empty();
    // Beside a job that is not saved there is nothing yet, and nothing to be afraid of.
    if (isSaved ? isBelow(jobFile.parent_path(), file) : file.is_relative())
        return file;
    return util::Problem{
        "rack", say("The rack \"%1\" lies outside the job's folder. A job from somebody else could name "
                    "any file, so it is not read unasked.",
                    {job.rack})};
}

} // namespace pw::engine
