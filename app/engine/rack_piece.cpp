#include "app/engine/rack.h"
#include "core/jobfile/words.h"
#include "core/rack/rack_file.h"
#include "core/thread/thread.h"
#include "core/util/say.h"
#include "geometry/outline/build.h"
#include "geometry/placement/parted.h"
#include "geometry/placement/spacing.h"

#include <algorithm>
#include <cmath>

/// From a piece to the job made of it, and from the job made to what is left of the piece.
namespace pw::engine {

namespace {

using jobfile::Tree;
using placement::Pose;

/// From the piece's coordinates into the plate's.
shape::Loop underPlate(const shape::Loop& loop, const Pose& pose) {
    return shape::turned(shape::moved(loop, shape::Point{} - pose.at), -pose.turn);
}

Tree inMm(double value) {
    return Tree(jobfile::describe(Tree(std::round(value * 100) / 100)) + " mm");
}

bool hasName(const Tree& rack, const std::string& name) {
    return std::ranges::any_of(*rack.find("offcuts")->items(), [&](const Tree& row) {
        const Tree* other = row.find("name");
        return other && other->text() && *other->text() == name;
    });
}

/// Named after what they came from, and told apart from each other and from what is there already.
std::vector<std::string> remainderNames(const Tree& rack, const std::string& name, std::size_t count) {
    const std::string base = say("%1, rest", {name});
    std::vector<std::string> names;
    if (count == 1 && !hasName(rack, base))
        names.push_back(base);
    for (int i = count > 1 ? 1 : 2; names.size() < count; ++i)
        if (const std::string numbered = base + " " + std::to_string(i); !hasName(rack, numbered))
            names.push_back(numbered);
    return names;
}

/// How thin steel beside a cut no longer counts: thinner than the spacing that is kept from an edge. Never so
/// wide that a second plate, which keeps the margin on both sides, could lie in it.
double thinnestWeb(const placement::Spacing& spacing) {
    constexpr double kLeast = 0.1; // mm; plates that touch the edge
    return std::max(std::min(spacing.clear(), 2 * spacing.margin), kLeast);
}

/// What is left of a piece as the rack keeps it.
rack::Offcut offcutOf(const rack::Offcut& from, const placement::Stock& part, bool isWhole) {
    rack::Offcut rest = from;
    rest.count = 1;
    rest.owned = true; // what was bought is now there
    if (!isWhole) {
        rest.outline = job::Outline{};
        rest.outline.shape = job::OutlineShape::Polygon;
        rest.outline.points = part.rim.vertices;
    }
    rest.holes.clear();
    rest.badAreas.clear();
    for (const placement::Obstacle& thing : part.obstacles) {
        if (!thing.isHole) {
            rest.badAreas.push_back(from.badAreas[thing.index]);
        } else if (thing.index != placement::kCut) {
            rest.holes.push_back(from.holes[thing.index]);
        } else {
            rack::StockHole hole;
            if (const auto circle = shape::asCircle(thing.loop)) {
                hole.form.at = {units::Length::fromMm(circle->centre.x),
                                units::Length::fromMm(circle->centre.y)};
                hole.form.diameter = units::Length::fromMm(circle->radius * 2);
            } else {
                hole.points = thing.loop.vertices;
            }
            rest.holes.push_back(std::move(hole));
        }
    }
    return rest;
}

/// A part of a piece as the file keeps it: as the piece was typed, and with what the program does not know of
/// it. Only the outline of a part and the holes that were cut are new.
Tree asTyped(const Tree& typed, const rack::Offcut& rest, const placement::Stock& part, bool isWhole) {
    Tree left = typed;
    const Tree made = rack::toTree(rest);
    left.erase("count");
    left.erase("owned");
    for (const char* key : {"name", "note"})
        if (const Tree* words = made.find(key))
            left[key] = *words;
    if (!isWhole) {
        for (const char* key :
             {"outline.diameter", "outline.length", "outline.width", "outline.corner", "outline.ends"})
            left.erase(key);
        for (const char* key : {"outline.shape", "outline.points"})
            left.set(key, *made.at(key));
    }
    const auto keep = [&](const char* list, bool holes) {
        const Tree* before = typed.find(list);
        const Tree* now = made.find(list);
        Tree::List kept;
        for (const placement::Obstacle& thing : part.obstacles)
            if (thing.isHole == holes)
                kept.push_back(thing.index != placement::kCut && before && before->items()
                                   ? (*before->items())[thing.index]
                                   : (*now->items())[kept.size()]);
        if (kept.empty())
            left.erase(list);
        else
            left[list] = std::move(kept);
    };
    keep("holes", true);
    keep("bad_areas", false);
    return left;
}

std::vector<std::string> droppedWords(const placement::Parted& parted, double web, units::System system) {
    const auto show = [&](double mm) { return units::show(units::Length::fromMm(mm), system); };
    std::vector<std::string> words;
    if (parted.webs > 0)
        words.push_back(
            say("Beside the cut only %1 is left at the thinnest; steel thinner than %2 there is not "
                "counted.",
                {show(std::round(parted.thinnest * 10) / 10), show(web)}));
    if (parted.crumbs > 0)
        words.push_back(sayMany("%n parts are scrap: no disc of %1 goes into them.",
                                "1 part is scrap: no disc of %1 goes into it.", parted.crumbs,
                                {show(placement::kUsableWidth)}));
    return words;
}

} // namespace

job::Job jobOnPiece(const job::Job& job, const rack::Offcut& offcut, const placement::Placement* place) {
    job::Job made = job;
    made.plate.thickness = rack::soundThickness(offcut);
    // A guess is no knowledge: only a steel that is known counts for more than scrap.
    made.plate.steel = offcut.steelIs == rack::SteelIs::Known && offcut.steel
                           ? offcut.steel
                           : job::Given<job::Material>(job::Material{.name = "unknown scrap"});
    made.plate.tests = offcut.tests;
    if (place && place->bore && made.plate.boreThread.empty())
        made.plate.bore = units::Length::fromMm(place->boreDiameter);
    return made;
}

std::vector<std::pair<std::string, Tree>> changesFor(const PieceAnswer& answer, const rack::Offcut& offcut) {
    const Tree piece = rack::toTree(offcut);
    std::vector<std::pair<std::string, Tree>> changes;
    changes.emplace_back("plate.thickness", inMm(answer.thickness.mm()));
    const Tree* steel = offcut.steelIs == rack::SteelIs::Known ? piece.find("steel") : nullptr;
    changes.emplace_back("plate.steel", steel ? *steel : Tree("unknown scrap"));
    // Key by key: what else the job's groups hold is not ours to drop.
    for (const char* key : {"tests.file", "tests.bend", "tests.cracks"}) {
        const Tree* found = piece.at(key);
        changes.emplace_back(std::string("plate.") + key, found ? *found : Tree());
    }
    Tree at, turn;
    if (answer.place) {
        at = Tree::List{inMm(answer.place->pose.at.x), inMm(answer.place->pose.at.y)};
        const double degrees = units::Angle::fromRadian(answer.place->pose.turn).degree();
        turn = jobfile::describe(Tree(std::round(degrees * 1000) / 1000)) + " deg";
        if (answer.place->bore)
            changes.emplace_back("plate.bore", inMm(answer.place->boreDiameter));
    }
    changes.emplace_back("piece.name", answer.name);
    changes.emplace_back("piece.at", std::move(at));
    changes.emplace_back("piece.turn", std::move(turn));
    return changes;
}

Cutting cutFrom(const Tree& rack, const rack::Offcut& offcut, const shape::Region& plate,
                const PieceAnswer& answer) {
    Cutting cutting;
    cutting.rack = rack;
    Tree* rows = &cutting.rack["offcuts"];
    if (!answer.place || !rows->items() || offcut.row >= rows->items()->size())
        return cutting;
    std::vector<placement::Placement> places{*answer.place};
    places.insert(places.end(), answer.others.begin(), answer.others.end());
    const shape::Loop cut = placement::cutLoop(plate, answer.spacing.kerf);
    std::vector<shape::Loop> cuts;
    for (const placement::Placement& place : places)
        cuts.push_back(placement::placed(cut, place.pose));
    const double web = thinnestWeb(answer.spacing);
    const placement::Parted parted = placement::partedBy(answer.stock, cuts, web);
    cutting.cutMm2 = shape::signedArea(cut) * static_cast<double>(cuts.size());
    cutting.droppedMm2 = parted.dropped;
    cutting.words = droppedWords(parted, web, rack::readRack(rack).rack.preferred);
    cutting.rests = remainderNames(rack, offcut.name, parted.parts.size());
    Tree::List left;
    for (std::size_t i = 0; i < parted.parts.size(); ++i) {
        const placement::Stock& part = parted.parts[i];
        rack::Offcut rest = offcutOf(offcut, part, part.rim == answer.stock.rim);
        rest.name = cutting.rests[i];
        if (parted.webs > 0)
            rest.note += (rest.note.empty() ? "" : " ") + cutting.words.front();
        left.push_back(asTyped((*rows->items())[offcut.row], rest, part, part.rim == answer.stock.rim));
    }
    Tree::List& list = *rows->items();
    const auto row = list.begin() + static_cast<std::ptrdiff_t>(offcut.row);
    const auto behind = offcut.count > 1 ? row + 1 : list.erase(row);
    list.insert(behind, left.begin(), left.end());
    if (offcut.count > 1)
        list[offcut.row]["count"] = offcut.count - 1;
    return cutting;
}

jobfile::Tree afterCutting(const Tree& rack, const rack::Offcut& offcut, const shape::Region& plate,
                           const PieceAnswer& answer) {
    return cutFrom(rack, offcut, plate, answer).rack;
}

Found<PieceUnder> pieceUnder(const job::Job& job, const rack::RackReading& rack) {
    if (!job.piece || job.piece->name.empty())
        return std::nullopt;
    PieceUnder under;
    under.name = job.piece->name;
    const auto offcut = std::ranges::find(rack.rack.offcuts, job.piece->name, &rack::Offcut::name);
    if (offcut == rack.rack.offcuts.end()) {
        under.trouble = say("The rack has no piece called \"%1\".", {under.name});
        return under;
    }
    const placement::BuiltStock built = placement::buildStock(*offcut);
    if (!built.problems.empty()) {
        under.trouble = built.problems.front().message;
        return under;
    }
    Pose pose;
    if (job.piece->at)
        pose.at = {job.piece->at->x.mm(), job.piece->at->y.mm()};
    if (job.piece->turn)
        pose.turn = job.piece->turn->radian();
    under.stock.rim = underPlate(built.stock.rim, pose);
    for (placement::Obstacle thing : built.stock.obstacles) {
        thing.loop = underPlate(thing.loop, pose);
        under.stock.obstacles.push_back(std::move(thing));
    }
    std::optional<units::Length> tapped;
    if (const auto thread = thread::parse(job.plate.boreThread))
        tapped = thread::tappingDrill(*thread);
    const outline::Built plate = outline::buildRegion(job, tapped);
    if (!plate.ok())
        return under;
    const placement::Spacing spacing = placement::spacingFor(job, rack::soundThickness(*offcut));
    const auto bore = std::ranges::find(plate.region.holes, shape::Part::Bore, &shape::Hole::part);
    std::optional<std::size_t> asBore;
    // A hundredth: the job file keeps places and diameters to that.
    for (std::size_t i = 0; bore != plate.region.holes.end() && i < under.stock.obstacles.size(); ++i)
        if (const auto hole = shape::asCircle(under.stock.obstacles[i].loop))
            if (const auto wanted = shape::asCircle(bore->loop);
                wanted && std::abs(hole->radius - wanted->radius) < 0.1 &&
                shape::distance(hole->centre, wanted->centre) < 0.1)
                asBore = i;
    placement::Spacing rounded = spacing;
    rounded.margin = std::max(0.0, rounded.margin - 0.02);
    under.fits = placement::fits(plate.region, under.stock, rounded, {}, asBore);
    if (!under.fits)
        under.trouble =
            say("The plate does not lie clear of the edges, holes and bad areas of \"%1\" where it is put: "
                "%2 is wanted all round, the cut counted in.",
                {under.name, units::show(units::Length::fromMm(spacing.clear()), job.preferred)});
    return under;
}

void addStockFit(Report& report, const PieceUnder& under) {
    verdict::Check check;
    check.id = "stock.fit";
    check.member = "plate";
    check.title = say("Piece from the rack");
    check.kind = verdict::CheckKind::Fit;
    check.grade = under.fits ? verdict::Grade::Holds : verdict::Grade::Breaks;
    check.basis = under.fits
                      ? say("the plate lies on \"%1\", clear of its edges, holes and bad areas", {under.name})
                      : under.trouble;
    check.source =
        "clear of edges by kerf, layout error and ISO 9013 squareness (from memory); common practice";
    if (under.fits || report.grade == verdict::Grade::Breaks || report.grade == verdict::Grade::Incomplete) {
        report.checks.push_back(std::move(check));
        return;
    }
    report.grade = check.grade;
    report.reason = check.basis;
    report.weakest = check.id;
    report.checks.insert(report.checks.begin(), std::move(check));
}

void markOnRack(Ladder& ladder, const rack::RackReading& rack) {
    constexpr double kRolled = 0.5; // mm
    for (Rung& rung : ladder.rungs)
        rung.onRack = std::ranges::any_of(rack.rack.offcuts, [&](const rack::Offcut& offcut) {
            return offcut.owned &&
                   std::abs(rack::soundThickness(offcut).mm() - rung.thickness.mm()) <= kRolled;
        });
}

std::filesystem::path rackFileOf(const job::Job& job, const std::filesystem::path& jobFile) {
    if (job.rack.empty())
        return {};
    const std::filesystem::path rack(job.rack);
    return rack.is_absolute() ? rack : jobFile.parent_path() / rack;
}

} // namespace pw::engine
