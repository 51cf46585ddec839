#include "app/paper/shop_sheet.h"

#include "app/engine/write.h"
#include "app/paper/template_page.h"
#include "core/job/assumed.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::paper {

using shape::Box;
using shape::Point;
using units::Length;

namespace {

constexpr double kEdge = 15, kTitle = 9, kFigure = 7.6;
constexpr double kOutline = 0.5, kThin = 0.22, kDatum = 0.85;
constexpr std::size_t kMostRows = 13; ///< of the hole table beside the drawing
const QColor kGrey(0x60, 0x60, 0x60);

QString toQt(const std::string& text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// The verdict's mark: the plate seen from its edge.
void drawMark(Ink& ink, Point c, double w, verdict::Grade grade) {
    const Stroke none{0.05};
    const auto box = [&](double x0, double y0, double x1, double y1) {
        ink.rectangle({c + w * Point{x0, y0}, c + w * Point{x1, y1}}, none, Qt::black);
    };
    switch (grade) {
    case verdict::Grade::Holds:
        box(-0.5, -0.2, 0.5, 0.2);
        break;
    case verdict::Grade::Thin:
        box(-0.5, -0.18, 0.5, -0.08);
        box(-0.5, -0.18, -0.4, 0.18);
        box(0.4, -0.18, 0.5, 0.18);
        break;
    case verdict::Grade::Sets: {
        std::vector<Point> bow; // 124 degrees of a ring
        for (const double radius : {0.566, 0.296})
            for (int i = 0; i <= 16; ++i) {
                const double turn = (28 + 124.0 * (radius > 0.5 ? i : 16 - i) / 16) * std::numbers::pi / 180;
                bow.push_back(c + w * Point{radius * std::cos(turn), 0.35 - radius * std::sin(turn)});
            }
        ink.polygon(bow, none, Qt::black);
        break;
    }
    case verdict::Grade::Breaks:
        for (const int side : {-1, 1}) {
            std::vector<Point> half;
            for (const Point corner : {Point{-0.27, -0.11}, {0.27, -0.11}, {0.27, 0.11}, {-0.27, 0.11}})
                half.push_back(
                    c + w * (Point{0.27 * side, 0} + rotated(corner, -side * 58 * std::numbers::pi / 180)));
            ink.polygon(half, none, Qt::black);
        }
        break;
    case verdict::Grade::Incomplete:
        ink.rectangle({c + w * Point{-0.5, -0.18}, c + w * Point{0.5, 0.18}}, {kThin, Qt::black, {1, 0.8}});
        break;
    }
}

std::string marginOf(const verdict::Check& check, double value, units::System system) {
    const bool length = check.kind == verdict::CheckKind::Fit && check.unit == "mm" && !check.marginIsRatio;
    return length ? units::show(Length::fromMm(value), system) : units::number(value) + " x";
}

template<class Q>
std::string both(const Q& value, units::System system) {
    const auto other = system == units::System::Metric ? units::System::Inch : units::System::Metric;
    return units::show(value, system) + " (" + units::show(value, other) + ")";
}

/// A row of words in columns: where each stands and on which side of it.
struct Column {
    double x;
    Side side;
};

class ShopSheet {
public:
    ShopSheet(Ink& ink, const std::function<void()>& nextPage, const job::Job& job,
              const engine::Report& report, const TemplatePlan& plan, const Sheet& sheet,
              const std::string& date)
        : m_ink(ink), m_nextPage(nextPage), m_job(job), m_report(report), m_plan(plan), m_sheet(sheet),
          m_date(date), m_system(job.preferred), m_right(sheet.width - kEdge), m_foot(sheet.height - 14) {}

    void paint() {
        startPage();
        drawTitle();
        constexpr double kDrawingTop = 44, kDrawingFoot = 160;
        drawPlate({{kEdge, kDrawingTop}, {m_right - 62, kDrawingFoot}});
        drawTables(m_right - 55, kDrawingTop);
        rule(kDrawingFoot + 3);
        drawStamp(kDrawingFoot + 7);
        drawChecks(kEdge + 82, kDrawingFoot + 11);
        turnPage();
        drawRest();
    }

private:
    void startPage() {
        ++m_page;
        if (!m_plan.warning.empty())
            paintWarning(m_ink, {{kEdge, kEdge}, {m_right, m_foot}}, m_plan.warning);
        m_ink.text({kEdge, m_sheet.height - 9},
                   Ink::cut(toQt(m_plan.title + ", " + m_date), m_right - kEdge - 70, kSmall), kSmall, false,
                   Side::Left, kGrey);
        m_ink.text({m_right, m_sheet.height - 9}, QStringLiteral("shop sheet, page %1").arg(m_page), kSmall,
                   false, Side::Right, kGrey);
    }
    void turnPage() {
        m_nextPage();
        startPage();
        m_y = kEdge + 4;
    }
    /// Room for this much more, on this page or the next.
    void need(double height) {
        if (m_y + height > m_foot)
            turnPage();
    }
    void rule(double y) { m_ink.line({kEdge, y}, {m_right, y}, {kOutline}); }

    void drawTitle() {
        const QString word = toQt(std::string(verdict::wordOf(m_report.grade)));
        const double wide = Ink::widthOf(word, kTitle, true);
        m_ink.text({m_right, 22}, word, kTitle, true, Side::Right);
        drawMark(m_ink, {m_right - wide - 11, 19}, 16, m_report.grade);
        // A long title gets smaller first, and is cut only below half the size.
        const double room = m_right - kEdge - wide - 24;
        const double size =
            std::clamp(kTitle * room / std::max(1.0, Ink::widthOf(toQt(m_plan.title), kTitle, true)),
                       kTitle / 2, kTitle);
        m_ink.text({kEdge, 22}, Ink::cut(toQt(m_plan.title), room * 1.01, size, true), size, true);
        std::string facts =
            (m_system == units::System::Inch ? units::inchFraction(*m_job.plate.thickness)
                                             : units::show(*m_job.plate.thickness, m_system)) +
            ", " + exchange::cleanText(job::assume(m_job).steel.name, 120);
        if (m_report.plate.massKg)
            facts += ", weighs " + units::show(units::Mass::fromKg(*m_report.plate.massKg), m_system);
        m_ink.text({kEdge, 30}, Ink::cut(toQt(facts), m_right - kEdge - 45, kWords), kWords);
        m_ink.text({m_right, 30}, toQt(m_date), kWords, false, Side::Right);
        const QString reason = Ink::cut(toQt(m_report.reason), m_right - kEdge, kWords, true);
        m_ink.text({kEdge, 36}, reason, kWords, true);
        rule(39);
    }

    /// To what a dial gauge is read: 0.001 mm, 0.0001 in.
    std::string onDial(Length reading) const {
        const bool metric = m_system == units::System::Metric;
        const double step = metric ? 0.001 : 0.0001;
        const double value = std::round((metric ? reading.mm() : reading.inch()) / step) * step;
        return units::number(value, 4) + (metric ? " mm" : " in");
    }
    std::string fromEdge(double mm) const { return units::show(Length::fromMm(mm), m_system); }

    void arrow(Point tip, Point from) {
        const Point back = (1 / std::max(distance(tip, from), 1e-9)) * (from - tip), side{-back.y, back.x};
        m_ink.line(from, tip, {kThin});
        m_ink.polygon({tip, tip + 2.5 * back + 0.45 * side, tip + 2.5 * back - 0.45 * side}, {0.05},
                      Qt::black);
    }
    void dimension(Point a, Point b, const std::string& words) {
        const Point middle = 0.5 * (a + b);
        arrow(a, middle);
        arrow(b, middle);
        const bool upright = std::abs(a.x - b.x) < std::abs(a.y - b.y);
        m_ink.text(upright ? Point{middle.x - 1, middle.y} : Point{middle.x, middle.y - 1}, toQt(words),
                   kSmall, false, Side::Middle, Qt::black, upright ? 90 : 0);
    }

    void drawPlate(const Box& box) {
        const Box rim = bounds(m_plan.rim);
        constexpr double kLeft = 16, kBelow = 22, kAbove = 6, kRight = 4; // for dimensions
        const double roomHigh = box.height() - kAbove - kBelow;
        const double scale = scaleFor(rim, box.width() - kLeft - kRight, roomHigh, m_system);
        // Where the two edges meet; room that is left over goes above and below.
        const Point corner{box.low.x + kLeft, box.low.y + kAbove + (roomHigh + rim.height() / scale) / 2};
        const auto place = [&](Point p) {
            return Point{corner.x + (p.x - rim.low.x) / scale, corner.y - (p.y - rim.low.y) / scale};
        };
        const Stroke outline{kOutline};
        const Point far = place(rim.high);
        m_ink.line(corner, {corner.x, far.y}, {kDatum});
        m_ink.line({corner.x - kDatum / 2, corner.y}, {far.x, corner.y}, {kDatum});
        for (const double radius : m_plan.pinCircles)
            m_ink.loop(shape::circleLoop({}, radius), place, {kThin, Qt::black, {6, 1.2, 0.6, 1.2}});
        const Point bore = place({});
        m_ink.line({corner.x, bore.y}, {far.x + 2, bore.y}, {kThin, Qt::black, {6, 1.2, 0.6, 1.2}});
        m_ink.line({bore.x, far.y - 2}, {bore.x, corner.y}, {kThin, Qt::black, {6, 1.2, 0.6, 1.2}});
        m_ink.loop(m_plan.rim, place, outline);
        for (const MarkedHole& hole : m_plan.holes) {
            if (!hole.loop.vertices.empty())
                m_ink.loop(hole.loop, place, outline);
            const Point c = place(hole.centre);
            m_ink.line({c.x - 2, c.y}, {c.x + 2, c.y}, {kThin});
            m_ink.line({c.x, c.y - 2}, {c.x, c.y + 2}, {kThin});
            const double r = hole.loop.vertices.empty()
                                 ? 2
                                 : std::sqrt(std::abs(signedArea(hole.loop)) / std::numbers::pi) / scale;
            m_ink.text({c.x + 0.75 * r + 0.6, c.y - 0.75 * r - 0.6}, toQt(hole.name), kSmall, true);
        }
        // From the two edges to the bore, and over all.
        const double y1 = corner.y + 8, y2 = corner.y + 15, x1 = corner.x - 5, x2 = corner.x - 12;
        m_ink.line({bore.x, corner.y + 1}, {bore.x, y1 + 1.5}, {kThin});
        m_ink.line({corner.x, corner.y + 1}, {corner.x, y2 + 1.5}, {kThin});
        m_ink.line({far.x, corner.y + 1}, {far.x, y2 + 1.5}, {kThin});
        m_ink.line({corner.x - 1, bore.y}, {x1 - 1.5, bore.y}, {kThin});
        m_ink.line({corner.x - 1, corner.y}, {x2 - 1.5, corner.y}, {kThin});
        m_ink.line({corner.x - 1, far.y}, {x2 - 1.5, far.y}, {kThin});
        dimension({corner.x, y1}, {bore.x, y1}, fromEdge(-rim.low.x));
        dimension({corner.x, y2}, {far.x, y2}, fromEdge(rim.width()));
        dimension({x1, corner.y}, {x1, bore.y}, fromEdge(-rim.low.y));
        dimension({x2, corner.y}, {x2, far.y}, fromEdge(rim.height()));
        m_ink.text({box.low.x, box.high.y - 1},
                   QStringLiteral("Drawn 1:%1. Measure from the two thick edges, which touch the rim.")
                       .arg(toQt(units::number(scale))),
                   kSmall);
    }

    void row(double y, const std::vector<Column>& columns, const std::vector<std::string>& words, bool bold) {
        for (std::size_t i = 0; i < words.size(); ++i)
            m_ink.text({columns[i].x, y}, toQt(words[i]), kSmall, bold && i == 0, columns[i].side);
    }

    std::vector<std::vector<std::string>> holeRows() const {
        const Box rim = bounds(m_plan.rim);
        std::vector<std::vector<std::string>> rows;
        for (const MarkedHole& hole : m_plan.holes)
            rows.push_back(
                {hole.name, fromEdge(hole.centre.x - rim.low.x), fromEdge(hole.centre.y - rim.low.y)});
        return rows;
    }

    void drawTables(double x, double y) {
        m_ink.text({x, y + 2}, QStringLiteral("Hole centres"), kHeading, true);
        const auto rows = holeRows();
        m_y = y + 8;
        const std::vector<Column> columns{{x, Side::Left}, {x + 33, Side::Right}, {m_right, Side::Right}};
        if (rows.size() <= kMostRows) {
            row(m_y, columns, {"hole", "from left", "from foot"}, false);
            for (const auto& words : rows) {
                m_y += 4.6;
                row(m_y, columns, words, true);
                m_ink.line({x, m_y + 1.2}, {m_right, m_y + 1.2}, {0.1, kGrey});
            }
        } else {
            m_ink.text({x, m_y}, QStringLiteral("on the next page"), kSmall);
        }
        m_y += 8;
        m_ink.text({x, m_y}, QStringLiteral("Make them"), kHeading, true);
        std::vector<std::pair<std::string, std::string>> kinds; // how, which
        for (const MarkedHole& hole : m_plan.holes) {
            const auto same = std::find_if(kinds.begin(), kinds.end(),
                                           [&](const auto& kind) { return kind.first == hole.how; });
            if (same == kinds.end())
                kinds.emplace_back(hole.how, hole.name);
            else
                same->second += ", " + hole.name;
        }
        std::string all;
        for (const auto& [how, which] : kinds)
            all += (all.empty() ? "" : " ") + which + ": " + how + ".";
        const job::Stations& stations = m_job.stations;
        if (stations.at.empty() && stations.circle && stations.count && *stations.count >= 2) {
            const auto chord = [&](int steps) {
                return units::show(*stations.circle * std::sin(std::numbers::pi * steps / *stations.count),
                                   m_system);
            };
            all += " Set the dividers: pin circle " + units::show(*stations.circle / 2, m_system) +
                   " radius, hole to next " + chord(1);
            if (*stations.count >= 4)
                all += ", to the next but one " + chord(2);
            all += ".";
        }
        const int most = std::max(1, static_cast<int>((156 - m_y) / 4.4));
        for (const QString& line : Ink::wrapped(toQt(all), m_right - x, kSmall, most))
            m_ink.text({x, m_y += 4.4}, line, kSmall);
    }

    /// What is stamped, in both unit systems, and the proof.
    void drawStamp(double top) {
        const double wide = 76;
        m_ink.rectangle({{kEdge, top}, {kEdge + wide, top + 34}}, {kOutline * 1.5});
        const bool good = engine::mayBeMade(m_report.grade);
        m_ink.text({kEdge + wide / 2, top + 6},
                   good ? QStringLiteral("Stamp this on the plate")
                        : QStringLiteral("Nothing to stamp: do not use"),
                   kWords, false, Side::Middle);
        const auto other = m_system == units::System::Metric ? units::System::Inch : units::System::Metric;
        const auto figure = [&](double x, const std::string& large, const std::string& small,
                                const char* what) {
            const double size =
                std::min(kFigure, kFigure * (wide / 2 - 3) / Ink::widthOf(toQt(large), kFigure, true));
            m_ink.text({x, top + 17}, toQt(large), size, true, Side::Middle);
            m_ink.text({x, top + 23.5}, toQt(small), kWords, false, Side::Middle);
            m_ink.text({x, top + 30}, QString::fromUtf8(what), kSmall, false, Side::Middle);
        };
        const engine::ScrewReport& screw = m_report.screw;
        if (good && screw.stamp)
            figure(kEdge + wide / 4, units::show(*screw.stamp, m_system), units::show(*screw.stamp, other),
                   "load");
        if (good && screw.stopTorque)
            figure(kEdge + 0.75 * wide, units::show(*screw.stopTorque, m_system),
                   units::show(*screw.stopTorque, other), "stop here");
        else if (good && screw.stopPressure)
            figure(kEdge + 0.75 * wide, units::showPressure(*screw.stopPressure, m_system),
                   units::showPressure(*screw.stopPressure, other), "stop here, on the gauge");
        std::string words;
        if (screw.ratedLoad)
            words += "Rated load, at the stop: " + both(*screw.ratedLoad, m_system) + ".";
        if (m_report.load.total)
            words += " Load of this job: " + units::show(*m_report.load.total, m_system) + ".";
        const engine::ProofReport& proof = m_report.proof;
        if (good && proof.load) {
            words += " Prove it once at " + both(*proof.load, m_system) + ".";
            if (proof.reading && proof.readingAt)
                words += " A dial from " + units::show(*proof.readingAt, m_system) +
                         " off the middle to the rim reads " + onDial(*proof.reading) +
                         " and goes back to within " + onDial(proof.returnWithin) +
                         ". If it stays bent, scrap it.";
        }
        double y = top + 35;
        for (const QString& line : Ink::wrapped(toQt(words), wide, kWords, 13))
            m_ink.text({kEdge, y += 5.2}, line, kWords);
        m_y = y + 4;
        const double high = 7 + 4.6 * static_cast<double>(m_report.gauge.size());
        if (!m_report.gauge.empty() && m_y + high < m_foot) {
            drawGauge({{kEdge, Side::Left}, {kEdge + 50, Side::Right}, {kEdge + wide, Side::Right}});
            m_gaugeDrawn = true;
        }
    }

    void checkRow(double x, double y, const verdict::Check& check) {
        drawMark(m_ink, {x + 3, y - 1.1}, 5, check.grade);
        m_ink.text({x + 8, y}, toQt(std::string(verdict::wordOf(check.grade))), kSmall);
        m_ink.text({x + 27, y}, Ink::cut(toQt(check.title), m_right - x - 27 - 34, kSmall), kSmall);
        if (check.margin)
            m_ink.text({m_right, y},
                       toQt(marginOf(check, *check.margin, m_system) +
                            (check.wanted ? " of " + marginOf(check, *check.wanted, m_system) : "")),
                       kSmall, false, Side::Right);
    }

    void drawChecks(double x, double y) {
        m_ink.text({x, y}, QStringLiteral("Checks, weakest first"), kHeading, true);
        constexpr double kPitch = 4.4;
        for (y += 1.5; m_checksDrawn < m_report.checks.size() && y + kPitch < m_foot; ++m_checksDrawn)
            checkRow(x, y += kPitch, m_report.checks[m_checksDrawn]);
    }

    void heading(const char* words) {
        if (m_page > 1)
            need(16);
        m_ink.text({kEdge, m_y += 6}, QString::fromUtf8(words), kHeading, true);
        m_y += 1;
    }
    /// Lines with a box to tick, or a dash.
    void list(const std::vector<std::string>& lines, double size, bool tick) {
        for (const std::string& line : lines) {
            const auto parts = Ink::wrapped(toQt(line), m_right - kEdge - 6, size, 8);
            need(1.4 * size * static_cast<double>(parts.size()));
            bool first = true;
            for (const QString& part : parts) {
                m_y += 1.4 * size;
                if (first && tick)
                    m_ink.rectangle({{kEdge, m_y - 2.7}, {kEdge + 3, m_y + 0.3}}, {kThin});
                else if (first)
                    m_ink.line({kEdge, m_y - 1}, {kEdge + 2, m_y - 1}, {kThin});
                m_ink.text({kEdge + 6, m_y}, part, size);
                first = false;
            }
        }
    }
    void table(const std::vector<Column>& columns, const std::vector<std::vector<std::string>>& rows) {
        for (const auto& words : rows) {
            need(4.6);
            row(m_y += 4.6, columns, words, false);
            m_ink.line({columns.front().x, m_y + 1.2}, {columns.back().x, m_y + 1.2}, {0.1, kGrey});
        }
    }

    void drawGauge(const std::vector<Column>& columns) {
        heading("Load gauge: load, dial");
        std::vector<std::vector<std::string>> rows;
        for (const engine::GaugeRow& each : m_report.gauge)
            rows.push_back({each.what, units::show(each.load, m_system), onDial(each.reading)});
        table(columns, rows);
    }

    void drawRest() {
        if (m_checksDrawn < m_report.checks.size()) {
            heading("Checks, the rest");
            for (; m_checksDrawn < m_report.checks.size(); ++m_checksDrawn) {
                need(4.4);
                checkRow(kEdge, m_y += 4.4, m_report.checks[m_checksDrawn]);
            }
        }
        const std::vector<Column> columns{{kEdge, Side::Left},
                                          {kEdge + 75, Side::Right},
                                          {kEdge + 125, Side::Right},
                                          {m_right, Side::Right}};
        if (m_plan.holes.size() > kMostRows) {
            heading("Hole centres: hole, from left, from foot");
            table(columns, holeRows());
        }
        heading("Order of work");
        list(m_report.steps, kWords, true);
        heading("Take care");
        list(m_report.cautions, kWords, false);
        if (!m_report.gauge.empty() && !m_gaugeDrawn)
            drawGauge(columns);
        if (!m_report.card.rows.empty()) {
            heading("Turns: load, torque, dial");
            std::vector<std::vector<std::string>> rows;
            for (const engine::CardRow& each : m_report.card.rows)
                rows.push_back({units::number(each.turns) + (each.turns == 1 ? " turn" : " turns"),
                                units::show(each.load, m_system), units::show(each.torque, m_system),
                                each.reading ? onDial(each.reading->low) + " to " + onDial(each.reading->high)
                                             : std::string()});
            table(columns, rows);
            list(m_report.card.notes, kSmall, false);
        }
        need(32);
        heading("Log: day, machine, most torque or dial, flat again, by whom");
        for (int i = 0; i < 3; ++i) {
            m_y += 7.5;
            m_ink.line({kEdge, m_y}, {m_right, m_y}, {kThin});
        }
        m_y += 2;
        heading("Taken for granted");
        list(m_report.assumptions, kSmall, false);
    }

    Ink& m_ink;
    const std::function<void()>& m_nextPage;
    const job::Job& m_job;
    const engine::Report& m_report;
    const TemplatePlan& m_plan;
    const Sheet m_sheet;
    const std::string m_date;
    const units::System m_system;
    const double m_right, m_foot;
    double m_y = 0;
    int m_page = 0;
    std::size_t m_checksDrawn = 0;
    bool m_gaugeDrawn = false;
};

} // namespace

double scaleFor(const Box& content, double roomWide, double roomHigh, units::System system) {
    const auto fits = [&](double scale) {
        return content.width() <= roomWide * scale && content.height() <= roomHigh * scale;
    };
    if (system == units::System::Inch) {
        double scale = 1;
        while (!fits(scale))
            scale *= 2;
        return scale;
    }
    for (double decade = 1;; decade *= 10)
        for (const double step : {1.0, 2.0, 2.5, 5.0})
            if (fits(decade * step))
                return decade * step;
}

void paintShopSheet(Ink& ink, const std::function<void()>& nextPage, const job::Job& job,
                    const engine::Report& report, const TemplatePlan& plan, const Sheet& sheet,
                    const std::string& date) {
    ShopSheet(ink, nextPage, job, report, plan, sheet, date).paint();
}

} // namespace pw::paper
