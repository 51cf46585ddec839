#include "app/engine/rack.h"
#include "core/jobfile/words.h"
#include "core/rack/rack_file.h"
#include "core/thread/thread.h"
#include "core/util/say.h"
#include "geometry/outline/build.h"
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

/// Named after what it came from, and told apart from what is there already.
std::string remainderName(const Tree& rack, const std::string& name) {
    const std::string base = say("%1, rest", {name});
    const auto taken = [&](const std::string& text) {
        const Tree* rows = rack.find("offcuts");
        for (const Tree& row : *rows->items())
            if (const Tree* other = row.find("name"); other && other->text() && *other->text() == text)
                return true;
        return false;
    };
    std::string free = base;
    for (int i = 2; taken(free); ++i)
        free = base + " " + std::to_string(i);
    return free;
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
    const Tree* tests = piece.find("tests");
    changes.emplace_back("plate.tests", tests ? *tests : Tree());
    Tree under = Tree::object();
    under["name"] = answer.name;
    if (answer.place) {
        under["at"] = Tree::List{inMm(answer.place->pose.at.x), inMm(answer.place->pose.at.y)};
        const double degrees = units::Angle::fromRadian(answer.place->pose.turn).degree();
        under["turn"] = jobfile::describe(Tree(std::round(degrees * 1000) / 1000)) + " deg";
        if (answer.place->bore)
            changes.emplace_back("plate.bore", inMm(answer.place->boreDiameter));
    }
    changes.emplace_back("piece", std::move(under));
    return changes;
}

jobfile::Tree afterCutting(const Tree& rack, const rack::Offcut& offcut, const shape::Region& plate,
                           const PieceAnswer& answer) {
    Tree after = rack;
    Tree* rows = &after["offcuts"];
    if (!answer.place || !rows->items() || offcut.row >= rows->items()->size())
        return after;
    std::vector<placement::Placement> places{*answer.place};
    places.insert(places.end(), answer.others.begin(), answer.others.end());
    const shape::Loop cut = placement::cutLoop(plate, answer.spacing.kerf);
    std::vector<shape::Loop> cuts;
    for (const placement::Placement& place : places)
        cuts.push_back(placement::placed(cut, place.pose));
    // The remainder is the piece as it was typed, and what the program does not know of it stays with it.
    Tree left = (*rows->items())[offcut.row];
    left["name"] = remainderName(rack, offcut.name);
    left.erase("count");
    left.erase("owned"); // what was bought is now there
    // What lay within the cut is gone with it.
    const auto isGone = [&](const shape::Loop& loop) {
        return std::ranges::any_of(cuts, [&](const shape::Loop& c) {
            return !shape::crosses(c, loop) && shape::contains(c, loop.vertices.front().at);
        });
    };
    rack::Offcut rest; // holds what is new
    const auto keep = [&](const char* list, bool holes) {
        const Tree* typed = left.find(list);
        if (!typed || !typed->items())
            return;
        Tree::List kept;
        for (const placement::Obstacle& thing : answer.stock.obstacles)
            if (thing.isHole == holes && !isGone(thing.loop))
                kept.push_back((*typed->items())[thing.index]);
        left[list] = std::move(kept);
    };
    keep("holes", true);
    keep("bad_areas", false);
    for (const shape::Loop& loop : cuts) {
        rack::StockHole hole;
        if (const auto circle = shape::asCircle(loop)) {
            hole.form.at = {units::Length::fromMm(circle->centre.x), units::Length::fromMm(circle->centre.y)};
            hole.form.diameter = units::Length::fromMm(circle->radius * 2);
        } else {
            hole.points = loop.vertices;
        }
        rest.holes.push_back(std::move(hole));
    }
    Tree::List& list = *rows->items();
    const Tree made = rack::toTree(rest);
    for (const Tree& hole : *made.find("holes")->items())
        left["holes"].push(hole);
    if (offcut.count > 1) {
        list[offcut.row]["count"] = offcut.count - 1;
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(offcut.row) + 1, std::move(left));
    } else {
        list[offcut.row] = std::move(left);
    }
    return after;
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
