#include "app/gui/models/field_words.h"

/// The shop: what holds the other end, how it is cut, what margin is wanted.
namespace pw::gui {

FieldGroup FieldWords::back() {
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
                                    {"stop bolt", tr("A stop bolt in the shaft's end")},
                                    {"none", tr("Nothing")}}});
    const auto stop = [](const Tree& t) { return textAt(t, "back.kind") == "stop bolt"; };
    g.fields.push_back({.path = "back.thread",
                        .label = tr("Stop bolt"),
                        .kind = FieldKind::Thread,
                        .how = tr("Its thread, like M16."),
                        .sketch = Sketch::ThreadPitch,
                        .applies = stop});
    g.fields.push_back({.path = "back.grade",
                        .label = tr("Its grade"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("Stamped on its head. No stamp: take the lowest."),
                        .sketch = Sketch::ThreadPitch,
                        .choices = grades(material::screwGradeNames()),
                        .applies = stop});
    g.fields.push_back(
        {.path = "back.engagement",
         .label = tr("Screwed in"),
         .kind = FieldKind::Length,
         .how = tr("How deep it goes into the shaft. Count the turns and multiply by the pitch."),
         .sketch = Sketch::ThreadPitch,
         .applies = stop});
    g.fields.push_back(
        {.path = "back.pad",
         .label = tr("Its head across"),
         .kind = FieldKind::Length,
         .how = tr("Where it seats on the shaft's face. Empty: it does not seat, the thread carries all."),
         .sketch = Sketch::PinAcross,
         .applies = stop});
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

FieldGroup FieldWords::cutting() {
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

FieldGroup FieldWords::wanted() {
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

} // namespace pw::gui
