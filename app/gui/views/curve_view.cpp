#include "app/gui/views/curve_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/views/plan_geometry.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QLineF>
#include <QLocale>
#include <QMouseEvent>
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
    setFocusPolicy(Qt::StrongFocus);
}

void CurveView::setUnits(units::System system) {
    m_units = system;
    setAccessibleDescription(words());
    update();
}

void CurveView::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    m_curve = m_report ? loadCurve(*m_report) : LoadCurve{};
    if (m_factor > m_curve.lastFactor())
        m_factor = 1;
    setAccessibleDescription(words());
    update();
    Q_EMIT factorChanged(m_factor);
}

void CurveView::setFactor(double factor) {
    if (m_curve.isEmpty())
        return;
    factor = std::clamp(factor, 0.0, m_curve.lastFactor());
    if (factor == m_factor)
        return;
    m_factor = factor;
    setAccessibleDescription(nowWords() + QStringLiteral(". ") + words());
    update();
    Q_EMIT factorChanged(m_factor);
}

void CurveView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        mouseMoveEvent(event);
}

void CurveView::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton) || m_curve.isEmpty() || isFolded())
        return;
    const Axes axes = this->axes();
    const QPointF at = event->position() - axes.plot.bottomLeft();
    double factor = m_curve.nearestFactor(at.x(), -at.y(), axes.plot.width() / axes.mostMm,
                                          axes.plot.height() / axes.mostFactor);
    // It catches on the marks.
    const QPointF now = axes.at(factor, m_curve.deflectionAt(factor).value_or(0));
    for (const auto& mark : m_curve.marks)
        if (mark.onCurve &&
            QLineF(axes.at(mark.factor, mark.deflectionMm), now).length() < Look::now().pxF(4))
            factor = mark.factor;
    setFactor(factor);
}

void CurveView::keyPressEvent(QKeyEvent* event) {
    const double step = m_curve.lastFactor() / 50;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        setFactor(m_factor - step);
        break;
    case Qt::Key_Right:
    case Qt::Key_Up:
        setFactor(m_factor + step);
        break;
    case Qt::Key_PageUp:
        setFactor(m_curve.nextMark(m_factor, true));
        break;
    case Qt::Key_PageDown:
        setFactor(m_curve.nextMark(m_factor, false));
        break;
    case Qt::Key_Home:
        setFactor(1);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

QString CurveView::nowWords() const {
    return tr("now %1, bent %2").arg(load(m_factor), bend(m_curve.deflectionAt(m_factor).value_or(0)));
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
    axes.bendName = inch ? tr("in, centre to stations") : tr("mm, centre to stations");
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
    const auto design = m_curve.deflectionAt(1);
    if (!m_curve.restMm || !design)
        return;
    // Letting go runs back to what stays.
    QPen back(c.sets.text, look.pxF(2));
    back.setDashPattern({4, 3});
    painter.setPen(back);
    painter.drawLine(axes.at(1, *design), axes.at(0, *m_curve.restMm));
    painter.setPen(QPen(c.sets.text, look.pxF(5), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(axes.at(0, 0), axes.at(0, *m_curve.restMm));
}

void CurveView::paintMarks(QPainter& painter, const Axes& axes) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    // The names stand in a column at the right, each at its load as near as the others allow. The load that
    // is looked at is named over them; at rest that is full load itself.
    struct Name {
        QString words;
        QPointF spot;
        bool onCurve = true, isNow = false;
        double wanted = 0;
    };
    const bool rests = m_factor == 1;
    std::vector<Name> names;
    for (const auto& mark : m_curve.marks) {
        const QPointF spot = axes.at(mark.factor, mark.deflectionMm);
        names.push_back({markName(mark.kind) + QStringLiteral(", ") + load(mark.factor), spot, mark.onCurve,
                         rests && mark.kind == CurveMark::Kind::Design, axes.at(mark.factor, 0).y()});
    }
    const double start = std::max(axes.plot.right() - axes.names, axes.plot.left() + look.pxF(30));
    // Below the curve, which is lowest where the names begin.
    const double startMm = (start - axes.plot.left()) / axes.plot.width() * axes.mostMm;
    if (const auto factor = m_curve.factorAt(startMm))
        for (Name& name : names)
            name.wanted = std::max(name.wanted, axes.at(*factor, 0).y() + look.pxF(16));
    std::vector<double> wanted;
    // Equal places keep the order of the loads, the greatest on top.
    for (std::size_t i = 0; i < names.size(); ++i)
        wanted.push_back(names[i].wanted - 0.01 * static_cast<double>(i));
    const auto middles = spread(wanted, look.pxF(19), axes.plot.top(), axes.plot.bottom() - look.pxF(2));
    const double right = axes.plot.right() - look.pxF(2);
    const auto drawWords = [&](const QRectF& box, const QString& words, const QColor& colour) {
        painter.setPen(Qt::NoPen);
        QColor ground = c.panel;
        ground.setAlphaF(0.8F);
        painter.setBrush(ground);
        painter.drawRect(box);
        painter.setPen(colour);
        drawLine(painter, box, Qt::AlignLeft, words, false);
    };
    const auto drawDot = [&](QPointF spot, bool isNow) {
        painter.setPen(QPen(isNow ? c.panel : c.ink, look.pxF(1.8)));
        painter.setBrush(isNow ? c.touch : c.panel);
        const double r = look.pxF(isNow ? 7 : 4.5);
        painter.drawEllipse(spot, r, r);
    };
    for (std::size_t i = 0; i < names.size(); ++i) {
        const Name& name = names[i];
        painter.setFont(look.font(name.isNow ? Type::LabelBold : Type::Label));
        const double wide = QFontMetricsF(painter.font()).horizontalAdvance(name.words);
        const double x = std::max(std::min(start, right - wide), axes.plot.left() + look.pxF(30));
        const QRectF box(x, middles[i] - look.pxF(10), wide, look.pxF(19));
        const QPointF lead(box.left() - look.pxF(4), box.center().y());
        if (name.onCurve && lead.x() > name.spot.x() + look.pxF(8)) {
            painter.setPen(QPen(c.strongRule, 1));
            painter.drawLine(name.spot, lead);
        }
        drawWords(box, name.words, name.isNow ? c.touch : c.ink);
        if (name.onCurve)
            drawDot(name.spot, name.isNow);
    }
    if (rests)
        return;
    drawDot(axes.at(m_factor, m_curve.deflectionAt(m_factor).value_or(0)), true);
    painter.setFont(look.font(Type::LabelBold));
    const double wide = QFontMetricsF(painter.font()).horizontalAdvance(nowWords());
    drawWords(
        QRectF(std::max(right - wide, axes.plot.left()), axes.plot.top() - look.pxF(20), wide, look.pxF(19)),
        nowWords(), c.touch);
}

} // namespace pw::gui
