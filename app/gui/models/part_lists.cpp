#include "app/gui/models/part_lists.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/job_rows.h"
#include "app/gui/models/pin_words.h"
#include "app/gui/models/sentence.h"
#include "core/job/station_places.h"
#include "core/jobfile/read.h"
#include "geometry/outline/build.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QCoreApplication>

namespace pw::gui {

using jobfile::Tree;

namespace {

constexpr const char* kHoles = "plate.holes";
constexpr const char* kKeepClear = "keep_clear";
constexpr const char* kCorners = "plate.outline.points";
constexpr const char* kStations = "stations.at";
constexpr const char* kReadings = "stations.readings";

/// A place in the steel with `radius` of it all round and as much again to the next edge; where there is
/// none, straight up from the bore.
shape::Point freePlace(const job::Job& job, double radius) {
    const auto built = outline::buildRegion(job);
    if (built.region.rim.size() >= 2) {
        const shape::Box box = shape::bounds(built.region.rim);
        const double reach = std::max(box.width(), box.height()) / 2;
        for (double r = std::round(reach * 0.6); r > radius; r -= 2)
            for (int turn = 0; turn < 72; ++turn) {
                const shape::Point exact = shape::polar(r, (90 + turn * 5) * std::numbers::pi / 180);
                const shape::Point p{std::round(exact.x), std::round(exact.y)};
                if (!shape::containsMaterial(built.region, p) ||
                    shape::distanceTo(built.region.rim, p) < 2 * radius)
                    continue;
                if (std::ranges::all_of(built.region.holes, [&](const shape::Hole& hole) {
                        return shape::distanceTo(hole.loop, p) >= 2 * radius;
                    }))
                    return p;
            }
    }
    return {0, 40};
}

class Lists {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PartLists)

public:
    Lists(const Tree& tree, units::System system)
        : m_tree(tree), m_system(system), m_job(jobfile::readJob(tree).job) {}

    PartList holes() const {
        PartList list;
        list.title = tr("Other holes");
        for (std::size_t i = 0; i < rowCount(m_tree, kHoles); ++i)
            list.rows.push_back(hole(i));
        const std::size_t next = rowCount(m_tree, kHoles);
        list.actions.push_back({tr("Add a hole"), tr("Add a hole"),
                                [job = m_job, system = m_system, next](Tree& tree) {
                                    const double across = system == units::System::Inch ? 9.525 : 10;
                                    const std::string row = rowPath(kHoles, next);
                                    tree.set(row + ".at", typedPlace(freePlace(job, across / 2), system));
                                    tree.set(row + ".diameter", typedMm(across, system));
                                },
                                rowPath(kHoles, next)});
        return list;
    }

    PartList keepClear() const {
        PartList list;
        list.title = tr("What stands in the way");
        for (std::size_t i = 0; i < rowCount(m_tree, kKeepClear); ++i)
            list.rows.push_back(obstacle(i));
        const std::size_t next = rowCount(m_tree, kKeepClear);
        list.actions.push_back({tr("Add what stands in the way"), tr("Add what stands in the way"),
                                [job = m_job, system = m_system, next](Tree& tree) {
                                    const double across = system == units::System::Inch ? 19.05 : 20;
                                    const std::string row = rowPath(kKeepClear, next);
                                    tree.set(row + ".at", typedPlace(beyondTheRim(job, across / 2), system));
                                    tree.set(row + ".diameter", typedMm(across, system));
                                },
                                rowPath(kKeepClear, next)});
        return list;
    }

    PartList corners() const {
        PartList list;
        list.title = tr("Corners, turning left");
        const auto& outline = m_job.plate.outline;
        for (std::size_t i = 0; i < rowCount(m_tree, kCorners); ++i) {
            const std::string at = cornerPlacePath(m_tree, i);
            PartRow row{rowPath(kCorners, i),
                        tr("Corner %1 at %2").arg(i + 1).arg(placeWords(at)),
                        placeFields(at, PlanPart::Corner, i),
                        {}};
            if (outline && i < outline->points.size()) {
                const auto points = outline->points;
                const shape::Side side = shape::Loop{points}.side(i);
                row.actions.push_back({tr("Add a corner after it"),
                                       tr("Add a corner after corner %1").arg(i + 1),
                                       [points, i, side, system = m_system](Tree& tree) {
                                           addCorner(tree, points, i, side.pointAt(0.5), system);
                                       },
                                       rowPath(kCorners, i + 1)});
                const double radius = m_system == units::System::Inch ? 6.35 : 6;
                Tree trial = m_tree;
                if (roundCorner(trial, points, i, radius, m_system))
                    row.actions.push_back({tr("Round it off, radius %1").arg(withUnit(radius)),
                                           tr("Round off corner %1").arg(i + 1),
                                           [points, i, radius, system = m_system](Tree& tree) {
                                               (void)roundCorner(tree, points, i, radius, system);
                                           },
                                           rowPath(kCorners, i)});
                if (points.size() > 3)
                    row.actions.push_back({tr("Remove"), tr("Remove corner %1").arg(i + 1),
                                           [i](Tree& tree) { (void)removeCorner(tree, i); }});
            }
            list.rows.push_back(std::move(row));
        }
        return list;
    }

    PartList readings() const {
        PartList list;
        list.title = tr("Calipers on the pins");
        const auto& job = m_job;
        const auto system = m_system;
        const std::size_t count = rowCount(m_tree, kReadings);
        list.folds = count == 0;
        std::optional<stations::PinLayout> layout;
        const bool any = std::ranges::any_of(job.stations.readings,
                                             [](const job::PinReading& r) { return r.over || r.between; });
        if (any) {
            const auto found = pinLayoutOf(job);
            if (found) {
                layout = *found;
                list.notes = pinWords(*layout, job, system);
            } else {
                list.notes << asSentence(found.problem().message);
            }
        } else if (count > 0) {
            list.notes << tr(
                "Fill in what you can, over the pins or between them. What stays empty does not count.");
        } else {
            list.notes << tr(
                "Number the pins turning left as you look down on them. Then read pairs of them, and "
                "what the readings come to is worked out.");
        }
        for (std::size_t i = 0; i < count; ++i)
            list.rows.push_back(reading(i, layout ? &*layout : nullptr));
        const int pins = pinCountOf(job);
        const auto pairs = [&](stations::PinPairs which, const QString& words) {
            const auto more = stations::pinPairs(which, pins, job.stations.readings);
            RowAction action{words, words};
            if (!more.empty())
                action.make = [more](Tree& tree) {
                    for (const auto& [a, b] : more) {
                        const std::string row = rowPath(kReadings, rowCount(tree, kReadings));
                        tree.set(row + ".pins", Tree(Tree::List{Tree(double(a)), Tree(double(b))}));
                    }
                };
            list.actions.push_back(std::move(action));
        };
        pairs(stations::PinPairs::Neighbours, tr("Read neighbours"));
        pairs(stations::PinPairs::Opposite, tr("Read opposite pins"));
        pairs(stations::PinPairs::EverySecond, tr("Read every second pin"));
        if (count == 0)
            return list;
        RowAction even{tr("Take one even circle"), tr("Pin circle from the readings")};
        RowAction each{tr("Take each pin's own place"), tr("Pins from the readings")};
        if (layout && layout->doubtful.size() < 2 && !layout->disagree) {
            even.make = [layout, job, system](Tree& tree) { takeEvenCircle(tree, *layout, job, system); };
            if (layout->freedom != stations::PinFreedom::EvenCircle)
                each.make = [layout, job, system](Tree& tree) { takePinPlaces(tree, *layout, job, system); };
        }
        list.actions.push_back(std::move(even));
        list.actions.push_back(std::move(each));
        list.actions.push_back({tr("Remove the readings"), tr("Remove the caliper readings"),
                                [](Tree& tree) { tree.erase(kReadings); }});
        return list;
    }

    PartList stations() const {
        PartList list;
        const auto places = job::stationCentres(m_job.stations);
        const bool listed = m_tree.at(kStations);
        list.title = tr("Each station");
        list.folds = !listed && m_job.stations.loaded.empty() && m_job.load.share.empty();
        for (std::size_t i = 0; i < places.size(); ++i)
            list.rows.push_back(station(i, places, listed));
        if (listed) {
            list.actions.push_back({tr("Add a station"), tr("Add a station"),
                                    [places, system = m_system](Tree& tree) {
                                        auto more = places;
                                        more.push_back(nextStation(places));
                                        placeAt(tree, more, system);
                                    },
                                    rowPath(kStations, places.size())});
            list.actions.push_back(
                {tr("Place them evenly on a circle"), tr("Place stations evenly"),
                 [job = m_job, system = m_system](Tree& tree) { placeEvenly(tree, job, system); }});
        } else if (!places.empty()) {
            list.actions.push_back(
                {tr("Place each by itself"), tr("Place each station by itself"),
                 [job = m_job, system = m_system](Tree& tree) { placeEachByItself(tree, job, system); },
                 rowPath(kStations, 0)});
        }
        return list;
    }

private:
    QString withUnit(double mm) const { return local(units::show(units::Length::fromMm(mm), m_system)); }
    std::optional<double> mmAt(const std::string& path) const {
        const Tree* value = m_tree.at(path);
        if (!value)
            return {};
        if (const double* number = value->number())
            return *number;
        if (const std::string* text = value->text())
            if (const auto length = units::parse<units::Length>(*text))
                return length->mm();
        return {};
    }
    QString figureAt(const std::string& path) const {
        const auto mm = mmAt(path);
        return mm ? shortLength(*mm, m_system) : QStringLiteral("?");
    }
    QString placeWords(const std::string& at) const {
        return tr("%1, %2", "a place, x and y").arg(figureAt(at + "[0]"), figureAt(at + "[1]"));
    }

    static std::vector<Field> placeFields(const std::string& at, PlanPart part, std::size_t index) {
        return {{.path = at + "[0]",
                 .label = tr("Right of the bore"),
                 .kind = FieldKind::Length,
                 .how = tr("From the bore's centre to its own centre, to the right. Left of it is minus."),
                 .sketch = Sketch::AcrossPlate,
                 .part = part,
                 .index = index,
                 .keep = true},
                {.path = at + "[1]",
                 .label = tr("Above the bore"),
                 .kind = FieldKind::Length,
                 .how = tr("From the bore's centre to its own centre, up on the plan. Below it is minus."),
                 .sketch = Sketch::AcrossPlate,
                 .part = part,
                 .index = index,
                 .keep = true}};
    }

    PartRow hole(std::size_t i) const {
        const std::string at = rowPath(kHoles, i);
        const std::string shape = textAt(m_tree, at + ".shape");
        const bool slot = shape == "slot";
        PartRow row{at, {}, placeFields(at + ".at", PlanPart::Extra, i), {}};
        row.words =
            slot
                ? tr("Hole %1, slot %2 × %3 at %4")
                      .arg(i + 1)
                      .arg(figureAt(at + ".length"), figureAt(at + ".width"), placeWords(at + ".at"))
                : tr("Hole %1, Ø%2 at %3").arg(i + 1).arg(figureAt(at + ".diameter"), placeWords(at + ".at"));
        auto& fields = row.fields;
        if (!slot)
            fields.push_back({.path = at + ".diameter",
                              .label = tr("Across"),
                              .kind = FieldKind::Length,
                              .how = tr("The finished hole."),
                              .sketch = Sketch::HoleAcross,
                              .part = PlanPart::ExtraSize,
                              .index = i,
                              .keep = true});
        fields.push_back(
            {.path = at + ".shape",
             .label = tr("Shape"),
             .kind = FieldKind::Choice,
             .part = PlanPart::Extra,
             .index = i,
             .assumed = "round",
             .choices = {{"round", tr("Round")}, {"slot", tr("Slot")}},
             .put = [at, system = m_system](Tree& tree, const Tree& value) {
                 tree.set(at + ".shape", value);
                 const auto* word = value.text();
                 if (!word || *word != "slot" || tree.at(at + ".length"))
                     return;
                 // As wide as the hole was, and twice as long.
                 const auto* typed = tree.at(at + ".diameter");
                 const auto size = typed && typed->text() ? units::parse<units::Length>(*typed->text())
                                                          : units::parse<units::Length>("10 mm");
                 const double mm = typed && typed->number() ? *typed->number() : size ? size->mm() : 10;
                 tree.set(at + ".width", typedMm(mm, system));
                 tree.set(at + ".length", typedMm(2 * mm, system));
             }});
        if (slot) {
            for (const auto& [key, label] :
                 {std::pair{".length", tr("Slot length")}, {".width", tr("Slot width")}})
                fields.push_back({.path = at + key,
                                  .label = label,
                                  .kind = FieldKind::Length,
                                  .how = tr("The finished slot, its round ends counted in."),
                                  .sketch = Sketch::HoleAcross,
                                  .part = PlanPart::Extra,
                                  .index = i,
                                  .keep = true});
            fields.push_back({.path = at + ".turn",
                              .label = tr("Slot turned"),
                              .kind = FieldKind::Angle,
                              .how = tr("From three o'clock, turning left."),
                              .sketch = Sketch::Angle,
                              .part = PlanPart::Extra,
                              .index = i,
                              .assumed = "0 deg"});
        } else {
            fields.push_back(
                {.path = at + ".made",
                 .label = tr("Made by"),
                 .kind = FieldKind::Choice,
                 .how = tr("Burned where it is wide enough for that, or drilled in any case: a "
                           "burned edge is hard and rough."),
                 .sketch = Sketch::CutEdge,
                 .part = PlanPart::Extra,
                 .index = i,
                 .assumed = "by size",
                 .choices = {{"by size", tr("Burning, if wide enough")}, {"drilled", tr("Drilling")}}});
        }
        row.actions.push_back(
            {tr("Remove"), tr("Remove hole %1").arg(i + 1), [at](Tree& tree) { tree.erase(at); }});
        return row;
    }

    PartRow reading(std::size_t i, const stations::PinLayout* layout) const {
        const std::string at = rowPath(kReadings, i);
        PartRow row{at, {}, {}, {}, true};
        const auto pin = [&](const char* which) {
            const Tree* value = m_tree.at(at + which);
            return value && value->number() ? static_cast<int>(*value->number()) : 0;
        };
        const int first = pin(".pins[0]"), second = pin(".pins[1]");
        row.words = tr("Pins %1 and %2").arg(first).arg(second);
        for (const bool over : {true, false}) {
            Field field{.path = at + (over ? ".over" : ".between"),
                        .label = over ? tr("%1 to %2, over").arg(first).arg(second)
                                      : tr("%1 to %2, between").arg(first).arg(second),
                        .kind = FieldKind::Length,
                        .how = over ? tr("Calipers outside both pins, square across. 0.1 mm is good.")
                                    : tr("Inside jaws between the two pins, the least that you find."),
                        .sketch = Sketch::OverPins,
                        .part = PlanPart::Station,
                        .index = static_cast<std::size_t>(std::max(first - 1, 0))};
            if (layout)
                field.remark = pinRemark(*layout, {first, second, {}, {}}, over, m_system);
            row.fields.push_back(std::move(field));
        }
        return row;
    }

    PartRow obstacle(std::size_t i) const {
        const std::string at = rowPath(kKeepClear, i);
        const std::string note = textAt(m_tree, at + ".note");
        const QString name = note.empty() ? tr("In the way %1").arg(i + 1) : QString::fromStdString(note);
        PartRow row{at,
                    tr("%1, Ø%2 at %3", "what stands in the way, how wide, where")
                        .arg(name, figureAt(at + ".diameter"), placeWords(at + ".at")),
                    placeFields(at + ".at", PlanPart::Obstacle, i),
                    {}};
        row.fields.push_back({.path = at + ".diameter",
                              .label = tr("Room it wants"),
                              .kind = FieldKind::Length,
                              .how = tr("Across the stud or boss, and what room it wants besides."),
                              .sketch = Sketch::PinAcross,
                              .part = PlanPart::ObstacleSize,
                              .index = i,
                              .keep = true});
        row.fields.push_back({.path = at + ".note",
                              .label = tr("What it is"),
                              .kind = FieldKind::Text,
                              .how = tr("A stud, a boss, a pipe."),
                              .part = PlanPart::Obstacle,
                              .index = i});
        row.actions.push_back(
            {tr("Remove"), tr("Remove %1").arg(name), [at](Tree& tree) { tree.erase(at); }});
        return row;
    }

    PartRow station(std::size_t i, const std::vector<shape::Point>& places, bool listed) const {
        const std::string at = rowPath(kStations, i);
        const auto count = places.size();
        const auto& flags = m_job.stations.loaded;
        const auto& shares = m_job.load.share;
        const bool carries = i >= flags.size() || flags[i];
        const double share = i < shares.size() ? shares[i] : 1;
        const double degrees = std::atan2(places[i].y, places[i].x) * 180 / std::numbers::pi;
        const QString where =
            listed ? placeWords(at) : tr("%1°").arg(local(units::number(std::round(degrees * 10) / 10, 5)));
        PartRow row{at, {}, listed ? placeFields(at, PlanPart::Station, i) : std::vector<Field>(), {}};
        if (!carries)
            row.words = tr("Station %1 at %2 carries nothing").arg(i + 1).arg(where);
        else if (share != 1)
            row.words = tr("Station %1 at %2, share %3").arg(i + 1).arg(where, local(units::number(share)));
        else
            row.words = tr("Station %1 at %2").arg(i + 1).arg(where);
        row.fields.push_back({.path = "stations.loaded[" + std::to_string(i) + "]",
                              .label = tr("Carries"),
                              .kind = FieldKind::Flag,
                              .how = tr("No: there is a hole, and nothing presses on the plate there."),
                              .sketch = Sketch::SpringOnScale,
                              .part = PlanPart::Station,
                              .index = i,
                              .assumed = "true",
                              .choices = {{"true", tr("yes")}, {"false", tr("no, nothing")}},
                              .get =
                                  [i](const Tree& tree) {
                                      const Tree* entry =
                                          tree.at("stations.loaded[" + std::to_string(i) + "]");
                                      return entry ? *entry : Tree();
                                  },
                              .put =
                                  [i, count](Tree& tree, const Tree& value) {
                                      setLoaded(tree, count, i, !value.boolean() || *value.boolean());
                                  }});
        row.fields.push_back(
            {.path = "load.share[" + std::to_string(i) + "]",
             .label = tr("Its share"),
             .kind = FieldKind::Number,
             .how = tr("Beside the others: 1 is as much as they carry, 0.5 half as much, 2 twice."),
             .sketch = Sketch::SpringOnScale,
             .part = PlanPart::Station,
             .index = i,
             .assumed = "1",
             .put = [i, count](Tree& tree, const Tree& value) {
                 setShare(tree, count, i, value.number() ? *value.number() : 1);
             }});
        if (listed && count > 1)
            row.actions.push_back({tr("Remove"), tr("Remove station %1").arg(i + 1),
                                   [i](Tree& tree) { (void)removeStation(tree, i); }});
        return row;
    }

    /// In the widest gap between two neighbours, as far out as they are.
    static shape::Point nextStation(const std::vector<shape::Point>& places) {
        if (places.empty())
            return {50, 0};
        std::vector<double> angles;
        double radius = 0;
        for (const auto& p : places) {
            angles.push_back(std::atan2(p.y, p.x));
            radius += shape::norm(p) / static_cast<double>(places.size());
        }
        std::ranges::sort(angles);
        double widest = -1, middle = 0;
        for (std::size_t i = 0; i < angles.size(); ++i) {
            const double next = i + 1 < angles.size() ? angles[i + 1] : angles[0] + 2 * std::numbers::pi;
            if (next - angles[i] > widest + 1e-9) {
                widest = next - angles[i];
                middle = (next + angles[i]) / 2;
            }
        }
        return shape::polar(radius, middle);
    }

    static shape::Point beyondTheRim(const job::Job& job, double radius) {
        const auto built = outline::buildRegion(job);
        if (built.region.rim.size() < 2)
            return {100, 0};
        return {std::round(shape::bounds(built.region.rim).high.x + 2 * radius), 0};
    }

    const Tree& m_tree;
    units::System m_system;
    job::Job m_job;
};

} // namespace

std::vector<PartList> partLists(const Tree& tree, const std::string& group, units::System system) {
    if (group == "holes") {
        const Lists lists(tree, system);
        return {lists.holes(), lists.keepClear()};
    }
    if (group == "steel" && textAt(tree, "plate.outline.shape") == "polygon")
        return {Lists(tree, system).corners()};
    if (group == "stations") {
        const Lists lists(tree, system);
        if (isPull(tree))
            return {lists.stations()};
        return {lists.stations(), lists.readings()};
    }
    return {};
}

std::string rowOf(PlanPart part, std::size_t index) {
    switch (part) {
    case PlanPart::Extra:
    case PlanPart::ExtraSize:
        return rowPath(kHoles, index);
    case PlanPart::Corner:
        return rowPath(kCorners, index);
    case PlanPart::Obstacle:
    case PlanPart::ObstacleSize:
        return rowPath(kKeepClear, index);
    case PlanPart::Station:
    case PlanPart::Start:
        return rowPath(kStations, index);
    default:
        return {};
    }
}

} // namespace pw::gui
