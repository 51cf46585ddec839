#include "app/gui/views/curve_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/views/plan_geometry.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>

namespace pw::gui {

/// Where load and bend lie on the screen. The figures at the axes are in the user's unit.
struct CurveView::Axes {
    QRectF plot;
    double mostFactor = 1, mostMm = 1;
    double loadUnit = 1; ///< factor a unit of the axis
    double bendUnit = 1; ///< mm a unit of the axis
    double names = 0;    ///< width kept free at the right for the names of the marks
    QString loadName, bendName;

    QPointF at(double factor, double mm) const {
        return {plot.left() + plot.width() * mm / mostMm,
                plot.bottom() - plot.height() * factor / mostFactor};
    }
};

CurveView::CurveView(QWidget* parent) : StripPane(tr("Load against bend"), parent) {
    setFocusPolicy(Qt::TabFocus);
}

void CurveView::setUnits(units::System system) {
    m_units = system;
    setAccessibleDescription(words());
    update();
}

void CurveView::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    m_curve = m_report ? loadCurve(*m_report) : LoadCurve{};
    setAccessibleDescription(words());
    update();
}

bool CurveView::isLowerBound() const {
    return m_report && m_report->plate.collapseIsLowerBound;
}

QString CurveView::markName(CurveMark::Kind kind) const {
    switch (kind) {
    case CurveMark::Kind::Design:
        return tr("full load");
    case CurveMark::Kind::Proof:
        return tr("1¼ × full load");
    case CurveMark::Kind::Yield:
        return tr("first yield");
    case CurveMark::Kind::Folding:
        return isLowerBound() ? tr("folds later than") : tr("it folds");
    }
    return {};
}

QString CurveView::load(double factor) const {
    if (m_curve.designN <= 0)
        return tr("%1 × full load").arg(local(units::number(factor, 3)));
    return local(units::show(units::Force::fromN(m_curve.designN * factor), m_units));
}

QString CurveView::bend(double mm) const {
    return local(units::show(units::Length::fromMm(mm), m_units));
}

QString CurveView::words() const {
    if (m_curve.isEmpty())
        return tr("Not worked out yet.");
    QStringList parts;
    for (const auto& mark : m_curve.marks)
        parts << tr("%1 %2, bent %3").arg(markName(mark.kind), load(mark.factor), bend(mark.deflectionMm));
    if (m_curve.setMm)
        parts << tr("let go from full load it stays bent %1").arg(bend(*m_curve.setMm));
    return parts.join(QStringLiteral("; ")) + QLatin1Char('.');
}

CurveView::Axes CurveView::axes() const {
    const Look& look = Look::now();
    const bool inch = m_units == units::System::Inch;
    Axes axes;
    axes.mostFactor = m_curve.mostFactor;
    axes.mostMm = m_curve.mostMm;
    axes.bendUnit = inch ? units::kMmPerInch : 1;
    axes.bendName = inch ? tr("in, bore to rim") : tr("mm, bore to rim");
    if (m_curve.designN > 0) {
        const double full = m_curve.designN * m_curve.mostFactor;
        const double unit = inch ? units::kNewtonPerPoundForce : full >= 2000 ? 1000 : 1;
        axes.loadUnit = unit / m_curve.designN;
        axes.loadName = inch ? tr("lbf") : full >= 2000 ? tr("kN") : tr("N");
    } else {
        axes.loadName = tr("× full load");
    }
    QFontMetricsF metrics(look.font(Type::Label));
    double figures = 0;
    const double step = roundStep(axes.mostFactor / axes.loadUnit, 4);
    for (double v = 0; v * axes.loadUnit <= axes.mostFactor; v += step)
        figures = std::max(figures, metrics.horizontalAdvance(QLocale().toString(v, 'g', 6)));
    for (const auto& mark : m_curve.marks)
        axes.names =
            std::max(axes.names, metrics.horizontalAdvance(markName(mark.kind) + QStringLiteral(", ") +
                                                           load(mark.factor)));
    const QRectF box = body();
    axes.plot = box.adjusted(figures + look.pxF(8), look.pxF(20), -look.pxF(6), -look.pxF(38));
    axes.names += look.pxF(14);
    // The bend to folding is many times what is seen before it: names stand over the curve's flat end.
    return axes;
}

void CurveView::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), c.panel);
    paintHead(painter, m_curve.setMm ? tr("%1 of set at full load").arg(bend(*m_curve.setMm)) : QString(),
              c.sets.text);
    if (isFolded()) {
        paintEmpty(painter, words());
        return;
    }
    if (m_curve.isEmpty()) {
        paintEmpty(painter, tr("Comes with the first verdict."));
        return;
    }
    const Axes axes = this->axes();
    if (axes.plot.width() < 40 || axes.plot.height() < 30)
        return;
    paintAxes(painter, axes);
    paintLine(painter, axes);
    paintMarks(painter, axes);
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()).adjusted(1, 1, -1, -1), look.pxF(3));
}

void CurveView::paintAxes(QPainter& painter, const Axes& axes) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const QLocale locale;
    painter.setFont(look.font(Type::Label));
    const QFontMetricsF metrics(painter.font());
    const int parts = std::clamp(static_cast<int>(axes.plot.height() / look.pxF(26)), 2, 6);
    const double loadStep = roundStep(axes.mostFactor / axes.loadUnit, parts);
    for (double v = 0; v * axes.loadUnit <= axes.mostFactor + 1e-9; v += loadStep) {
        const double y = axes.at(v * axes.loadUnit, 0).y();
        painter.setPen(QPen(v == 0 ? c.ink : c.rule, v == 0 ? 1.6 : 1));
        painter.drawLine(QPointF(axes.plot.left(), y), QPointF(axes.plot.right(), y));
        painter.setPen(c.muted);
        drawLine(painter,
                 QRectF(body().left(), y - look.pxF(10), axes.plot.left() - body().left() - look.pxF(6),
                        look.pxF(20)),
                 Qt::AlignRight, locale.toString(v, 'g', 6), false);
    }
    painter.setPen(QPen(c.ink, 1.6));
    painter.drawLine(axes.plot.topLeft(), axes.plot.bottomLeft());
    painter.setPen(c.muted);
    drawLine(painter, QRectF(body().left(), body().top(), look.pxF(90), look.pxF(18)), Qt::AlignLeft,
             axes.loadName, false);
    const int across = std::clamp(static_cast<int>(axes.plot.width() / look.pxF(60)), 2, 8);
    const double bendStep = roundStep(axes.mostMm / axes.bendUnit, across);
    for (double v = 0; v * axes.bendUnit <= axes.mostMm + 1e-12; v += bendStep) {
        const double x = axes.at(0, v * axes.bendUnit).x();
        painter.setPen(QPen(c.ink, 1));
        painter.drawLine(QPointF(x, axes.plot.bottom()), QPointF(x, axes.plot.bottom() + look.pxF(4)));
        const QString words = locale.toString(v, 'g', 4);
        const double wide = metrics.horizontalAdvance(words);
        painter.setPen(c.muted);
        drawLine(painter,
                 QRectF(std::min(x - wide / 2, body().right() - wide), axes.plot.bottom() + look.pxF(4),
                        wide + 1, look.pxF(18)),
                 Qt::AlignLeft, words, false);
    }
    drawLine(painter,
             QRectF(axes.plot.left(), axes.plot.bottom() + look.pxF(20), axes.plot.width(), look.pxF(18)),
             Qt::AlignRight, axes.bendName, false);
}

void CurveView::paintLine(QPainter& painter, const Axes& axes) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPolygonF line;
    for (const auto& p : m_curve.points)
        line << axes.at(p.factor, p.deflectionMm);
    QPen pen(c.ink, look.pxF(2.4));
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(line);
    if (!m_curve.setMm)
        return;
    const auto design = std::ranges::find(m_curve.marks, CurveMark::Kind::Design, &CurveMark::kind);
    if (design == m_curve.marks.end() || !design->onCurve)
        return;
    // Letting go runs back to what stays.
    QPen back(c.sets.text, look.pxF(2));
    back.setDashPattern({4, 3});
    painter.setPen(back);
    painter.drawLine(axes.at(1, design->deflectionMm), axes.at(0, *m_curve.setMm));
    painter.setPen(QPen(c.sets.text, look.pxF(5), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(axes.at(0, 0), axes.at(0, *m_curve.setMm));
}

void CurveView::paintMarks(QPainter& painter, const Axes& axes) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setFont(look.font(Type::Label));
    // The names stand in a column at the right, each at its load as near as the others allow.
    std::vector<double> wanted;
    const double start = std::max(axes.plot.right() - axes.names, axes.plot.left() + look.pxF(30));
    for (const auto& mark : m_curve.marks)
        wanted.push_back(axes.at(mark.factor, 0).y());
    // Below the curve, which is lowest where the names begin.
    const double startMm = (start - axes.plot.left()) / axes.plot.width() * axes.mostMm;
    if (const auto factor = m_curve.factorAt(startMm))
        for (double& y : wanted)
            y = std::max(y, axes.at(*factor, 0).y() + look.pxF(16));
    // Equal places keep the order of the loads, the greatest on top.
    for (std::size_t i = 0; i < wanted.size(); ++i)
        wanted[i] -= 0.01 * static_cast<double>(i);
    const auto middles = spread(wanted, look.pxF(19), axes.plot.top(), axes.plot.bottom() - look.pxF(2));
    for (std::size_t i = 0; i < m_curve.marks.size(); ++i) {
        const CurveMark& mark = m_curve.marks[i];
        const bool design = mark.kind == CurveMark::Kind::Design;
        const QColor colour = design ? c.touch : c.ink;
        const QPointF spot = axes.at(mark.factor, mark.deflectionMm);
        const QString words = markName(mark.kind) + QStringLiteral(", ") + load(mark.factor);
        painter.setFont(look.font(design ? Type::LabelBold : Type::Label));
        const double wide = QFontMetricsF(painter.font()).horizontalAdvance(words);
        // Beside the curve where its flat end leaves no column free.
        const double right = axes.plot.right() - look.pxF(2);
        const double x = std::max(std::min(start, right - wide), axes.plot.left() + look.pxF(30));
        const QRectF box(x, middles[i] - look.pxF(10), wide, look.pxF(19));
        const QPointF lead(box.left() - look.pxF(4), box.center().y());
        if (mark.onCurve && lead.x() > spot.x() + look.pxF(8)) {
            painter.setPen(QPen(c.strongRule, 1));
            painter.drawLine(spot, lead);
        }
        painter.setPen(Qt::NoPen);
        QColor ground = c.panel;
        ground.setAlphaF(0.8F);
        painter.setBrush(ground);
        painter.drawRect(box);
        painter.setPen(colour);
        drawLine(painter, box, Qt::AlignLeft, words, false);
        if (!mark.onCurve)
            continue;
        painter.setPen(QPen(design ? c.panel : c.ink, look.pxF(1.8)));
        painter.setBrush(design ? c.touch : c.panel);
        const double r = look.pxF(design ? 6 : 4.5);
        painter.drawEllipse(spot, r, r);
    }
}

} // namespace pw::gui
