#include "core/jobfile/sections.h"

#include "core/util/say.h"

namespace pw::jobfile {

namespace {

constexpr Word<job::Fit> kFits[] = {
    {"straight", job::Fit::Straight}, {"taper", job::Fit::Taper}, {"rust only", job::Fit::RustOnly}};

/// More than this is no fit but a hole of the wrong size.
constexpr Limits<units::Length> kInterference{
    units::Length::fromMm(0), units::Length::fromMm(5),
    PW_SAY(
        "from 0 mm to 5 mm, for instance 0.05 mm or 2 thou; a loose fit has none: take 0 for its loose end, "
        "or the fit \"rust only\"")};
constexpr Limits<units::Angle> kHalfAngle{
    units::Angle::fromDegree(0.01), units::Angle::fromDegree(45),
    PW_SAY("from 0.01 deg to 45 deg, for instance 3 deg (one side to the "
           "axis); without taper the fit is \"straight\"")};

void readBolts(FieldReader& figures, job::Bolts& bolts) {
    figures.whole("count", bolts.count, 1, 50);
    figures.thread("thread", bolts.thread);
    figures.screwGrade("grade", bolts.grade, bolts.thread);
    figures.quantity("engagement", bolts.engagement, kSize);
    figures.choice("thread_condition", bolts.threadCondition, kThreadConditions);
}

void readFlange(FieldReader& figures, job::Flange& flange) {
    figures.quantity("outside", flange.outside, kSize);
    figures.quantity("root", flange.root, kSize);
    figures.quantity("thickness", flange.thickness, kSize);
    figures.material("material", flange.material);
    if (flange.root && flange.outside && *flange.root >= *flange.outside)
        figures.problem("root", say("must be less than \"outside\"; are the two swapped?"));
}

void readJaws(FieldReader& figures, job::Jaws& jaws) {
    figures.whole("count", jaws.count, 1, 50);
    figures.quantity("width", jaws.width, kSize);
    figures.quantity("overlap", jaws.overlap, kSize);
}

} // namespace

void readHub(FieldReader& figures, job::Hub& hub) {
    figures.choice("fit", hub.fit, kFits);
    figures.quantity("shaft", hub.shaft, kSize);
    figures.quantity("shaft_bore", hub.shaftBore, kSizeOrZero);
    figures.quantity("length", hub.length, kSize);
    figures.quantity("outside", hub.outside, kSize);
    figures.range("interference", hub.interference, kInterference);
    figures.quantity("half_angle", hub.halfAngle, kHalfAngle);
    figures.quantity("draw", hub.draw, kSizeOrZero);
    figures.material("hub_material", hub.hubMaterial);
    figures.material("shaft_material", hub.shaftMaterial);
    figures.numberRange("friction", hub.friction, 0.01, 1, say("0.15; leave it out for 0.10 to 0.35"));
    figures.number("rust", hub.rust, 1, 10, say("1 clean, 1.5 rusty, 2.5 rusted fast"));
    figures.range("force", hub.force, kForce);
    figures.part("bolts", hub.bolts, readBolts);
    figures.part("flange", hub.flange, readFlange);
    figures.part("jaws", hub.jaws, readJaws);
    // Read as straight, a taper would ask for far too little care.
    if (hub.halfAngle && !figures.has("fit"))
        figures.problem(
            "fit",
            say("missing; a half angle belongs to a taper: say \"taper\", or leave \"half_angle\" out"));
    if (hub.shaftBore && hub.shaft && *hub.shaftBore >= *hub.shaft)
        figures.problem("shaft_bore", say("must be less than \"shaft\"; are the two swapped?"));
    if (hub.shaft && hub.outside && *hub.shaft >= *hub.outside)
        figures.problem("outside", say("the hub must be larger than the shaft in it; are the two swapped?"));
}

} // namespace pw::jobfile
