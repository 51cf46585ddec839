#include "core/loadpath/flange.h"

#include "core/loadpath/factors.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <numbers>

namespace pw::loadpath {

namespace {

using units::number;

constexpr double kBrittleHolds = 4, kBrittleBreaks = 2; // common practice, no published source
constexpr double kShearOfYield = 0.6;                   // AISC 360 J4, from memory
constexpr const char* kBrittleSource =
    PW_SAY("brittle, 4 and 2 on ultimate: common practice, no published source");

/// A brittle part is judged on ultimate by its own limits.
void judgeBrittle(Check& check, double s) {
    check.wanted = kBrittleHolds * s;
    check.grade = *check.margin >= kBrittleHolds * s * (1 - kRounding) ? Grade::Holds
                  : *check.margin >= kBrittleBreaks * (1 - kRounding)  ? Grade::Thin
                                                                       : Grade::Breaks;
}

/// "250 MPa", "225 MPa hot".
std::string strength(Stress stress, const FlangeDemands& demands) {
    return units::show(stress * demands.strengthFactor, demands.system) +
           (demands.strengthFactor < 1 ? " hot" : "");
}

std::string jawsInWords(const FlangeFindings& f, units::System system) {
    if (f.fullRing)
        return say("jaws all round, %1", {units::show(f.perJaw * static_cast<double>(f.jaws), system)});
    return f.oneSlack ? say("%1 jaws, %2 each with one slack (common practice)",
                            {f.jaws, units::show(f.perJaw, system)})
                      : say("%1 jaws, %2 each", {f.jaws, units::show(f.perJaw, system)});
}

std::string join(const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts)
        text += (text.empty() ? "" : "; ") + part;
    return text;
}

void addIfMissing(std::vector<std::string>& missing, bool given, const std::string& what) {
    if (!given)
        missing.push_back(what);
}

void addJaws(std::vector<std::string>& missing, const job::Hub& hub) {
    const job::Jaws jaws = hub.jaws.value_or(job::Jaws{});
    addIfMissing(missing, jaws.count.has_value(), say("hub.jaws.count: count the jaws that grip the flange"));
    addIfMissing(missing, jaws.width.has_value(),
                 say("hub.jaws.width: measure across one jaw, along the flange's rim"));
    addIfMissing(missing, jaws.overlap.has_value(),
                 say("hub.jaws.overlap: measure how far a jaw reaches in behind the rim"));
}

std::optional<std::string> inOneLine(const std::vector<std::string>& missing) {
    if (missing.empty())
        return std::nullopt;
    return say("not given: %1", {join(missing)});
}

} // namespace

Check flangeBendingCheck(const FlangeFindings& f, const material::Material& material,
                         const FlangeDemands& demands) {
    const double worst = material.brittle ? f.principal.mpa() : f.vonMises.mpa();
    const double capacity =
        (material.brittle ? material.ultimate : material.yield).mpa() * demands.strengthFactor;
    Check check = strengthCheck("flange.bending", "flange", say("Flange under the jaws"), Rule::Ductile,
                                worst, capacity, "MPa", demands.s);
    if (material.brittle)
        judgeBrittle(check, demands.s);
    const std::string limit =
        material.brittle ? say("%1 to break (%2)", {strength(material.ultimate, demands), material.name})
                         : say("%1 yield (%2)", {strength(material.yield, demands), material.name});
    check.basis = say(f.atRoot ? PW_SAY("%1: worst stress %2 at the root against %3; wanted %4 x")
                               : PW_SAY("%1: worst stress %2 under a jaw against %3; wanted %4 x"),
                      {jawsInWords(f, demands.system), units::show(Stress::fromMpa(worst), demands.system),
                       limit, number(*check.wanted)});
    if (!f.settled)
        check.basis = say("%1; not settled, within about %2 %", {check.basis, number(f.errorPercent, 2)});
    if (f.collapseFactor)
        check.basis = say(f.collapseReached ? PW_SAY("%1; folds at %2 x the load")
                                            : PW_SAY("%1; carries at least %2 x the load"),
                          {check.basis, number(*f.collapseFactor)});
    if (material.brittle && demands.hammering) {
        check.grade = Grade::Breaks;
        check.basis = say("%1; never hammer on a cast flange", {check.basis});
    }
    check.source = say(
        "%1; %2; %3",
        {f.fullRing ? say("annular plate fixed inside, Roark, 7th ed., Table 11.2")
                    : say("elastic field of the flange clamped at its root, even pressure under each jaw"),
         material.brittle ? say(kBrittleSource) : say("ASME BTH-1 category A, 2.0 on yield"),
         material.source});
    return check;
}

Check jawBearingCheck(Force perJaw, Length width, Length overlap, const material::Material& material,
                      const FlangeDemands& demands) {
    const units::Area area = width * overlap;
    const Stress limit =
        (material.brittle ? material.ultimate : material.yield * kBearingOfYield) * demands.strengthFactor;
    Check check = strengthCheck("jaws.bearing", "flange", say("Pressure under the jaws"), Rule::Ductile,
                                perJaw.newton(), (limit * area).newton(), "N", demands.s);
    if (material.brittle)
        judgeBrittle(check, demands.s);
    const auto show = [&](auto q) { return units::show(q, demands.system); };
    check.basis = say("%1 on a jaw of %2 x %3, against %4 (%5)",
                      {show(perJaw), show(width), show(overlap),
                       (material.brittle ? say("ultimate %1", {strength(material.ultimate, demands)})
                                         : say("1.8 x yield %1", {strength(material.yield, demands)})),
                       material.name});
    check.source =
        (material.brittle ? say(kBrittleSource) : say("AISC 360 J7, bearing 1.8 x yield (from memory)")) +
        "; " + material.source;
    return check;
}

Check flangeShearCheck(Force perJaw, int jaws, Length root, Length thickness, Length width, Length overlap,
                       const material::Material& material, const FlangeDemands& demands) {
    const units::Area sides = thickness * (width + overlap * 2.0);
    const units::Area part = thickness * (root * (std::numbers::pi / jaws));
    const units::Area area = std::min(sides, part);
    const Stress limit =
        (material.brittle ? material.ultimate : material.yield * kShearOfYield) * demands.strengthFactor;
    Check check = strengthCheck("flange.shear", "flange", say("Flange, shear round a jaw"), Rule::Ductile,
                                perJaw.newton(), (limit * area).newton(), "N", demands.s);
    if (material.brittle)
        judgeBrittle(check, demands.s);
    const auto show = [&](auto q) { return units::show(q, demands.system); };
    check.basis = say(sides < part ? PW_SAY("%1 on %2 round a jaw, against %3 (%4)")
                                   : PW_SAY("%1 on %2 of the root, against %3 (%4)"),
                      {show(perJaw), show(area),
                       (material.brittle ? say("ultimate %1", {strength(material.ultimate, demands)})
                                         : say("0.6 x yield %1", {strength(material.yield, demands)})),
                       material.name});
    check.source =
        (material.brittle ? say(kBrittleSource) : say("AISC 360 J4, shear 0.6 x yield (from memory)")) +
        "; " + material.source;
    return check;
}

std::optional<std::string> missingForFlange(const job::Hub& hub) {
    const job::Flange flange = hub.flange.value_or(job::Flange{});
    std::vector<std::string> missing;
    addIfMissing(missing, flange.outside.has_value(),
                 say("hub.flange.outside: measure across the flange's rim"));
    addIfMissing(missing, flange.root.has_value(),
                 say("hub.flange.root: measure across the hub right behind the flange"));
    addIfMissing(missing, flange.thickness.has_value(),
                 say("hub.flange.thickness: measure at the root, where it is loaded"));
    addJaws(missing, hub);
    return inOneLine(missing);
}

std::optional<std::string> missingForJaws(const job::Hub& hub) {
    std::vector<std::string> missing;
    addJaws(missing, hub);
    return inOneLine(missing);
}

} // namespace pw::loadpath
