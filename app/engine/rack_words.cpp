#include "app/engine/rack.h"
#include "app/engine/tree_parts.h"
#include "app/engine/write.h"
#include "core/util/say.h"

#include <cmath>

/// The ranked rack for a terminal and as JSON.
namespace pw::engine {

namespace {

using jobfile::Tree;
using units::Length;

Tree placeTree(const placement::Placement& place) {
    Tree t = Tree::object();
    t["x_mm"] = place.pose.at.x;
    t["y_mm"] = place.pose.at.y;
    t["turn_deg"] = units::Angle::fromRadian(place.pose.turn).degree();
    return t;
}

Tree pieceTree(const PieceAnswer& piece) {
    Tree t = Tree::object();
    t["name"] = piece.name;
    t["row"] = static_cast<double>(piece.row);
    t["owned"] = piece.owned;
    t["count"] = piece.count;
    t["thickness_mm"] = piece.thickness.mm();
    t["steel"] = piece.steel.empty() ? Tree() : Tree(piece.steel);
    t["fits"] = piece.fits;
    // What was not checked has no verdict.
    t["verdict"] = piece.fits ? Tree(verdict::wordOf(piece.grade)) : Tree();
    t["margin"] = piece.fits ? number(piece.margin) : Tree();
    t["weakest"] = piece.weakest.empty() ? Tree() : Tree(piece.weakest);
    t["reason"] = piece.reason.empty() ? Tree() : Tree(piece.reason);
    t["place"] = piece.fits && piece.place ? placeTree(*piece.place) : Tree();
    Tree& others = t["other_places"] = Tree::list();
    for (const placement::Placement& place : piece.others)
        others.push(placeTree(place));
    t["bore_from_hole"] = piece.place && piece.place->bore ? Tree(piece.place->boreDiameter) : Tree();
    t["spare_mm"] = piece.place ? Tree(piece.place->spare) : Tree();
    t["waste_mm2"] = piece.fits && piece.place ? Tree(piece.place->waste) : Tree();
    t["remainder_mm2"] = piece.fits && piece.place ? Tree(piece.place->usable) : Tree();
    t["kerf_mm"] = piece.spacing.kerf;
    t["edge_margin_mm"] = piece.spacing.margin;
    t["mass_kg"] = number(piece.massKg);
    t["cut_minutes"] = number(piece.cutMinutes);
    t["short_of"] = piece.shortOf.empty() ? Tree() : Tree(piece.shortOf);
    t["remarks"] = texts(piece.remarks);
    return t;
}

std::string cell(const std::string& text, std::size_t width) {
    // Counted in letters, not bytes.
    std::size_t letters = 0;
    for (const char c : text)
        letters += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    return letters < width ? text + std::string(width - letters, ' ') : text + " ";
}

std::string placeWords(const PieceAnswer& piece, units::System system) {
    const placement::Pose& pose = piece.place->pose;
    const auto show = [&](double mm) { return units::show(Length::fromMm(mm), system); };
    const double degrees = units::Angle::fromRadian(pose.turn).degree();
    std::string words = std::abs(degrees) < 0.05
                            ? say("centre at %1, %2", {show(pose.at.x), show(pose.at.y)})
                            : say("centre at %1, %2, turned %3°",
                                  {show(pose.at.x), show(pose.at.y), units::number(degrees, 3)});
    words += "; ";
    words += piece.place->usable > 0 ? say("leaves usable steel, about as much as a piece of %1",
                                           {asPiece(piece.place->usable, system)})
                                     : say("leaves nothing usable");
    return words;
}

} // namespace

std::string asPiece(double mm2, units::System system) {
    const double side = std::round(std::sqrt(mm2));
    const std::string shown = units::show(Length::fromMm(side), system);
    // 276 x 276 mm; inches have their mark each time.
    const std::string first = system == units::System::Metric ? units::number(side, 6) : shown;
    return say("%1 x %2", {first, shown});
}

Tree toTree(const RackAnswer& answer) {
    Tree t = Tree::object();
    t["platewright"] = 1;
    t["prefer"] = wordOf(answer.prefer);
    Tree& offcuts = t["offcuts"] = Tree::list();
    for (const PieceAnswer& piece : answer.pieces)
        offcuts.push(pieceTree(piece));
    t["best"] = answer.best.empty() ? Tree() : Tree(answer.best);
    Tree& refused = t["refused"] = Tree::list();
    for (const rack::Remark& remark : answer.refused) {
        Tree item = Tree::object();
        item["name"] = remark.name;
        item["field"] = remark.field;
        item["message"] = remark.message;
        refused.push(std::move(item));
    }
    Tree& missing = t["missing"] = Tree::list();
    for (const Missing& m : answer.missing) {
        Tree item = Tree::object();
        item["field"] = m.field;
        item["how"] = m.how;
        missing.push(std::move(item));
    }
    Tree& problems = t["problems"] = Tree::list();
    for (const util::Problem& p : answer.problems) {
        Tree item = Tree::object();
        item["field"] = p.field;
        item["message"] = p.message;
        problems.push(std::move(item));
    }
    return t;
}

std::string toWords(const RackAnswer& answer) {
    std::string out;
    for (const Missing& missing : answer.missing)
        out += missing.how + ".\n";
    for (const util::Problem& problem : answer.problems)
        out += util::toText(problem) + "\n";
    if (!answer.missing.empty() || !answer.problems.empty())
        return units::plainBlanks(out);
    int place = 0;
    for (const PieceAnswer& piece : answer.pieces) {
        std::string line = piece.fits ? cell(std::to_string(++place) + ".", 4) : "    ";
        line += cell(piece.name, 28);
        line += cell(piece.fits ? std::string(verdict::wordOf(piece.grade)) : say("no room"), 11);
        line += cell(units::show(piece.thickness, answer.preferred), 10);
        std::vector<std::string> parts;
        if (piece.fits) {
            if (piece.margin)
                parts.push_back(say("%1 x what is wanted", {units::number(*piece.margin, 2)}));
            if (piece.massKg)
                parts.push_back(units::show(units::Mass::fromKg(*piece.massKg), answer.preferred));
        }
        if (!piece.shortOf.empty())
            parts.push_back(piece.shortOf);
        if (!piece.owned)
            parts.push_back(say("to buy"));
        for (std::size_t i = 0; i < parts.size(); ++i)
            line += (i ? ", " : "") + parts[i];
        out += line + "\n";
        if (piece.fits)
            out += "        " + placeWords(piece, answer.preferred) + "\n";
        if (!piece.where.empty() && piece.fits)
            out += "        " + say("lies: %1", {piece.where}) + "\n";
        for (const std::string& remark : piece.remarks)
            out += "        " + remark + "\n";
    }
    for (const rack::Remark& remark : answer.refused)
        out += say("Left out: %1 (%2): %3", {remark.name, remark.field, remark.message}) + "\n";
    out += answer.best.empty() ? say("No piece will do.") : say("Take: %1", {answer.best});
    return units::plainBlanks(out + "\n");
}

} // namespace pw::engine
