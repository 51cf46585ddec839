#include "app/paper/template_plan.h"

#include "app/engine/write.h"
#include "core/job/assumed.h"
#include "core/thread/thread.h"
#include "geometry/exchange/cut_path.h"
#include "geometry/exchange/cut_plan.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <ctime>
#include <numbers>

namespace pw::paper {

using shape::Box;
using shape::Point;

namespace {

constexpr double kBeyond = 4; ///< mm that axes and scribe lines run past what they cross
constexpr std::size_t kTitleSigns = 120;

/// As a drill or a rule is marked: inches in fractions.
std::string asMarked(units::Length length, units::System system) {
    return system == units::System::Inch ? units::inchFraction(length) : units::show(length, system);
}

Point middleOf(const Box& box) {
    return 0.5 * (box.low + box.high);
}

exchange::CutPlan cutPlanOf(const job::Job& job, const shape::Region& region, const job::Assumed& assumed) {
    exchange::CutSettings settings;
    settings.process = assumed.process;
    settings.thickness = *job.plate.thickness;
    settings.kerf = assumed.habits.kerf;
    settings.growth = assumed.habits.growth;
    settings.drilledExtras = job::holesForTheDrill(job.plate);
    if (const auto thread = thread::parse(job.plate.boreThread); !job.plate.boreThread.empty() && thread)
        settings.tappedBore = exchange::TappedBore{thread->name, thread::tappingDrill(*thread)};
    return exchange::makeCutPlan(region, settings);
}

/// What is marked with the punch: a station's own place, else the middle of the hole.
Point centreOf(const shape::Loop& loop, shape::Part part, int index, const std::vector<Point>& stations) {
    if (const auto circle = asCircle(loop))
        return circle->centre;
    if (part == shape::Part::Access && static_cast<std::size_t>(index) < stations.size())
        return stations[static_cast<std::size_t>(index)];
    return middleOf(bounds(loop));
}

std::string nameOf(shape::Part part, int index) {
    return part == shape::Part::Access ? std::to_string(index + 1) : exchange::nameOf(part, index);
}

std::string withNote(std::string text, const std::string& note) {
    return note.empty() ? text : text + ", " + note;
}

std::vector<MarkedHole> holesOf(const exchange::CutPlan& cut, const std::vector<Point>& stations,
                                units::System system) {
    std::vector<MarkedHole> holes;
    std::vector<bool> marked(stations.size());
    const auto take = [&](MarkedHole hole, shape::Part part, int index) {
        if (part == shape::Part::Access && static_cast<std::size_t>(index) < marked.size())
            marked[static_cast<std::size_t>(index)] = true;
        holes.push_back(std::move(hole));
    };
    for (const exchange::DrilledHole& hole : cut.drilled)
        take({shape::circleLoop(hole.centre, hole.diameter.mm() / 2), hole.centre,
              nameOf(hole.part, hole.index),
              withNote("drill " + asMarked(hole.diameter, system),
                       hole.note.starts_with("tap") ? hole.note : "")},
             hole.part, hole.index);
    for (const exchange::CutEdge& edge : cut.inside) {
        const auto circle = asCircle(edge.loop);
        std::string how = edge.note;
        if (circle)
            how = withNote("burn " + asMarked(units::Length::fromMm(2 * circle->radius), system), edge.note);
        else if (how.empty())
            how = cut.settings.process == job::Process::Milled ? "mill" : "burn";
        take({edge.loop, centreOf(edge.loop, edge.part, edge.index, stations), nameOf(edge.part, edge.index),
              how},
             edge.part, edge.index);
    }
    for (std::size_t i = 0; i < stations.size(); ++i)
        if (!marked[i])
            holes.push_back({{}, stations[i], std::to_string(i + 1), "open to the rim"});
    return holes;
}

/// Radii of the circles about the origin that three stations or more lie on, each once.
std::vector<double> circlesOf(const std::vector<Point>& stations) {
    std::vector<double> radii;
    for (const Point& station : stations) {
        const double r = norm(station);
        constexpr double kSame = 0.05; // mm, less than a line is wide
        const auto same = [&](double other) { return std::abs(other - r) < kSame; };
        const auto on =
            std::count_if(stations.begin(), stations.end(), [&](Point other) { return same(norm(other)); });
        if (r > kSame && on >= 3 && std::none_of(radii.begin(), radii.end(), same))
            radii.push_back(r);
    }
    return radii;
}

std::string sizesOf(const job::Job& job, const shape::Region& region) {
    const auto said = [&](units::Length length) { return asMarked(length, job.preferred); };
    std::string text;
    if (const auto rim = asCircle(region.rim))
        text += " Rim " + said(units::Length::fromMm(2 * rim->radius)) + ".";
    const job::Stations& stations = job.stations;
    if (stations.at.empty() && stations.circle && stations.count) {
        text += " Pin circle " + said(*stations.circle) + ".";
        // Chord over one part of n of a circle of diameter D: D sin(pi/n).
        if (*stations.count >= 2)
            text +=
                " Dividers, hole to next: " +
                units::show(*stations.circle * std::sin(std::numbers::pi / *stations.count), job.preferred) +
                ".";
    }
    return text;
}

std::string warningOf(const engine::Report& report) {
    if (engine::mayBeMade(report.grade))
        return {};
    std::string word(verdict::wordOf(report.grade));
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return "DO NOT USE: " + word;
}

/// Does the ring of this radius about the origin pass through the box?
bool ringPasses(double radius, const Box& box) {
    const Point nearest{std::clamp(0.0, box.low.x, box.high.x), std::clamp(0.0, box.low.y, box.high.y)};
    const Point farthest{std::max(std::abs(box.low.x), std::abs(box.high.x)),
                         std::max(std::abs(box.low.y), std::abs(box.high.y))};
    return norm(nearest) <= radius && radius <= norm(farthest);
}

/// Does the straight line from a to b pass through the box? Looked at in steps far shorter than any words.
bool linePasses(Point a, Point b, const Box& box) {
    const int steps = 1 + static_cast<int>(distance(a, b));
    for (int i = 0; i <= steps; ++i) {
        const Point p = a + (static_cast<double>(i) / steps) * (b - a);
        if (p.x > box.low.x && p.x < box.high.x && p.y > box.low.y && p.y < box.high.y)
            return true;
    }
    return false;
}

bool meet(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

/// Does the outline come into the box, or the box lie in the outline?
bool touches(const shape::Loop& loop, Point centre, const Box& box) {
    if (loop.vertices.empty())
        return false;
    const std::array<Point, 9> places{box.low,
                                      {box.high.x, box.low.y},
                                      box.high,
                                      {box.low.x, box.high.y},
                                      {(box.low.x + box.high.x) / 2, box.low.y},
                                      {(box.low.x + box.high.x) / 2, box.high.y},
                                      {box.low.x, (box.low.y + box.high.y) / 2},
                                      {box.high.x, (box.low.y + box.high.y) / 2},
                                      middleOf(box)};
    if (centre.x > box.low.x && centre.x < box.high.x && centre.y > box.low.y && centre.y < box.high.y)
        return true;
    constexpr double kClear = 0.7; // mm
    return std::any_of(places.begin(), places.end(),
                       [&](Point p) { return contains(loop, p) || distanceTo(loop, p) < kClear; });
}

/// What is wrong with words here; 0 is nothing.
double badness(const Label& label, const TemplatePlan& plan, const Tiling& tiling,
               const std::vector<Label>& placed) {
    const Point half{label.halfWidth, label.halfHeight};
    const Box box{label.centre - half, label.centre + half};
    double sum = 0;
    for (const MarkedHole& hole : plan.holes)
        sum += 20 * touches(hole.loop, hole.centre, box);
    for (const Label& other : placed) {
        constexpr double kApart = 1.5; // mm, so that it is plain which hole is meant
        const Point otherHalf{other.halfWidth + kApart, other.halfHeight + kApart};
        sum += 30 * meet(box, {other.centre - otherHalf, other.centre + otherHalf});
    }
    const auto joins = [](const std::vector<double>& starts, double low, double high) {
        return std::count_if(starts.begin() + 1, starts.end(), [&](double x) { return x > low && x < high; });
    };
    sum += 10.0 * static_cast<double>(joins(tiling.left, box.low.x, box.high.x) +
                                      joins(tiling.top, box.low.y, box.high.y));
    const std::array<Point, 4> corners{box.low, Point{box.high.x, box.low.y}, box.high,
                                       Point{box.low.x, box.high.y}};
    const auto inside =
        std::count_if(corners.begin(), corners.end(), [&](Point p) { return contains(plan.rim, p); });
    sum += inside == 4 ? 0 : inside == 0 ? 6 : 12;
    if (box.low.x < plan.content.low.x || box.low.y < plan.content.low.y ||
        box.high.x > plan.content.high.x || box.high.y > plan.content.high.y)
        sum += 40;
    for (const double radius : plan.pinCircles)
        sum += 2 * ringPasses(radius, box);
    for (const auto& [from, to] : plan.scribes)
        sum += 2 * linePasses(from, to, box);
    return sum;
}

} // namespace

std::string today() {
    static constexpr std::array<const char*, 12> kMonths{"January",   "February", "March",    "April",
                                                         "May",       "June",     "July",     "August",
                                                         "September", "October",  "November", "December"};
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    localtime_r(&now, &parts);
    return std::to_string(parts.tm_mday) + " " + kMonths.at(static_cast<std::size_t>(parts.tm_mon)) + " " +
           std::to_string(1900 + parts.tm_year);
}

std::vector<Box> boxesOf(const std::vector<MarkedHole>& holes) {
    std::vector<Box> boxes;
    for (const MarkedHole& hole : holes)
        boxes.push_back(hole.loop.vertices.empty() ? Box{hole.centre, hole.centre} : bounds(hole.loop));
    return boxes;
}

TemplatePlan planTemplate(const job::Job& job, const engine::Report& report, const std::string& date) {
    const shape::Region& region = *report.region;
    const job::Assumed assumed = job::assume(job);
    TemplatePlan plan;
    plan.rim = region.rim;
    plan.holes = holesOf(cutPlanOf(job, region, assumed), report.stations, job.preferred);
    plan.pinCircles = circlesOf(report.stations);

    const Box rim = bounds(region.rim);
    const Point more{kBeyond, kBeyond};
    plan.content = {rim.low - more, rim.high + more};
    plan.scribes = {{{plan.content.low.x, 0}, {plan.content.high.x, 0}},
                    {{0, plan.content.low.y}, {0, plan.content.high.y}}};
    for (const Point station : report.stations) {
        const double r = norm(station);
        constexpr double kOnAxis = 0.05; // mm: two dashed lines on one another look like a line drawn through
        if (std::abs(station.x) < kOnAxis || std::abs(station.y) < kOnAxis)
            continue;
        double radius = 0;
        for (const MarkedHole& hole : plan.holes)
            if (!hole.loop.vertices.empty() && contains(hole.loop, station))
                radius = std::sqrt(std::abs(signedArea(hole.loop)) / std::numbers::pi);
        plan.scribes.push_back({{0, 0}, (1 + (radius + kBeyond) / r) * station});
    }

    plan.title = exchange::cleanText(job.title, kTitleSigns);
    if (plan.title.empty())
        plan.title = "Plate without a title";
    const bool pull = job.work == job::Work::Pull;
    plan.facts = asMarked(*job.plate.thickness, job.preferred) + " thick, " +
                 exchange::cleanText(assumed.steel.name, kTitleSigns) + ", " +
                 std::string(job::nameOf(assumed.process)) + "." + sizesOf(job, region) +
                 (assumed.stacked > 1 ? " One plate of " + std::to_string(assumed.stacked) + "." : "") +
                 " Full size. " + exchange::cleanText(date, kTitleSigns) + ".";
    plan.test =
        std::string(pull ? "Hold it to the part before you cut" : "Hang it on the pins before you cut") +
        ", the holes cut out of the paper. Go: every " + (pull ? "bolt" : "pin") +
        " stands in the middle of its hole. No-go: one does not; measure again. Then glue it down and "
        "punch every dot through the paper.";
    plan.warning = warningOf(report);
    return plan;
}

std::vector<Label> placeLabels(const TemplatePlan& plan, const Tiling& tiling) {
    constexpr double kSignWidth = 0.56; // of the height of type, a middling sign
    constexpr int kDirections = 16;
    std::vector<Label> placed;
    for (const MarkedHole& hole : plan.holes) {
        Label label;
        label.name = hole.name;
        label.how = hole.how;
        label.halfWidth = kSignWidth / 2 *
                          std::max(kHeading * static_cast<double>(hole.name.size()),
                                   kSmall * static_cast<double>(hole.how.size()));
        label.halfHeight = (kHeading + kSmall) * 0.6;
        const Box box = hole.loop.vertices.empty() ? Box{hole.centre, hole.centre} : bounds(hole.loop);
        const double out = norm(hole.centre) > 0 ? std::atan2(hole.centre.y, hole.centre.x) : 0;
        Label best = label;
        double least = 1e9;
        for (const double gap : {1.5, 4.0, 7.0, 11.0, 16.0})
            for (int i = 0; i < kDirections; ++i) {
                // Beside the ray first, turning away from it to both hands.
                const double turn = (i % 2 ? -1 : 1) * (i / 2 + 0.5) * 2 * std::numbers::pi / kDirections;
                const Point way = shape::polar(1, out + std::numbers::pi + turn);
                const Point half{box.width() / 2 + gap + label.halfWidth,
                                 box.height() / 2 + gap + label.halfHeight};
                // On the rounded frame round the hole: along the direction until either half is used up.
                const double reach = std::min(half.x / std::max(std::abs(way.x), 1e-6),
                                              half.y / std::max(std::abs(way.y), 1e-6));
                label.centre = middleOf(box) + reach * way;
                const double bad = badness(label, plan, tiling, placed) + 0.1 * gap;
                if (bad < least - 1e-9)
                    best = label, least = bad;
            }
        placed.push_back(best);
    }
    return placed;
}

} // namespace pw::paper
