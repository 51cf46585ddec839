#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Names that the job file may use only if our tables know them. Each answer is the message for a name that
/// we do not know, or nothing when all is well.
namespace pw::jobfile {

std::optional<std::string> threadTrouble(std::string_view text);
std::optional<std::string> materialTrouble(std::string_view name);
std::optional<std::string> boltGradeTrouble(std::string_view name);
std::optional<std::string> nutGradeTrouble(std::string_view name);

} // namespace pw::jobfile
