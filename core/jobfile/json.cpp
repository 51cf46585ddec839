#include "core/jobfile/json.h"

#include "core/util/say.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <iterator>
#include <optional>

namespace pw::jobfile {

namespace {

using nlohmann::json;

constexpr std::size_t kMostBytes = std::size_t(4) << 20;
constexpr std::size_t kMostDepth = 64;
/// Of one group. Finding a key that stands twice takes time as the square of it.
constexpr std::size_t kMostKeys = 1000;
constexpr std::size_t kLineWidth = 100;
constexpr std::uint64_t kExactIntegers = std::uint64_t(1) << 53; ///< beyond it a double drops digits

/// Reads through a pointer and tells how far the parser has come, which the SAX callbacks do not.
class Cursor {
public:
    using iterator_category = std::forward_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    Cursor() = default;
    Cursor(const char* here, const char** seen) : m_here(here), m_seen(seen) {}
    reference operator*() const { return *m_here; }
    Cursor& operator++() {
        *m_seen = ++m_here;
        return *this;
    }
    Cursor operator++(int) {
        Cursor old = *this;
        ++*this;
        return old;
    }
    bool operator==(const Cursor& other) const { return m_here == other.m_here; }

private:
    const char* m_here = nullptr;
    const char** m_seen = nullptr;
};

/// Control characters that no text file has.
bool isOddControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\n' && c != '\r';
}

std::string placeOf(std::string_view text, std::size_t offset) {
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    const auto lines = std::ranges::count(before, '\n');
    const std::size_t lastBreak = before.rfind('\n');
    const std::string_view line = before.substr(lastBreak == std::string_view::npos ? 0 : lastBreak + 1);
    // Characters, not bytes: continuation bytes of UTF-8 take no column.
    const auto columns = std::ranges::count_if(line, [](char c) { return (c & 0xC0) != 0x80; });
    return say("line %1, column %2", {lines + 1, columns + 1});
}

/// What the parser's own message means to somebody who typed the file.
std::string plainReason(std::string_view text, std::size_t offset, std::string_view message) {
    const auto says = [&](std::string_view part) { return message.find(part) != std::string_view::npos; };
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    if (says("unexpected end of input") || (says("missing closing quote") && offset + 1 >= text.size()))
        return say("the file stops in the middle; it seems to be cut short");
    if (says("UTF-8"))
        return say("the text is not UTF-8; save the file as UTF-8 text");
    if (says("number overflow"))
        return say("the number is too large");
    if (says("control character"))
        return say("a line break or a tab inside quotes; write \\n or \\t");
    if (says("surrogate") || says("\\u"))
        return say("a broken \\u sequence inside quotes");
    if (!before.empty() && before.back() == '/')
        return before.size() > 1 && before[before.size() - 2] >= '0' && before[before.size() - 2] <= '9'
                   ? say("a fraction stands in quotes with its unit, for instance \"1/2 in\"")
                   : say("a comment cannot stand here; write it under \"notes\"");
    const std::size_t word = before.find_last_of(" \t\r\n,:[{");
    const std::string_view last = word == std::string_view::npos ? before : before.substr(word + 1);
    if (last.starts_with("N") || last.starts_with("-N") || last.starts_with("I") || last.starts_with("-I") ||
        last.starts_with("n") || last.starts_with("i"))
        if (!last.starts_with("nu"))
            return say("NaN and Infinity are no figures; leave the figure out when it is not known");
    if (!before.empty() && (before.back() == '}' || before.back() == ']')) {
        const std::size_t comma = before.substr(0, before.size() - 1).find_last_not_of(" \t\r\n");
        if (comma != std::string_view::npos && before[comma] == ',')
            return say("a comma too many before %1", {before.back()});
    }
    if (says("; expected end of input"))
        return say(
            "more text after the end of the job; there is a closing brace too many, or two files in one");
    if (says("invalid number") || (before.size() > 1 && before.back() == '.'))
        return say("this is no number; write 0.5 or 12, and put figures with a unit in quotes");
    if (says("expected ',' or") || says("expected '}'") || says("expected ']'"))
        return say("a comma or a closing bracket is missing before this");
    if (says("expected ':'"))
        return say("a colon is missing before this");
    if (says("object key"))
        return say("a key in double quotes should stand here");
    if (says("invalid string: forbidden character after backslash"))
        return say("a backslash inside quotes must be doubled");
    return say("this is not JSON: check quotes, commas and brackets near here, and put text in quotes");
}

/// Puts the parser's events together into a tree, and stops at what we refuse.
class Builder : public nlohmann::json_sax<json> {
public:
    Builder(std::string_view text, const char** seen) : m_text(text), m_seen(seen) {}

    bool null() override { return add(Tree()); }
    bool boolean(bool value) override { return add(Tree(value)); }
    bool number_integer(number_integer_t value) override {
        const auto size =
            value < 0 ? std::uint64_t(0) - static_cast<std::uint64_t>(value) : std::uint64_t(value);
        return wholeNumber(static_cast<double>(value), size);
    }
    bool number_unsigned(number_unsigned_t value) override {
        return wholeNumber(static_cast<double>(value), value);
    }
    bool number_float(number_float_t value, const string_t&) override {
        return std::isfinite(value) ? add(Tree(value)) : refuse(say("the number is too large"));
    }
    bool string(string_t& value) override { return add(Tree(std::move(value))); }
    bool binary(binary_t&) override { return refuse(say("binary data")); }
    bool start_object(std::size_t) override { return open(Tree::object()); }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open(Tree::list()); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        if (m_open.back().tree.members()->size() >= kMostKeys)
            return refuse(say("more than %1 keys in one group", {kMostKeys}));
        if (m_open.back().tree.find(name))
            return refuse(say("the key \"%1\" stands twice in one group; take one out", {name}));
        m_open.back().key = std::move(name);
        return true;
    }

    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override {
        const std::size_t offset = position == 0 ? 0 : position - 1;
        // The parser names the last character it read; the reader looks there.
        m_problem = {"", placeOf(m_text, offset) + ": " + plainReason(m_text, position, error.what())};
        return false;
    }

    const std::optional<util::Problem>& problem() const { return m_problem; }
    Tree take() { return std::move(m_root); }

private:
    struct Level {
        Tree tree;
        std::string key; ///< of the member being read
    };

    bool refuse(const std::string& why) {
        const auto offset = static_cast<std::size_t>(*m_seen - m_text.data());
        m_problem = {"", placeOf(m_text, offset == 0 ? 0 : offset - 1) + ": " + why};
        return false;
    }
    bool wholeNumber(double value, std::uint64_t size) {
        if (size > kExactIntegers)
            return refuse(
                say("the number has more digits than can be kept; write it in quotes if it is no figure"));
        return add(Tree(value));
    }
    bool add(Tree value) {
        if (m_open.empty())
            m_root = std::move(value);
        else if (auto* items = m_open.back().tree.items())
            items->push_back(std::move(value));
        else
            m_open.back().tree.members()->emplace_back(std::move(m_open.back().key), std::move(value));
        return true;
    }
    bool open(Tree empty) {
        if (m_open.size() >= kMostDepth)
            return refuse(say("groups nested deeper than %1", {kMostDepth}));
        m_open.push_back({std::move(empty), {}});
        return true;
    }
    bool close() {
        Tree done = std::move(m_open.back().tree);
        m_open.pop_back();
        return add(std::move(done));
    }

    std::string_view m_text;
    const char** m_seen;
    std::vector<Level> m_open;
    Tree m_root;
    std::optional<util::Problem> m_problem;
};

std::string quoted(const std::string& text) {
    return json(text).dump(-1, ' ', false, json::error_handler_t::replace);
}

std::string numeral(double value) {
    if (!std::isfinite(value))
        return "null";
    char buffer[32];
    const auto result = std::to_chars(buffer, buffer + sizeof buffer, value);
    return {buffer, result.ptr};
}

/// Everything on one line; stops growing once it is longer than `room` (the result is then of no use).
void writeFlat(const Tree& tree, std::size_t room, std::string& out) {
    if (out.size() > room)
        return;
    if (const bool* truth = tree.boolean()) {
        out += *truth ? "true" : "false";
    } else if (const double* value = tree.number()) {
        out += numeral(*value);
    } else if (const std::string* text = tree.text()) {
        out += quoted(*text);
    } else if (const Tree::List* items = tree.items()) {
        out += '[';
        for (std::size_t i = 0; i < items->size(); ++i) {
            out += i ? ", " : "";
            writeFlat((*items)[i], room, out);
        }
        out += ']';
    } else if (const Tree::Object* members = tree.members()) {
        out += '{';
        for (std::size_t i = 0; i < members->size(); ++i) {
            out += (i ? ", " : "") + quoted((*members)[i].first) + ": ";
            writeFlat((*members)[i].second, room, out);
        }
        out += '}';
    } else {
        out += "null";
    }
}

void write(const Tree& tree, std::size_t indent, std::size_t column, bool inList, std::string& out) {
    const Tree::List* items = tree.items();
    const Tree::Object* members = tree.members();
    const bool mustBeFlat =
        (!items && !members) || (items && items->empty()) || (members && members->empty());
    if (mustBeFlat || items || inList) {
        std::string line;
        const std::size_t room = mustBeFlat ? std::string::npos : kLineWidth - std::min(column, kLineWidth);
        writeFlat(tree, room, line);
        if (line.size() <= room) {
            out += line;
            return;
        }
    }
    const std::string margin(indent + 2, ' ');
    const std::size_t count = items ? items->size() : members->size();
    out += items ? "[\n" : "{\n";
    for (std::size_t i = 0; i < count; ++i) {
        out += margin;
        if (items) {
            write((*items)[i], indent + 2, indent + 2, true, out);
        } else {
            const std::string key = quoted((*members)[i].first) + ": ";
            out += key;
            write((*members)[i].second, indent + 2, indent + 2 + key.size(), false, out);
        }
        out += i + 1 < count ? ",\n" : "\n";
    }
    out += std::string(indent, ' ') + (items ? "]" : "}");
}

} // namespace

util::Result<Tree> fromJson(std::string_view text) {
    if (text.size() > kMostBytes)
        return util::Problem{"", say("larger than 4 MiB; this is no job file")};
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return util::Problem{"", say("the file is empty")};
    if (std::ranges::any_of(text, isOddControl))
        return util::Problem{"", say("this is a binary file, not text")};
    const char* seen = text.data();
    Builder builder(text, &seen);
    const Cursor first(text.data(), &seen), end(text.data() + text.size(), &seen);
    try {
        if (json::sax_parse(first, end, &builder))
            return builder.take();
    } catch (const std::exception& error) {
        return util::Problem{"", say("cannot be read as JSON: %1", {error.what()})};
    }
    return builder.problem().value_or(util::Problem{"", say("cannot be read as JSON")});
}

std::string toJson(const Tree& tree) {
    std::string out;
    write(tree, 0, 0, false, out);
    return out + "\n";
}

} // namespace pw::jobfile
