#include "core/material/names.h"

#include <algorithm>
#include <numeric>

namespace pw::material {

namespace {

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Letters to change, add or leave out to make one of the other.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t(0));
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[b.size()];
}

} // namespace

std::string key(std::string_view name, std::initializer_list<std::string_view> drop) {
    std::string result, word;
    const auto endWord = [&] {
        if (std::find(drop.begin(), drop.end(), word) == drop.end())
            result += word;
        word.clear();
    };
    for (const char c : name) {
        if (c == ' ' || c == '-' || c == '_' || c == '\t')
            endWord();
        else
            word += lower(c);
    }
    endWord();
    return result;
}

std::vector<std::string> nearNames(std::string_view typed, const std::vector<std::string>& names) {
    constexpr std::size_t kLongest = 40, kMost = 4;
    const std::string wanted = key(typed.substr(0, kLongest), {});
    std::vector<std::pair<std::size_t, std::string>> near;
    for (const std::string& name : names) {
        const std::string other = key(name, {});
        const std::size_t apart = distance(wanted, other);
        const bool inside = wanted.size() >= 3 && other.find(wanted) != std::string::npos;
        if (inside || apart <= std::max<std::size_t>(1, std::min(wanted.size(), other.size()) / 3))
            near.emplace_back(inside ? 0 : apart, name);
    }
    std::stable_sort(near.begin(), near.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> result;
    for (const auto& [apart, name] : near)
        if (result.size() < kMost)
            result.push_back(name);
    return result;
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text.append(text.empty() ? "" : ", ").append(name);
    return text;
}

} // namespace pw::material
