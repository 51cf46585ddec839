#include "app/paper/plan_drawing.h"

#include "app/paper/words.h"
#include "core/shape/region.h"
#include "core/thread/thread.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

namespace pw::paper {

using shape::Box;
using shape::Circle;
using shape::Point;
using units::Length;

namespace {

constexpr double kOutline = 0.5, kThin = 0.22, kDatum = 0.85, kScrap = 0.35;
constexpr double kLeft = 17;    ///< room for sizes left of the edge
constexpr double kShoulder = 5; ///< of a leader, beyond the plate
constexpr double kSlot = 6.4;   ///< between shoulders
constexpr std::size_t kMostLeaders = 6;
const QColor kGrey(0x80, 0x80, 0x80);
const std::vector<double> kChain{6, 1.2, 0.6, 1.2};

bool meet(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}
Box grown(const Box& box, double by) {
    return {box.low - Point{by, by}, box.high + Point{by, by}};
}
Box around(const Box& a, const Box& b) {
    return {{std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)},
            {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)}};
}
double toLine(Point p, Point a, Point b) {
    return shape::Side{a, b, 0}.distanceTo(p);
}
bool linesCross(Point a, Point b, Point c, Point d) {
    return !shape::crossings({a, b, 0}, {c, d, 0}).empty();
}
/// Does the line come into the box?
bool enters(const Box& box, Point a, Point b) {
    const auto in = [&](Point p) {
        return p.x > box.low.x && p.x < box.high.x && p.y > box.low.y && p.y < box.high.y;
    };
    const Point c{box.high.x, box.low.y}, d{box.low.x, box.high.y};
    return in(a) || in(b) || linesCross(a, b, box.low, box.high) || linesCross(a, b, c, d);
}

/// A straight side that lies along the lower or left edge of its box, and is a good part of it.
bool hasEdge(const shape::Loop& outline, bool left) {
    const Box box = bounds(outline);
    double length = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const shape::Side side = outline.side(i);
        if (side.isArc())
            continue;
        const double a = left ? side.from.x - box.low.x : side.from.y - box.low.y;
        const double b = left ? side.to.x - box.low.x : side.to.y - box.low.y;
        if (std::abs(a) < 1e-6 && std::abs(b) < 1e-6)
            length += side.length();
    }
    return length > (left ? box.height() : box.width()) / 3;
}

} // namespace

double scaleAfter(double scale, units::System system) {
    if (system == units::System::Inch)
        return scale * 2;
    for (double decade = 1;; decade *= 10)
        for (const double step : {1.0, 2.0, 2.5, 5.0})
            if (decade * step > scale * 1.0001)
                return decade * step;
}

double scaleFor(const Box& content, double roomWide, double roomHigh, units::System system) {
    double scale = 1;
    while (content.width() > roomWide * scale || content.height() > roomHigh * scale)
        scale = scaleAfter(scale, system);
    return scale;
}

PlanDrawing::PlanDrawing(const SheetData& data, double roomWide, double roomHigh)
    : m_data(data), m_system(data.job.preferred) {
    m_rim = turned(data.plan.rim);
    for (MarkedHole hole : data.plan.holes) {
        hole.loop = turned(hole.loop);
        hole.centre = turned(hole.centre);
        m_holes.push_back(std::move(hole));
    }
    m_rimBox = m_seen = bounds(m_rim);
    m_datum = m_rimBox.low;
    if (data.offcut) {
        const Box piece = bounds(data.offcut->outline);
        m_wholeOffcut = piece.width() < 1.9 * m_rimBox.width() && piece.height() < 1.9 * m_rimBox.height();
        m_seen = m_wholeOffcut ? around(m_rimBox, piece)
                               : grown(m_rimBox, 0.12 * std::max(m_rimBox.width(), m_rimBox.height()));
        m_fromOffcut =
            m_wholeOffcut && hasEdge(data.offcut->outline, true) && hasEdge(data.offcut->outline, false);
        if (m_fromOffcut)
            m_datum = piece.low;
    }
    // Level when the level line through the bore meets a station's hole, else through station 1.
    const bool level = std::any_of(m_holes.begin(), m_holes.end(), [&](const MarkedHole& hole) {
        return hole.part == shape::Part::Access && std::abs(hole.centre.y - turned(Point{}).y) < 0.05;
    });
    if (!level && !data.report.stations.empty() && norm(data.report.stations.front()) > 0) {
        const Point way = turned(data.report.stations.front()) - turned(Point{});
        m_cutAlong = (1 / norm(way)) * way;
    }
    for (const Round& round : rounds())
        m_leaderWide = std::max(m_leaderWide, Ink::widthOf(round.words, kSmall));
    fit(roomWide, roomHigh);
}

Point PlanDrawing::turned(Point plate) const {
    return m_data.offcut ? rotated(plate, m_data.offcut->turn) + m_data.offcut->at : plate;
}

shape::Loop PlanDrawing::turned(const shape::Loop& loop) const {
    return m_data.offcut ? moved(shape::turned(loop, m_data.offcut->turn), m_data.offcut->at) : loop;
}

void PlanDrawing::fit(double roomWide, double roomHigh) {
    const double wide = roomWide - kLeft - kShoulder - m_leaderWide - 3;
    m_scale = scaleFor(m_seen, wide, 1e9, m_system);
    while (true) {
        m_above = sectionHeight();
        if (height() <= roomHigh || m_scale > 1e5)
            break;
        m_scale = scaleAfter(m_scale, m_system);
    }
}

double PlanDrawing::sectionHeight() const {
    // Below it the ends of a cutting line that does not lie level.
    return 6 + m_data.job.plate.thickness->mm() / m_scale + (std::abs(m_cutAlong.y) < 0.1 ? 6 : 13);
}

double PlanDrawing::below() const {
    const bool disc = asCircle(m_rim).has_value();
    return disc ? 12 : 19;
}

double PlanDrawing::height() const {
    const double leaders = kSlot * static_cast<double>(std::min(rounds().size(), kMostLeaders) + 2);
    return m_above + std::max(m_seen.height() / m_scale + below(), leaders + 3);
}

Point PlanDrawing::fromEdges(const MarkedHole& hole) const {
    return turned(hole.centre) - m_datum;
}

Point PlanDrawing::place(Point drawn) const {
    return {m_corner.x + (drawn.x - m_seen.low.x) / m_scale, m_corner.y - (drawn.y - m_seen.low.y) / m_scale};
}

void PlanDrawing::paint(Ink& ink, Point corner) {
    m_lines.clear();
    m_words.clear();
    m_corner = {corner.x + kLeft, corner.y + m_above + m_seen.height() / m_scale};
    paintOffcut(ink);
    paintPlate(ink);
    paintSizes(ink);
    paintSection(ink);
    placeLeaders();
    paintLeaders(ink);
    paintNames(ink);
}

// --- Painting

void PlanDrawing::line(Ink& ink, Point a, Point b, const Stroke& stroke) {
    ink.line(a, b, stroke);
    m_lines.emplace_back(a, b);
}

void PlanDrawing::words(Ink& ink, Point at, const QString& text, bool bold, Side side, double turn) {
    ink.text(at, text, kSmall, bold, side, Qt::black, turn);
    const Box box = Ink::boxOf(text, kSmall, bold, side, turn);
    m_words.push_back({at + box.low, at + box.high});
}

void PlanDrawing::arrow(Ink& ink, Point tip, Point from) {
    const Point back = (1 / std::max(distance(tip, from), 1e-9)) * (from - tip), side{-back.y, back.x};
    line(ink, from, tip, {kThin});
    ink.polygon({tip, tip + 2.6 * back + 0.45 * side, tip + 2.6 * back - 0.45 * side}, {0.05}, Qt::black);
}

/// Between two witness lines; words above the line, or beside it where they are longer than it is.
void PlanDrawing::size(Ink& ink, Point a, Point b, const QString& text) {
    const Point middle = 0.5 * (a + b);
    const bool upright = std::abs(a.x - b.x) < std::abs(a.y - b.y);
    const double wide = Ink::widthOf(text, kSmall);
    if (distance(a, b) > 6) {
        arrow(ink, a, middle);
        arrow(ink, b, middle);
    } else { // arrows from outside
        const Point way = (1 / std::max(distance(a, b), 1e-9)) * (b - a);
        arrow(ink, a, a - 5 * way);
        arrow(ink, b, b + 5 * way);
        ink.line(a, b, {kThin});
    }
    if (upright)
        words(ink, {middle.x - 1, std::max(std::min(middle.y, std::max(a.y, b.y) - wide / 2), middle.y - 40)},
              text, false, Side::Middle, 90);
    else
        words(ink, {middle.x, middle.y - 1}, text, false, Side::Middle);
}

void PlanDrawing::paintOffcut(Ink& ink) {
    const auto at = [&](Point p) { return place(p); };
    const Point low = place(m_seen.low), high = place(m_seen.high);
    if (m_data.offcut) {
        const Stroke grey{kScrap, kGrey};
        ink.keepWithin({{low.x - 0.5, high.y - 0.5}, {high.x + 0.5, low.y + 0.5}});
        ink.loop(m_data.offcut->outline, at, grey);
        for (const shape::Loop& hole : m_data.offcut->holes)
            ink.loop(hole, at, grey);
        ink.keepWithinNoMore();
    }
    const Point datum = place(m_datum);
    const Point far = m_fromOffcut ? Point{high.x, high.y} : place(m_rimBox.high);
    ink.line(datum, {datum.x, far.y}, {kDatum});
    ink.line({datum.x - kDatum / 2, datum.y}, {far.x, datum.y}, {kDatum});
}

void PlanDrawing::paintPlate(Ink& ink) {
    const auto at = [&](Point p) { return place(p); };
    const Stroke chain{kThin, Qt::black, kChain}, outline{kOutline};
    const Point bore = place(turned(Point{}));
    for (const double radius : m_data.plan.pinCircles)
        ink.loop(shape::circleLoop(turned(Point{}), radius), at, chain);
    const Point low = place(m_rimBox.low), high = place(m_rimBox.high);
    line(ink, {low.x - 2, bore.y}, {high.x + 2, bore.y}, chain);
    line(ink, {bore.x, high.y - 2}, {bore.x, low.y + 2}, chain);
    ink.loop(m_rim, at, outline);
    for (const MarkedHole& hole : m_holes) {
        if (!hole.loop.vertices.empty())
            ink.loop(hole.loop, at, outline);
        const Point c = place(hole.centre);
        line(ink, {c.x - 2, c.y}, {c.x + 2, c.y}, {kThin});
        line(ink, {c.x, c.y - 2}, {c.x, c.y + 2}, {kThin});
    }
}

void PlanDrawing::paintSizes(Ink& ink) {
    const Point corner = place(m_datum), bore = place(turned(Point{})), high = place(m_rimBox.high),
                low = place(m_rimBox.low);
    const auto said = [&](double mm) { return toQt(asLaidOut(Length::fromMm(mm), m_system)); };
    const double foot = std::max(corner.y, place(m_seen.low).y), edge = std::min(corner.x, low.x);
    const double y1 = foot + 7, y2 = foot + 14, x1 = edge - 8.5, x2 = edge - 14;
    const Stroke thin{kThin};
    line(ink, {bore.x, corner.y + 1}, {bore.x, y1 + 1.5}, thin);
    line(ink, {corner.x - 1, bore.y}, {x1 - 1.5, bore.y}, thin);
    const bool disc = asCircle(m_rim).has_value();
    line(ink, {corner.x, corner.y + 1}, {corner.x, (disc ? y1 : y2) + 1.5}, thin);
    line(ink, {corner.x - 1, corner.y}, {(disc ? x1 : x2) - 1.5, corner.y}, thin);
    size(ink, {corner.x, y1}, {bore.x, y1}, said(turned(Point{}).x - m_datum.x));
    size(ink, {x1, corner.y}, {x1, bore.y}, said(turned(Point{}).y - m_datum.y));
    if (disc)
        return;
    // Over all; from the offcut's edges it would be read as a place.
    if (m_fromOffcut) {
        line(ink, {low.x, low.y + 1}, {low.x, y2 + 1.5}, thin);
        line(ink, {low.x - 1, low.y}, {x2 - 1.5, low.y}, thin);
    }
    line(ink, {high.x, low.y + 1}, {high.x, y2 + 1.5}, thin);
    line(ink, {low.x - 1, high.y}, {x2 - 1.5, high.y}, thin);
    size(ink, {low.x, y2}, {high.x, y2}, said(m_rimBox.width()));
    size(ink, {x2, low.y}, {x2, high.y}, said(m_rimBox.height()));
}

// --- Section

void PlanDrawing::paintSection(Ink& ink) {
    const Point centre = turned(Point{});
    const double reach = 2 * (m_rimBox.width() + m_rimBox.height());
    const shape::Side across{centre - reach * m_cutAlong, centre + reach * m_cutAlong, 0};
    std::vector<double> marks;
    const auto meets = [&](const shape::Loop& loop) {
        for (std::size_t i = 0; i < loop.size(); ++i)
            for (const Point p : shape::crossings(across, loop.side(i)))
                marks.push_back(dot(p - centre, m_cutAlong));
    };
    meets(m_rim);
    for (const MarkedHole& hole : m_holes)
        meets(hole.loop);
    std::sort(marks.begin(), marks.end());
    if (marks.size() < 2)
        return;
    const auto steel = [&](double s) {
        const Point p = centre + s * m_cutAlong;
        return contains(m_rim, p) && std::none_of(m_holes.begin(), m_holes.end(), [&](const MarkedHole& h) {
                   return !h.loop.vertices.empty() && contains(h.loop, p);
               });
    };
    const double thick = m_data.job.plate.thickness->mm() / m_scale;
    const double top = place(m_seen.high).y - m_above + 6, foot = top + thick, x0 = place(centre).x;
    const auto at = [&](double s) { return x0 + s / m_scale; };
    const double left = at(marks.front()), right = at(marks.back());
    ink.line({left, top}, {right, top}, {kOutline});
    ink.line({left, foot}, {right, foot}, {kOutline});
    for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
        if (marks[i + 1] - marks[i] < 1e-6 || !steel((marks[i] + marks[i + 1]) / 2))
            continue;
        const Box cut{{at(marks[i]), top}, {at(marks[i + 1]), foot}};
        ink.keepWithin(cut);
        for (double x = cut.low.x - thick; x < cut.high.x; x += 1.7)
            ink.line({x, foot}, {x + thick, top}, {kThin});
        ink.keepWithinNoMore();
    }
    for (const double s : marks)
        ink.line({at(s), top}, {at(s), foot}, {kOutline});
    const Stroke chain{kThin, Qt::black, kChain};
    ink.line({x0, top - 1.5}, {x0, foot + 1.5}, chain);
    // A thread's crests are thin lines outside its core (ISO 6410).
    if (const auto thread = thread::parse(m_data.job.plate.boreThread);
        !m_data.job.plate.boreThread.empty() && thread)
        for (const int side : {-1, 1}) {
            const double x = at(side * thread->diameter.mm() / 2);
            ink.line({x, top}, {x, foot}, {kThin});
        }
    words(ink, {left, top - 1.5}, Paper::tr("A–A"), true, Side::Left);
    // Thickness, from outside: it is short on paper.
    const double x = right + 3;
    line(ink, {right + 0.8, top}, {x + 1, top}, {kThin});
    line(ink, {right + 0.8, foot}, {x + 1, foot}, {kThin});
    arrow(ink, {x, top}, {x, top - 4});
    arrow(ink, {x, foot}, {x, foot + 4});
    ink.line({x, top}, {x, foot}, {kThin});
    words(ink, {x + 2, (top + foot) / 2 + 0.36 * kSmall},
          Paper::tr("%1 thick").arg(toQt(bare(*m_data.job.plate.thickness, m_system))), false, Side::Left);
    // Where it is cut: both ends of the line, and the way it is seen.
    const Point way{m_cutAlong.x, -m_cutAlong.y}, view{way.y, -way.x};
    for (const double s : {marks.front(), marks.back()}) {
        const Point end = place(centre + s * m_cutAlong);
        const Point out = s < 0 ? -1.0 * way : way, a = end + 1 * out, b = end + 5 * out;
        line(ink, a, b, {kOutline});
        const Point foot2 = end + 4 * out;
        arrow(ink, foot2, foot2 - 4.5 * view);
        // Beside the arrow's tail, where nothing stands yet.
        const Point tail = foot2 - 4.5 * view;
        const Box letter = Ink::boxOf(QStringLiteral("A"), kSmall, true, Side::Middle);
        const double up = 0.36 * kSmall;
        Point spot = tail + 2.2 * out;
        for (const Point& by : {2.2 * out, -2.2 * out, -2.6 * view, 2.2 * out - 3 * view, 6 * out}) {
            const Point base = tail + by + Point{0, up};
            const Box box = grown({base + letter.low, base + letter.high}, 0.5);
            if (std::any_of(m_words.begin(), m_words.end(),
                            [&](const Box& other) { return meet(box, other); }))
                continue;
            spot = tail + by;
            break;
        }
        words(ink, {spot.x, spot.y + up}, QStringLiteral("A"), true, Side::Middle);
    }
}

// --- Leaders

std::vector<PlanDrawing::Round> PlanDrawing::rounds() const {
    std::vector<Round> all;
    const auto said = [&](double mm) { return toQt(bare(Length::fromMm(mm), m_system)); };
    if (const auto rim = asCircle(m_rim))
        all.push_back({QStringLiteral("Ø") + said(2 * rim->radius), {*rim}, true});
    for (const double radius : m_data.plan.pinCircles)
        all.push_back({QStringLiteral("Ø") + said(2 * radius), {{turned(Point{}), radius}}, true});
    // Holes of one size and one making share a leader, with their number.
    std::map<std::string, std::size_t> kinds;
    for (const MarkedHole& hole : m_holes) {
        const auto circle = asCircle(hole.loop);
        if (hole.loop.vertices.empty() || !circle)
            continue;
        const auto [known, fresh] = kinds.try_emplace(hole.how, all.size());
        if (fresh)
            all.push_back({toQt(hole.how), {}, false});
        all[known->second].circles.push_back(*circle);
    }
    for (const auto& [how, index] : kinds) {
        Round& round = all[index];
        QString words = QStringLiteral("Ø") + said(2 * round.circles.front().radius);
        for (const MarkedHole& hole : m_holes)
            if (hole.how == how && hole.part == shape::Part::Bore && !m_data.job.plate.boreThread.empty())
                words = toQt(m_data.job.plate.boreThread);
        if (round.circles.size() > 1)
            words = QStringLiteral("%1 × ").arg(round.circles.size()) + words;
        round.words = words;
    }
    if (all.size() > kMostLeaders)
        all.resize(kMostLeaders);
    return all;
}

void PlanDrawing::placeLeaders() {
    m_leaders.clear();
    const std::vector<Round> all = rounds();
    const Point low = place(m_seen.low), high = place(m_seen.high);
    const double x = high.x + kShoulder;
    const int slots = std::max(static_cast<int>(all.size()) + 2, static_cast<int>((low.y - high.y) / kSlot));
    std::vector<bool> taken(static_cast<std::size_t>(slots));
    for (const Round& round : all) {
        const double wide = Ink::widthOf(round.words, kSmall);
        double least = 1e9;
        Leader best;
        int slotOfBest = -1;
        for (int slot = 0; slot < slots; ++slot) {
            if (taken[static_cast<std::size_t>(slot)])
                continue;
            const Point knee{x, high.y + 3 + kSlot * slot};
            for (const Circle& circle : round.circles) {
                const Point c = place(circle.centre);
                const double r = circle.radius / m_scale;
                for (int k = -8; k <= 8; ++k) {
                    // Towards the shoulder, or some way round from there.
                    const double toKnee = std::atan2(knee.y - c.y, knee.x - c.x);
                    const Point tip = c + shape::polar(r, toKnee + k * std::numbers::pi / 24);
                    double bad = 0.6 * std::abs(k) + 0.02 * distance(tip, knee);
                    for (const MarkedHole& hole : m_holes) {
                        if (hole.loop.vertices.empty())
                            continue;
                        const Point h = place(hole.centre);
                        const double reach =
                            std::sqrt(std::abs(signedArea(hole.loop)) / std::numbers::pi) / m_scale;
                        if (distance(h, c) > 1e-6 || round.rim)
                            bad += toLine(h, tip, knee) < reach + 0.6 ? 15 : 0;
                    }
                    for (const Leader& other : m_leaders)
                        bad += linesCross(tip, knee, other.tip, other.knee) ? 40 : 0;
                    const Box shoulder{knee + Point{0, -4}, knee + Point{wide + 2, 0.5}};
                    for (const Box& box : m_words) {
                        bad += enters(grown(box, 0.5), tip, knee) ? 40 : 0;
                        bad += meet(shoulder, box) ? 1000 : 0;
                    }
                    if (bad < least)
                        least = bad, best = {round.words, tip, knee}, slotOfBest = slot;
                }
            }
        }
        if (slotOfBest < 0)
            continue;
        taken[static_cast<std::size_t>(slotOfBest)] = true;
        m_leaders.push_back(best);
    }
}

void PlanDrawing::paintLeaders(Ink& ink) {
    for (const Leader& leader : m_leaders) {
        arrow(ink, leader.tip, leader.knee);
        const double wide = Ink::widthOf(leader.words, kSmall);
        line(ink, leader.knee, {leader.knee.x + wide + 1.5, leader.knee.y}, {kThin});
        words(ink, {leader.knee.x + 1, leader.knee.y - 0.9}, leader.words, false, Side::Left);
    }
}

// --- Names of holes

void PlanDrawing::paintNames(Ink& ink) {
    const Point bore = place(turned(Point{}));
    for (const MarkedHole& hole : m_holes) {
        const QString name = toQt(hole.name);
        const Box ink0 = Ink::boxOf(name, kSmall, true, Side::Middle);
        const Point half = 0.5 * (ink0.high - ink0.low), mid = 0.5 * (ink0.low + ink0.high);
        const Point c = place(hole.centre);
        const double r = hole.loop.vertices.empty()
                             ? 2.5
                             : std::max(bounds(hole.loop).width(), bounds(hole.loop).height()) / 2 / m_scale;
        const double outward = distance(c, bore) > 0.5 ? std::atan2(c.y - bore.y, c.x - bore.x) : -0.8;
        double least = 1e9;
        Point best;
        for (const double gap : {0.8, 2.2, 4.0, 6.5, 9.5, 13.0})
            for (int k = 0; k < 24; ++k) {
                const int steps = (k % 2 ? -1 : 1) * ((k + 1) / 2); // 0, -1, 1, -2, 2, ...
                const double angle = outward + steps * std::numbers::pi / 12;
                const Point way = shape::polar(1, angle);
                const Point at = c + (r + gap + std::abs(way.x) * half.x + std::abs(way.y) * half.y) * way;
                const Box box{at - half, at + half};
                double bad = 0.5 * gap + 0.05 * k;
                for (const Box& other : m_words)
                    bad += meet(grown(box, 0.7), other) ? 1000 : 0;
                for (const auto& [a, b] : m_lines)
                    bad += enters(grown(box, 0.3), a, b) ? 8 : 0;
                for (const MarkedHole& other : m_holes) {
                    if (other.loop.vertices.empty())
                        continue;
                    const Point o = place(other.centre);
                    const double reach =
                        std::sqrt(std::abs(signedArea(other.loop)) / std::numbers::pi) / m_scale;
                    const Point near{std::clamp(o.x, box.low.x, box.high.x),
                                     std::clamp(o.y, box.low.y, box.high.y)};
                    bad += distance(near, o) < reach + 0.4 ? 20 : 0;
                    // Nearer to another hole than to its own: nobody knows whose it is.
                    if (&other != &hole && distance(at, o) - reach < distance(at, c) - r)
                        bad += 12;
                }
                for (const double radius : m_data.plan.pinCircles) {
                    const double far = distance(at, bore), ring = radius / m_scale;
                    bad += std::abs(far - ring) < std::max(half.x, half.y) + 0.3 ? 5 : 0;
                }
                bad += [&] { // across the rim
                    const Point corners[]{
                        box.low, box.high, {box.low.x, box.high.y}, {box.high.x, box.low.y}};
                    int inside = 0;
                    for (const Point& q : corners)
                        inside += contains(m_rim, Point{m_seen.low.x + (q.x - m_corner.x) * m_scale,
                                                        m_seen.low.y + (m_corner.y - q.y) * m_scale});
                    return inside == 4 ? 0 : inside == 0 ? 4 : 10;
                }();
                const Point low = place(m_seen.low), high = place(m_seen.high);
                if (box.low.x < low.x - 2 || box.high.x > high.x + kShoulder - 1 || box.low.y < high.y - 2 ||
                    box.high.y > low.y + 3)
                    bad += 200;
                if (bad < least)
                    least = bad, best = at;
            }
        if (least >= 1000) // no room anywhere: the table still has it
            continue;
        words(ink, best - mid, name, true, Side::Middle);
    }
}

} // namespace pw::paper
