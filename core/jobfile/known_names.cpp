#include "core/jobfile/known_names.h"

#include "core/thread/thread.h"

namespace pw::jobfile {

std::optional<std::string> threadTrouble(std::string_view text) {
    const auto thread = thread::parse(text);
    return thread ? std::nullopt : std::optional(thread.problem().message);
}

std::optional<std::string> materialTrouble(std::string_view) {
    return {};
}

std::optional<std::string> boltGradeTrouble(std::string_view) {
    return {};
}

std::optional<std::string> nutGradeTrouble(std::string_view) {
    return {};
}

} // namespace pw::jobfile
