#pragma once

#include <stdexcept>
#include <string>

namespace pw::util {

/// A bug in our own code. The engine turns it into an "incomplete" verdict that says so; nothing else catches it.
class Bug : public std::logic_error {
    using std::logic_error::logic_error;
};

/// Always on: what must hold if the program is right. Put the values into `what`.
inline void require(bool holds, const char* what) {
    if (!holds)
        throw Bug(what);
}

inline void require(bool holds, const std::string& what) {
    if (!holds)
        throw Bug(what);
}

} // namespace pw::util
