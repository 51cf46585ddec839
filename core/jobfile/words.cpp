#include "core/jobfile/words.h"

#include "core/units/plain_text.h"
#include "core/util/say.h"

#include <algorithm>
#include <charconv>
#include <vector>

namespace pw::jobfile {

namespace {

constexpr std::size_t kMostCompared = 40;

/// Letters to insert, drop, change or swap with their neighbour to come from one word to the other (the
/// restricted Damerau-Levenshtein distance).
std::size_t slips(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j)
        d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

} // namespace

std::string describe(const Tree& value) {
    if (const std::string* text = value.text())
        return units::quoted(*text);
    if (const double* number = value.number()) {
        char buffer[32];
        const auto result = std::to_chars(buffer, buffer + sizeof buffer, *number);
        return {buffer, result.ptr};
    }
    if (const bool* truth = value.boolean())
        return *truth ? "true" : "false";
    if (value.items())
        return say("a list");
    return value.members() ? say("a group") : "null";
}

std::string listed(std::span<const std::string_view> words) {
    std::string text;
    for (const std::string_view word : words)
        text += (text.empty() ? "" : ", ") + std::string(word);
    return text;
}

std::string_view nearest(std::string_view typed, std::span<const std::string_view> words) {
    std::string_view best;
    if (typed.size() > kMostCompared)
        return best;
    std::size_t least = std::min<std::size_t>(2, typed.size() / 3) + 1;
    for (const std::string_view word : words)
        if (const std::size_t distance = slips(typed, word); distance < least) {
            least = distance;
            best = word;
        }
    return best;
}

} // namespace pw::jobfile
