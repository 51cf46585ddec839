#include "geometry/solid/plate_solid.h"

#include "core/util/require.h"
#include "geometry/exchange/signs.h"
#include "geometry/solid/step_module.h"

#include <cmath>
#include <dlfcn.h>
#include <filesystem>

namespace pw::solid {

namespace {

/// An arc that leaves its chord by less than this is a straight line to any reader (and its centre is too far
/// away to be computed well). mm.
constexpr double kFlatEnough = 1e-7;

std::array<double, 2> pair(shape::Point p) {
    return {p.x, p.y};
}

StepEdge edgeOf(const shape::Side& side) {
    StepEdge edge;
    edge.from = pair(side.from);
    edge.to = pair(side.to);
    const double rise = std::abs(side.bulge) * shape::distance(side.from, side.to) / 2;
    if (rise < kFlatEnough)
        return edge;
    const shape::Circle circle = side.circle();
    edge.kind = StepEdge::Kind::Arc;
    edge.centre = pair(circle.centre);
    edge.radius = circle.radius;
    edge.counterClockwise = side.bulge > 0;
    return edge;
}

std::vector<StepEdge> wireOf(const shape::Loop& loop) {
    if (const auto circle = asCircle(loop)) {
        StepEdge edge;
        edge.kind = StepEdge::Kind::Circle;
        edge.centre = pair(circle->centre);
        edge.radius = circle->radius;
        edge.counterClockwise = signedArea(loop) > 0;
        return {edge};
    }
    std::vector<StepEdge> wire;
    for (std::size_t i = 0; i < loop.size(); ++i)
        wire.push_back(edgeOf(loop.side(i)));
    return wire;
}

/// Text as it stands between quotes in ISO 10303-21: quotes and backslashes doubled, signs outside ASCII by
/// number. A quote that a bracket or comma follows goes by number too: a widespread reader takes it for the
/// end.
std::string spelled(std::string_view utf8) {
    constexpr std::size_t kLongest = 100;
    const std::u32string signs = exchange::cleanSigns(utf8, kLongest);
    std::string text;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        const char32_t sign = signs[i];
        const std::size_t next = signs.find_first_not_of(U' ', i + 1);
        const bool looksLikeTheEnd =
            sign == '\'' && next != std::u32string::npos && (signs[next] == ')' || signs[next] == ',');
        if (sign > 0xFFFF)
            text += "\\X4\\" + exchange::hexadecimal(sign, 8) + "\\X0\\";
        else if (sign >= 0x80 || looksLikeTheEnd)
            text += "\\X2\\" + exchange::hexadecimal(sign, 4) + "\\X0\\";
        else
            text += std::string(sign == '\'' || sign == '\\' ? 2 : 1, static_cast<char>(sign));
    }
    return text;
}

/// Beside the program, in the lib folder of an installation, or, found by the program's run path, where it
/// was built. An installed program has no run path left, so it looks nowhere else than where the system keeps
/// libraries.
void* openModule() {
    namespace fs = std::filesystem;
    std::error_code error;
    const fs::path home = fs::read_symlink("/proc/self/exe", error).parent_path();
    for (const fs::path& file : {home / "pw_step.so", home / PW_STEP_MODULE})
        if (fs::exists(file, error))
            if (void* module = dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL))
                return module;
    return dlopen("pw_step.so", RTLD_NOW | RTLD_LOCAL);
}

WriteStep* writeStep() {
    static WriteStep* const function = [] {
        void* module = openModule(); // stays open to the end: the library does not survive being unloaded
        return module ? reinterpret_cast<WriteStep*>(dlsym(module, kWriteStepName)) : nullptr;
    }();
    return function;
}

std::vector<std::vector<StepEdge>> wiresOf(const shape::Region& region) {
    std::vector<std::vector<StepEdge>> wires{wireOf(region.rim)};
    for (const shape::Hole& hole : region.holes)
        wires.push_back(wireOf(reversed(hole.loop)));
    return wires;
}

std::string nameOr(const std::string& utf8, const char* otherwise) {
    const std::string name = spelled(utf8);
    return name.empty() ? otherwise : name;
}

util::Result<std::string> written(const StepRequest& request) {
    WriteStep* const write = writeStep();
    if (!write)
        return util::Problem{"solid",
                             "The part of the program that writes solids (pw_step.so) is missing or cannot "
                             "be loaded. Install it beside the program."};
    std::string textOrReason;
    if (!write(request, textOrReason))
        return util::Problem{"solid", "The plate could not be made into a solid: " + textOrReason +
                                          ". Look for holes that touch each other or the rim."};
    return textOrReason;
}

} // namespace

util::Result<std::string> toStep(const shape::Region& region, units::Length thickness,
                                 const StepOptions& options) {
    return toStep(std::vector<Part>{{region, thickness, options.product, options.colour}}, options);
}

util::Result<std::string> toStep(const std::vector<Part>& parts, const StepOptions& options) {
    util::require(!parts.empty(), "toStep: no part");
    StepRequest request;
    for (const Part& part : parts) {
        util::require(part.thickness.mm() > 0, "toStep: thickness must be above zero");
        StepPart step{wiresOf(part.region),
                      part.thickness.mm(),
                      nameOr(part.name, "Part"),
                      {part.colour.red, part.colour.green, part.colour.blue},
                      {}};
        for (const Part::Place& place : part.places)
            step.at.push_back({place.at.x, place.at.y, place.z.mm()});
        request.parts.push_back(std::move(step));
    }
    request.inches = options.units == units::System::Inch;
    request.product = nameOr(options.product, "Plate");
    request.description = spelled(options.description);
    return written(request);
}

} // namespace pw::solid
