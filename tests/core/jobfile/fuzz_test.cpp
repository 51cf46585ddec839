#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <limits>
#include <random>

/// Spoilt samples: nothing may crash, throw or hang, and what is read must be readable again after it was
/// written.
namespace pw::jobfile {
namespace {

namespace fs = std::filesystem;

constexpr unsigned kSeed = 20240611; ///< fixed, and printed with every failure
constexpr int kByteSpoils = 4000;
constexpr int kTreeSpoils = 4000;

class Spoiler {
public:
    explicit Spoiler(unsigned seed) : m_random(seed) {}

    std::size_t below(std::size_t limit) {
        return std::uniform_int_distribution<std::size_t>(0, limit - 1)(m_random);
    }

    /// Bits flipped, pieces cut, doubled or dropped, characters that matter to JSON put in.
    std::string spoilBytes(std::string text) {
        constexpr std::string_view kTokens[] = {"{",        "}",        "[",  "]",      ",",     ":",
                                                "\"",       "null",     "-",  "1e99",   "1e999", "NaN",
                                                "\"1 in\"", "\xff\xfe", "\\", "\\ud800"};
        for (std::size_t i = below(4) + 1; i > 0 && !text.empty(); --i) {
            const std::size_t at = below(text.size()), length = below(40);
            switch (below(5)) {
            case 0:
                text[at] = static_cast<char>(text[at] ^ (1 << below(8)));
                break;
            case 1:
                text.resize(at);
                break;
            case 2:
                text.insert(at, kTokens[below(std::size(kTokens))]);
                break;
            case 3:
                text.erase(at, length);
                break;
            default:
                text.insert(below(text.size()), text.substr(at, length));
            }
        }
        return text;
    }

    /// One value anywhere in the tree becomes something else, goes, or moves under another key.
    void spoilTree(Tree& tree) {
        if (Tree::Object* members = tree.members(); members && !members->empty()) {
            auto& [key, value] = (*members)[below(members->size())];
            if (below(12) == 0)
                key += "x";
            spoilOrDescend(value);
        } else if (Tree::List* items = tree.items(); items && !items->empty()) {
            if (below(8) == 0 && items->size() < 300)
                items->insert(items->end(), below(250), items->front());
            else
                spoilOrDescend((*items)[below(items->size())]);
        } else {
            tree = oddValue();
        }
    }

private:
    void spoilOrDescend(Tree& value) {
        const bool leaf = !value.members() && !value.items();
        if (leaf || below(6) == 0)
            value = oddValue();
        else
            spoilTree(value);
    }

    Tree oddValue() {
        static const Tree kOdd[] = {Tree(),
                                    Tree(true),
                                    Tree(0),
                                    Tree(-1),
                                    Tree(1e308),
                                    Tree(-0.0),
                                    Tree(1e-320),
                                    Tree(1000),
                                    Tree(std::numeric_limits<double>::quiet_NaN()),
                                    Tree(std::numeric_limits<double>::infinity()),
                                    Tree(""),
                                    Tree(" "),
                                    Tree("mm"),
                                    Tree("-12 mm"),
                                    Tree("0 in"),
                                    Tree("12"),
                                    Tree("1/0 in"),
                                    Tree("1e9 lbf"),
                                    Tree("½ in"),
                                    Tree("9-1 lbf"),
                                    Tree("190 ±500% lbf"),
                                    Tree("disc"),
                                    Tree("M20x0"),
                                    Tree("5/8-"),
                                    Tree(std::string(10000, '9') + " mm"),
                                    Tree(std::string("\0 mm", 4)),
                                    Tree("\xff\xfe"),
                                    Tree::list(),
                                    Tree::object(),
                                    Tree(Tree::List{1, 2}),
                                    Tree(Tree::List{"1 mm", "2 mm"}),
                                    Tree(Tree::List{Tree::List{1, 2, 3}, Tree::List{}}),
                                    Tree(Tree::Object{{"shape", "polygon"}}),
                                    Tree(Tree::Object{{"at", Tree::List{0, 0}}})};
        return kOdd[below(std::size(kOdd))];
    }

    std::mt19937 m_random;
};

std::vector<std::string> sampleTexts() {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES))
        if (entry.path().string().ends_with(".plate.json"))
            files.push_back(entry.path());
    std::ranges::sort(files);
    std::vector<std::string> texts;
    for (const fs::path& file : files)
        texts.push_back(*util::readFile(file));
    return texts;
}

/// Every problem must say something, about a field or the whole.
void expectUsableProblems(const Reading& reading) {
    for (const auto& problem : reading.problems) {
        EXPECT_GT(problem.message.size(), 10u) << problem.field;
        EXPECT_LT(problem.message.size(), 400u) << util::toText(problem);
    }
    EXPECT_EQ(reading.unknownKeys.size(), reading.suggestions.size());
}

TEST(Fuzz, SpoiltBytesAreReadOrRefusedButNeverBreakAnything) {
    const auto texts = sampleTexts();
    ASSERT_FALSE(texts.empty());
    Spoiler spoiler(kSeed);
    int refused = 0;
    for (int i = 0; i < kByteSpoils; ++i) {
        SCOPED_TRACE("seed " + std::to_string(kSeed) + ", spoil " + std::to_string(i));
        const std::string text = spoiler.spoilBytes(texts[static_cast<std::size_t>(i) % texts.size()]);
        const auto tree = fromJson(text);
        if (!tree) {
            ++refused;
            EXPECT_GT(tree.problem().message.size(), 10u);
            continue;
        }
        EXPECT_EQ(*fromJson(toJson(*tree)), *tree);
        EXPECT_NO_THROW(expectUsableProblems(readJob(*tree)));
    }
    // Both ways must have been walked.
    EXPECT_GT(refused, kByteSpoils / 4);
    EXPECT_LT(refused, kByteSpoils);
}

TEST(Fuzz, SpoiltValuesAreListedButNeverBreakAnything) {
    const auto texts = sampleTexts();
    ASSERT_FALSE(texts.empty());
    Spoiler spoiler(kSeed);
    int withProblems = 0;
    for (int i = 0; i < kTreeSpoils; ++i) {
        SCOPED_TRACE("seed " + std::to_string(kSeed) + ", spoil " + std::to_string(i));
        Tree tree = *fromJson(texts[static_cast<std::size_t>(i) % texts.size()]);
        for (std::size_t j = spoiler.below(5) + 1; j > 0; --j)
            spoiler.spoilTree(tree);
        EXPECT_NO_THROW({
            const Reading reading = readJob(tree);
            expectUsableProblems(reading);
            withProblems += !reading.problems.empty();
        });
        EXPECT_TRUE(fromJson(toJson(tree)));
    }
    EXPECT_GT(withProblems, kTreeSpoils / 4);
}

} // namespace
} // namespace pw::jobfile
