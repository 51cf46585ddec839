#include "core/jobfile/known_names.h"

namespace pw::jobfile {

std::optional<std::string> threadTrouble(std::string_view) {
    return {};
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
