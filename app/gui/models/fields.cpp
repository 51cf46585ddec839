#include "app/gui/models/fields.h"

#include "core/material/grades.h"
#include "core/material/material.h"

#include <algorithm>
#include <QCoreApplication>

namespace pw::gui {

using jobfile::Tree;

std::string textAt(const Tree& tree, std::string_view path) {
    const Tree* at = tree.at(path);
    const std::string* text = at ? at->text() : nullptr;
    return text ? *text : std::string();
}

bool isPull(const Tree& tree) {
    return textAt(tree, "work") == "pull";
}

LoadSource loadSource(const Tree& tree) {
    return tree.at("load.total") ? LoadSource::Given : LoadSource::Springs;
}

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::Fields)

public:
    using Choices = std::vector<std::pair<QString, QString>>;

    static Choices outlines() {
        return {{"disc", tr("Disc")},
                {"bar", tr("Bar")},
                {"rectangle", tr("Rectangle or square")},
                {"polygon", tr("Polygon, from the file")}};
    }
    /// The usual ones, as far as the tables know them; any other name can be typed.
    static Choices known(std::initializer_list<const char*> usual, const std::vector<std::string>& names) {
        Choices choices;
        for (const char* name : usual)
            if (std::find(names.begin(), names.end(), name) != names.end())
                choices.emplace_back(QString::fromUtf8(name), inWords(name));
        return choices;
    }
    static QString inWords(std::string_view name) {
        if (name == "unknown scrap")
            return tr("Unknown scrap");
        if (name == "cast iron")
            return tr("Cast iron");
        return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    }
    static Choices steels() {
        return known({"unknown scrap", "S235", "S275", "S355", "E295", "A36", "A572-50", "1018", "1045",
                      "4140", "cast iron"},
                     material::names());
    }
    static Choices materials() {
        return known({"unknown scrap", "S235", "S355", "A36", "1018", "1045", "4140", "cast iron"},
                     material::names());
    }
    static Choices grades(const std::vector<std::string>& names) {
        Choices choices;
        for (const auto& name : names)
            choices.emplace_back(QString::fromStdString(name), QString::fromStdString(name));
        return choices;
    }

    static FieldGroup squeezed(const Tree& tree);
    static FieldGroup stations(const Tree& tree);
    static FieldGroup load(const Tree& tree);
    static FieldGroup steel(const Tree& tree);
    static FieldGroup centre();
    static FieldGroup back(const Tree& tree);
    static FieldGroup cutting();
    static FieldGroup wanted();
    static SpringFields spring(const Tree& tree, std::size_t index);
};

FieldGroup Words::squeezed(const Tree& tree) {
    const bool pull = isPull(tree);
    FieldGroup g{"squeezed", pull ? tr("What is pulled") : tr("What is squeezed"), {}};
    g.fields.push_back({.path = "title",
                        .label = tr("Name of this job"),
                        .kind = FieldKind::Text,
                        .how = tr("The name on the sheet and on the cut file."),
                        .wide = true});
    g.fields.push_back(
        {.path = "work",
         .label = tr("Kind of work"),
         .kind = FieldKind::Choice,
         .needed = true,
         .wide = true,
         .choices = {{"compress", tr("Squeeze springs down")}, {"pull", tr("Pull something off")}}});
    if (!pull) {
        g.fields.push_back(
            {.path = "travel.compress_further",
             .label = tr("Squeeze further"),
             .kind = FieldKind::Length,
             .how = tr("How far past the assembled length the springs must go until the keepers are "
                       "free. The keeper's lip plus 1 mm is common."),
             .sketch = Sketch::LooseSpring,
             .assumed = "0 mm"});
        g.fields.push_back(
            {.path = "travel.swell",
             .label = tr("Swollen by rust"),
             .kind = FieldKind::Length,
             .how = tr("How much thicker the pack has grown than when it was new. It takes that much "
                       "of the springs' travel."),
             .sketch = Sketch::OverPins,
             .assumed = "0 mm"});
    }
    g.fields.push_back({.path = "notes",
                        .label = tr("Notes"),
                        .kind = FieldKind::Text,
                        .how = tr("Anything worth keeping with the job."),
                        .wide = true});
    return g;
}

FieldGroup Words::stations(const Tree& tree) {
    FieldGroup g{"stations", tr("Stations"), {}};
    const bool pull = isPull(tree);
    const auto ring = [](const Tree& t) { return !t.at("stations.at"); };
    const auto squeezes = [](const Tree& t) { return !isPull(t); };
    g.fields.push_back(
        {.path = "stations.count",
         .label = tr("How many"),
         .kind = FieldKind::Count,
         .how = pull ? tr("The bolts that go into the part.") : tr("The pins that are squeezed at once."),
         .part = PlanPart::Access,
         .needed = true,
         .applies = ring});
    g.fields.push_back(
        {.path = "stations.circle",
         .label = pull ? tr("Bolt circle") : tr("Pin circle"),
         .kind = FieldKind::Length,
         .how = tr("Measure over two opposite pins, then take off one pin. 0.5 mm wrong still fits."),
         .sketch = Sketch::OverPins,
         .part = PlanPart::Circle,
         .needed = true,
         .applies = ring});
    g.fields.push_back(
        {.path = "stations.access_hole",
         .label = pull ? tr("Bolt hole") : tr("Access hole"),
         .kind = FieldKind::Length,
         .how = pull ? tr("The bolt and about 1 mm more.")
                     : tr("Wide enough for the keepers to come out and a pick to reach in: the keeper and "
                          "3 mm more."),
         .sketch = Sketch::HoleAcross,
         .part = PlanPart::Access,
         .needed = true});
    g.fields.push_back(
        {.path = "stations.keeper",
         .label = tr("Keeper"),
         .kind = FieldKind::Length,
         .how = tr("Across the pair of keepers as they sit on the pin. The widest place counts."),
         .sketch = Sketch::PinAcross,
         .part = PlanPart::Keeper,
         .applies = squeezes});
    g.fields.push_back(
        {.path = "stations.retainer",
         .label = tr("Retainer"),
         .kind = FieldKind::Length,
         .how = tr("Across the flat face that the plate will press on. 0.5 mm wrong still fits."),
         .sketch = Sketch::PinAcross,
         .part = PlanPart::Land,
         .applies = squeezes});
    g.fields.push_back({.path = "stations.pin",
                        .label = tr("Pin"),
                        .kind = FieldKind::Length,
                        .how = tr("Across one pin, clear of the groove, with the vernier."),
                        .sketch = Sketch::PinAcross,
                        .part = PlanPart::Pin,
                        .applies = squeezes});
    g.fields.push_back(
        {.path = "stations.pin_end",
         .label = tr("Pin sticks out"),
         .kind = FieldKind::Length,
         .how = tr("From the retainer's face to the pin's end, assembled. It says how soon the pin "
                   "lets go of the retainer."),
         .sketch = Sketch::Standoff,
         .part = PlanPart::Pin,
         .applies = squeezes});
    g.fields.push_back(
        {.path = "stations.land",
         .label = pull ? tr("Bolt washer") : tr("Land across"),
         .kind = FieldKind::Length,
         .how = pull ? tr("Across the washer under the bolt's head.")
                     : tr("Outside of the ring of plate that bears. Empty: the whole retainer bears."),
         .sketch = Sketch::Washer,
         .part = PlanPart::Land});
    g.fields.push_back({.path = "stations.start",
                        .label = tr("First one at"),
                        .kind = FieldKind::Angle,
                        .how = tr("The angle of the first station, from three o'clock, turning left."),
                        .sketch = Sketch::Angle,
                        .part = PlanPart::Start,
                        .assumed = "0 deg",
                        .applies = ring});
    g.fields.push_back(
        {.path = "stations.hole.shape",
         .label = tr("Hole shape"),
         .kind = FieldKind::Choice,
         .part = PlanPart::Access,
         .assumed = "round",
         .choices = {{"round", tr("Round")}, {"slot", tr("Slot")}, {"open", tr("Open to the rim")}}});
    const auto shaped = [](const Tree& t) {
        const std::string shape = textAt(t, "stations.hole.shape");
        return shape == "slot" || shape == "open";
    };
    const auto slot = [](const Tree& t) { return textAt(t, "stations.hole.shape") == "slot"; };
    g.fields.push_back({.path = "stations.hole.length",
                        .label = tr("Slot length"),
                        .kind = FieldKind::Length,
                        .how = tr("From end to end."),
                        .sketch = Sketch::HoleAcross,
                        .part = PlanPart::Access,
                        .applies = slot});
    g.fields.push_back({.path = "stations.hole.width",
                        .label = tr("Slot width"),
                        .kind = FieldKind::Length,
                        .how = tr("Across the slot."),
                        .sketch = Sketch::HoleAcross,
                        .part = PlanPart::Access,
                        .applies = shaped});
    g.fields.push_back({.path = "stations.hole.turn",
                        .label = tr("Slot turned"),
                        .kind = FieldKind::Angle,
                        .how = tr("From the ray that runs from the bore through the station."),
                        .sketch = Sketch::Angle,
                        .part = PlanPart::Access,
                        .assumed = "0 deg",
                        .applies = slot});
    return g;
}

FieldGroup Words::load(const Tree& tree) {
    FieldGroup g{"load", tr("Load"), {}};
    const bool pull = isPull(tree);
    g.fields.push_back(
        {.path = "load.total",
         .label = tr("Total load"),
         .kind = FieldKind::Force,
         .how =
             pull ? tr("What all the bolts together must pull. A range is taken at its high end.")
                  : tr("What all the stations together push back with, squeezed. A range like 6.8-7.5 kN is "
                       "taken at its high end."),
         .sketch = Sketch::SpringOnScale,
         .needed = true,
         .wide = true});
    return g;
}

FieldGroup Words::steel(const Tree&) {
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
                        .choices = outlines()});
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

FieldGroup Words::centre() {
    FieldGroup g{"centre", tr("Centre and screw"), {}};
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
                        .applies = [](const Tree& t) { return textAt(t, "plate.bore_thread").empty(); }});
    g.fields.push_back({.path = "plate.bore_thread",
                        .label = tr("Bore tapped"),
                        .kind = FieldKind::Thread,
                        .how = tr("When the plate itself holds the screw: the thread in its bore, like M20."),
                        .sketch = Sketch::ThreadPitch,
                        .part = PlanPart::Bore,
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
         .choices = {{"good", tr("good")},
                     {"worn", tr("worn")},
                     {"rusty", tr("rusty")},
                     {"damaged", tr("damaged")}}});
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
    g.fields.push_back({.path = "screw.wrench",
                        .label = tr("Wrench length"),
                        .kind = FieldKind::Length,
                        .how = tr("From the nut's centre to the middle of your hand."),
                        .sketch = Sketch::Bar});
    g.fields.push_back({.path = "screw.hand_pull",
                        .label = tr("Hand pull"),
                        .kind = FieldKind::Force,
                        .how = tr("250 N is a firm pull with one arm (common practice)."),
                        .sketch = Sketch::Bar});
    return g;
}

FieldGroup Words::back(const Tree&) {
    FieldGroup g{"back", tr("Pushes against"), {}};
    const auto bar = [](const Tree& t) {
        const std::string kind = textAt(t, "back.kind");
        return kind == "bar" || kind == "block";
    };
    g.fields.push_back({.path = "back.kind",
                        .label = tr("What holds the other end"),
                        .kind = FieldKind::Choice,
                        .assumed = "shaft",
                        .wide = true,
                        .choices = {{"shaft", tr("The shaft itself")},
                                    {"bar", tr("A bar across the back")},
                                    {"block", tr("A block")},
                                    {"none", tr("Nothing")}}});
    g.fields.push_back({.path = "back.span",
                        .label = tr("Apart"),
                        .kind = FieldKind::Length,
                        .how = tr("Between the two places the bar rests on."),
                        .sketch = Sketch::Bar,
                        .applies = bar});
    g.fields.push_back({.path = "back.width",
                        .label = tr("Bar width"),
                        .kind = FieldKind::Length,
                        .how = tr("Across the bar, as it lies."),
                        .sketch = Sketch::Bar,
                        .applies = bar});
    g.fields.push_back({.path = "back.thickness",
                        .label = tr("Bar thickness"),
                        .kind = FieldKind::Length,
                        .how = tr("In the direction of the pull."),
                        .sketch = Sketch::Bar,
                        .applies = bar});
    g.fields.push_back({.path = "back.steel",
                        .label = tr("Bar steel"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("The grade, if you know it."),
                        .sketch = Sketch::Bar,
                        .choices = steels(),
                        .applies = bar});
    return g;
}

FieldGroup Words::cutting() {
    FieldGroup g{"cutting", tr("Cutting"), {}};
    g.fields.push_back({.path = "cutting.process",
                        .label = tr("Cut with"),
                        .kind = FieldKind::Choice,
                        .wide = true,
                        .choices = {{"plasma table", tr("Plasma table")},
                                    {"torch table", tr("Torch table")},
                                    {"hand torch", tr("Hand torch")},
                                    {"saw and drill", tr("Saw and drill")},
                                    {"milled", tr("Mill")}}});
    g.fields.push_back({.path = "cutting.kerf",
                        .label = tr("Kerf"),
                        .kind = FieldKind::Length,
                        .how = tr("Width of the cut. Cut a slit in scrap and measure it with feelers."),
                        .sketch = Sketch::CutEdge});
    g.fields.push_back(
        {.path = "cutting.layout_error",
         .label = tr("Holes off by"),
         .kind = FieldKind::Length,
         .how = tr("How far a hole's centre may be from where it was meant. A table 0.5 mm, by hand "
                   "1 mm or more."),
         .sketch = Sketch::HoleAcross});
    g.fields.push_back({.path = "cutting.growth",
                        .label = tr("Holes grow by"),
                        .kind = FieldKind::Length,
                        .how = tr("How much larger than drawn a hole comes out, on the radius."),
                        .sketch = Sketch::HoleAcross});
    return g;
}

FieldGroup Words::wanted() {
    FieldGroup g{"wanted", tr("Margin wanted"), {}};
    g.fields.push_back(
        {.path = "wanted.margin",
         .label = tr("Margin"),
         .kind = FieldKind::Number,
         .how = tr("2 is right for sound steel and known springs. Take more when you had to guess."),
         .assumed = "2"});
    g.fields.push_back(
        {.path = "wanted.set_limit",
         .label = tr("Set at most"),
         .kind = FieldKind::Length,
         .how = tr("What may stay bent when the load is off. 0.02 mm is what a dial can just see."),
         .sketch = Sketch::AcrossPlate});
    g.fields.push_back({.path = "wanted.stamp",
                        .label = tr("Stamp it with"),
                        .kind = FieldKind::Force,
                        .how = tr("A round load to mark on the tool. Empty: the design load, rounded up."),
                        .sketch = Sketch::AcrossPlate});
    return g;
}

SpringFields Words::spring(const Tree& tree, std::size_t index) {
    const std::string at = "springs[" + std::to_string(index) + "].";
    SpringFields f;
    f.main.push_back({.path = at + "name", .label = tr("Name"), .kind = FieldKind::Text});
    f.main.push_back({.path = at + "per_station",
                      .label = tr("At each station"),
                      .kind = FieldKind::Count,
                      .how = tr("How many springs like this stand at one pin."),
                      .assumed = "1"});
    f.main.push_back({.path = at + "assembled_length",
                      .label = tr("Assembled length"),
                      .kind = FieldKind::Length,
                      .how = tr("Between its two seats, as it is built in."),
                      .sketch = Sketch::SolidSpring});
    f.main.push_back({.path = at + "free_length",
                      .label = tr("Free length"),
                      .kind = FieldKind::Length,
                      .how = tr("Stand one loose spring up and measure it. 1 mm wrong still serves."),
                      .sketch = Sketch::LooseSpring});
    const Tree* loads = tree.at(at + "loads");
    const std::size_t count = loads && loads->items() ? loads->items()->size() : 0;
    for (std::size_t i = 0; i < count; ++i) {
        const std::string row = at + "loads[" + std::to_string(i) + "].";
        f.readings.push_back({{.path = row + "length",
                               .label = tr("At length"),
                               .kind = FieldKind::Length,
                               .how = tr("The spring's length when that force was read."),
                               .sketch = Sketch::SpringOnScale,
                               .needed = true},
                              {.path = row + "force",
                               .label = tr("it pushes"),
                               .kind = FieldKind::Force,
                               .how = tr("From the manual, a range like 650-725 N, or read off a scale."),
                               .sketch = Sketch::SpringOnScale,
                               .needed = true}});
    }
    f.more.push_back({.path = at + "rate",
                      .label = tr("Rises by"),
                      .kind = FieldKind::Rate,
                      .how = tr("Force for each millimetre or inch. Two readings give it as well."),
                      .sketch = Sketch::SpringOnScale});
    f.more.push_back(
        {.path = at + "solid_length",
         .label = tr("Squeezed solid"),
         .kind = FieldKind::Length,
         .how = tr("Squeeze it in the vice until the coils touch, slowly, and measure. Empty: worked out "
                   "from the wire."),
         .sketch = Sketch::SolidSpring});
    f.more.push_back({.path = at + "wire",
                      .label = tr("Wire"),
                      .kind = FieldKind::Length,
                      .how = tr("Across the wire, where it is not worn. 0.1 mm matters here."),
                      .sketch = Sketch::Wire});
    f.more.push_back({.path = at + "coil_outside",
                      .label = tr("Coil outside"),
                      .kind = FieldKind::Length,
                      .how = tr("Over the coil, in the middle of the spring."),
                      .sketch = Sketch::Wire});
    f.more.push_back({.path = at + "active_coils",
                      .label = tr("Coils that move"),
                      .kind = FieldKind::Number,
                      .how = tr("All turns less the ones that lie closed at the ends."),
                      .sketch = Sketch::LooseSpring});
    f.more.push_back({.path = at + "total_coils",
                      .label = tr("Coils in all"),
                      .kind = FieldKind::Number,
                      .how = tr("Count the turns from tip to tip."),
                      .sketch = Sketch::LooseSpring});
    f.more.push_back({.path = at + "ends",
                      .label = tr("Ends"),
                      .kind = FieldKind::Choice,
                      .how = tr("Do the end coils lie closed, and are they ground flat?"),
                      .sketch = Sketch::LooseSpring,
                      .wide = true,
                      .choices = {{"", tr("not said")},
                                  {"closed ground", tr("closed, ground flat")},
                                  {"closed", tr("closed")},
                                  {"plain ground", tr("open, ground flat")},
                                  {"plain", tr("open")}}});
    return f;
}

} // namespace

std::vector<FieldGroup> fieldGroups(const Tree& tree) {
    return {Words::squeezed(tree), Words::stations(tree), Words::load(tree), Words::steel(tree),
            Words::centre(),       Words::back(tree),     Words::cutting(),  Words::wanted()};
}

SpringFields springFields(const Tree& tree, std::size_t index) {
    return Words::spring(tree, index);
}

std::string groupOf(const Tree& tree, const std::string& path) {
    if (path.starts_with("springs") || path.starts_with("load"))
        return "load";
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields)
            if (path.starts_with(field.path) || field.path.starts_with(path))
                return group.id;
    if (path.starts_with("stations"))
        return "stations";
    if (path.starts_with("screw") || path.starts_with("centre"))
        return "centre";
    if (path.starts_with("plate"))
        return "steel";
    return {};
}

} // namespace pw::gui
