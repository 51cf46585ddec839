#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/thread/thread.h"
#include "tests/fuzz/fuzz.h"

#include <cmath>

/// Threads, grades of screws and nuts, steels by name. First byte: which of them.

namespace {

using namespace pw;

void screwThread(std::string_view text) {
    const auto parsed = thread::parse(text);
    if (!parsed) {
        PW_HOLDS(fuzz::isFitToShow(parsed.problem().message), parsed.problem().message);
        return;
    }
    const thread::Thread& t = *parsed;
    const auto again = thread::parse(t.name);
    PW_HOLDS(again, t.name);
    PW_HOLDS(*again == t, t.name + " became " + again->name);
    PW_HOLDS(t.diameter.mm() > 0 && t.pitch.mm() > 0 && t.starts >= 1, t.name);
    // From the root out to the crest: each is a diameter, and none is larger than the next.
    const double root = thread::rootDiameter(t).mm(), middle = thread::pitchDiameter(t).mm();
    PW_HOLDS(root > 0 && root < middle && middle < t.diameter.mm(), t.name);
    PW_HOLDS(thread::minorDiameter(t).mm() > 0, t.name);
    PW_HOLDS(thread::rootArea(t).base() > 0 && thread::tensileStressArea(t).base() > 0, t.name);
    const double lead = thread::leadAngle(t).radian();
    PW_HOLDS(lead > 0 && lead < 1.5708, t.name);
    const double drill = thread::tappingDrill(t).mm();
    PW_HOLDS(drill > 0 && drill < t.diameter.mm(), t.name);
    for (const double engagement : {0.0, 1.0, 50.0}) {
        const auto length = units::Length::fromMm(engagement);
        PW_HOLDS(thread::screwShearArea(t, length).base() >= 0 && thread::nutShearArea(t, length).base() >= 0,
                 t.name);
    }
    (void)thread::standardHexagon(t);
    (void)thread::standardWasher(t);
}

void grades(std::string_view text) {
    static const thread::Thread kThreads[] = {*thread::parse("M20"), *thread::parse("5/8-11"),
                                              *thread::parse("Tr 24x5"), *thread::parse("M100x6")};
    for (const thread::Thread& on : kThreads) {
        if (const auto grade = material::findScrewGrade(text, on))
            PW_HOLDS(grade->proof.mpa() > 0 && grade->yield.mpa() > 0 && grade->ultimate >= grade->yield,
                     grade->name);
        else
            PW_HOLDS(fuzz::isFitToShow(grade.problem().message), grade.problem().message);
        if (const auto grade = material::findNutGrade(text, on))
            PW_HOLDS(grade->proof.mpa() > 0, grade->name);
        else
            PW_HOLDS(fuzz::isFitToShow(grade.problem().message), grade.problem().message);
    }
}

void steel(std::string_view text) {
    for (const double thickness : {3.0, 12.0, 400.0}) {
        const auto found = material::find(text, units::Length::fromMm(thickness));
        if (found)
            PW_HOLDS(found->yield.mpa() > 0 && found->ultimate >= found->yield && found->E.mpa() > 0,
                     found->name);
        else
            PW_HOLDS(fuzz::isFitToShow(found.problem().message), found.problem().message);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 1)
        return 0;
    const std::string_view text = fuzz::textOf(data + 1, size - 1);
    switch (data[0] % 3) {
    case 0:
        screwThread(text);
        break;
    case 1:
        grades(text);
        break;
    default:
        steel(text);
    }
    return 0;
}
