#pragma once

#include <string>

namespace pw::cli {

/// Thrown with what is wrong in the input; everything is said in one go.
struct BadInput {
    std::string text;
};

} // namespace pw::cli
