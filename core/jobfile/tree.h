#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace pw::jobfile {

/// A JSON value as plain data, keys in the order in which they were written. The job as the user typed it is
/// kept as one of these, so that whatever was typed, and every key we do not know, is saved as it came.
class Tree {
public:
    using List = std::vector<Tree>;
    using Object = std::vector<std::pair<std::string, Tree>>;

    Tree() = default;
    Tree(std::nullptr_t) {}
    Tree(bool value) : m_value(value) {}
    Tree(double value) : m_value(value) {}
    Tree(int value) : m_value(static_cast<double>(value)) {}
    Tree(std::string value) : m_value(std::move(value)) {}
    Tree(std::string_view value) : m_value(std::string(value)) {}
    Tree(const char* value) : m_value(std::string(value)) {}
    Tree(List value) : m_value(std::move(value)) {}
    Tree(Object value) : m_value(std::move(value)) {}
    static Tree object() { return Tree(Object{}); }
    static Tree list() { return Tree(List{}); }

    bool operator==(const Tree&) const = default;

    bool isNull() const { return std::holds_alternative<std::monostate>(m_value); }
    const bool* boolean() const { return std::get_if<bool>(&m_value); }
    const double* number() const { return std::get_if<double>(&m_value); }
    const std::string* text() const { return std::get_if<std::string>(&m_value); }
    const List* items() const { return std::get_if<List>(&m_value); }
    List* items() { return std::get_if<List>(&m_value); }
    const Object* members() const { return std::get_if<Object>(&m_value); }
    Object* members() { return std::get_if<Object>(&m_value); }

    /// A member of an object; null when there is none.
    const Tree* find(std::string_view key) const;
    /// The member, made at the end when it is not there. A value that is no object becomes one.
    Tree& operator[](std::string_view key);
    void push(Tree item); ///< to a list; a null becomes one

    /// By path: "stations.circle", "springs[0].loads[1].force". Null when it is not there.
    const Tree* at(std::string_view path) const;
    /// Sets, making objects and list items on the way.
    void set(std::string_view path, Tree value);
    /// Takes a member or list item out. Objects left empty by it go too, unless they are items of a list: the
    /// rows after them keep their places. False when it was not there.
    bool erase(std::string_view path);

private:
    std::variant<std::monostate, bool, double, std::string, List, Object> m_value;
};

} // namespace pw::jobfile
