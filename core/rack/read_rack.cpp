#include "core/rack/read_rack.h"

#include "core/jobfile/field_reader.h"
#include "core/jobfile/sections.h"
#include "core/rack/rack_file.h"
#include "core/util/say.h"

#include <algorithm>
#include <map>
#include <set>

namespace pw::rack {

namespace {

using jobfile::FieldReader;
using jobfile::Findings;
using jobfile::Tree;
using jobfile::Word;

constexpr Word<SteelIs> kSteelIs[] = {
    {"known", SteelIs::Known}, {"guessed", SteelIs::Guessed}, {"unknown", SteelIs::Unknown}};
constexpr Word<job::FileTest> kFileTests[] = {{"bites", job::FileTest::Bites},
                                              {"skates", job::FileTest::Skates}};
constexpr Word<job::BendTest> kBendTests[] = {{"bent", job::BendTest::Bent},
                                              {"snapped", job::BendTest::Snapped}};
constexpr Word<job::CrackTest> kCrackTests[] = {{"none", job::CrackTest::None},
                                                {"seen", job::CrackTest::Seen}};

constexpr std::size_t kMostBadAreas = 200;
constexpr int kMostOfOne = 10000;

/// Points nearer than this, mm, are one point measured twice.
constexpr double kSamePoint = 0.01;

/// Takes out points that repeat the one before them, and a last one that closes the curve again.
bool dropRepeated(std::vector<shape::Vertex>& points) {
    const std::size_t before = points.size();
    std::vector<shape::Vertex> kept;
    for (const shape::Vertex& point : points) {
        if (!kept.empty() && shape::distance(kept.back().at, point.at) < kSamePoint)
            kept.back().bulge = point.bulge; // the side that goes on from here
        else
            kept.push_back(point);
    }
    while (kept.size() > 1 && shape::distance(kept.back().at, kept.front().at) < kSamePoint)
        kept.pop_back();
    points = std::move(kept);
    return points.size() != before;
}

/// A closed curve that can be worked with; says what is wrong with it otherwise.
void checkCurve(FieldReader& figures, std::string_view key, std::vector<shape::Vertex>& points) {
    dropRepeated(points);
    const bool isRound = points.size() == 2 && (points[0].bulge != 0 || points[1].bulge != 0);
    if (points.size() < 3 && !isRound)
        return figures.problem(key, say("needs at least three points; take them in order round the edge"));
    if (shape::crossesItself(shape::Loop{points}))
        figures.problem(key, say("the line crosses itself; list the points in order round the edge"));
}

bool readBadArea(FieldReader& figures, BadArea& area) {
    figures.corners("points", area.points, jobfile::kMostCorners);
    figures.text("note", area.note);
    if (area.points.empty())
        return figures.missing("points");
    checkCurve(figures, "points", area.points);
    return true;
}

bool readStockHole(FieldReader& figures, StockHole& hole) {
    if (!figures.has("points"))
        figures.acceptKey("points");
    else {
        figures.acceptKey("at");
        figures.corners("points", hole.points, jobfile::kMostCorners);
        if (!hole.points.empty())
            checkCurve(figures, "points", hole.points);
        return true;
    }
    if (!jobfile::readHole(figures, hole.form))
        return false;
    if (hole.form.form.shape == job::HoleShape::Open)
        figures.problem("shape", say("a hole in a piece is round, a slot, or traced by points; draw a notch "
                                     "as part of the outline"));
    else if (hole.form.form.shape == job::HoleShape::Slot) {
        if (!hole.form.form.length || !hole.form.form.width)
            figures.problem("length", say("a slot needs length and width"));
    } else if (!hole.form.diameter) {
        return figures.missing("diameter");
    }
    return true;
}

void readTests(FieldReader& figures, job::ShopTests& tests) {
    figures.choice("file", tests.file, kFileTests);
    figures.choice("bend", tests.bend, kBendTests);
    figures.choice("cracks", tests.cracks, kCrackTests);
}

bool isUnknown(const job::Material& steel) {
    return steel.name == "unknown scrap" || steel.name == "unknown";
}

void readSteel(FieldReader& figures, Offcut& offcut) {
    figures.material("steel", offcut.steel);
    Given<SteelIs> is;
    figures.choice("steel_is", is, kSteelIs);
    const bool named = offcut.steel && !isUnknown(*offcut.steel);
    offcut.steelIs = is.value_or(named ? SteelIs::Known : SteelIs::Unknown);
    if (!named)
        offcut.steelIs = SteelIs::Unknown;
}

void readThickness(FieldReader& figures, Offcut& offcut) {
    Given<Range<Length>> thickness;
    figures.range("thickness", thickness, jobfile::kSize);
    figures.quantity("pitting", offcut.pitting, jobfile::kSmall);
    if (!thickness) {
        if (!figures.has("thickness"))
            figures.problem("thickness", say("is missing; measure it at the thinnest place"));
        return;
    }
    offcut.thickness = *thickness;
    if (offcut.pitting && *offcut.pitting >= offcut.thickness.low)
        figures.problem("pitting", say("the pits are as deep as the piece is thick; nothing sound is left"));
}

/// `words` takes what was mended.
void readOffcut(FieldReader& figures, Offcut& offcut, std::vector<std::string>& words) {
    figures.text("name", offcut.name);
    readThickness(figures, offcut);
    readSteel(figures, offcut);
    figures.part("tests", offcut.tests, readTests);
    if (!figures.has("outline"))
        figures.problem("outline", say("is missing; give two sides, a diameter or the corners"));
    figures.group("outline", [&](FieldReader& inner) {
        const std::size_t before = inner.problemCount();
        jobfile::readOutline(inner, offcut.outline);
        if (offcut.outline.shape != job::OutlineShape::Polygon || inner.problemCount() > before)
            return;
        if (offcut.outline.points.empty())
            return inner.problem("points", say("are missing; list the corners in order round the edge"));
        if (dropRepeated(offcut.outline.points))
            words.push_back(say("points written twice are counted once"));
        checkCurve(inner, "points", offcut.outline.points);
    });
    figures.rows("holes", offcut.holes, jobfile::kMostHoles, readStockHole);
    figures.rows("bad_areas", offcut.badAreas, kMostBadAreas, readBadArea);
    figures.text("note", offcut.note);
    figures.text("where", offcut.where);
    Given<int> count;
    figures.whole("count", count, 0, kMostOfOne);
    offcut.count = count.value_or(1);
    figures.flag("owned", offcut.owned);
}

/// Names must tell pieces apart: a second "old door" becomes "old door (2)". `last` is the number of the last
/// of that name, so that a thousand of one name are not counted through a thousand times.
std::string freeName(const std::string& name, const std::set<std::string>& taken, int& last) {
    for (int i = std::max(last + 1, 2);; ++i)
        if (std::string other = name + " (" + std::to_string(i) + ")"; !taken.contains(other)) {
            last = i;
            return other;
        }
}

} // namespace

Length soundThickness(const Offcut& offcut) {
    return offcut.thickness.low - offcut.pitting.value_or(Length());
}

RackReading readRack(const Tree& tree) {
    RackReading reading;
    if (auto trouble = rackVersionTrouble(tree)) {
        reading.problems.push_back(std::move(*trouble));
        return reading;
    }
    for (const auto& [key, value] : *tree.members())
        if (key != "platewright_rack" && key != "offcuts" && key != "title" && key != "notes")
            reading.unknownKeys.push_back(key);
    const Tree* rows = tree.find("offcuts");
    if (!rows || rows->isNull())
        return reading;
    const Tree::List* items = rows->items();
    if (!items || items->size() > kMostOffcuts) {
        reading.problems.push_back(
            {"offcuts", items ? say("Too many pieces: at most %1 can be handled.", {kMostOffcuts})
                              : say("Must be a list of pieces in brackets [ ].")});
        return reading;
    }
    std::set<std::string> taken;
    std::map<std::string, int> lastOf;
    int inch = 0, metric = 0;
    for (std::size_t i = 0; i < items->size(); ++i) {
        const Tree& item = (*items)[i];
        const std::string path = "offcuts[" + std::to_string(i) + "]";
        Offcut offcut;
        offcut.row = i;
        std::string name = say("piece %1", {i + 1});
        if (!item.members()) {
            reading.refused.push_back({i, name, path, say("Must be a group of figures in braces { }.")});
            continue;
        }
        Findings findings;
        FieldReader figures(&item, path, findings);
        std::vector<std::string> words;
        readOffcut(figures, offcut, words);
        figures.close();
        inch += findings.inchFigures;
        metric += findings.metricFigures;
        reading.unknownKeys.insert(reading.unknownKeys.end(), findings.unknownKeys.begin(),
                                   findings.unknownKeys.end());
        if (!offcut.name.empty())
            name = offcut.name;
        if (taken.contains(name)) {
            const std::string other = freeName(name, taken, lastOf[name]);
            words.push_back(say("another piece has this name; called \"%1\" here", {other}));
            name = other;
        }
        offcut.name = name;
        taken.insert(name);
        for (const util::Problem& problem : findings.problems)
            reading.refused.push_back({i, name, problem.field, problem.message});
        for (const std::string& word : words)
            reading.mended.push_back({i, name, path, word});
        if (findings.problems.empty() && offcut.count == 0)
            reading.mended.push_back({i, name, path + ".count", say("none is left; passed over")});
        else if (findings.problems.empty())
            reading.rack.offcuts.push_back(std::move(offcut));
    }
    reading.rack.preferred = inch > metric ? units::System::Inch : units::System::Metric;
    return reading;
}

} // namespace pw::rack
