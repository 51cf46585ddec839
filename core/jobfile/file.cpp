#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/jobfile/version.h"
#include "core/util/write_file.h"

namespace pw::jobfile {

namespace {

/// The field of a problem with a whole file is the file.
util::Problem inFile(const std::filesystem::path& file, const util::Problem& problem) {
    const std::string field = problem.field.empty() ? "" : problem.field + ": ";
    return {file.string(), field + problem.message};
}

} // namespace

util::Result<Tree> loadTree(const std::filesystem::path& file) {
    const auto text = util::readFile(file);
    if (!text)
        return text.problem();
    auto tree = fromJson(*text);
    if (!tree)
        return inFile(file, tree.problem());
    if (const auto trouble = versionTrouble(*tree))
        return inFile(file, *trouble);
    return tree;
}

util::Status saveTree(const Tree& tree, const std::filesystem::path& file) {
    return util::writeFileWhole(file, toJson(tree));
}

} // namespace pw::jobfile
