#include "app/paper/sheet_blocks.h"

#include "app/engine/output.h"
#include "app/paper/words.h"
#include "core/util/say.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace pw::paper {

using shape::Point;
using units::Length;

namespace {

constexpr double kThin = 0.22, kPitch = 4.6, kTightPitch = 4.1;
const QColor kHair(0x90, 0x90, 0x90), kBar(0xab, 0xab, 0xab);

/// A cell of a table: where it stands, from the left of the block, and on which side of that.
struct Cell {
    double x = 0;
    Side side = Side::Left;
    QString words;
    bool bold = false;
};

Row tableRow(const std::vector<Cell>& cells, double wide, bool line, double pitch = kPitch) {
    return {pitch, [=](Ink& ink, Point at) {
                for (const Cell& cell : cells)
                    ink.text({at.x + cell.x, at.y + 0.74 * pitch}, cell.words, kSmall, cell.bold, cell.side);
                if (line)
                    ink.line({at.x, at.y + pitch}, {at.x + wide, at.y + pitch}, {0.12, kHair});
            }};
}

/// Words broken into lines; what goes before the first is painted by `before`.
Row paragraph(const QString& words, double wide, double size, double indent = 0,
              const std::function<void(Ink&, Point)>& before = {}, bool bold = false) {
    constexpr int kMost = 40;
    const auto lines = Ink::wrapped(words, wide - indent, size, kMost, bold);
    const double lead = 1.3 * size;
    return {lead * static_cast<double>(lines.size()) + 0.7, [=](Ink& ink, Point at) {
                double y = at.y;
                for (const QString& line : lines)
                    ink.text({at.x + indent, y += lead}, line, size, bold);
                if (before)
                    before(ink, {at.x, at.y + lead});
            }};
}

void drawDash(Ink& ink, Point base) {
    ink.line({base.x, base.y - 1.1}, {base.x + 1.8, base.y - 1.1}, {kThin * 1.5});
}

void drawBox(Ink& ink, Point base) {
    ink.rectangle({{base.x, base.y - 2.9}, {base.x + 3.1, base.y + 0.2}}, {kThin});
}

std::vector<Row> dashed(const std::vector<std::string>& lines, double wide, double size) {
    std::vector<Row> rows;
    for (const std::string& line : lines)
        rows.push_back(paragraph(toQt(line), wide, size, 3.2, drawDash));
    return rows;
}

bool good(const SheetData& data) {
    return engine::mayBeMade(data.report.grade);
}

/// 1 to 6, or each by name.
QString namesOf(const std::vector<const MarkedHole*>& holes) {
    const auto station = [](const MarkedHole* hole) { return hole->part == shape::Part::Access; };
    if (holes.size() > 2 && std::all_of(holes.begin(), holes.end(), station)) {
        bool inTurn = true;
        for (std::size_t i = 1; i < holes.size(); ++i)
            inTurn = inTurn && std::stoi(holes[i]->name) == std::stoi(holes[i - 1]->name) + 1;
        if (inTurn)
            return Paper::tr("%1 to %2").arg(toQt(holes.front()->name), toQt(holes.back()->name));
    }
    QStringList names;
    for (const MarkedHole* hole : holes)
        names << toQt(hole->name);
    return names.join(QStringLiteral(", "));
}

/// Drills to go through one after the other up to a large one: each at most twice the one before, and at most
/// 8 mm (5/16 in) more; sizes that are in the set. Common practice, no published source.
std::vector<Length> stepDrills(Length last, units::System system) {
    const bool inch = system == units::System::Inch;
    const Length first = inch ? Length::fromInch(3.0 / 16) : Length::fromMm(5);
    const Length most = inch ? Length::fromInch(5.0 / 16) : Length::fromMm(8);
    const double step = inch ? units::kMmPerInch / 16 : 1; // mm
    std::vector<Length> drills;
    for (Length at = first; at < last;) {
        drills.push_back(at);
        const double next = std::min(2 * at.mm(), at.mm() + most.mm());
        at = Length::fromMm(std::floor(next / step + 1e-6) * step);
    }
    drills.push_back(last);
    return drills;
}

QString lubricationWord(job::Lubrication lubrication) {
    switch (lubrication) {
    case job::Lubrication::Dry:
        return Paper::tr("stop here, thread dry");
    case job::Lubrication::Oiled:
        return Paper::tr("stop here, thread oiled");
    case job::Lubrication::Moly:
        return Paper::tr("stop here, moly on the thread");
    }
    return {};
}

} // namespace

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

Block holeTable(const SheetData& data, const PlanDrawing& drawing, double wide) {
    const units::System system = data.job.preferred;
    Block block{
        system == units::System::Inch ? Paper::tr("Hole centres, inch") : Paper::tr("Hole centres, mm"), {}};
    const double x1 = wide - 31, x2 = wide - 15;
    block.rows.push_back(tableRow({{0, Side::Left, Paper::tr("hole")},
                                   {x1, Side::Right, Paper::tr("from left")},
                                   {x2, Side::Right, Paper::tr("from foot")},
                                   {wide, Side::Right, Paper::tr("size")}},
                                  wide, true, kTightPitch));
    // The bore first, it is what everything else is measured by.
    std::vector<const MarkedHole*> holes;
    for (const MarkedHole& hole : data.plan.holes)
        holes.push_back(&hole);
    std::stable_sort(holes.begin(), holes.end(), [](const MarkedHole* a, const MarkedHole* b) {
        return (a->part == shape::Part::Bore) > (b->part == shape::Part::Bore);
    });
    for (const MarkedHole* hole : holes) {
        const Point at = drawing.fromEdges(*hole);
        const auto circle = asCircle(hole->loop);
        const QString size = hole->loop.vertices.empty() || !circle
                                 ? QStringLiteral("–")
                                 : toQt(bare(Length::fromMm(2 * circle->radius), system));
        const QString left = toQt(asLaidOut(Length::fromMm(at.x), system));
        const double room = x1 - Ink::widthOf(left, kSmall) - 1.5;
        block.rows.push_back(tableRow({{0, Side::Left, Ink::cut(toQt(hole->name), room, kSmall, true), true},
                                       {x1, Side::Right, left},
                                       {x2, Side::Right, toQt(asLaidOut(Length::fromMm(at.y), system))},
                                       {wide, Side::Right, size}},
                                      wide, true, kTightPitch));
    }
    return block;
}

Block dividers(const SheetData& data, double wide) {
    Block block{Paper::tr("Set the dividers"), {}};
    const job::Stations& stations = data.job.stations;
    const auto row = [&](const QString& what, Length size) {
        block.rows.push_back(tableRow(
            {{0, Side::Left, what}, {wide, Side::Right, toQt(asLaidOut(size, data.job.preferred)), true}},
            wide, true, kTightPitch));
    };
    // Chord over k parts of n of a circle of diameter D: D sin(k pi / n).
    const auto chord = [&](int parts) {
        return *stations.circle * std::sin(std::numbers::pi * parts / *stations.count);
    };
    if (stations.at.empty() && stations.circle && stations.count && *stations.count >= 2) {
        row(Paper::tr("pin circle, radius"), *stations.circle / 2);
        if (*stations.count >= 3)
            row(Paper::tr("hole to next hole"), chord(1));
        if (*stations.count >= 4)
            row(Paper::tr("hole to next but one"), chord(2));
        if (*stations.count % 2 == 0 && *stations.count != 4)
            row(Paper::tr("hole to opposite hole"), *stations.circle);
    } else {
        int number = 0;
        for (const Point station : data.report.stations)
            if (++number <= 8)
                row(Paper::tr("bore to hole %1").arg(number), Length::fromMm(norm(station)));
    }
    if (const auto rim = asCircle(data.plan.rim))
        row(Paper::tr("rim, radius"), Length::fromMm(rim->radius));
    return block;
}

Block makeThem(const SheetData& data, double wide) {
    Block block{Paper::tr("Make them"), {}};
    std::vector<std::pair<std::string, std::vector<const MarkedHole*>>> kinds;
    for (const MarkedHole& hole : data.plan.holes) {
        auto same = std::find_if(kinds.begin(), kinds.end(),
                                 [&](const auto& kind) { return kind.first == hole.how; });
        if (same == kinds.end())
            same = kinds.insert(kinds.end(), {hole.how, {}});
        same->second.push_back(&hole);
    }
    for (const auto& [how, holes] : kinds) {
        block.rows.push_back(paragraph(Paper::tr("%1: %2.").arg(namesOf(holes), toQt(how)), wide, kSmall));
        const auto circle = asCircle(holes.front()->loop);
        if (!holes.front()->drilled || !circle)
            continue;
        const auto steps = stepDrills(Length::fromMm(2 * circle->radius), data.job.preferred);
        QStringList sizes;
        for (const Length step : steps)
            sizes << toQt(bare(step, data.job.preferred));
        if (steps.size() > 2)
            block.rows.push_back(
                paragraph(Paper::tr("Drill up: %1.").arg(sizes.join(QStringLiteral(", "))), wide, kSmall));
    }
    const job::Assumed assumed = job::assume(data.job);
    block.rows.push_back(
        paragraph(Paper::tr("Holes first, then the rim. Holes true to %1.")
                      .arg(toQt(units::show(assumed.habits.layoutError, data.job.preferred))),
                  wide, kSmall));
    if (assumed.stacked > 1)
        block.rows.push_back(
            paragraph(Paper::tr("Make %1 plates alike.").arg(assumed.stacked), wide, kSmall));
    return block;
}

Block stamp(const SheetData& data, double wide) {
    constexpr double kHigh = 33;
    const engine::ScrewReport screw = data.report.screw;
    const units::System system = data.job.preferred;
    const auto other = system == units::System::Metric ? units::System::Inch : units::System::Metric;
    struct Figure {
        QString large, small, what;
    };
    std::vector<Figure> figures;
    const auto& rated = screw.stamp ? screw.stamp : screw.ratedLoad;
    if (good(data) && rated)
        figures.push_back(
            {toQt(units::show(*rated, system)), toQt(units::show(*rated, other)), Paper::tr("most load")});
    if (good(data) && screw.stopTorque)
        figures.push_back({toQt(units::show(*screw.stopTorque, system)),
                           toQt(units::show(*screw.stopTorque, other)),
                           lubricationWord(job::assume(data.job).lubrication)});
    else if (good(data) && screw.stopPressure)
        figures.push_back({toQt(units::showPressure(*screw.stopPressure, system)),
                           toQt(units::showPressure(*screw.stopPressure, other)),
                           Paper::tr("stop here, on the gauge")});
    const bool may = good(data);
    Block block;
    block.rows.push_back(
        {kHigh + 1.5, [=](Ink& ink, Point at) {
             ink.rectangle({{at.x, at.y + 0.5}, {at.x + wide, at.y + kHigh}}, {0.75});
             for (const double x : {at.x + 4.5, at.x + wide - 4.5})
                 ink.loop(shape::circleLoop({x, at.y + 5}, 1.3), [](Point p) { return p; }, {kThin});
             ink.text({at.x + wide / 2, at.y + 6.2},
                      Ink::cut(may ? Paper::tr("Stamp this on the plate")
                                   : Paper::tr("Nothing to stamp: do not use"),
                               wide - 15, kWords),
                      kWords, false, Side::Middle);
             const double room = wide / std::max<double>(1, static_cast<double>(figures.size()));
             double x = at.x + room / 2;
             for (const Figure& each : figures) {
                 const double size = std::min(7.6, 7.6 * (room - 4) / Ink::widthOf(each.large, 7.6, true));
                 ink.text({x, at.y + 16.5}, each.large, size, true, Side::Middle);
                 ink.text({x, at.y + 22.5}, each.small, kWords, false, Side::Middle);
                 const double fit = std::min(kSmall, kSmall * (room - 3) / Ink::widthOf(each.what, kSmall));
                 ink.text({x, at.y + 28.5}, each.what, fit, false, Side::Middle);
                 x += room;
             }
         }});
    if (screw.ratedLoad)
        block.rows.push_back(paragraph(
            Paper::tr("The tool is good for %1 where it stops.").arg(both(*screw.ratedLoad, system)), wide,
            kSmall));
    if (data.report.load.total)
        block.rows.push_back(
            paragraph(Paper::tr("This job takes %1.").arg(toQt(units::show(*data.report.load.total, system))),
                      wide, kSmall));
    return block;
}

Block proof(const SheetData& data, double wide) {
    const engine::ProofReport& proof = data.report.proof;
    const units::System system = data.job.preferred;
    Block block{Paper::tr("Prove it once"), {}};
    if (!good(data) || !proof.load)
        return {};
    const bool pull = data.job.work == job::Work::Pull;
    const QString load = both(*proof.load, system);
    QString how = pull ? Paper::tr("Load it to %1.").arg(load)
                       : Paper::tr("On solid packing, no springs: load it to %1.").arg(load);
    if (proof.torque)
        how = pull ? Paper::tr("Load it to %1, about %2 on the wrench.")
                         .arg(load, toQt(units::show(*proof.torque, system)))
                   : Paper::tr("On solid packing, no springs: load it to %1, about %2 on the wrench.")
                         .arg(load, toQt(units::show(*proof.torque, system)));
    block.rows.push_back(paragraph(how, wide, kSmall + 0.2));
    if (proof.reading && proof.readingAt)
        block.rows.push_back(paragraph(
            Paper::tr("A dial from %1 off the middle to the rim reads %2, and goes back to within %3. If it "
                      "stays bent, scrap it.")
                .arg(toQt(units::show(*proof.readingAt, system)), toQt(onDial(*proof.reading, system)),
                     toQt(onDial(proof.returnWithin, system))),
            wide, kSmall + 0.2));
    return block;
}

Block gaugeTable(const SheetData& data, double wide) {
    Block block{Paper::tr("The plate as a gauge"), {}};
    if (!good(data) || data.report.gauge.empty())
        return {};
    const units::System system = data.job.preferred;
    block.rows.push_back(tableRow({{0, Side::Left, {}},
                                   {wide - 18, Side::Right, Paper::tr("load")},
                                   {wide, Side::Right, Paper::tr("dial")}},
                                  wide, true, kTightPitch));
    for (const engine::GaugeRow& row : data.report.gauge)
        block.rows.push_back(tableRow({{0, Side::Left, Ink::cut(toQt(row.what), wide - 36, kSmall)},
                                       {wide - 18, Side::Right, toQt(units::show(row.load, system))},
                                       {wide, Side::Right, toQt(onDial(row.reading, system)), true}},
                                      wide, true, kTightPitch));
    return block;
}

Block checks(const SheetData& data, double wide) {
    constexpr double kBarLong = 26, kMark = 6;
    const units::System system = data.job.preferred;
    const auto said = [&](const verdict::Check& check, double value) {
        const bool length =
            check.kind == verdict::CheckKind::Fit && check.unit == "mm" && !check.marginIsRatio;
        return length ? toQt(units::show(Length::fromMm(value), system)) : toQt(units::number(value));
    };
    double most = 0;
    std::vector<QString> values;
    for (const verdict::Check& check : data.report.checks) {
        QString words;
        if (check.margin && check.wanted)
            words = Paper::tr("%1 of %2").arg(said(check, *check.margin), said(check, *check.wanted));
        values.push_back(words);
        most = std::max(most, Ink::widthOf(words, kSmall));
    }
    const double bar = wide - most - 2.5 - kBarLong;
    Block block{Paper::tr("Checks, weakest first"), {}};
    if (data.report.checks.empty())
        return {};
    block.rows.push_back({3.4, [=](Ink& ink, Point at) {
                              ink.text({at.x + bar + kBarLong / 2, at.y + 2.2}, Paper::tr("wanted"), kSmall,
                                       false, Side::Middle);
                          }});
    for (std::size_t i = 0; i < data.report.checks.size(); ++i) {
        const verdict::Check& check = data.report.checks[i];
        const auto ratio = check.marginOverWanted();
        const QString value = values[i];
        const QString word = gradeWord(check.grade);
        const verdict::Grade grade = check.grade;
        QString title = toQt(check.title);
        if (grade != verdict::Grade::Holds)
            title += QStringLiteral(": ") + word;
        title = Ink::cut(title, (ratio ? bar : wide) - kMark - 1.5, kSmall, grade != verdict::Grade::Holds);
        block.rows.push_back(
            {kTightPitch, [=](Ink& ink, Point at) {
                 const double base = at.y + 0.74 * kTightPitch, middle = base - 1.1;
                 drawMark(ink, {at.x + 2.2, middle}, 4.4, grade);
                 ink.text({at.x + kMark, base}, title, kSmall, grade != verdict::Grade::Holds);
                 if (ratio) {
                     const double x = at.x + bar;
                     const double full = kBarLong * std::clamp(*ratio / 2, 0.0, 1.0);
                     ink.rectangle({{x, middle - 1.1}, {x + full, middle + 1.1}}, {0.05, kBar}, kBar);
                     ink.rectangle({{x, middle - 1.1}, {x + kBarLong, middle + 1.1}}, {0.12, kHair});
                     ink.line({x + kBarLong / 2, at.y + 0.1}, {x + kBarLong / 2, at.y + kTightPitch + 0.1},
                              {0.45});
                 }
                 ink.text({at.x + wide, base}, value, kSmall, false, Side::Right);
             }});
    }
    return block;
}

namespace {

Block stepsFrom(const SheetData& data, double wide, const QString& heading, std::size_t from,
                std::size_t to) {
    Block block{heading, {}};
    for (std::size_t i = from; i < std::min(to, data.report.steps.size()); ++i) {
        const QString number = QString::number(i + 1);
        block.rows.push_back(
            paragraph(toQt(data.report.steps[i]), wide, kSmall + 0.2, 9.5, [number](Ink& ink, Point base) {
                drawBox(ink, base);
                ink.text({base.x + 8.3, base.y}, number, kSmall, true, Side::Right);
            }));
    }
    return block;
}

} // namespace

Block firstSteps(const SheetData& data, double wide) {
    if (!good(data))
        return {};
    const bool pull = data.job.work == job::Work::Pull;
    return stepsFrom(data, wide, pull ? Paper::tr("To set up") : Paper::tr("To squeeze"), 0,
                     data.report.lastSteps);
}

Block lastSteps(const SheetData& data, double wide) {
    if (!good(data))
        return {};
    const bool pull = data.job.work == job::Work::Pull;
    return stepsFrom(data, wide, pull ? Paper::tr("To pull") : Paper::tr("To let up"), data.report.lastSteps,
                     data.report.steps.size());
}

Block keepersCounted(const SheetData& data, double wide) {
    const auto count = static_cast<int>(data.report.stations.size());
    if (!good(data) || data.job.work == job::Work::Pull || count == 0)
        return {};
    Block block;
    const QStringList names{Paper::tr("Keepers out"), Paper::tr("Keepers in")};
    const double first =
        std::max(Ink::widthOf(names[0], kSmall, true), Ink::widthOf(names[1], kSmall, true)) + 4;
    constexpr double kEach = 10.5;
    const int perRow = std::max(1, static_cast<int>((wide - first) / kEach));
    for (const QString& name : names)
        for (int from = 0; from < count; from += perRow)
            block.rows.push_back({5.4, [=](Ink& ink, Point at) {
                                      const double base = at.y + 3.9;
                                      if (from == 0)
                                          ink.text({at.x, base}, name, kSmall, true);
                                      for (int i = from; i < std::min(count, from + perRow); ++i) {
                                          const double x = at.x + first + kEach * (i - from);
                                          drawBox(ink, {x, base});
                                          ink.text({x + 4, base}, QString::number(i + 1), kSmall);
                                      }
                                  }});
    return block;
}

Block cautions(const SheetData& data, double wide) {
    std::vector<Row> rows;
    constexpr double kIn = 6;
    if (!good(data)) {
        const bool pull = data.job.work == job::Work::Pull;
        rows.push_back(paragraph(pull ? Paper::tr("Do not pull with this tool.")
                                      : Paper::tr("Do not squeeze with this plate."),
                                 wide - 2 * kIn, kWords, 0, {}, true));
    }
    bool first = true;
    for (const std::string& line : data.report.cautions) {
        rows.push_back(
            paragraph(toQt(line), wide - 2 * kIn, first ? kWords : kSmall + 0.2, 3.2, drawDash, first));
        first = false;
    }
    if (rows.empty())
        return {};
    double high = 4;
    for (const Row& row : rows)
        high += row.height;
    // One row, so that the frame is never torn.
    return {{}, {{high, [=](Ink& ink, Point at) {
                      ink.rectangle({at, {at.x + wide, at.y + high - 1}}, {0.5});
                      ink.rectangle({at, {at.x + 2.8, at.y + high - 1}}, {0.05}, Qt::black);
                      double y = at.y + 1;
                      for (const Row& row : rows) {
                          row.paint(ink, {at.x + kIn, y});
                          y += row.height;
                      }
                  }}}};
}

Block turnsCard(const SheetData& data, double wide) {
    const engine::Card& card = data.report.card;
    if (!good(data) || card.rows.empty())
        return {};
    const units::System system = data.job.preferred;
    Block block{Paper::tr("Turns and torque"), {}};
    const bool turns = std::any_of(card.rows.begin(), card.rows.end(), [](const engine::CardRow& row) {
        return row.squeeze || row.turns >= 0.1;
    });
    std::vector<std::array<QString, 4>> table{
        {turns ? Paper::tr("turns") : QString(), Paper::tr("load"), Paper::tr("torque"), Paper::tr("dial")}};
    const auto brief = [&](const auto& range) {
        return toQt(units::show(range, system)).replace(toQt(say("%1 to %2", {"", ""})), QStringLiteral("–"));
    };
    for (const engine::CardRow& row : card.rows) {
        QString dial;
        if (row.reading) {
            const std::string low = onDial(row.reading->low, system),
                              high = onDial(row.reading->high, system);
            dial = low == high ? toQt(low)
                               : toQt(low.substr(0, low.rfind("\u00a0"))) + QStringLiteral("–") + toQt(high);
        }
        const double shown = std::round(row.turns * 100) / 100;
        table.push_back(
            {turns ? toQt(units::number(shown)) : QString(), brief(row.load), brief(row.torque), dial});
    }
    // Each column as wide as its words; what is left over is the gaps.
    std::array<double, 4> room{};
    for (const auto& row : table)
        for (std::size_t i = 0; i < row.size(); ++i)
            room[i] = std::max(room[i], Ink::widthOf(row[i], kSmall, i == 0));
    const double gap = std::max(1.5, (wide - room[0] - room[1] - room[2] - room[3]) / 3);
    const double x1 = room[0] + gap + room[1], x2 = x1 + gap + room[2], x3 = x2 + gap + room[3];
    for (std::size_t i = 0; i < table.size(); ++i)
        block.rows.push_back(tableRow({{0, Side::Left, table[i][0], i > 0},
                                       {x1, Side::Right, table[i][1]},
                                       {x2, Side::Right, table[i][2]},
                                       {x3, Side::Right, table[i][3]}},
                                      wide, true, kTightPitch));
    return block;
}

Block cardNotes(const SheetData& data, double wide) {
    if (!good(data) || data.report.card.rows.empty())
        return {};
    return {{}, dashed(data.report.card.notes, wide, kSmall)};
}

Block threadInHand(const SheetData& data, double wide) {
    const engine::TravelReport& travel = data.report.travel;
    if (!good(data) || travel.moments.empty())
        return {};
    const units::System system = data.job.preferred;
    const bool shank = std::any_of(travel.moments.begin(), travel.moments.end(),
                                   [](const auto& moment) { return moment.toShank.has_value(); });
    Block block{Paper::tr("Thread in hand"), {}};
    block.rows.push_back(tableRow({{shank ? 0.62 * wide : wide, Side::Right, Paper::tr("to the end")},
                                   {wide, Side::Right, shank ? Paper::tr("to the shank") : QString()}},
                                  wide, true, kTightPitch));
    for (const loadpath::ThreadMoment& moment : travel.moments)
        block.rows.push_back(tableRow(
            {{0, Side::Left, toQt(moment.when)},
             {shank ? 0.62 * wide : wide, Side::Right, toQt(units::show(moment.toEnd, system))},
             {wide, Side::Right, moment.toShank ? toQt(units::show(*moment.toShank, system)) : QString()}},
            wide, true, kTightPitch));
    if (travel.threadNeeded)
        block.rows.push_back(paragraph(Paper::tr("The screw needs at least %1 of thread.")
                                           .arg(toQt(units::show(*travel.threadNeeded, system))),
                                       wide, kSmall));
    return block;
}

Block useLog(const SheetData& data, double wide, int lines) {
    if (!good(data))
        return {};
    Block block{Paper::tr("Log of uses"), {}};
    const auto drift = Length::fromMm(0.05);
    block.rows.push_back(paragraph(
        Paper::tr(
            "Straight edge and dial before each use. Retire the plate when its flatness has drifted %1.")
            .arg(toQt(onDial(drift, data.job.preferred))),
        wide, kSmall));
    const std::vector<std::pair<double, QString>> columns{{0, Paper::tr("date")},
                                                          {0.14, Paper::tr("used on")},
                                                          {0.44, Paper::tr("most torque or dial")},
                                                          {0.66, Paper::tr("zero reading")},
                                                          {0.84, Paper::tr("by")}};
    std::vector<Cell> heads;
    for (const auto& [part, name] : columns)
        heads.push_back({part * wide + (part > 0 ? 1.5 : 0), Side::Left, name});
    block.rows.push_back(tableRow(heads, wide, true));
    for (int i = 0; i < lines; ++i)
        block.rows.push_back({7, [=](Ink& ink, Point at) {
                                  ink.line({at.x, at.y + 7}, {at.x + wide, at.y + 7}, {kThin});
                                  for (const auto& [part, name] : columns)
                                      if (part > 0)
                                          ink.line({at.x + part * wide, at.y + 1},
                                                   {at.x + part * wide, at.y + 7}, {0.12, kHair});
                              }});
    return block;
}

Block assumptions(const SheetData& data, double wide) {
    if (data.report.assumptions.empty())
        return {};
    return {Paper::tr("Taken for granted"), dashed(data.report.assumptions, wide, kSmall)};
}

} // namespace pw::paper
