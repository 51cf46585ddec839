#pragma once

/// A mutator that knows JSON: half of the time it spoils a value, a key or a row of the tree, so that a
/// target gets past the commas; else it leaves the bytes to libFuzzer. Included by one .cpp a target.

#include "core/jobfile/json.h"
#include "tests/fuzz/fuzz.h"

#include <algorithm>
#include <cstring>
#include <random>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t mostSize);

namespace pw::fuzz {

class TreeSpoiler {
public:
    explicit TreeSpoiler(unsigned seed) : m_random(seed) {}

    void spoil(jobfile::Tree& tree) {
        using jobfile::Tree;
        if (Tree::Object* members = tree.members(); members && !members->empty()) {
            const std::size_t at = below(members->size());
            switch (below(16)) {
            case 0:
                members->erase(members->begin() + static_cast<std::ptrdiff_t>(at));
                return;
            case 1: // another's value under this key
                (*members)[at].second = Tree((*members)[below(members->size())].second);
                return;
            default:
                descend((*members)[at].second);
            }
        } else if (Tree::List* items = tree.items(); items && !items->empty()) {
            const std::size_t at = below(items->size());
            switch (below(10)) {
            case 0:
                items->erase(items->begin() + static_cast<std::ptrdiff_t>(at));
                return;
            case 1: {
                const Tree copy = (*items)[at];
                items->insert(items->end(), 1 + below(8), copy);
                return;
            }
            default:
                descend((*items)[at]);
            }
        } else {
            tree = odd();
        }
    }

private:
    std::size_t below(std::size_t limit) { return m_random() % limit; }

    void descend(jobfile::Tree& value) {
        const bool leaf = !value.members() && !value.items();
        if (!leaf && below(12) != 0)
            return spoil(value);
        if (double* number = const_cast<double*>(value.number()); number && below(3) != 0)
            *number = below(2) ? *number * kFactors[below(std::size(kFactors))] : *number + 1;
        else if (std::string* text = const_cast<std::string*>(value.text()); text && below(3) != 0)
            spoilText(*text);
        else
            value = odd();
    }

    /// A figure of another size, or a sign more or less.
    void spoilText(std::string& text) {
        const std::size_t digits = text.find_first_of("0123456789");
        if (digits != std::string::npos && below(3) != 0)
            text.insert(digits, 1, static_cast<char>('0' + below(10)));
        else if (!text.empty() && below(2))
            text.erase(below(text.size()), 1 + below(3));
        else
            text.insert(below(text.size() + 1), kSigns[below(std::size(kSigns))]);
    }

    jobfile::Tree odd() {
        using jobfile::Tree;
        switch (below(8)) {
        case 0:
            return Tree();
        case 1:
            return Tree(kNumbers[below(std::size(kNumbers))]);
        case 2:
            return Tree(Tree::List{kTexts[below(std::size(kTexts))], kTexts[below(std::size(kTexts))]});
        case 3:
            return below(2) ? Tree::list() : Tree::object();
        case 4:
            return Tree(below(2) == 0);
        default:
            return Tree(kTexts[below(std::size(kTexts))]);
        }
    }

    static constexpr double kFactors[] = {0.5, 2, 10, 0.1, -1, 1000, 1e-6, 1.01};
    static constexpr double kNumbers[] = {0, 1, 2, 3, 6, -1, 0.5, 1e308, 1e-320, 200, 1e9, 50};
    static constexpr const char* kSigns[] = {" ",        "-",  ".",  ",", "/", "\"", "x",
                                             "\xc2\xb1", "in", "mm", "%", "'", "to"};
    static constexpr const char* kTexts[] = {
        "1 mm",       "0 mm",          "12 mm",     "60 mm",       "1e5 mm",   "3/8 in",    "-5 mm",
        "20 deg",     "0 deg",         "7500 N",    "180-205 lbf", "12 N/mm",  "250 MPa",   "700 bar",
        "20 C",       "600 C",         "M20",       "5/8-11",      "Tr 24x5",  "8.8",       "B7",
        "S235",       "unknown scrap", "cast iron", "disc",        "bar",      "rectangle", "polygon",
        "round",      "slot",          "open",      "pull",        "compress", "taper",     "rust only",
        "straight",   "shaft",         "plate",     "nut",         "hard",     "uniform",   "torch table",
        "hand torch", "saw and drill", "stop bolt", "block",       "",         "1600 mm2",  "closed ground",
        "drilled"};

    std::minstd_rand m_random;
};

} // namespace pw::fuzz

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t mostSize,
                                               unsigned seed) {
    using namespace pw;
    if (seed % 2 == 0)
        return LLVMFuzzerMutate(data, size, mostSize);
    auto tree = jobfile::fromJson(fuzz::textOf(data, size));
    if (!tree)
        return LLVMFuzzerMutate(data, size, mostSize);
    fuzz::TreeSpoiler spoiler(seed);
    for (unsigned i = 0; i <= seed / 2 % 3; ++i)
        spoiler.spoil(*tree);
    const std::string text = jobfile::toJson(*tree);
    if (text.size() > mostSize)
        return LLVMFuzzerMutate(data, size, mostSize);
    std::memcpy(data, text.data(), text.size());
    return text.size();
}
