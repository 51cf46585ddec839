#pragma once

#include <concepts>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

/// What the program says to a person, in that person's language. core, geometry and app/engine know no window
/// toolkit, so they say a sentence in English with places for its figures, and the program that has a window
/// puts a translator in once, at its start. Without one everything is English with a decimal point, which is
/// what the command line, JSON and every file get.
///
/// Names, ids, job keys, units and whatever a machine reads are never said.
namespace pw {

/// Reads as a literal for translation where it stands; say() it where it is used. For tables of words.
#define PW_SAY(text) text

/// What stands in a place: text, already shown figures, or a whole number.
class Word {
public:
    Word(std::string text) : m_text(std::move(text)) {}
    Word(std::string_view text) : m_text(text) {}
    Word(const char* text) : m_text(text) {}
    template<std::integral Whole>
    Word(Whole number) : m_text(std::to_string(number)) {}
    const std::string& text() const { return m_text; }

private:
    std::string m_text;
};

/// The sentence in the tongue that is set, its places %1 to %9 filled with `words` in order. A place without
/// a word stays as it is.
std::string say(const char* sentence, std::initializer_list<Word> words = {});

/// A sentence that counts: `many` has %n for the count and is what the translator is asked for, `one` is
/// English's way for a single one. sayMany("%n turns", "1 turn", count).
std::string sayMany(const char* many, const char* one, long long count,
                    std::initializer_list<Word> words = {});

/// One with commas and "and" between: "a", "a and b", "a, b and c".
std::string sayAll(const std::vector<std::string>& things);

/// A title where it stands inside a sentence: English begins it with a small letter; another tongue keeps the
/// capitals of its nouns.
std::string inSentence(std::string title);

/// How a language says things. The functions are called from any thread.
struct Tongue {
    /// The translation of a sentence, %1 and so on kept, %n filled in; empty when there is none. `count` is
    /// -1 for a sentence that does not count.
    std::string (*translate)(const char* sentence, long long count) = nullptr;
    char decimalMark = '.'; ///< '.' or ','
};

/// To be called before anything is said or another thread runs: what is said is remembered in reports.
void setTongue(const Tongue& tongue);
const Tongue& tongue();

} // namespace pw
