#include "app/gui/models/field_words.h"
#include "app/gui/models/job_rows.h"

/// The part: what is squeezed or pulled, its stations, its load.
namespace pw::gui {

FieldGroup FieldWords::squeezed(const Tree& tree) {
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

FieldGroup FieldWords::stations(const Tree& tree) {
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
         .applies = ring,
         .put = [](Tree& t, const Tree& value) {
             if (value.isNull())
                 t.erase("stations.count");
             else
                 t.set("stations.count", value);
             // One entry for each station, or the lists would not be read any more.
             if (const auto* count = value.number(); count && *count >= 1 && *count <= 200)
                 resizeStationLists(t, static_cast<std::size_t>(*count));
         }});
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

FieldGroup FieldWords::load(const Tree& tree) {
    FieldGroup g{"load", tr("Load"), {}};
    const bool pull = isPull(tree);
    g.fields.push_back(
        {.path = "load.total",
         .label = pull ? tr("Known pull") : tr("Total load"),
         .kind = FieldKind::Force,
         .how =
             pull ? tr("Only if somebody measured it. Leave it empty otherwise: what the fit asks, or what "
                       "wrench or "
                       "ram can make, is worked out.")
                  : tr("What all the stations together push back with, squeezed. A range like 6.8-7.5 kN is "
                       "taken at its high end."),
         .sketch = Sketch::SpringOnScale,
         .needed = !pull,
         .wide = true});
    return g;
}

SpringFields FieldWords::spring(const Tree& tree, std::size_t index) {
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

} // namespace pw::gui
