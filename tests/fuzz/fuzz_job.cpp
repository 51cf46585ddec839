#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/fuzz/json_mutator.h"

/// Job files: text to tree to job, and back.

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pw;
    const auto tree = jobfile::fromJson(fuzz::textOf(data, size));
    if (!tree) {
        PW_HOLDS(fuzz::isFitToShow(tree.problem().message), tree.problem().message);
        return 0;
    }
    // What is saved is what was typed.
    const std::string written = jobfile::toJson(*tree);
    const auto again = jobfile::fromJson(written);
    PW_HOLDS(again, written);
    PW_HOLDS(*again == *tree, written);
    PW_HOLDS(jobfile::toJson(*again) == written, written);

    const jobfile::Reading reading = jobfile::readJob(*tree);
    PW_HOLDS(reading.job == jobfile::readJob(*again).job, written);
    PW_HOLDS(reading.unknownKeys.size() == reading.suggestions.size(), written);
    const bool isJob = tree->members() && tree->find("platewright");
    for (const util::Problem& problem : reading.problems) {
        PW_HOLDS(fuzz::isFitToShow(problem.message), problem.message);
        PW_HOLDS(!isJob || !problem.field.empty() || problem.message.find("version") != std::string::npos ||
                     reading.problems.size() == 1,
                 problem.message);
    }
    return 0;
}
