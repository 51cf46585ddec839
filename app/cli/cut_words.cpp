#include "app/cli/cut_words.h"

#include "app/cli/bad_input.h"
#include "core/units/quantity.h"

#include <charconv>
#include <CLI/CLI.hpp>
#include <string_view>

namespace pw::cli {

namespace {

/// A number above zero with a unit after it; the unit is left in `rest`.
std::optional<double> leadingNumber(std::string_view text, std::string_view& rest) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc())
        return std::nullopt;
    rest = text.substr(static_cast<std::size_t>(end - text.data()));
    rest.remove_prefix(std::min(rest.find_first_not_of(' '), rest.size()));
    return value;
}

double feedOf(const std::string& text) {
    std::string_view unit;
    const auto value = leadingNumber(text, unit);
    const double mm = unit == "mm/min"                    ? 1
                      : unit == "m/min"                   ? 1000
                      : unit == "in/min" || unit == "ipm" ? units::kMmPerInch
                                                          : 0;
    // From a tenth of the slowest flame to the rapids of a fast table.
    if (!value || mm == 0 || !(*value * mm >= 1) || !(*value * mm <= 50000))
        throw BadInput{"--feed: not a feed: \"" + text +
                       "\". Write it like \"1200 mm/min\" or \"45 in/min\"\n"};
    return *value * mm;
}

double pierceOf(const std::string& text) {
    std::string_view unit;
    const auto value = leadingNumber(text, unit);
    if (!value || (unit != "s" && !unit.empty()) || !(*value >= 0) || !(*value <= 600))
        throw BadInput{"--pierce: not a time: \"" + text + "\". Write it like \"0.8 s\"\n"};
    return *value;
}

} // namespace

void addCutWords(CLI::App& command, CutWords& words) {
    command.add_flag(
        "--path", words.path,
        "the path of the torch, half a kerf beside the edge, with leads, instead of the finished "
        "size (NAME.ngc always is that)");
    command.add_flag("--r12", words.r12, "DXF of release 12, for old tables");
    command.add_option("--feed", words.feed, "feed of the torch from its chart, like \"1200 mm/min\"");
    command.add_option("--pierce", words.pierce, "time to pierce from its chart, like \"0.8 s\"");
}

engine::CutChoices choicesOf(const CutWords& words, bool anyway) {
    engine::CutChoices choices;
    choices.path = words.path;
    choices.r12 = words.r12;
    choices.anyway = anyway;
    if (!words.feed.empty())
        choices.feed = feedOf(words.feed);
    if (!words.pierce.empty())
        choices.pierceSeconds = pierceOf(words.pierce);
    return choices;
}

} // namespace pw::cli
