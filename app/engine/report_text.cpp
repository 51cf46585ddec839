#include "app/engine/report_text.h"

#include "app/engine/report_json.h"
#include "core/units/format.h"

#include <algorithm>

namespace pw::engine {

namespace {

using jobfile::Tree;

/// On one line whatever is in it.
std::string quoted(const std::string& text) {
    static constexpr char kDigits[] = "0123456789abcdef";
    std::string out;
    for (const char c : units::plainBlanks(text)) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x20 && byte != 0x7f && c != '\\') {
            out += c;
            continue;
        }
        out += c == '\\' ? "\\\\" : std::string("\\x") + kDigits[byte >> 4] + kDigits[byte & 15];
    }
    return out;
}

bool dependsOnTheMachine(const std::string& name) {
    return name.ends_with("solve_ms");
}

void write(const std::string& name, const Tree& tree, std::string& out) {
    if (dependsOnTheMachine(name))
        return;
    if (const auto* members = tree.members()) {
        for (const auto& [key, value] : *members)
            write(name.empty() ? key : name + "." + key, value, out);
        return;
    }
    if (const auto* items = tree.items()) {
        out += name + ".count = " + std::to_string(items->size()) + "\n";
        std::vector<std::pair<std::string, const Tree*>> named;
        std::size_t number = 0;
        for (const Tree& item : *items) {
            const Tree* id = item.find("id");
            const std::string place = std::to_string(++number);
            named.emplace_back(id && id->text()
                                   ? *id->text()
                                   : std::string(place.size() < 3 ? 3 - place.size() : 0, '0') + place,
                               &item);
        }
        std::stable_sort(named.begin(), named.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        for (const auto& [key, item] : named)
            write(name + "[" + key + "]", *item, out);
        return;
    }
    out += name + " = ";
    if (const double* number = tree.number())
        out += units::number(*number, 6);
    else if (const bool* is = tree.boolean())
        out += *is ? "yes" : "no";
    else if (const std::string* text = tree.text())
        out += quoted(*text);
    else
        out += "-";
    out += "\n";
}

} // namespace

std::string toText(const Report& report) {
    std::string out;
    write({}, toTree(report), out);
    return out;
}

} // namespace pw::engine
