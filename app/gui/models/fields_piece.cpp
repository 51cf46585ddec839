#include "app/gui/models/field_words.h"

/// The piece of steel that the plate is to come from. Which pieces there are, the rack's file knows: see
/// piece_choice.h.
namespace pw::gui {

namespace {

/// Both figures of a place belong together: the one that was not typed yet is 0.
void putFigure(Tree& tree, std::size_t axis, const Tree& value) {
    Tree::List place{Tree("0 mm"), Tree("0 mm")};
    if (const Tree* now = tree.at("piece.at"); now && now->items() && now->items()->size() == 2)
        place = *now->items();
    if (value.isNull() && tree.at("piece.at") == nullptr)
        return;
    place[axis] = value.isNull() ? Tree("0 mm") : value;
    tree.set("piece.at", Tree(std::move(place)));
}

} // namespace

FieldGroup FieldWords::piece() {
    FieldGroup g{"piece", tr("Piece of steel"), {}};
    const auto chosen = [](const Tree& t) { return t.at("piece") != nullptr; };
    g.fields.push_back({.path = "rack",
                        .label = tr("Rack file"),
                        .kind = FieldKind::Text,
                        .how = tr("The file with the pieces you have. It lies beside the job unless its "
                                  "whole path is typed."),
                        .wide = true});
    g.fields.push_back({.path = "piece.name",
                        .label = tr("Piece"),
                        .kind = FieldKind::OpenChoice,
                        .how = tr("Picking one takes its thickness, steel and tests over, and puts the plate "
                                  "where it fits."),
                        .wide = true});
    g.fields.push_back(
        {.path = "piece.at[0]",
         .label = tr("Middle at, along"),
         .kind = FieldKind::Length,
         .how = tr("Where the plate's middle lies on the piece, along the piece. A disc, bar or "
                   "rectangle is measured from its own middle."),
         .part = PlanPart::Piece,
         .assumed = "0 mm",
         .applies = chosen,
         .put = [](Tree& t, const Tree& value) { putFigure(t, 0, value); }});
    g.fields.push_back({.path = "piece.at[1]",
                        .label = tr("Middle at, across"),
                        .kind = FieldKind::Length,
                        .how = tr("The same across the piece."),
                        .part = PlanPart::Piece,
                        .assumed = "0 mm",
                        .applies = chosen,
                        .put = [](Tree& t, const Tree& value) { putFigure(t, 1, value); }});
    g.fields.push_back({.path = "piece.turn",
                        .label = tr("Plate turned"),
                        .kind = FieldKind::Angle,
                        .how = tr("How far the plate is turned on the piece, to the left."),
                        .sketch = Sketch::Angle,
                        .part = PlanPart::PieceTurn,
                        .assumed = "0 deg",
                        .applies = chosen});
    return g;
}

} // namespace pw::gui
