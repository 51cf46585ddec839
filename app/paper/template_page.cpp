#include "app/paper/template_page.h"

#include "app/paper/words.h"
#include "core/units/quantity.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::paper {

using shape::Box;
using shape::Point;

namespace {

constexpr double kOutline = 0.5, kThin = 0.22;
const QColor kGrey(0x90, 0x90, 0x90);
const QColor kPale(0xd2, 0xd2, 0xd2);

/// A, B, ... Z, AA, AB, ...
QString lettersOf(int n) {
    QString letters;
    for (++n; n > 0; n = (n - 1) / 26)
        letters.prepend(QChar(u'A' + (n - 1) % 26));
    return letters;
}

/// The page in hand, and where things of the plate lie on it.
struct Page {
    Ink& ink;
    const TemplatePlan& plan;
    const Tiling& tiling;
    int row, column;

    Point place(Point p) const { return tiling.onPage(row, column, p); }
    /// What no later sheet lies over, on the page.
    Box own() const {
        const Box box = tiling.own(row, column);
        return {place({box.low.x, box.high.y}), place({box.high.x, box.low.y})};
    }
    bool hasRight() const { return column + 1 < tiling.columns(); }
    bool hasBelow() const { return row + 1 < tiling.rows(); }
};

void drawRuler(Ink& ink, const Sheet& sheet) {
    ink.text({kBorder, kBorder + 5}, Paper::tr("Measure this first"), kHeading, true);
    const auto [x, y] = kRulerZero;
    const Stroke thin{kThin};
    ink.line({x, y}, {x + 4 * units::kMmPerInch, y}, {kThin * 2});
    for (int mm = 0; mm <= 100; mm += 5) {
        ink.line({x + mm, y}, {x + mm, y + (mm % 10 ? kRulerTick * 0.5 : kRulerTick)}, thin);
        if (mm % 50 == 0)
            ink.text({x + mm, y + kRulerTick + kWords}, mm == 100 ? Paper::tr("100 mm") : QString::number(mm),
                     kWords, true, mm == 0 ? Side::Left : Side::Middle);
    }
    for (int half = 0; half <= 8; ++half) {
        const double at = x + half * units::kMmPerInch / 2;
        ink.line({at, y}, {at, y - (half % 2 ? 1.5 : 2.5)}, thin);
        if (half % 2 == 0 && half > 0)
            ink.text({at, y - 3.2}, half == 8 ? Paper::tr("4 in") : QString::number(half / 2), kSmall, false,
                     Side::Middle);
    }
    const double words = x + 118;
    const double room = sheet.width - kBorder - words;
    double baseline = y + 0.3;
    for (const QString& line : Ink::wrapped(
             Paper::tr("100 mm must be 100 mm and 4 in be 4 in, by a steel rule. If not, print at 100 %."),
             room, kWords, 3)) {
        ink.text({words, baseline}, line, kWords);
        baseline += 5;
    }
}

/// Open at the middle round a dot, so that the punch has somewhere to stand.
void drawCentreMark(const Page& page, Point plate, double radius, const QColor& colour) {
    const Point c = page.place(plate);
    const double arm = std::clamp(0.45 * radius, 2.5, 6.0), open = 0.8;
    const Stroke stroke{kThin, colour};
    page.ink.dot(c, 2 * open, Qt::white); // the lines that run through it stop short as well
    for (const Point way : {Point{1, 0}, Point{-1, 0}, Point{0, 1}, Point{0, -1}})
        page.ink.line(c + open * way, c + arm * way, stroke);
    page.ink.dot(c, 0.35);
}

/// The plate's lines, in one colour; what of them is seen is up to who clips.
void drawPlate(const Page& page, const QColor& colour) {
    const auto place = [&](Point p) { return page.place(p); };
    const Stroke outline{kOutline, colour};
    const Stroke dashDot{kThin, colour, {6, 1.2, 0.6, 1.2}};
    for (const auto& [from, to] : page.plan.scribes)
        page.ink.line(place(from), place(to), {kThin, colour, {4, 1.5}});
    for (const double radius : page.plan.pinCircles)
        page.ink.loop(shape::circleLoop({}, radius), place, dashDot);
    page.ink.loop(page.plan.rim, place, outline);
    for (const MarkedHole& hole : page.plan.holes) {
        if (!hole.loop.vertices.empty())
            page.ink.loop(hole.loop, place, outline);
        const double radius =
            hole.loop.vertices.empty() ? 4 : std::sqrt(std::abs(signedArea(hole.loop)) / std::numbers::pi);
        drawCentreMark(page, hole.centre, radius, colour);
    }
}

void drawLabels(const Page& page, const std::vector<Label>& labels) {
    const Box own = page.tiling.own(page.row, page.column);
    for (const Label& label : labels) {
        // Words of which no part is seen are left out, so that nobody who searches the file finds them here.
        if (label.centre.x + label.halfWidth < own.low.x || label.centre.x - label.halfWidth > own.high.x ||
            label.centre.y + label.halfHeight < own.low.y || label.centre.y - label.halfHeight > own.high.y)
            continue;
        const Point c = page.place(label.centre);
        page.ink.text({c.x, c.y - 0.2}, toQt(label.name), kHeading, true, Side::Middle);
        page.ink.text({c.x, c.y + kSmall + 0.6}, toQt(label.how), kSmall, false, Side::Middle);
    }
}

/// Half of a lettered diamond on a join; with its other half on the next sheet it closes. `along` is the way
/// the join runs, `out` the way to the sheet that lies on top. A short line across makes a register cross of
/// it.
void drawDiamond(Ink& ink, Point at, Point along, Point out, bool under, const QString& letters) {
    constexpr double kHalf = 4.5, kCross = 8;
    const Stroke thin{kThin};
    const Point a = at + kHalf * along, b = at - kHalf * along;
    const Point here = under ? -1.0 * out : out;
    ink.polygon({a, at + kHalf * here, b}, thin, Qt::black);
    if (under)
        ink.polygon({a, at + kHalf * out, b}, thin);
    ink.line(at + kHalf * here, at + kCross * here, thin);
    // Beside the point of the diamond, clear of the cross.
    const Point words = at + (kHalf + 2.6) * here + 3.2 * along;
    ink.text({words.x, words.y + 1.4}, letters, kWords, true, Side::Middle);
}

/// A place on the join from `a` to `b`, near this part of it and clear of all holes where there is room. It
/// depends on the plate alone, so that both sheets agree.
Point markPlace(const TemplatePlan& plan, Point a, Point b, double part) {
    constexpr double kClear = 9; // mm
    const auto isClear = [&](Point p) {
        return std::none_of(plan.holes.begin(), plan.holes.end(), [&](const MarkedHole& hole) {
            return hole.loop.vertices.empty() ? distance(hole.centre, p) < kClear
                                              : contains(hole.loop, p) || distanceTo(hole.loop, p) < kClear;
        });
    };
    const double inward = part > 0.5 ? -1 : 1;
    for (int i = 0; i <= 10; ++i) {
        const Point p = a + (part + inward * 0.03 * i) * (b - a);
        if (isClear(p))
            return p;
    }
    return a + part * (b - a);
}

/// Three marks on each join, the same plate places on both sheets.
void drawJoins(const Page& page) {
    const Tiling& tiling = page.tiling;
    const int rows = tiling.rows(), columns = tiling.columns();
    const Stroke dashed{kThin, Qt::black, {3, 1.5}};
    const Point right{1, 0}, down{0, 1};
    // Joins between columns are numbered first, row by row; then those between rows.
    const auto upright = [&](int row, int column, bool under) {
        const Box own = tiling.own(row, column); // left of the join
        for (int i = 0; i < 3; ++i) {
            const Point at =
                markPlace(page.plan, {own.high.x, own.high.y}, {own.high.x, own.low.y}, 0.1 + 0.4 * i);
            drawDiamond(page.ink, page.place(at), down, right, under,
                        lettersOf(3 * (row * (columns - 1) + column) + i));
        }
    };
    const auto level = [&](int row, int column, bool under) {
        const Box own = tiling.own(row, column); // above the join
        for (int i = 0; i < 3; ++i) {
            const Point at =
                markPlace(page.plan, {own.low.x, own.low.y}, {own.high.x, own.low.y}, 0.1 + 0.4 * i);
            drawDiamond(page.ink, page.place(at), right, down, under,
                        lettersOf(3 * (rows * (columns - 1) + row * columns + column) + i));
        }
    };
    const Box own = page.own(), window = tiling.window;
    if (page.hasRight()) {
        page.ink.line({own.high.x, window.low.y}, {own.high.x, window.high.y}, dashed);
        page.ink.text({own.high.x + 8, (own.low.y + own.high.y) / 2 + 0.2 * own.height()},
                      Paper::tr("sheet %1 lies on here").arg(tiling.number(page.row, page.column + 1)),
                      kSmall, false, Side::Middle, Qt::black, 90);
        upright(page.row, page.column, true);
    }
    if (page.hasBelow()) {
        page.ink.line({window.low.x, own.high.y}, {window.high.x, own.high.y}, dashed);
        page.ink.text({own.low.x + 0.7 * own.width(), own.high.y + 8},
                      Paper::tr("sheet %1 lies on here").arg(tiling.number(page.row + 1, page.column)),
                      kSmall, false, Side::Middle);
        level(page.row, page.column, true);
    }
    if (page.column > 0) {
        page.ink.line({window.low.x, window.low.y}, {window.low.x, window.high.y}, dashed);
        page.ink.text({window.low.x - 1.5, (own.low.y + own.high.y) / 2 + 0.2 * own.height()},
                      Paper::tr("cut here"), kSmall, false, Side::Middle, Qt::black, 90);
        upright(page.row, page.column - 1, false);
    }
    if (page.row > 0) {
        page.ink.line({window.low.x, window.low.y}, {window.high.x, window.low.y}, dashed);
        page.ink.text({own.low.x + 0.7 * own.width(), window.low.y - 1}, Paper::tr("cut here"), kSmall, false,
                      Side::Middle);
        level(page.row - 1, page.column, false);
    }
}

/// All sheets small, the one in hand shaded. Answers how wide it is.
double drawMap(const Page& page, Point corner, double room) {
    const Tiling& tiling = page.tiling;
    const double width = tiling.right - tiling.left.front(), height = tiling.top.front() - tiling.bottom;
    const double scale = std::min(1.5 * room / width, room / height);
    const auto place = [&](Point p) {
        return corner + scale * Point{p.x - tiling.left.front(), tiling.top.front() - p.y};
    };
    for (int row = 0; row < tiling.rows(); ++row)
        for (int column = 0; column < tiling.columns(); ++column) {
            const Box own = tiling.own(row, column);
            const Box box{place({own.low.x, own.high.y}), place({own.high.x, own.low.y})};
            const bool here = row == page.row && column == page.column;
            page.ink.rectangle(box, {kThin}, here ? kPale : QColor(Qt::transparent));
            const double size = std::min(kSmall, 0.55 * std::min(box.width(), box.height()));
            page.ink.text({(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2 + 0.35 * size},
                          QString::number(tiling.number(row, column)), size, here, Side::Middle);
        }
    page.ink.loop(page.plan.rim, place, {kThin, kGrey});
    return scale * width;
}

void drawWords(const Page& page) {
    const Sheet& sheet = page.tiling.sheet;
    const bool several = page.tiling.pages() > 1;
    double left = kBorder;
    const double top = sheet.height - kBorder - kFoot + 5;
    if (several)
        left += drawMap(page, {kBorder, top}, kFoot - 5) + 5;
    const double room = sheet.width - kBorder - left;
    const QString title =
        toQt(page.plan.warning.empty() ? page.plan.title : page.plan.warning + " - " + page.plan.title);
    double y = top + 3.6;
    page.ink.text({left, y}, Ink::cut(title, room, kHeading, true), kHeading, true);
    y += 5.2;
    const auto lines = [&](const std::string& text, double size, int most) {
        for (const QString& line : Ink::wrapped(toQt(text), room, size, most)) {
            page.ink.text({left, y}, line, size);
            y += 1.4 * size;
        }
    };
    lines(page.plan.facts, kSmall, 2);
    lines(page.plan.test, kSmall, 3);

    const QString where = several ? Paper::tr("sheet %1 of %2: row %3 of %4, column %5 of %6")
                                        .arg(page.tiling.number(page.row, page.column))
                                        .arg(page.tiling.pages())
                                        .arg(page.row + 1)
                                        .arg(page.tiling.rows())
                                        .arg(page.column + 1)
                                        .arg(page.tiling.columns())
                                  : Paper::tr("one sheet");
    page.ink.text({sheet.width - kBorder, kBorder + 5}, where, kWords, false, Side::Right);
}

} // namespace

void paintWarning(Ink& ink, const Box& box, const std::string& words) {
    constexpr double kTurn = 35, kLargest = 18;
    const double wide = Ink::widthOf(toQt(words), kLargest, true);
    const double size =
        std::min(kLargest, kLargest * 0.9 * box.width() / std::cos(kTurn * std::numbers::pi / 180) /
                               std::max(1.0, wide));
    const Point middle = 0.5 * (box.low + box.high);
    ink.textAcross({middle.x + 0.25 * size, middle.y + 0.25 * size}, toQt(words), size, kTurn);
}

void paintTemplatePage(Ink& ink, const TemplatePlan& plan, const std::vector<Label>& labels,
                       const Tiling& tiling, int row, int column) {
    const Page page{ink, plan, tiling, row, column};
    drawRuler(ink, tiling.sheet);
    ink.keepWithin(tiling.window);
    if (!plan.warning.empty())
        paintWarning(ink, tiling.window, plan.warning);
    drawPlate(page, kGrey); // where the next sheet lies over it this is what is seen
    ink.keepWithinNoMore();
    ink.keepWithin(page.own());
    drawPlate(page, Qt::black);
    drawLabels(page, labels);
    ink.keepWithinNoMore();
    drawJoins(page);
    drawWords(page);
}

} // namespace pw::paper
