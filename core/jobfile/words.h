#pragma once

#include "core/jobfile/tree.h"

#include <span>
#include <string>
#include <string_view>

/// Pieces of the messages about a file.
namespace pw::jobfile {

/// What stands there, for "found ...": a text in quotes, a number, "a list", "true".
std::string describe(const Tree& value);

/// "round, slot, open".
std::string listed(std::span<const std::string_view> words);

/// The word that was probably meant, or empty: at most two slips of the finger, fewer in a short word.
std::string_view nearest(std::string_view typed, std::span<const std::string_view> words);

} // namespace pw::jobfile
