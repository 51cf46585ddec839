#include "core/loadpath/ram.h"

#include "core/loadpath/pull_load.h"
#include "core/material/grades.h"
#include "core/thread/thread.h"
#include "core/units/format.h"
#include "core/util/say.h"

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

Check capacityCheck(const job::Job& job, Force load) {
    const char* id = "ram.capacity";
    const std::string title = say("Ram");
    const job::Ram& ram = *job.ram;
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    const auto most = ramForce(ram);
    if (!most)
        return incompleteCheck(
            id, "ram", title, CheckKind::Fit,
            say("neither the ram's capacity nor its area and relief pressure are given: read its plate"));
    const Force capacity = ram.capacity.value_or(*most);
    Check check;
    check.id = id;
    check.member = "ram";
    check.title = title;
    check.kind = CheckKind::Fit;
    check.unit = "N";
    check.demand = load.newton();
    check.capacity = capacity.newton();
    check.marginIsRatio = true;
    check.margin = load > Force() ? capacity / load : 1000.0;
    check.wanted = 1;
    // Equal is the usual case: the ram itself decided the load.
    const bool over = *most > capacity * (1 + 1e-9);
    check.grade = over ? Grade::Breaks : *check.margin < 1 - 1e-9 ? Grade::Thin : Grade::Holds;
    if (ram.area && ram.maxPressure)
        check.basis = show(*ram.area) + " x " + units::showPressure(*ram.maxPressure, job.preferred) + " = " +
                      show(*most);
    else
        check.basis = say("capacity %1", {show(*most)});
    if (ram.capacity && ram.area && ram.maxPressure)
        check.basis = say("%1, capacity %2", {check.basis, show(*ram.capacity)});
    if (over)
        check.basis = say("%1: the relief pressure drives the ram past its capacity; set the valve lower",
                          {check.basis});
    else if (check.grade == Grade::Thin)
        check.basis = say("%1 of the %2 designed for: the ram stalls before the tool is at its load",
                          {check.basis, show(load)});
    check.source = say("pressure x area; the ram's own plate");
    return check;
}

std::optional<Check> rodCheck(const job::Job& job, Force load, double s, double strength, MemberChecks& out) {
    const char* id = "ram.rod";
    const std::string title = say("Ram's rod");
    const job::Ram& ram = *job.ram;
    if (ram.rod.empty())
        return incompleteCheck(
            id, "rod", title, CheckKind::Force,
            say("the rod through the ram is not given: its thread, M24 or 1-8 for one, and its grade"));
    const auto thread = thread::parse(ram.rod);
    if (!thread) {
        out.problems.push_back({"ram.rod", thread.problem().message});
        return std::nullopt;
    }
    if (ram.rodGrade.empty())
        out.assumptions.push_back(say("grade of the ram's rod not given: taken as the weakest sold"));
    const auto grade = material::findScrewGrade(ram.rodGrade.empty() ? "unknown" : ram.rodGrade, *thread);
    if (!grade) {
        out.problems.push_back({"ram.rod_grade", grade.problem().message});
        return std::nullopt;
    }
    const units::Area area = thread::tensileStressArea(*thread);
    const Stress yield = grade->yield * strength;
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    Check check =
        strengthCheck(id, "rod", title, Rule::Sudden, load.newton(), (yield * area).newton(), "N", s);
    check.basis = say("%1: %2 against yield %3 x %4 = %5 (%6)",
                      {thread->name, show(load), show(yield), show(area), show(yield * area), grade->name});
    check.source = say("stress area ASME B1.1 / ISO 898-1; %1", {grade->source});
    return check;
}

std::optional<Check> strokeCheck(const job::Job& job) {
    if (!job.ram->stroke || !job.hub || !job.hub->length || job.hub->fit == job::Fit::Taper)
        return std::nullopt; // a taper lets go after a hair's breadth
    const Length stroke = *job.ram->stroke, length = *job.hub->length;
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    Check check;
    check.id = "ram.stroke";
    check.member = "ram";
    check.title = say("Ram's stroke");
    check.kind = CheckKind::Note;
    check.unit = "mm";
    check.grade = Grade::Holds;
    check.demand = length.mm();
    check.capacity = stroke.mm();
    check.basis = stroke >= length
                      ? say("one stroke of %1 draws the hub off its %2 seat", {show(stroke), show(length)})
                      : say("the hub sits on %1, the stroke is %2: let down and pack up in between",
                            {show(length), show(stroke)});
    check.source = say("geometry");
    return check;
}

} // namespace

MemberChecks ramChecks(const job::Job& job, Force load, double s, double strength) {
    MemberChecks out;
    if (!job.ram)
        return out;
    out.checks.push_back(capacityCheck(job, load));
    if (auto rod = rodCheck(job, load, s, strength, out))
        out.checks.push_back(*rod);
    if (auto stroke = strokeCheck(job))
        out.checks.push_back(*stroke);
    return out;
}

} // namespace pw::loadpath
