#include "core/jobfile/tree.h"

#include "core/util/require.h"

#include <algorithm>
#include <charconv>

namespace pw::jobfile {

namespace {

/// One step of a path: a key, or the place in a list.
struct Step {
    std::string_view key;
    std::size_t index = 0;
    bool isIndex = false;
};

/// More rows than any job has; a path beyond it is a slip in our own code, not a wish for memory.
constexpr std::size_t kMostItems = 100000;

std::vector<Step> stepsOf(std::string_view path) {
    std::vector<Step> steps;
    std::size_t i = 0;
    while (i < path.size()) {
        if (path[i] == '[') {
            const std::size_t close = path.find(']', i);
            util::require(close != std::string_view::npos, "path without ]: " + std::string(path));
            Step step;
            step.isIndex = true;
            const auto [end, error] = std::from_chars(path.data() + i + 1, path.data() + close, step.index);
            util::require(error == std::errc() && end == path.data() + close && step.index < kMostItems,
                          "bad index in path: " + std::string(path));
            steps.push_back(step);
            i = close + 1;
        } else {
            if (path[i] == '.')
                ++i;
            const std::size_t end = std::min(path.find_first_of(".[", i), path.size());
            util::require(end > i, "empty key in path: " + std::string(path));
            steps.push_back({path.substr(i, end - i), 0, false});
            i = end;
        }
    }
    return steps;
}

/// Takes out what steps[from..] names. True when it was there.
bool eraseFrom(Tree& tree, const std::vector<Step>& steps, std::size_t from) {
    const Step& step = steps[from];
    const bool last = from + 1 == steps.size();
    if (step.isIndex) {
        auto* items = tree.items();
        if (!items || step.index >= items->size())
            return false;
        if (!last)
            return eraseFrom((*items)[step.index], steps, from + 1);
        items->erase(items->begin() + static_cast<std::ptrdiff_t>(step.index));
        return true;
    }
    auto* members = tree.members();
    if (!members)
        return false;
    const auto member = std::ranges::find(*members, step.key, &Tree::Object::value_type::first);
    if (member == members->end())
        return false;
    if (!last) {
        if (!eraseFrom(member->second, steps, from + 1))
            return false;
        const auto* left = member->second.members();
        if (!left || !left->empty())
            return true;
    }
    members->erase(member);
    return true;
}

} // namespace

const Tree* Tree::find(std::string_view key) const {
    const Object* object = members();
    if (!object)
        return nullptr;
    const auto member = std::ranges::find(*object, key, &Object::value_type::first);
    return member == object->end() ? nullptr : &member->second;
}

Tree& Tree::operator[](std::string_view key) {
    if (!members())
        m_value = Object{};
    Object& object = *members();
    const auto member = std::ranges::find(object, key, &Object::value_type::first);
    if (member != object.end())
        return member->second;
    return object.emplace_back(std::string(key), Tree()).second;
}

void Tree::push(Tree item) {
    if (isNull())
        m_value = List{};
    util::require(items() != nullptr, "push to a tree that is no list");
    items()->push_back(std::move(item));
}

const Tree* Tree::at(std::string_view path) const {
    const Tree* here = this;
    for (const Step& step : stepsOf(path)) {
        if (step.isIndex) {
            const List* list = here->items();
            if (!list || step.index >= list->size())
                return nullptr;
            here = &(*list)[step.index];
        } else if (here = here->find(step.key); !here) {
            return nullptr;
        }
    }
    return here;
}

void Tree::set(std::string_view path, Tree value) {
    Tree* here = this;
    for (const Step& step : stepsOf(path)) {
        if (step.isIndex) {
            if (!here->items())
                here->m_value = List{};
            List& list = *here->items();
            if (list.size() <= step.index)
                list.resize(step.index + 1);
            here = &list[step.index];
        } else {
            here = &(*here)[step.key];
        }
    }
    *here = std::move(value);
}

bool Tree::erase(std::string_view path) {
    const std::vector<Step> steps = stepsOf(path);
    util::require(!steps.empty(), "erase needs a path");
    return eraseFrom(*this, steps, 0);
}

} // namespace pw::jobfile
