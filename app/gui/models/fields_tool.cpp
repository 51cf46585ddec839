#include "app/gui/models/field_words.h"
#include "app/gui/models/job_rows.h"
#include "core/jobfile/read.h"

/// The tool: plate, centre and screw.
namespace pw::gui {

FieldGroup FieldWords::steel() {
    FieldGroup g{"steel", tr("Steel"), {}};
    const auto shapeIs = [](std::initializer_list<const char*> names) {
        return [list = std::vector<std::string>(names.begin(), names.end())](const Tree& t) {
            const std::string shape = textAt(t, "plate.outline.shape");
            return std::find(list.begin(), list.end(), shape) != list.end();
        };
    };
    g.fields.push_back({.path = "plate.thickness",
                        .label = tr("Thickness"),
                        .kind = FieldKind::Length,
                        .how = tr("Measure clear of the burnt edge, in three places. Use the thinnest."),
                        .sketch = Sketch::Thickness,
                        .needed = true});
    g.fields.push_back(
        {.path = "plate.steel",
         .label = tr("Steel"),
         .kind = FieldKind::OpenChoice,
         .how = tr("The grade, if a stamp or a certificate says it. Otherwise leave it at unknown scrap."),
         .sketch = Sketch::CutEdge,
         .assumed = "unknown scrap",
         .choices = steels()});
    g.fields.push_back({.path = "plate.outline.shape",
                        .label = tr("Outline"),
                        .kind = FieldKind::Choice,
                        .part = PlanPart::Rim,
                        .needed = true,
                        .wide = true,
                        .choices = outlines(),
                        .put = [](Tree& t, const Tree& value) {
                            const auto job = jobfile::readJob(t).job;
                            if (const auto* shape = value.text())
                                switchOutline(t, job, *shape, job.preferred);
                        }});
    g.fields.push_back({.path = "plate.outline.diameter",
                        .label = tr("Across"),
                        .kind = FieldKind::Length,
                        .how = tr("The finished disc, over its centre."),
                        .sketch = Sketch::AcrossPlate,
                        .part = PlanPart::Rim,
                        .needed = true,
                        .applies = shapeIs({"disc"})});
    g.fields.push_back({.path = "plate.outline.length",
                        .label = tr("Length"),
                        .kind = FieldKind::Length,
                        .how = tr("From end to end. The bore is in the middle."),
                        .sketch = Sketch::AcrossPlate,
                        .part = PlanPart::RimLength,
                        .needed = true,
                        .applies = shapeIs({"bar", "rectangle"})});
    g.fields.push_back({.path = "plate.outline.width",
                        .label = tr("Width"),
                        .kind = FieldKind::Length,
                        .how = tr("Across, from edge to edge."),
                        .sketch = Sketch::AcrossPlate,
                        .part = PlanPart::RimWidth,
                        .needed = true,
                        .applies = shapeIs({"bar", "rectangle"})});
    g.fields.push_back({.path = "plate.outline.corner",
                        .label = tr("Corner radius"),
                        .kind = FieldKind::Length,
                        .how = tr("Round the corners off; sharp ones cut hands."),
                        .sketch = Sketch::CutEdge,
                        .part = PlanPart::Rim,
                        .assumed = "0 mm",
                        .applies = shapeIs({"rectangle"})});
    g.fields.push_back({.path = "plate.outline.ends",
                        .label = tr("Ends"),
                        .kind = FieldKind::Choice,
                        .part = PlanPart::Rim,
                        .assumed = "square",
                        .choices = {{"square", tr("Square")}, {"round", tr("Round")}},
                        .applies = shapeIs({"bar"})});
    g.fields.push_back(
        {.path = "plate.stacked",
         .label = tr("Plates stacked"),
         .kind = FieldKind::Count,
         .how = tr("Loose plates on top of each other. Two are twice as strong as one, not four times."),
         .sketch = Sketch::Thickness,
         .assumed = "1"});
    g.fields.push_back(
        {.path = "plate.tests.file",
         .label = tr("A file on its edge"),
         .kind = FieldKind::Choice,
         .how = tr("Draw a file over a clean edge. It bites on steel that bends; it skates on steel "
                   "that snaps."),
         .sketch = Sketch::CutEdge,
         .choices = {{"", tr("not tried")}, {"bites", tr("bites")}, {"skates", tr("skates")}}});
    g.fields.push_back(
        {.path = "plate.tests.bend",
         .label = tr("A strip of it, bent"),
         .kind = FieldKind::Choice,
         .how = tr("Saw off a strip and bend it flat in the vice."),
         .sketch = Sketch::CutEdge,
         .choices = {{"", tr("not tried")}, {"bent", tr("bent")}, {"snapped", tr("snapped")}}});
    g.fields.push_back({.path = "plate.tests.cracks",
                        .label = tr("Cracks seen"),
                        .kind = FieldKind::Choice,
                        .how = tr("Look at edges and old holes with a lamp and chalk."),
                        .sketch = Sketch::CutEdge,
                        .choices = {{"", tr("not looked")}, {"none", tr("none")}, {"seen", tr("seen")}}});
    return g;
}

FieldGroup FieldWords::holes() {
    return {"holes", tr("Other holes and room"), {}};
}

FieldGroup FieldWords::centre(const Tree& tree) {
    FieldGroup g{"centre", tr("Centre and screw"), {}};
    const bool pull = isPull(tree);
    const auto pulls = [](const Tree& t) { return isPull(t); };
    g.fields.push_back(
        {.path = "screw.thread",
         .label = tr("Screw thread"),
         .kind = FieldKind::Thread,
         .how = tr("Over the crests, and the pitch with a gauge: M20, 3/4-10 UNC, 1-5 ACME, Tr 24x5."),
         .sketch = Sketch::ThreadPitch,
         .part = PlanPart::Bore});
    g.fields.push_back({.path = "screw.grade",
                        .label = tr("Screw grade"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("Stamped on its head or end. No stamp: take the lowest."),
                        .sketch = Sketch::ThreadPitch,
                        .choices = grades(material::screwGradeNames())});
    g.fields.push_back({.path = "plate.bore",
                        .label = tr("Bore"),
                        .kind = FieldKind::Length,
                        .how = tr("The plate's centre hole: the screw and half a millimetre or more."),
                        .sketch = Sketch::HoleAcross,
                        .part = PlanPart::Bore,
                        .needed = true,
                        .applies = [](const Tree& t) {
                            return textAt(t, "plate.bore_thread").empty() &&
                                   (t.at("plate.bore") || textAt(t, "screw.into") != "plate");
                        }});
    g.fields.push_back({.path = "plate.bore_thread",
                        .label = tr("Bore tapped"),
                        .kind = FieldKind::Thread,
                        .how = tr("When the plate itself holds the screw: the thread in its bore, like M20."),
                        .sketch = Sketch::ThreadPitch,
                        .part = PlanPart::Bore,
                        .needed = textAt(tree, "screw.into") == "plate",
                        .applies = [](const Tree& t) { return !t.at("plate.bore"); }});
    g.fields.push_back({.path = "screw.washer_outside",
                        .label = tr("Washer across"),
                        .kind = FieldKind::Length,
                        .how = tr("Outside of the washer under the nut. It may not cover an access hole."),
                        .sketch = Sketch::Washer,
                        .part = PlanPart::Bearing});
    g.fields.push_back({.path = "screw.washer_thickness",
                        .label = tr("Washer thick"),
                        .kind = FieldKind::Length,
                        .how = tr("The whole stack under the nut. A thin washer does not spread the load."),
                        .sketch = Sketch::Washer,
                        .part = PlanPart::Bearing});
    g.fields.push_back(
        {.path = "centre.bearing_outside",
         .label = tr("Bears out to"),
         .kind = FieldKind::Length,
         .how = tr("Across the ring in which nut and washer really bear, if you know it. Empty: worked "
                   "out from nut and washer."),
         .sketch = Sketch::Washer,
         .part = PlanPart::Bearing});
    g.fields.push_back({.path = "centre.contact",
                        .label = tr("Bearing"),
                        .kind = FieldKind::Choice,
                        .part = PlanPart::Bearing,
                        .assumed = "uniform",
                        .choices = {{"uniform", tr("Even all over")}, {"hard", tr("Hard and flat")}}});
    g.fields.push_back(
        {.path = "screw.lubrication",
         .label = tr("Thread is"),
         .kind = FieldKind::Choice,
         .how = tr("Oil it: a dry thread wastes the wrench and hides the load."),
         .sketch = Sketch::ThreadPitch,
         .choices = {{"dry", tr("dry")}, {"oiled", tr("oiled")}, {"moly", tr("with moly paste")}}});
    g.fields.push_back(
        {.path = "screw.thread_condition",
         .label = tr("Thread looks"),
         .kind = FieldKind::Choice,
         .how = tr("Wire-brush it and look at the flanks. Worn and damaged threads carry less."),
         .sketch = Sketch::ThreadPitch,
         .assumed = "good",
         .choices = conditions()});
    g.fields.push_back({.path = "screw.into",
                        .label = tr("Screws into"),
                        .kind = FieldKind::Choice,
                        .choices = {{"shaft", tr("the shaft")},
                                    {"bar", tr("a bar")},
                                    {"plate", tr("the plate")},
                                    {"nut", tr("a nut")}}});
    g.fields.push_back({.path = "screw.into_material",
                        .label = tr("which is made of"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("The part that holds the thread. A soft one strips first."),
                        .sketch = Sketch::ThreadPitch,
                        .choices = materials()});
    g.fields.push_back(
        {.path = "screw.engagement",
         .label = tr("Thread engaged"),
         .kind = FieldKind::Length,
         .how = tr("How deep the screw really goes in. Count the turns and multiply by the pitch."),
         .sketch = Sketch::ThreadPitch});
    g.fields.push_back({.path = "screw.nut_grade",
                        .label = tr("Nut grade"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("Stamped on a face of the nut."),
                        .sketch = Sketch::Washer,
                        .choices = grades(material::nutGradeNames())});
    g.fields.push_back({.path = "screw.nut_height",
                        .label = tr("Nut height"),
                        .kind = FieldKind::Length,
                        .how = tr("Thread in the nut, without the chamfers."),
                        .sketch = Sketch::Washer});
    g.fields.push_back({.path = "screw.turns",
                        .label = tr("What turns"),
                        .kind = FieldKind::Choice,
                        .choices = {{"nut", tr("the nut")}, {"screw", tr("the screw")}}});
    g.fields.push_back(
        {.path = "screw.standoff",
         .label = tr("Stands off"),
         .kind = FieldKind::Length,
         .how = tr("From the face the screw enters to the faces the plate bears on, assembled. A "
                   "straight edge over the retainers helps."),
         .sketch = Sketch::Standoff});
    g.fields.push_back({.path = "screw.usable_length",
                        .label = tr("Usable thread"),
                        .kind = FieldKind::Length,
                        .how = tr("Thread from that face to the free end of the screw."),
                        .sketch = Sketch::ThreadPitch});
    g.fields.push_back({.path = "screw.thread_length",
                        .label = tr("Thread from its tip"),
                        .kind = FieldKind::Length,
                        .how = tr("From the free end back to the plain shank. Empty: threaded all the way."),
                        .sketch = Sketch::ThreadPitch,
                        .applies = [](const Tree& t) { return !isPull(t); }});
    g.fields.push_back(
        {.path = "screw.free_length",
         .label = tr("Stands free"),
         .kind = FieldKind::Length,
         .how = tr("From the plate to the shaft's end when the pull begins, and what it must still "
                   "come. A long thin screw buckles."),
         .sketch = Sketch::Standoff,
         .applies = pulls});
    g.fields.push_back({.path = "screw.point_diameter",
                        .label = tr("Point across"),
                        .kind = FieldKind::Length,
                        .how = tr("The flat end that pushes on the shaft. Empty: the root of the thread."),
                        .sketch = Sketch::PinAcross,
                        .applies = pulls});
    g.fields.push_back({.path = "screw.wrench",
                        .label = tr("Wrench length"),
                        .kind = FieldKind::Length,
                        .how = tr("From the nut's centre to the middle of your hand."),
                        .sketch = Sketch::Bar});
    g.fields.push_back(
        {.path = "screw.hand_pull",
         .label = tr("Hand pull"),
         .kind = FieldKind::Force,
         .how = pull ? tr("A puller is loaded by whoever leans on it. 400 N is a strong pull with one "
                          "arm (common practice).")
                     : tr("250 N is a firm pull with one arm (common practice)."),
         .sketch = Sketch::Bar});
    g.fields.push_back(
        {.path = "screw.hammering",
         .label = tr("Hammer on it"),
         .kind = FieldKind::Flag,
         .how = tr("A blow on the loaded screw counts half as much again. Never on a ram, a brittle plate "
                   "or a cast flange."),
         .sketch = Sketch::Bar,
         .assumed = "false",
         .choices = {{"false", tr("no")}, {"true", tr("yes")}},
         .applies = pulls});
    return g;
}

} // namespace pw::gui
