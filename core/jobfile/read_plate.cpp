#include "core/jobfile/sections.h"

#include "core/util/say.h"

#include <algorithm>

namespace pw::jobfile {

namespace {

constexpr Word<job::HoleShape> kHoleShapes[] = {
    {"round", job::HoleShape::Round}, {"slot", job::HoleShape::Slot}, {"open", job::HoleShape::Open}};
constexpr Word<job::OutlineShape> kOutlines[] = {{"disc", job::OutlineShape::Disc},
                                                 {"bar", job::OutlineShape::Bar},
                                                 {"rectangle", job::OutlineShape::Rectangle},
                                                 {"polygon", job::OutlineShape::Polygon}};
constexpr Word<bool> kBarEnds[] = {{"square", false}, {"round", true}};
constexpr Word<bool> kMade[] = {{"by size", false}, {"drilled", true}};
constexpr Word<job::FileTest> kFileTests[] = {{"bites", job::FileTest::Bites},
                                              {"skates", job::FileTest::Skates}};
constexpr Word<job::BendTest> kBendTests[] = {{"bent", job::BendTest::Bent},
                                              {"snapped", job::BendTest::Snapped}};
constexpr Word<job::CrackTest> kCrackTests[] = {{"none", job::CrackTest::None},
                                                {"seen", job::CrackTest::Seen}};
constexpr Word<job::Contact> kContacts[] = {{"uniform", job::Contact::Uniform}, {"hard", job::Contact::Hard}};

void readTests(FieldReader& figures, job::ShopTests& tests) {
    figures.choice("file", tests.file, kFileTests);
    figures.choice("bend", tests.bend, kBendTests);
    figures.choice("cracks", tests.cracks, kCrackTests);
}

} // namespace

void readHoleForm(FieldReader& figures, job::HoleForm& form) {
    figures.choice("shape", form.shape, kHoleShapes);
    figures.quantity("length", form.length, kSize);
    figures.quantity("width", form.width, kSize);
    figures.quantity("turn", form.turn, kTurn);
    if (form.shape == job::HoleShape::Slot && form.length && form.width && *form.length < *form.width)
        figures.problem(
            "length", say("a slot's length is end to end and no less than its width; are the two swapped?"));
}

bool readHole(FieldReader& figures, job::ExtraHole& hole) {
    const bool placed = figures.need("at", hole.at);
    figures.quantity("diameter", hole.diameter, kSize);
    readHoleForm(figures, hole.form);
    figures.choice("made", hole.drilled, kMade);
    return placed;
}

bool readObstacle(FieldReader& figures, job::Obstacle& obstacle) {
    const bool placed = figures.need("at", obstacle.at);
    const bool sized = figures.need("diameter", obstacle.diameter, kSize);
    figures.text("note", obstacle.note);
    return placed && sized;
}

void readOutline(FieldReader& figures, job::Outline& outline) {
    job::Given<job::OutlineShape> shape;
    figures.choice("shape", shape, kOutlines);
    if (shape)
        outline.shape = *shape;
    else if (!figures.has("shape"))
        figures.problem("shape", say("is missing; one of: disc, bar, rectangle, polygon"));
    figures.quantity("diameter", outline.diameter, kSize);
    figures.quantity("length", outline.length, kSize);
    figures.quantity("width", outline.width, kSize);
    figures.quantity("corner", outline.corner, kSizeOrZero);
    figures.choice("ends", outline.roundEnds, kBarEnds);
    figures.corners("points", outline.points, kMostCorners);
    if (outline.shape == job::OutlineShape::Polygon && !outline.points.empty() && outline.points.size() < 3)
        figures.problem("points",
                        say("a polygon has at least 3 points; %1 stand here", {outline.points.size()}));
    if (outline.corner && outline.length && outline.width &&
        *outline.corner * 2 > std::min(*outline.length, *outline.width))
        figures.problem("corner", say("the radius is more than half the shorter side; make it smaller"));
}

void readPlate(FieldReader& figures, job::Plate& plate) {
    figures.group("outline", [&](FieldReader& inner) {
        job::Outline outline;
        const std::size_t before = inner.problemCount();
        readOutline(inner, outline);
        if (inner.problemCount() == before)
            plate.outline = std::move(outline);
    });
    figures.quantity("thickness", plate.thickness, kSize);
    figures.whole("stacked", plate.stacked, 1, 20);
    figures.quantity("bore", plate.bore, kSizeOrZero);
    figures.thread("bore_thread", plate.boreThread);
    figures.rows("holes", plate.holes, kMostHoles, readHole);
    figures.material("steel", plate.steel);
    figures.part("tests", plate.tests, readTests);
}

void readCentre(FieldReader& figures, job::Centre& centre) {
    figures.quantity("bearing_outside", centre.bearingOutside, kSize);
    figures.quantity("bearing_inside", centre.bearingInside, kSizeOrZero);
    figures.choice("contact", centre.contact, kContacts);
    if (centre.bearingInside && centre.bearingOutside && *centre.bearingInside >= *centre.bearingOutside)
        figures.problem("bearing_inside", say("must be less than \"bearing_outside\"; are the two swapped?"));
}

} // namespace pw::jobfile
