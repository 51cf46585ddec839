#include "core/rack/rack_file.h"

#include "core/jobfile/json.h"
#include "core/jobfile/words.h"
#include "core/rack/read_rack.h"
#include "core/util/say.h"
#include "core/util/write_file.h"

namespace pw::rack {

using jobfile::Tree;

std::optional<util::Problem> rackVersionTrouble(const Tree& tree) {
    if (!tree.members())
        return util::Problem{
            "", say("a rack file is a group of figures in braces { }, not %1", {jobfile::describe(tree)})};
    const std::string ours = std::to_string(kRackVersion);
    const Tree* version = tree.find("platewright_rack");
    if (!version && tree.find("platewright"))
        return util::Problem{"", say("this is a job file, not a rack file")};
    if (!version || version->isNull())
        return util::Problem{"platewright_rack",
                             say("the version is missing; a rack file has \"platewright_rack\": %1", {ours})};
    const double* number = version->number();
    if (number && *number > kRackVersion)
        return util::Problem{"platewright_rack",
                             say("made by a newer Platewright, version %1; this one reads %2",
                                 {jobfile::describe(*version), ours})};
    if (!number || *number != kRackVersion)
        return util::Problem{"platewright_rack", say("%1 is no version of a rack file; this one reads %2",
                                                     {jobfile::describe(*version), ours})};
    return {};
}

util::Result<Tree> loadRackTree(const std::filesystem::path& file) {
    const auto inFile = [&](const util::Problem& problem) {
        return util::Problem{file.string(),
                             (problem.field.empty() ? "" : problem.field + ": ") + problem.message};
    };
    const auto text = util::readFile(file);
    if (!text)
        return text.problem();
    auto tree = jobfile::fromJson(*text);
    if (!tree)
        return inFile(tree.problem());
    if (const auto trouble = rackVersionTrouble(*tree))
        return inFile(*trouble);
    return tree;
}

util::Status saveRackTree(const Tree& tree, const std::filesystem::path& file) {
    const std::string next = jobfile::toJson(tree);
    const auto before = util::readFile(file);
    if (before && *before != next && loadRackTree(file)) {
        std::filesystem::path copy = file;
        copy += "~";
        // For want of a copy no rack is left unsaved.
        (void)util::writeFileWhole(copy, *before);
    }
    return util::writeFileWhole(file, next);
}

Tree newRackTree() {
    Tree tree = Tree::object();
    tree["platewright_rack"] = kRackVersion;
    tree["offcuts"] = Tree::list();
    return tree;
}

} // namespace pw::rack
