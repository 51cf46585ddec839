#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

/// How a typed name finds its row.
namespace pw::material {

/// Lower case, without blanks, hyphens and the words to drop ("astm", "grade"): what two spellings of one
/// name share.
std::string key(std::string_view name, std::initializer_list<std::string_view> drop);

/// Up to four of the names most like the one typed, best first; only such as could be a slip of it.
std::vector<std::string> nearNames(std::string_view typed, const std::vector<std::string>& names);

/// "a, b, c".
std::string listed(const std::vector<std::string>& names);

} // namespace pw::material
