#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace pw::util {

/// One thing the world got wrong: where, what, and how to mend it.
struct Problem {
    std::string field;   ///< path of the job field ("stations.circle"), a file name, or empty
    std::string message; ///< what is wrong, the text that was given, and an example of what would be right

    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// "field: message", one line each.
std::string toText(const Problem& problem);
std::string toText(const Problems& problems);

/// A value, or the problem that kept us from having it. Bugs in our own code throw instead (see require.h).
template<class T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_content(std::move(value)) {}
    Result(Problem problem) : m_content(std::move(problem)) {}

    bool ok() const { return std::holds_alternative<T>(m_content); }
    explicit operator bool() const { return ok(); }

    const T& value() const& { return std::get<T>(m_content); }
    T& value() & { return std::get<T>(m_content); }
    T&& value() && { return std::get<T>(std::move(m_content)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    const Problem& problem() const { return std::get<Problem>(m_content); }

private:
    std::variant<T, Problem> m_content;
};

/// For work that yields nothing but may fail.
struct Done {};
using Status = Result<Done>;

} // namespace pw::util
