#include "app/gui/models/field_words.h"

/// What only a pull asks: how the hub sits, how the tool grips it, the ram, and heat.
namespace pw::gui {

namespace {

std::function<bool(const Tree&)> fitIs(std::initializer_list<const char*> fits) {
    return [list = std::vector<std::string>(fits.begin(), fits.end())](const Tree& t) {
        std::string fit = textAt(t, "hub.fit");
        if (fit.empty())
            fit = "straight";
        return std::find(list.begin(), list.end(), fit) != list.end();
    };
}

} // namespace

FieldGroup FieldWords::hub(const Tree& tree) {
    FieldGroup g{"hub", tr("How it sits"), {}, isPull(tree)};
    const auto fitted = fitIs({"straight", "taper"});
    g.fields.push_back(
        {.path = "hub.fit",
         .label = tr("It sits on"),
         .kind = FieldKind::Choice,
         .how = tr("Nobody knows how tight nearly every hub is. Leave the figures empty then: wrench or "
                   "ram decides."),
         .sketch = Sketch::PinAcross,
         .assumed = "straight",
         .wide = true,
         .choices = {{"straight", tr("A straight shaft, pressed")},
                     {"taper", tr("A taper")},
                     {"rust only", tr("A loose fit, held by rust")}}});
    g.fields.push_back({.path = "hub.shaft",
                        .label = tr("Shaft across"),
                        .kind = FieldKind::Length,
                        .how = tr("Where the hub sits. On a taper: halfway along it."),
                        .sketch = Sketch::PinAcross});
    g.fields.push_back({.path = "hub.shaft_bore",
                        .label = tr("Bored through"),
                        .kind = FieldKind::Length,
                        .how = tr("The hole through a hollow shaft. A solid one: leave it empty."),
                        .sketch = Sketch::HoleAcross,
                        .assumed = "0 mm"});
    g.fields.push_back({.path = "hub.length",
                        .label = tr("Sits on a length of"),
                        .kind = FieldKind::Length,
                        .how = tr("How much of the shaft is inside the hub."),
                        .sketch = Sketch::Bar,
                        .applies = fitted});
    g.fields.push_back({.path = "hub.outside",
                        .label = tr("Hub across"),
                        .kind = FieldKind::Length,
                        .how = tr("The hub itself, without flange or spokes."),
                        .sketch = Sketch::PinAcross});
    g.fields.push_back(
        {.path = "hub.interference",
         .label = tr("Shaft larger by"),
         .kind = FieldKind::Length,
         .how = tr("How much larger the shaft was than the hole, on the diameter, from a drawing or a like "
                   "part. A range like 0.02-0.05 mm."),
         .sketch = Sketch::PinAcross,
         .applies = fitted});
    g.fields.push_back({.path = "hub.half_angle",
                        .label = tr("Half angle"),
                        .kind = FieldKind::Angle,
                        .how = tr("Between the taper and the axis. 1 in 10 on the diameter is 2.86 degrees."),
                        .sketch = Sketch::Angle,
                        .applies = fitIs({"taper"})});
    g.fields.push_back({.path = "hub.draw",
                        .label = tr("Drawn up by"),
                        .kind = FieldKind::Length,
                        .how = tr("How far the nut drew it on, from hand-tight."),
                        .sketch = Sketch::Standoff,
                        .applies = fitIs({"taper"})});
    g.fields.push_back(
        {.path = "hub.force",
         .label = tr("It takes about"),
         .kind = FieldKind::Force,
         .how = tr("Your own guess, or what came off last time. It goes before every figure of the fit."),
         .sketch = Sketch::SpringOnScale});
    g.fields.push_back({.path = "hub.hub_material",
                        .label = tr("Hub made of"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("Grey, short chips, rings dull: cast iron. Bolts strip out of it first."),
                        .sketch = Sketch::CutEdge,
                        .choices = hubMetals()});
    g.fields.push_back({.path = "hub.shaft_material",
                        .label = tr("Shaft made of"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("The screw pushes on its end. 1045 is common for shafts."),
                        .sketch = Sketch::CutEdge,
                        .choices = materials()});
    g.fields.push_back({.path = "hub.rust",
                        .label = tr("Rust makes it"),
                        .kind = FieldKind::Number,
                        .how = tr("1 clean, 1.5 rusty, 2.5 rusted fast (common practice)."),
                        .sketch = Sketch::CutEdge,
                        .assumed = "1",
                        .applies = fitted});
    g.fields.push_back({.path = "hub.friction",
                        .label = tr("Friction"),
                        .kind = FieldKind::NumberRange,
                        .how = tr("Empty: 0.10 to 0.35, usual for pulling off."),
                        .sketch = Sketch::CutEdge,
                        .assumed = "0.10-0.35",
                        .applies = fitted});
    return g;
}

FieldGroup FieldWords::grip(const Tree& tree) {
    FieldGroup g{"grip", tr("How the tool grips"), {}, isPull(tree)};
    const auto add = [&](Field field) { g.fields.push_back(std::move(field)); };
    add({.path = "hub.bolts.count",
         .label = tr("Bolts into the hub"),
         .kind = FieldKind::Count,
         .how = tr("Bolts that go into tapped holes of the part. None when jaws or legs hold it."),
         .sketch = Sketch::ThreadPitch});
    add({.path = "hub.bolts.thread",
         .label = tr("Their thread"),
         .kind = FieldKind::Thread,
         .how = tr("Try a screw in the hub's holes: M12, 1/2-13."),
         .sketch = Sketch::ThreadPitch});
    add({.path = "hub.bolts.grade",
         .label = tr("Their grade"),
         .kind = FieldKind::OpenChoice,
         .how = tr("Stamped on the heads. No stamp: take the lowest."),
         .sketch = Sketch::ThreadPitch,
         .choices = grades(material::screwGradeNames())});
    add({.path = "hub.bolts.engagement",
         .label = tr("Screwed in"),
         .kind = FieldKind::Length,
         .how = tr("How deep they go. Count the turns and multiply by the pitch."),
         .sketch = Sketch::ThreadPitch});
    add({.path = "hub.bolts.thread_condition",
         .label = tr("The holes' thread"),
         .kind = FieldKind::Choice,
         .how = tr("Chase it with a tap and look. Rusty threads carry less."),
         .sketch = Sketch::ThreadPitch,
         .assumed = "good",
         .choices = conditions()});
    add({.path = "hub.jaws.count",
         .label = tr("Jaws"),
         .kind = FieldKind::Count,
         .how = tr("Jaws that hook behind a flange."),
         .sketch = Sketch::Bar});
    add({.path = "hub.jaws.width",
         .label = tr("Jaw width"),
         .kind = FieldKind::Length,
         .how = tr("Along the rim, where it bears."),
         .sketch = Sketch::Bar});
    add({.path = "hub.jaws.overlap",
         .label = tr("Jaw reaches in"),
         .kind = FieldKind::Length,
         .how = tr("From the flange's rim inward, as far as it bears. The closer to the hub, the better."),
         .sketch = Sketch::Standoff});
    add({.path = "hub.flange.outside",
         .label = tr("Flange across"),
         .kind = FieldKind::Length,
         .how = tr("What the jaws hold on to."),
         .sketch = Sketch::AcrossPlate});
    add({.path = "hub.flange.root",
         .label = tr("Flange root across"),
         .kind = FieldKind::Length,
         .how = tr("Where the flange grows out of the hub, without the rounding."),
         .sketch = Sketch::PinAcross});
    add({.path = "hub.flange.thickness",
         .label = tr("Flange thick"),
         .kind = FieldKind::Length,
         .how = tr("At its root, the thinnest place."),
         .sketch = Sketch::Thickness});
    add({.path = "hub.flange.material",
         .label = tr("Flange made of"),
         .kind = FieldKind::OpenChoice,
         .how = tr("A cast flange is what usually breaks."),
         .sketch = Sketch::CutEdge,
         .choices = hubMetals()});
    add({.path = "legs.count",
         .label = tr("Legs or studs"),
         .kind = FieldKind::Count,
         .how = tr("Rods between a strongback and the part. None when the plate is bolted on."),
         .sketch = Sketch::Bar});
    add({.path = "legs.span",
         .label = tr("Legs apart"),
         .kind = FieldKind::Length,
         .how = tr("From middle to middle."),
         .sketch = Sketch::Bar});
    add({.path = "legs.thread",
         .label = tr("Leg thread"),
         .kind = FieldKind::Thread,
         .how = tr("Over the crests and the pitch: M16, 5/8-11."),
         .sketch = Sketch::ThreadPitch});
    add({.path = "legs.grade",
         .label = tr("Leg grade"),
         .kind = FieldKind::OpenChoice,
         .how = tr("Stamped on the end. Threaded rod from a hardware store is soft."),
         .sketch = Sketch::ThreadPitch,
         .choices = grades(material::screwGradeNames())});
    add({.path = "legs.length",
         .label = tr("Leg length"),
         .kind = FieldKind::Length,
         .how = tr("Between nut and part. Long legs store more."),
         .sketch = Sketch::Bar});
    return g;
}

FieldGroup FieldWords::ram(const Tree& tree) {
    FieldGroup g{"ram", tr("Ram"), {}, isPull(tree)};
    const auto add = [&](Field field) { g.fields.push_back(std::move(field)); };
    add({.path = "ram.capacity",
         .label = tr("Capacity"),
         .kind = FieldKind::Force,
         .how = tr("On the ram's plate. 12 t is 118 kN. No ram: leave all of this empty."),
         .sketch = Sketch::Bar});
    add({.path = "ram.area",
         .label = tr("Piston area"),
         .kind = FieldKind::Area,
         .how = tr("On the ram's plate, of the ring that pushes."),
         .sketch = Sketch::HoleAcross});
    add({.path = "ram.max_pressure",
         .label = tr("Relief valve at"),
         .kind = FieldKind::Stress,
         .how = tr("What the pump's valve lets through: 700 bar, 10,000 psi. Set lower is safer."),
         .sketch = Sketch::Bar});
    add({.path = "ram.rod",
         .label = tr("Rod thread"),
         .kind = FieldKind::Thread,
         .how = tr("The rod through the ram: M24, 1-8."),
         .sketch = Sketch::ThreadPitch});
    add({.path = "ram.rod_grade",
         .label = tr("Rod grade"),
         .kind = FieldKind::OpenChoice,
         .how = tr("Stamped on its end. No stamp: take the lowest."),
         .sketch = Sketch::ThreadPitch,
         .choices = grades(material::screwGradeNames())});
    add({.path = "ram.stroke",
         .label = tr("Stroke"),
         .kind = FieldKind::Length,
         .how = tr("How far it comes out."),
         .sketch = Sketch::Bar});
    return g;
}

FieldGroup FieldWords::heat() {
    FieldGroup g{"heat", tr("Heat"), {}};
    g.fields.push_back({.path = "heat.part",
                        .label = tr("The part is at"),
                        .kind = FieldKind::Temperature,
                        .how = tr("Hub heated to open the fit. Never a pack with its springs in place."),
                        .sketch = Sketch::CutEdge,
                        .assumed = "20 C"});
    g.fields.push_back({.path = "heat.tool",
                        .label = tr("The tool is at"),
                        .kind = FieldKind::Temperature,
                        .how = tr("Keep it under 100 degrees C: hot steel is weak."),
                        .sketch = Sketch::CutEdge,
                        .assumed = "20 C"});
    return g;
}

} // namespace pw::gui
