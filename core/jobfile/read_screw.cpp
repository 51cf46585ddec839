#include "core/jobfile/sections.h"

namespace pw::jobfile {

namespace {

constexpr Word<job::Turns> kTurns[] = {{"nut", job::Turns::Nut}, {"screw", job::Turns::Screw}};
constexpr Word<job::Into> kInto[] = {{"shaft", job::Into::Shaft},
                                     {"bar", job::Into::Bar},
                                     {"plate", job::Into::Plate},
                                     {"nut", job::Into::Nut}};
constexpr Word<job::Lubrication> kLubrications[] = {
    {"dry", job::Lubrication::Dry}, {"oiled", job::Lubrication::Oiled}, {"moly", job::Lubrication::Moly}};
constexpr Word<job::BackKind> kBacks[] = {{"shaft", job::BackKind::Shaft},
                                          {"bar", job::BackKind::Bar},
                                          {"block", job::BackKind::Block},
                                          {"stop bolt", job::BackKind::StopBolt},
                                          {"none", job::BackKind::None}};

} // namespace

void readScrew(FieldReader& figures, job::Screw& screw) {
    figures.thread("thread", screw.thread);
    figures.screwGrade("grade", screw.grade, screw.thread);
    figures.nutGrade("nut_grade", screw.nutGrade, screw.thread);
    figures.choice("turns", screw.turns, kTurns);
    figures.choice("into", screw.into, kInto);
    figures.material("into_material", screw.intoMaterial);
    figures.choice("thread_condition", screw.threadCondition, kThreadConditions);
    figures.quantity("engagement", screw.engagement, kSize);
    figures.quantity("standoff", screw.standoff, kPlace);
    figures.quantity("usable_length", screw.usableLength, kSize);
    figures.quantity("thread_length", screw.threadLength, kSize);
    figures.quantity("free_length", screw.freeLength, kSize);
    figures.quantity("nut_height", screw.nutHeight, kSize);
    figures.quantity("washer_outside", screw.washerOutside, kSize);
    figures.quantity("washer_thickness", screw.washerThickness, kSize);
    figures.quantity("point_diameter", screw.pointDiameter, kSize);
    figures.choice("lubrication", screw.lubrication, kLubrications);
    figures.numberRange("thread_friction", screw.threadFriction, 0.01, 1);
    figures.numberRange("collar_friction", screw.collarFriction, 0.01, 1);
    figures.quantity("wrench", screw.wrench, kSize);
    figures.quantity("hand_pull", screw.handPull, kForce);
    figures.flag("hammering", screw.hammering);
}

void readRam(FieldReader& figures, job::Ram& ram) {
    figures.quantity("capacity", ram.capacity, kForce);
    figures.quantity("area", ram.area, kArea);
    figures.quantity("max_pressure", ram.maxPressure, kPressure);
    figures.thread("rod", ram.rod);
    figures.screwGrade("rod_grade", ram.rodGrade, ram.rod);
    figures.quantity("stroke", ram.stroke, kSize);
}

void readBack(FieldReader& figures, job::Back& back) {
    figures.choice("kind", back.kind, kBacks);
    figures.quantity("span", back.span, kSize);
    figures.quantity("width", back.width, kSize);
    figures.quantity("thickness", back.thickness, kSize);
    figures.material("steel", back.steel);
    figures.thread("thread", back.thread);
    figures.screwGrade("grade", back.grade, back.thread);
    figures.quantity("engagement", back.engagement, kSize);
    figures.quantity("pad", back.pad, kSize);
}

void readLegs(FieldReader& figures, job::Legs& legs) {
    figures.whole("count", legs.count, 1, 50);
    figures.quantity("span", legs.span, kSize);
    figures.quantity("length", legs.length, kSize);
    figures.thread("thread", legs.thread);
    figures.screwGrade("grade", legs.grade, legs.thread);
}

} // namespace pw::jobfile
