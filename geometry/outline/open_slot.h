#pragma once

#include "core/shape/loop.h"

#include <optional>

namespace pw::outline {

/// The rim with a slot cut in from outside: a half circle round `centre` and two parallel sides, `width`
/// apart, that run along `direction` (radians) until they meet the rim. Nothing when the centre is not
/// inside, or the slot does not run out in one clean mouth.
std::optional<shape::Loop> withOpenSlot(const shape::Loop& rim, shape::Point centre, double width,
                                        double direction);

} // namespace pw::outline
