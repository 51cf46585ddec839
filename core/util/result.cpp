#include "core/util/result.h"

namespace pw::util {

std::string toText(const Problem& problem) {
    return problem.field.empty() ? problem.message : problem.field + ": " + problem.message;
}

std::string toText(const Problems& problems) {
    std::string text;
    for (const Problem& problem : problems)
        text += toText(problem) + "\n";
    return text;
}

} // namespace pw::util
