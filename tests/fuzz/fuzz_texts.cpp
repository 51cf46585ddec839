#include "geometry/exchange/cut_path.h"
#include "geometry/exchange/dxf.h"
#include "geometry/exchange/rs274.h"
#include "geometry/exchange/svg.h"
#include "tests/fuzz/fuzz.h"

#include <fuzzer/FuzzedDataProvider.h>
#include <vector>

/// Titles, materials, warnings and notes from anywhere in drawings and table programs: whatever they say, the
/// lines that are cut stay the same and no text ends before its end.

namespace {

using namespace pw;

shape::Region plate() {
    shape::Region region;
    region.rim = shape::circleLoop({0, 0}, 60);
    region.holes.push_back({shape::circleLoop({0, 0}, 10), shape::Part::Bore, 0});
    region.holes.push_back({shape::slotLoop({35, 0}, 24, 12, 0.5), shape::Part::Access, 0});
    region.holes.push_back({shape::circleLoop({-35, 0}, 2), shape::Part::Extra, 0});
    return region;
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t from = 0;
    for (std::size_t to = text.find('\n'); to != std::string::npos;
         from = to + 1, to = text.find('\n', from)) {
        lines.push_back(text.substr(from, to - from));
        if (!lines.back().empty() && lines.back().back() == '\r')
            lines.back().pop_back();
    }
    PW_HOLDS(from == text.size(), "the last line does not end");
    return lines;
}

bool isPrintable(const std::string& line) {
    for (const char c : line)
        if (c < 0x20 || c > 0x7e)
            return false;
    return true;
}

/// Pairs of a code and a value. The names of entities and sections, in order, are returned: no title may add
/// to what is cut.
std::string skeletonOf(const std::string& dxf) {
    const std::vector<std::string> lines = linesOf(dxf);
    PW_HOLDS(lines.size() % 2 == 0, "a code without its value");
    std::string names;
    for (std::size_t i = 0; i < lines.size(); i += 2) {
        PW_HOLDS(isPrintable(lines[i]) && isPrintable(lines[i + 1]), lines[i + 1]);
        char* end = nullptr;
        const long code = std::strtol(lines[i].c_str(), &end, 10);
        PW_HOLDS(end != lines[i].c_str() && *end == '\0' && code >= 0 && code < 1072, lines[i]);
        if (code == 0) {
            PW_HOLDS((lines[i + 1] == "EOF") == (i + 2 == lines.size()), "EOF at line " + std::to_string(i));
            if (lines[i + 1] != "TEXT" && lines[i + 1] != "MTEXT")
                names += lines[i + 1] + " ";
        }
        PW_HOLDS(lines[i + 1].size() < 2050, "a value longer than the format has");
    }
    return names;
}

/// Well-formed as far as text can spoil it: tags nest, no loose bracket, every & begins an entity.
std::string tagsOf(const std::string& svg) {
    std::vector<std::string> open;
    std::string names;
    for (std::size_t i = 0; i < svg.size(); ++i) {
        const unsigned char c = static_cast<unsigned char>(svg[i]);
        PW_HOLDS(c >= 0x20 || c == '\n' || c == '\t' || c == '\r', "a control character");
        if (c == '>')
            fuzz::broken("no loose >", svg.substr(i > 30 ? i - 30 : 0, 60), __FILE__, __LINE__);
        if (c == '&') {
            const std::size_t end = svg.find(';', i);
            PW_HOLDS(end != std::string::npos && end - i < 9, svg.substr(i, 20));
        }
        if (c != '<')
            continue;
        std::size_t to = i + 1;
        char quote = 0;
        for (; to < svg.size() && (quote || svg[to] != '>'); ++to) {
            PW_HOLDS(svg[to] != '<', "a tag within a tag");
            if (quote ? svg[to] == quote : svg[to] == '"' || svg[to] == '\'')
                quote = quote ? 0 : svg[to];
        }
        PW_HOLDS(to < svg.size(), "a tag without an end");
        const std::string tag = svg.substr(i + 1, to - i - 1);
        const std::string name = tag.substr(0, tag.find_first_of(" \n/", 1));
        if (tag[0] == '?' || tag[0] == '!') {
            // declaration or comment
        } else if (tag[0] == '/') {
            PW_HOLDS(!open.empty() && open.back() == tag.substr(1), tag);
            open.pop_back();
        } else {
            if (name != "text" && name != "tspan" && name != "title" && name != "desc")
                names += name + " ";
            if (tag.back() != '/')
                open.push_back(name);
        }
        i = to;
    }
    PW_HOLDS(open.empty(), "a tag stays open");
    return names;
}

/// What the control acts on: everything outside the comments.
std::string commandsOf(const std::string& program) {
    std::string commands;
    for (const std::string& line : linesOf(program)) {
        PW_HOLDS(isPrintable(line) || line.empty(), line);
        PW_HOLDS(line.size() <= 256, "longer than the report lets a line be: " + line);
        bool inComment = false;
        for (const char c : line) {
            if (c == '(')
                PW_HOLDS(!inComment, line);
            if (c == ')')
                PW_HOLDS(inComment, line);
            if (c == '(' || c == ')')
                inComment = c == '(';
            else if (!inComment) {
                PW_HOLDS(c != ';' && c != '%', line);
                commands += c;
            }
        }
        PW_HOLDS(!inComment, line);
        if (line.find_first_not_of(" ") != std::string::npos && line.front() != '(')
            commands += '\n';
    }
    return commands;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace exchange;
    FuzzedDataProvider bytes(data, size);
    const auto system = bytes.ConsumeBool() ? units::System::Inch : units::System::Metric;
    const auto version = bytes.ConsumeBool() ? DxfVersion::R12 : DxfVersion::R2000;
    const bool warn = bytes.ConsumeBool();
    const std::string title = bytes.ConsumeRandomLengthString(400),
                      thread = bytes.ConsumeRandomLengthString(60),
                      material = bytes.ConsumeRandomLengthString(200);
    const std::string warning = warn ? bytes.ConsumeRemainingBytesAsString() : "";

    CutSettings settings{.thickness = units::Length::fromMm(10), .kerf = units::Length::fromMm(1.5)};
    const CutSettings calm = settings;
    settings.tappedBore = TappedBore{thread, units::Length::fromMm(17.5)};
    CutSettings calmTapped = calm;
    calmTapped.tappedBore = TappedBore{"M20", units::Length::fromMm(17.5)};
    const CutPlan plan = makeCutPlan(plate(), settings), calmPlan = makeCutPlan(plate(), calmTapped);
    const std::string calmWarning = warning.empty() ? "" : "not to be used";

    PW_HOLDS(skeletonOf(toDxf(plan, {version, system, title, warning})) ==
                 skeletonOf(toDxf(calmPlan, {version, system, "plate", calmWarning})),
             title);
    const SvgOptions svg{system, title, warning};
    PW_HOLDS(tagsOf(toSvg(plan, svg)) == tagsOf(toSvg(calmPlan, {system, "plate", calmWarning})), title);

    static const CutRates kRates = usualRates(settings.process, settings.thickness);
    const auto path = makeCutPath({plate()}, settings, kRates);
    if (!path)
        return 0;
    Rs274Options options{.units = system, .title = title, .material = material, .warning = warning};
    Rs274Options calmOptions{.units = system, .title = "plate", .material = "steel", .warning = calmWarning};
    const auto program = toRs274(*path, options), calmProgram = toRs274(*path, calmOptions);
    PW_HOLDS(program.ok() == calmProgram.ok(), title);
    if (program)
        PW_HOLDS(commandsOf(*program) == commandsOf(*calmProgram), title);
    return 0;
}
