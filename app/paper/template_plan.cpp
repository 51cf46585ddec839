#include "app/paper/template_plan.h"

#include "app/engine/output.h"
#include "app/paper/words.h"
#include "core/job/assumed.h"
#include "core/util/say.h"
#include "geometry/exchange/cut_path.h"
#include "geometry/exchange/cut_plan.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <ctime>
#include <numbers>

namespace pw::paper {

using shape::Box;
using shape::Point;

namespace {

constexpr double kBeyond = 4; ///< mm that axes and scribe lines run past what they cross
constexpr std::size_t kTitleSigns = 120;

Point middleOf(const Box& box) {
    return 0.5 * (box.low + box.high);
}

/// What is marked with the punch: a station's own place, else the middle of the hole.
Point centreOf(const shape::Loop& loop, shape::Part part, int index, const std::vector<Point>& stations) {
    if (const auto circle = asCircle(loop))
        return circle->centre;
    if (part == shape::Part::Access && static_cast<std::size_t>(index) < stations.size())
        return stations[static_cast<std::size_t>(index)];
    return middleOf(bounds(loop));
}

QString nameOf(shape::Part part, int index) {
    switch (part) {
    case shape::Part::Access:
        return QString::number(index + 1);
    case shape::Part::Bore:
        return Paper::tr("bore");
    case shape::Part::Extra:
        return Paper::tr("hole %1").arg(index + 1);
    case shape::Part::Rim:
        break;
    }
    return Paper::tr("rim");
}

QString howBurned(const exchange::CutEdge& edge, job::Process process, units::System system) {
    const bool milled = process == job::Process::Milled;
    if (!edge.note.empty())
        return toQt(say(edge.note.c_str()));
    if (const auto circle = asCircle(edge.loop)) {
        const QString size = toQt(asMarked(units::Length::fromMm(2 * circle->radius), system));
        return milled ? Paper::tr("mill %1").arg(size) : Paper::tr("burn %1").arg(size);
    }
    return milled ? Paper::tr("mill to the line") : Paper::tr("burn to the line");
}

QString howDrilled(const exchange::DrilledHole& hole, const std::optional<exchange::TappedBore>& tapped,
                   units::System system) {
    const QString size = toQt(asMarked(hole.diameter, system));
    if (tapped && hole.part == shape::Part::Bore)
        return Paper::tr("drill %1, tap %2").arg(size, toQt(tapped->thread));
    return Paper::tr("drill %1").arg(size);
}

std::vector<MarkedHole> holesOf(const exchange::CutPlan& cut, const std::vector<Point>& stations,
                                units::System system) {
    std::vector<MarkedHole> holes;
    std::vector<bool> marked(stations.size());
    const auto take = [&](const shape::Loop& loop, Point centre, const QString& how, shape::Part part,
                          int index, bool drilled) {
        if (part == shape::Part::Access && static_cast<std::size_t>(index) < marked.size())
            marked[static_cast<std::size_t>(index)] = true;
        holes.push_back({loop, centre, nameOf(part, index).toStdString(), how.toStdString(), part, drilled});
    };
    for (const exchange::DrilledHole& hole : cut.drilled)
        take(shape::circleLoop(hole.centre, hole.diameter.mm() / 2), hole.centre,
             howDrilled(hole, cut.settings.tappedBore, system), hole.part, hole.index, true);
    for (const exchange::CutEdge& edge : cut.inside)
        take(edge.loop, centreOf(edge.loop, edge.part, edge.index, stations),
             howBurned(edge, cut.settings.process, system), edge.part, edge.index, false);
    for (std::size_t i = 0; i < stations.size(); ++i)
        if (!marked[i])
            holes.push_back({{},
                             stations[i],
                             std::to_string(i + 1),
                             Paper::tr("open to the rim").toStdString(),
                             shape::Part::Access,
                             false});
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

QString sizesOf(const job::Job& job, const shape::Region& region) {
    const auto said = [&](units::Length length) { return toQt(asMarked(length, job.preferred)); };
    QStringList all;
    if (const auto rim = asCircle(region.rim))
        all << Paper::tr("Rim %1.").arg(said(units::Length::fromMm(2 * rim->radius)));
    const job::Stations& stations = job.stations;
    if (stations.at.empty() && stations.circle && stations.count) {
        all << Paper::tr("Pin circle %1.").arg(said(*stations.circle));
        // Chord over one part of n of a circle of diameter D: D sin(pi/n).
        if (*stations.count >= 2)
            all << Paper::tr("Dividers, hole to next: %1.")
                       .arg(toQt(units::show(*stations.circle * std::sin(std::numbers::pi / *stations.count),
                                             job.preferred)));
    }
    return all.join(QLatin1Char(' '));
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

QString dateWords(const std::tm& parts) {
    const QStringList months{Paper::tr("January"), Paper::tr("February"), Paper::tr("March"),
                             Paper::tr("April"),   Paper::tr("May"),      Paper::tr("June"),
                             Paper::tr("July"),    Paper::tr("August"),   Paper::tr("September"),
                             Paper::tr("October"), Paper::tr("November"), Paper::tr("December")};
    return Paper::tr("%1 %2 %3", "a date: day, month, year")
        .arg(parts.tm_mday)
        .arg(months.at(parts.tm_mon))
        .arg(1900 + parts.tm_year);
}

} // namespace

std::string today() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    localtime_r(&now, &parts);
    return dateWords(parts).toStdString();
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
    plan.holes = holesOf(exchange::makeCutPlan(region, engine::cutSettingsOf(job, assumed)), report.stations,
                         job.preferred);
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
        plan.title = Paper::tr("Plate without a title").toStdString();
    QStringList facts;
    facts << Paper::tr("%1 thick, %2, %3.")
                 .arg(toQt(asMarked(*job.plate.thickness, job.preferred)), steelWord(assumed.steel.name),
                      toQt(say(job::nameOf(assumed.process).data())));
    if (const QString sizes = sizesOf(job, region); !sizes.isEmpty())
        facts << sizes;
    if (assumed.stacked > 1)
        facts << Paper::tr("One plate of %1.").arg(assumed.stacked);
    facts << Paper::tr("Full size.") << toQt(exchange::cleanText(date, kTitleSigns)) + QLatin1Char('.');
    plan.facts = facts.join(QLatin1Char(' ')).toStdString();
    plan.test = (job.work == job::Work::Pull
                     ? Paper::tr("Hold it to the part before you cut, the holes cut out of the paper. Go: "
                                 "every bolt stands in the middle of its hole. No-go: one does not; measure "
                                 "again. Then glue it down and punch every dot through the paper.")
                     : Paper::tr("Hang it on the pins before you cut, the holes cut out of the paper. Go: "
                                 "every pin stands in the middle of its hole. No-go: one does not; measure "
                                 "again. Then glue it down and punch every dot through the paper."))
                    .toStdString();
    if (!engine::mayBeMade(report.grade))
        plan.warning = Paper::tr("DO NOT USE: %1").arg(gradeWord(report.grade).toUpper()).toStdString();
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
                          std::max(kHeading * static_cast<double>(toQt(hole.name).size()),
                                   kSmall * static_cast<double>(toQt(hole.how).size()));
        label.halfHeight = (kHeading + kSmall) * 0.6;
        const Box box = hole.loop.vertices.empty() ? Box{hole.centre, hole.centre} : bounds(hole.loop);
        const double out = norm(hole.centre) > 0 ? std::atan2(hole.centre.y, hole.centre.x) : 0;
        Label best = label;
        double least = 1e9;
        for (const double gap : {1.5, 4.0, 7.0, 11.0, 16.0})
            for (int i = 0; i < kDirections; ++i) {
                // Beside the ray first, turning away from it to both hands.
                const int off = i / 2;
                const double turn = (i % 2 ? -1 : 1) * (off + 0.5) * 2 * std::numbers::pi / kDirections;
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
