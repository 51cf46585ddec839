#pragma once

#include <string>
#include <string_view>

namespace pw::cli {

/// Words for a terminal: titles, keys and names come from files, and a terminal takes some signs for orders
/// (to clear itself, to type, to turn the text round). Control characters but for line ends and tabs, and
/// direction marks, become
/// "?"; everything else stays.
std::string forTerminal(std::string_view utf8);

} // namespace pw::cli
