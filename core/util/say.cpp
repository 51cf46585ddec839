#include "core/util/say.h"

#include "core/util/require.h"

namespace pw {

namespace {

Tongue& current() {
    static Tongue tongue;
    return tongue;
}

std::string translated(const char* sentence, long long count) {
    const auto translate = current().translate;
    return translate && *sentence ? translate(sentence, count) : std::string();
}

/// In one pass, so that a % in a word is not taken for a place.
std::string filled(std::string_view sentence, std::initializer_list<Word> words) {
    std::string text;
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        const char next = i + 1 < sentence.size() ? sentence[i + 1] : '\0';
        const std::size_t place =
            next >= '1' && next <= '9' ? static_cast<std::size_t>(next - '1') : words.size();
        if (sentence[i] == '%' && place < words.size()) {
            text += (words.begin() + place)->text();
            ++i;
        } else {
            text += sentence[i];
        }
    }
    return text;
}

std::string counted(std::string text, long long count) {
    for (std::size_t at = text.find("%n"); at != std::string::npos; at = text.find("%n", at))
        text.replace(at, 2, std::to_string(count));
    return text;
}

} // namespace

std::string say(const char* sentence, std::initializer_list<Word> words) {
    const std::string said = translated(sentence, -1);
    return filled(said.empty() ? std::string_view(sentence) : said, words);
}

std::string sayMany(const char* many, const char* one, long long count, std::initializer_list<Word> words) {
    const std::string said = translated(many, count);
    return filled(said.empty() ? counted(count == 1 ? one : many, count) : said, words);
}

std::string sayAll(const std::vector<std::string>& things) {
    if (things.empty())
        return {};
    std::string most = things.front();
    for (std::size_t i = 1; i + 1 < things.size(); ++i)
        most = say("%1, %2", {most, things[i]});
    return things.size() == 1 ? most : say("%1 and %2", {most, things.back()});
}

std::string inSentence(std::string title) {
    if (!current().translate && !title.empty() && title[0] >= 'A' && title[0] <= 'Z')
        title[0] = static_cast<char>(title[0] - 'A' + 'a');
    return title;
}

void setTongue(const Tongue& tongue) {
    util::require(tongue.decimalMark == '.' || tongue.decimalMark == ',',
                  "a decimal mark is a point or a comma");
    current() = tongue;
}

const Tongue& tongue() {
    return current();
}

} // namespace pw
