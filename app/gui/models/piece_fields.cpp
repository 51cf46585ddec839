#include "app/gui/models/piece_fields.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/field_words.h"
#include "app/gui/models/job_rows.h"
#include "app/gui/models/piece_tree.h"

#include <cmath>
#include <QCoreApplication>

namespace pw::gui {

namespace {

class Piece {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PieceFields)

public:
    Piece(const Tree& tree, std::string at, units::System system)
        : m_tree(tree), m_at(std::move(at)), m_system(system), m_shape(textAt(tree, m_at + ".outline.shape")),
          m_zero(zeroOf(tree, m_at)) {}

    PieceSection what() const {
        PieceSection s{tr("What it is"), {}};
        s.fields.push_back({.path = m_at + ".name",
                            .label = tr("Name"),
                            .kind = FieldKind::Text,
                            .how = tr("What you call it: where it came from, or what is painted on it."),
                            .needed = true,
                            .wide = true});
        s.fields.push_back({.path = m_at + ".where",
                            .label = tr("Where it lies"),
                            .kind = FieldKind::Text,
                            .how = tr("So that it is found again."),
                            .wide = true});
        s.fields.push_back({.path = m_at + ".count",
                            .label = tr("How many"),
                            .kind = FieldKind::Count,
                            .how = tr("Pieces that are alike."),
                            .assumed = QStringLiteral("1")});
        s.fields.push_back({.path = m_at + ".owned",
                            .label = tr("Whose"),
                            .kind = FieldKind::Flag,
                            .how = tr("A size to buy stands in the list after what you have."),
                            .assumed = QStringLiteral("true"),
                            .choices = {{"true", tr("mine")}, {"false", tr("to buy")}}});
        s.fields.push_back({.path = m_at + ".note",
                            .label = tr("Note"),
                            .kind = FieldKind::Text,
                            .how = tr("What else is to be known of it."),
                            .wide = true});
        return s;
    }

    PieceSection steel() const {
        PieceSection s{tr("Thickness and steel"), {}};
        s.fields.push_back({.path = m_at + ".thickness",
                            .label = tr("Thickness"),
                            .kind = FieldKind::Length,
                            .how = tr("Clear of the burnt edge, in three places. If they differ, type the "
                                      "thinnest and the thickest: 8.5-9.6 mm."),
                            .sketch = Sketch::Thickness,
                            .needed = true});
        s.fields.push_back(
            {.path = m_at + ".pitting",
             .label = tr("Deepest pit"),
             .kind = FieldKind::Length,
             .how = tr("Scrape the rust out and feel with the depth gauge. It is taken off the "
                       "thinnest place."),
             .sketch = Sketch::Thickness});
        s.fields.push_back(
            {.path = m_at + ".steel",
             .label = tr("Steel"),
             .kind = FieldKind::OpenChoice,
             .how =
                 tr("The grade, if a stamp or a certificate says it. Otherwise leave it at unknown scrap."),
             .sketch = Sketch::CutEdge,
             .assumed = QStringLiteral("unknown scrap"),
             .choices = FieldWords::steels()});
        const std::string steel = textAt(m_tree, m_at + ".steel");
        const Tree* own = m_tree.at(m_at + ".steel");
        const bool named =
            (own && own->members()) || (!steel.empty() && steel != "unknown scrap" && steel != "unknown");
        if (named)
            s.fields.push_back(
                {.path = m_at + ".steel_is",
                 .label = tr("How sure"),
                 .kind = FieldKind::Choice,
                 .how = tr("A guess is judged as unknown scrap; the list says what it would be "
                           "if the guess is right."),
                 .assumed = QStringLiteral("known"),
                 .choices = {{"known", tr("it is marked")},
                             {"guessed", tr("a guess")},
                             {"unknown", tr("not known")}}});
        s.fields.push_back(
            {.path = m_at + ".tests.file",
             .label = tr("A file on its edge"),
             .kind = FieldKind::Choice,
             .how = tr("Draw a file over a clean edge. It bites on steel that bends; it skates on steel that "
                       "snaps."),
             .sketch = Sketch::CutEdge,
             .choices = {{"", tr("not tried")}, {"bites", tr("bites")}, {"skates", tr("skates")}}});
        s.fields.push_back(
            {.path = m_at + ".tests.bend",
             .label = tr("A strip of it, bent"),
             .kind = FieldKind::Choice,
             .how = tr("Saw off a strip and bend it flat in the vice."),
             .sketch = Sketch::CutEdge,
             .choices = {{"", tr("not tried")}, {"bent", tr("bent")}, {"snapped", tr("snapped")}}});
        s.fields.push_back({.path = m_at + ".tests.cracks",
                            .label = tr("Cracks seen"),
                            .kind = FieldKind::Choice,
                            .how = tr("Look at edges and old holes with a lamp and chalk."),
                            .sketch = Sketch::CutEdge,
                            .choices = {{"", tr("not looked")}, {"none", tr("none")}, {"seen", tr("seen")}}});
        return s;
    }

    PieceSection shape() const {
        PieceSection s{tr("Shape"), {}};
        const std::string at = m_at + ".outline";
        FieldWords::Choices outlines = FieldWords::outlines();
        outlines.back().second = tr("Corner by corner, or traced");
        s.fields.push_back({.path = at + ".shape",
                            .label = tr("Outline"),
                            .kind = FieldKind::Choice,
                            .part = PlanPart::Rim,
                            .needed = true,
                            .wide = true,
                            .choices = std::move(outlines),
                            .put = [piece = m_at, system = m_system](Tree& t, const Tree& value) {
                                if (!value.text())
                                    return;
                                withOutline(t, piece, [&](Tree& job) {
                                    job::Job like;
                                    like.plate.outline = outlineAt(t, piece);
                                    switchOutline(job, like, *value.text(), system);
                                });
                            }});
        if (m_shape == "disc")
            s.fields.push_back(
                side("diameter", tr("Across"), tr("Over its middle, at the narrowest."), false));
        if (m_shape == "bar" || m_shape == "rectangle") {
            s.fields.push_back(side("length", tr("Length"), tr("The longer side, at its shortest."), true));
            s.fields.push_back(side("width", tr("Width"), tr("The shorter side, at its narrowest."), true));
        }
        if (m_shape == "rectangle")
            s.fields.push_back({.path = at + ".corner",
                                .label = tr("Corner radius"),
                                .kind = FieldKind::Length,
                                .sketch = Sketch::AcrossPlate,
                                .part = PlanPart::Rim,
                                .assumed = QStringLiteral("0 mm")});
        if (m_shape == "bar")
            s.fields.push_back({.path = at + ".ends",
                                .label = tr("Ends"),
                                .kind = FieldKind::Choice,
                                .part = PlanPart::Rim,
                                .assumed = QStringLiteral("square"),
                                .choices = {{"square", tr("square")}, {"round", tr("round")}}});
        if (m_shape == "polygon")
            s.lists.push_back(corners());
        return s;
    }

    PieceSection holes() const {
        PieceSection s{tr("Holes and bad areas"), {}};
        PartList holes{tr("Holes in it"), {}, {}, {}};
        const std::size_t count = rowCount(m_tree, m_at + ".holes");
        for (std::size_t i = 0; i < count; ++i)
            holes.rows.push_back(hole(i));
        const std::string next = rowPath(m_at + ".holes", count);
        holes.actions.push_back({tr("Add a hole"), tr("Add a hole"),
                                 [next, middle = middle(), system = m_system](Tree& t) {
                                     t.set(next + ".at", typedPlace(middle, system));
                                     t.set(next + ".diameter",
                                           typedMm(system == units::System::Inch ? 12.7 : 14, system));
                                 },
                                 next});
        s.lists.push_back(std::move(holes));
        PartList bad{tr("Bad areas: rust, old weld, a torch edge"), {}, {}, {}};
        const std::size_t areas = rowCount(m_tree, m_at + ".bad_areas");
        for (std::size_t i = 0; i < areas; ++i)
            bad.rows.push_back(badArea(i));
        const std::string area = rowPath(m_at + ".bad_areas", areas);
        bad.actions.push_back(
            {tr("Add a bad area"), tr("Add a bad area"),
             [area, middle = middle(), system = m_system, note = tr("rust").toStdString()](Tree& t) {
                 const double half = system == units::System::Inch ? 25.4 : 25;
                 putBox(t, area + ".points", {middle - shape::Point{half, half}, 2 * half, 2 * half}, system);
                 t.set(area + ".note", note);
             },
             area});
        s.lists.push_back(std::move(bad));
        return s;
    }

private:
    Field side(const char* key, const QString& label, const QString& how, bool moves) const {
        Field field{.path = m_at + ".outline." + key,
                    .label = label,
                    .kind = FieldKind::Length,
                    .how = how,
                    .sketch = Sketch::AcrossPlate,
                    .part = PlanPart::Rim,
                    .needed = true};
        if (moves)
            field.put = [at = m_at, name = std::string(key), system = m_system](Tree& t, const Tree& value) {
                putSide(t, at, name, value, system);
            };
        return field;
    }

    QString across() const {
        if (m_shape == "polygon")
            return tr("Right of zero");
        return m_zero.x != 0 ? tr("From the left end") : tr("Right of the middle");
    }
    QString up() const {
        if (m_shape == "polygon")
            return tr("Above zero");
        return m_zero.y != 0 ? tr("From the lower edge") : tr("Above the middle");
    }

    /// A figure of the place at `path`, measured as a tape is laid.
    Field place(const std::string& path, std::size_t axis, PlanPart part, std::size_t index) const {
        const double zero = axis == 0 ? m_zero.x : m_zero.y;
        const std::string figure = path + "[" + std::to_string(axis) + "]";
        return {.path = figure,
                .label = axis == 0 ? across() : up(),
                .kind = FieldKind::Length,
                .how = m_zero.x != 0 ? tr("To the centre, with the tape on the edge.")
                                     : tr("To the centre. Left of zero, or below it, is minus."),
                .sketch = Sketch::AcrossPlate,
                .part = part,
                .index = index,
                .get = [path, axis, zero,
                        system = m_system](const Tree& t) { return placeFrom(t, path, axis, zero, system); },
                .put =
                    [figure, zero, system = m_system](Tree& t, const Tree& value) {
                        const auto mm = mmOf(&value);
                        t.set(figure, mm && zero != 0 ? Tree(typedMm(*mm + zero, system)) : value);
                    },
                .keep = true};
    }

    QString figureAt(const std::string& path) const {
        const auto mm = mmOf(m_tree.at(path));
        return mm ? shortLength(*mm, m_system) : QStringLiteral("?");
    }
    QString placeWords(const std::string& path) const {
        const auto x = mmOf(m_tree.at(path + "[0]")), y = mmOf(m_tree.at(path + "[1]"));
        return tr("%1, %2", "a place, x and y")
            .arg(x ? shortLength(*x - m_zero.x, m_system) : QStringLiteral("?"),
                 y ? shortLength(*y - m_zero.y, m_system) : QStringLiteral("?"));
    }

    shape::Point middle() const {
        if (m_shape != "polygon")
            return {};
        const auto outline = outlineAt(m_tree, m_at);
        if (outline.points.size() < 3)
            return {};
        const shape::Point p = shape::centroid({outline.points});
        return {std::round(p.x), std::round(p.y)};
    }

    RowAction removal(const std::string& path, const QString& spoken) const {
        return {tr("Remove"), spoken, [path](Tree& t) { t.erase(path); }};
    }

    PartRow hole(std::size_t i) const {
        const std::string at = rowPath(m_at + ".holes", i);
        PartRow row{at, {}, {}, {}};
        row.actions.push_back(removal(at, tr("Remove hole %1").arg(i + 1)));
        if (m_tree.at(at + ".points")) {
            const auto box = boxAt(m_tree, at + ".points");
            row.words = box ? tr("Hole %1, %2 × %3")
                                  .arg(i + 1)
                                  .arg(shortLength(box->wide, m_system), shortLength(box->high, m_system))
                            : tr("Hole %1, traced").arg(i + 1);
            if (box)
                row.fields = boxFields(at + ".points", PlanPart::Extra, i);
            else
                row.fields = pointFields(at + ".points", PlanPart::Extra, i);
            return row;
        }
        const bool slot = textAt(m_tree, at + ".shape") == "slot";
        row.words =
            slot
                ? tr("Hole %1, slot %2 × %3 at %4")
                      .arg(i + 1)
                      .arg(figureAt(at + ".length"), figureAt(at + ".width"), placeWords(at + ".at"))
                : tr("Hole %1, Ø%2 at %3").arg(i + 1).arg(figureAt(at + ".diameter"), placeWords(at + ".at"));
        row.fields = {place(at + ".at", 0, PlanPart::Extra, i), place(at + ".at", 1, PlanPart::Extra, i)};
        row.fields.push_back({.path = at + ".shape",
                              .label = tr("Kind of hole"),
                              .kind = FieldKind::Choice,
                              .part = PlanPart::Extra,
                              .index = i,
                              .assumed = QStringLiteral("round"),
                              .choices = {{"round", tr("Round")},
                                          {"slot", tr("Slot")},
                                          {"square", tr("Square or rectangular")}},
                              .put = [at, system = m_system](Tree& t, const Tree& value) {
                                  putHoleShape(t, at, value, system);
                              }});
        const auto size = [&](const char* key, const QString& label) {
            row.fields.push_back({.path = at + key,
                                  .label = label,
                                  .kind = FieldKind::Length,
                                  .how = tr("At its widest."),
                                  .sketch = Sketch::HoleAcross,
                                  .part = PlanPart::Extra,
                                  .index = i,
                                  .keep = true});
        };
        if (!slot)
            size(".diameter", tr("Across"));
        else {
            size(".length", tr("Slot length"));
            size(".width", tr("Slot width"));
            row.fields.push_back({.path = at + ".turn",
                                  .label = tr("Slot turned"),
                                  .kind = FieldKind::Angle,
                                  .how = tr("From three o'clock, turning left."),
                                  .sketch = Sketch::Angle,
                                  .part = PlanPart::Extra,
                                  .index = i,
                                  .assumed = QStringLiteral("0 deg")});
        }
        return row;
    }

    static void putHoleShape(Tree& t, const std::string& at, const Tree& value, units::System system) {
        if (!value.text())
            return;
        const double across = mmOf(t.at(at + ".diameter")).value_or(14);
        if (*value.text() == "square") {
            const shape::Point centre{mmOf(t.at(at + ".at[0]")).value_or(0),
                                      mmOf(t.at(at + ".at[1]")).value_or(0)};
            Tree hole = Tree::object();
            t.set(at, hole);
            putBox(t, at + ".points", {centre - shape::Point{across / 2, across / 2}, across, across},
                   system);
            return;
        }
        t.set(at + ".shape", value);
        if (*value.text() == "slot" && !t.at(at + ".length")) {
            // As wide as the hole was, and twice as long.
            t.set(at + ".width", typedMm(across, system));
            t.set(at + ".length", typedMm(2 * across, system));
        } else if (*value.text() == "round" && !t.at(at + ".diameter")) {
            t.set(at + ".diameter", typedMm(mmOf(t.at(at + ".width")).value_or(14), system));
        }
    }

    PartRow badArea(std::size_t i) const {
        const std::string at = rowPath(m_at + ".bad_areas", i);
        const std::string note = textAt(m_tree, at + ".note");
        const QString name = note.empty() ? tr("Bad area %1").arg(i + 1) : QString::fromStdString(note);
        PartRow row{at, {}, {}, {}};
        row.fields.push_back({.path = at + ".note",
                              .label = tr("What is wrong there"),
                              .kind = FieldKind::OpenChoice,
                              .part = PlanPart::Obstacle,
                              .index = i,
                              .wide = true,
                              .choices = {{tr("rust"), tr("rust")},
                                          {tr("old weld"), tr("old weld")},
                                          {tr("torch edge"), tr("torch edge")}}});
        const auto box = boxAt(m_tree, at + ".points");
        row.words =
            box ? tr("%1, %2 × %3", "a bad area, how wide, how high")
                      .arg(name, shortLength(box->wide, m_system), shortLength(box->high, m_system))
                : tr("%1, %n corners", "a bad area", static_cast<int>(rowCount(m_tree, at + ".points")))
                      .arg(name);
        auto more = box ? boxFields(at + ".points", PlanPart::Obstacle, i)
                        : pointFields(at + ".points", PlanPart::Obstacle, i);
        row.fields.insert(row.fields.end(), more.begin(), more.end());
        row.actions.push_back(removal(at, tr("Remove %1").arg(name)));
        return row;
    }

    /// Left, lower, wide, high: of an upright rectangle.
    std::vector<Field> boxFields(const std::string& points, PlanPart part, std::size_t index) const {
        std::vector<Field> fields;
        const QString labels[] = {across(), up(), tr("Its width"), tr("Its height")};
        for (int which = 0; which < 4; ++which) {
            const shape::Point zero = m_zero;
            const auto figure = [which, zero](UprightBox& box) -> double {
                return which == 0   ? box.low.x - zero.x
                       : which == 1 ? box.low.y - zero.y
                       : which == 2 ? box.wide
                                    : box.high;
            };
            fields.push_back({.path = rowPath(points, static_cast<std::size_t>(which / 2)) +
                                      (which % 2 == 0 ? "[0]" : "[1]"),
                              .label = labels[which],
                              .kind = FieldKind::Length,
                              .how = which < 2 ? tr("To where it begins.")
                                               : tr("With what borders on it and is no better."),
                              .sketch = Sketch::AcrossPlate,
                              .part = part,
                              .index = index,
                              .get =
                                  [points, figure, system = m_system](const Tree& t) {
                                      auto box = boxAt(t, points);
                                      return box ? Tree(typedMm(figure(*box), system)) : Tree();
                                  },
                              .put =
                                  [points, which, zero, system = m_system](Tree& t, const Tree& value) {
                                      auto box = boxAt(t, points);
                                      const auto mm = mmOf(&value);
                                      if (!box || !mm || (which > 1 && *mm <= 0))
                                          return;
                                      (which == 0   ? box->low.x
                                       : which == 1 ? box->low.y
                                       : which == 2 ? box->wide
                                                    : box->high) = *mm + (which == 0   ? zero.x
                                                                          : which == 1 ? zero.y
                                                                                       : 0);
                                      putBox(t, points, *box, system);
                                  },
                              .keep = true});
        }
        return fields;
    }

    std::vector<Field> pointFields(const std::string& points, PlanPart part, std::size_t index) const {
        std::vector<Field> fields;
        for (std::size_t i = 0; i < rowCount(m_tree, points); ++i) {
            const Tree* row = m_tree.at(rowPath(points, i));
            const std::string at = rowPath(points, i) + (row && row->members() ? ".at" : "");
            for (const std::size_t axis : {0U, 1U})
                fields.push_back(place(at, axis, part, index));
        }
        return fields;
    }

    PartList corners() const {
        PartList list{tr("Corners, in order round the edge"), {}, {}, {}};
        const std::string points = m_at + ".outline.points";
        const auto outline = outlineAt(m_tree, m_at);
        for (std::size_t i = 0; i < rowCount(m_tree, points); ++i) {
            const Tree* typed = m_tree.at(rowPath(points, i));
            const std::string at = rowPath(points, i) + (typed && typed->members() ? ".at" : "");
            PartRow row{rowPath(points, i),
                        tr("Corner %1 at %2").arg(i + 1).arg(placeWords(at)),
                        {place(at, 0, PlanPart::Corner, i), place(at, 1, PlanPart::Corner, i)},
                        {}};
            const auto vertices = outline.points;
            if (i < vertices.size())
                row.actions.push_back(
                    {tr("Add a corner after it"), tr("Add a corner after corner %1").arg(i + 1),
                     [piece = m_at, vertices, i, system = m_system](Tree& t) {
                         withOutline(t, piece, [&](Tree& job) {
                             addCorner(job, vertices, i, shape::Loop{vertices}.side(i).pointAt(0.5), system);
                         });
                     },
                     rowPath(points, i + 1)});
            if (rowCount(m_tree, points) > 3)
                row.actions.push_back(
                    {tr("Remove"), tr("Remove corner %1").arg(i + 1), [piece = m_at, i](Tree& t) {
                         withOutline(t, piece, [&](Tree& job) { (void)removeCorner(job, i); });
                     }});
            list.rows.push_back(std::move(row));
        }
        return list;
    }

    const Tree& m_tree;
    std::string m_at;
    units::System m_system;
    std::string m_shape;
    shape::Point m_zero;
};

} // namespace

std::vector<PieceSection> pieceSections(const Tree& tree, const std::string& at, units::System system) {
    const Piece piece(tree, at, system);
    return {piece.what(), piece.steel(), piece.shape(), piece.holes()};
}

} // namespace pw::gui
