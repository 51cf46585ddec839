#pragma once

namespace pw::testing {

/// Built with the address sanitizer: everything takes some ten times as long, and what that is after shows in
/// a few of what is otherwise tried in hundreds.
#ifdef __SANITIZE_ADDRESS__
inline constexpr bool kSanitized = true;
#else
inline constexpr bool kSanitized = false;
#endif

} // namespace pw::testing
