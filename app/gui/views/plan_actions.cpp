#include "app/gui/views/plan_actions.h"

#include "app/gui/models/job_rows.h"

#include <QCoreApplication>

namespace pw::gui {

using jobfile::Tree;

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::PlanActions)
};

std::vector<std::size_t> rowsOnPlan(const Document& document, PlanPart part) {
    const auto& problems = document.reading().problems;
    if (part == PlanPart::Extra || part == PlanPart::ExtraSize)
        return understoodRows(document.tree(), problems, "plate.holes", {"at"});
    return understoodRows(document.tree(), problems, "keep_clear", {"at", "diameter"});
}

bool isObstacle(PlanPart part) {
    return part == PlanPart::Obstacle || part == PlanPart::ObstacleSize;
}

bool isExtra(PlanPart part) {
    return part == PlanPart::Extra || part == PlanPart::ExtraSize;
}

shape::Point snapped(shape::Point p, units::System system, double coarse) {
    return draggedPlace({}, p, {}, system, false, coarse);
}

} // namespace

QString nameOfGrab(const Document& document, const PlanShape& shape, const Grab& grab) {
    const auto number = isOneOfMany(grab.part) ? rowOfGrab(document, shape, grab) + 1 : grab.index + 1;
    switch (grab.part) {
    case PlanPart::Rim:
        return Words::tr("Plate across");
    case PlanPart::RimLength:
        return Words::tr("Plate length");
    case PlanPart::RimWidth:
        return Words::tr("Plate width");
    case PlanPart::Bore:
        return Words::tr("Bore");
    case PlanPart::Circle:
        return Words::tr("Pin circle");
    case PlanPart::Access:
        return Words::tr("Access holes");
    case PlanPart::Start:
        return Words::tr("First station's angle");
    case PlanPart::Extra:
        return Words::tr("Hole %1").arg(number);
    case PlanPart::ExtraSize:
        return Words::tr("Hole %1 across").arg(number);
    case PlanPart::Corner:
        return Words::tr("Corner %1").arg(number);
    case PlanPart::Station:
        return Words::tr("Station %1").arg(number);
    case PlanPart::Obstacle:
        return Words::tr("In the way %1").arg(number);
    case PlanPart::ObstacleSize:
        return Words::tr("In the way %1, room").arg(number);
    case PlanPart::Piece:
        return Words::tr("Piece of steel");
    case PlanPart::PieceTurn:
        return Words::tr("Piece of steel, turned");
    default:
        return {};
    }
}

std::size_t rowOfGrab(const Document& document, const PlanShape& shape, const Grab& grab) {
    if (!isExtra(grab.part) && !isObstacle(grab.part))
        return grab.index;
    std::size_t kept = grab.index;
    if (isExtra(grab.part))
        kept = grab.index < shape.extra.size() ? shape.extra[grab.index].row : 0;
    const auto rows = rowsOnPlan(document, grab.part);
    return kept < rows.size() ? rows[kept] : kept;
}

Grab grabOfRow(const Document& document, const PlanShape& shape, PlanPart part, std::size_t row) {
    if (!isOneOfMany(part))
        return {part, row};
    const std::size_t count = isExtra(part)              ? shape.extra.size()
                              : isObstacle(part)         ? shape.keepClear.size()
                              : part == PlanPart::Corner ? shape.corners.size()
                                                         : shape.stations.size();
    for (std::size_t i = 0; i < count; ++i)
        if (rowOfGrab(document, shape, {part, i}) == row)
            return {part, i};
    return {};
}

Tree treeWith(const Document& document, const PlanShape& shape, const Grab& grab, const Setting& setting,
              units::System system) {
    Tree after = document.tree();
    const std::size_t row = rowOfGrab(document, shape, grab);
    switch (grab.part) {
    case PlanPart::Extra:
        after.set(rowPath("plate.holes", row) + ".at", typedPlace(setting.place, system));
        break;
    case PlanPart::ExtraSize:
        after.set(rowPath("plate.holes", row) + ".diameter", typedFigure(grab.part, setting.figure, system));
        break;
    case PlanPart::Corner:
        moveCorner(after, row, setting.place, system);
        break;
    case PlanPart::Station:
        after.set(rowPath("stations.at", row), typedPlace(setting.place, system));
        break;
    case PlanPart::Obstacle:
        after.set(rowPath("keep_clear", row) + ".at", typedPlace(setting.place, system));
        break;
    case PlanPart::ObstacleSize:
        after.set(rowPath("keep_clear", row) + ".diameter", typedFigure(grab.part, setting.figure, system));
        break;
    case PlanPart::Piece:
        after.set(pathOf(grab.part), typedPlace(setting.place, system));
        break;
    default:
        after.set(pathOf(grab.part), typedFigure(grab.part, setting.figure, system));
        break;
    }
    return after;
}

std::optional<RowAction> removal(const Document& document, const PlanShape& shape, const Grab& grab) {
    const std::size_t row = rowOfGrab(document, shape, grab);
    std::function<void(Tree&)> make;
    QString words;
    if (isExtra(grab.part)) {
        words = Words::tr("Remove hole %1").arg(row + 1);
        make = [row](Tree& tree) { tree.erase(rowPath("plate.holes", row)); };
    } else if (isObstacle(grab.part)) {
        words = Words::tr("Remove what stands in the way, %1").arg(row + 1);
        make = [row](Tree& tree) { tree.erase(rowPath("keep_clear", row)); };
    } else if (grab.part == PlanPart::Corner && shape.corners.size() > 3) {
        words = Words::tr("Remove corner %1").arg(row + 1);
        make = [row](Tree& tree) { (void)removeCorner(tree, row); };
    } else if (grab.part == PlanPart::Station && shape.stations.size() > 1) {
        words = Words::tr("Remove station %1").arg(row + 1);
        make = [row](Tree& tree) { (void)removeStation(tree, row); };
    } else if (grab.part == PlanPart::Piece || grab.part == PlanPart::PieceTurn) {
        words = Words::tr("Take the piece of steel away");
        make = [](Tree& tree) { tree.erase("piece"); };
    } else {
        return {};
    }
    return RowAction{words, words, std::move(make)};
}

std::vector<RowAction> additions(const Document& document, const PlanShape& shape, shape::Point at,
                                 double reach, units::System system, double coarse) {
    std::vector<RowAction> actions;
    const auto add = [&](const QString& words, std::string opens, std::function<void(Tree&)> make) {
        actions.push_back({words, words, std::move(make), std::move(opens)});
    };
    if (const auto side = sideAt(shape, at, reach))
        add(Words::tr("Add a corner here"), rowPath("plate.outline.points", *side + 1),
            [corners = shape.corners, side = *side, at, system](Tree& tree) {
                addCorner(tree, corners, side, at, system);
            });
    const shape::Point place = snapped(at, system, coarse);
    if (shape.rim && shape::contains(*shape.rim, at)) {
        const std::string row = rowPath("plate.holes", rowCount(document.tree(), "plate.holes"));
        add(Words::tr("Add a hole here"), row, [row, place, system](Tree& tree) {
            tree.set(row + ".at", typedPlace(place, system));
            tree.set(row + ".diameter", typedMm(system == units::System::Inch ? 9.525 : 10, system));
        });
    }
    if (!shape.onCircle) {
        auto places = shape.stations;
        places.push_back(place);
        add(Words::tr("Add a station here"), rowPath("stations.at", shape.stations.size()),
            [place, count = places.size(), system](Tree& tree) {
                tree.set(rowPath("stations.at", count - 1), typedPlace(place, system));
                resizeStationLists(tree, count);
            });
    }
    const std::string row = rowPath("keep_clear", rowCount(document.tree(), "keep_clear"));
    add(Words::tr("Something stands in the way here"), row, [row, place, system](Tree& tree) {
        tree.set(row + ".at", typedPlace(place, system));
        tree.set(row + ".diameter", typedMm(system == units::System::Inch ? 19.05 : 20, system));
    });
    return actions;
}

} // namespace pw::gui
