#include "app/gui/views/section_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/views/dimension_note.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/text_block.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

constexpr double kSmallestWhole = 1.2; ///< px a mm; below it half of the section is shown, larger
constexpr double kTallPx = 310;        ///< of the pane, from which second lines have room
constexpr double kNamedPx = 230;       ///< of the drawing, from which names and sizes have room

} // namespace

SectionView::SectionView(QWidget* parent)
    : StripPane(tr("Section"), parent), m_slider(new StopSlider(tr("Travel of the plate"), this)) {
    connect(m_slider, &StopSlider::moved, this, [this] {
        m_touched = true;
        settle();
    });
    settle();
}

void SectionView::setUnits(units::System system) {
    m_units = system;
    settle();
}

void SectionView::setJob(const job::Job& job) {
    m_job = job;
    settle();
}

void SectionView::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    settle();
}

void SectionView::settle() {
    m_travel = stackTravel(m_job, m_report.get());
    const double squeezed = m_travel.squeezedPlace();
    if (!m_touched)
        m_slider->setPlace(squeezed);
    m_slider->setVisible(m_travel.moves());
    m_slider->setStops(m_travel.moves() ? std::vector<double>{0, squeezed, 1} : std::vector<double>{});
    m_state = stateAt(m_travel, m_slider->place());
    m_bounds = sectionBounds(m_job, m_travel);
    m_slider->setAccessibleDescription(words());
    setAccessibleDescription(words());
    relayout();
    update();
}

bool SectionView::isTall() const {
    return !isFolded() && height() >= Look::now().pxF(kTallPx);
}

void SectionView::relayout() {
    const Look& look = Look::now();
    const QRectF box = body();
    const double labels = look.pxF(isTall() ? 62 : 22);
    m_slider->setGeometry(
        QRectF(box.left(), box.bottom() - labels - look.pxF(30), box.width(), look.pxF(30)).toRect());
}

QString SectionView::length(units::Length value) const {
    // A slider is not read finer than a tenth (or a hundredth of an inch); what is smaller keeps its figures.
    const double step = m_units == units::System::Inch ? units::kMmPerInch / 100 : 0.1;
    const double rounded = std::round(value.mm() / step) * step;
    return local(units::show(std::abs(rounded) < step ? value : units::Length::fromMm(rounded), m_units));
}

QString SectionView::coilWords() const {
    if (m_travel.isPull || !m_state.shortOfSolid)
        return {};
    const auto left = *m_state.shortOfSolid;
    if (m_state.coils == spring::Coils::Solid)
        return left.mm() < -0.005 ? tr("solid, %1 too far").arg(length(-left)) : tr("solid");
    if (m_state.coils == spring::Coils::Tight)
        return tr("tight: %1 to solid").arg(length(left));
    return tr("%1 short of solid").arg(length(left));
}

QColor SectionView::coilColour() const {
    const Palette& c = Look::now().colours();
    return m_state.coils == spring::Coils::Solid   ? c.breaks.text
           : m_state.coils == spring::Coils::Tight ? c.thin.text
                                                   : c.ink;
}

QString SectionView::threadWords() const {
    if (!m_state.threadLeft)
        return {};
    return m_state.threadLeft->mm() < 0 ? tr("thread ends %1 too soon").arg(length(-*m_state.threadLeft))
                                        : tr("%1 of thread left").arg(length(*m_state.threadLeft));
}

QString SectionView::turnWords(double turns) const {
    return std::abs(turns - 1) < 0.05 ? tr("1 turn") : tr("%1 turns").arg(local(units::number(turns, 2)));
}

QString SectionView::sentence() const {
    if (!m_travel.moves()) {
        if (m_travel.isPull)
            return tr("How far it must come off is not given.");
        for (const auto& missing : m_travel.pack.missing)
            if (missing.field.starts_with("springs"))
                return tr("Travel is not known. Needed: %1.").arg(local(missing.message));
        return tr("How far the springs open is not known.");
    }
    QStringList parts;
    if (m_state.force && m_state.force->high <= units::Force())
        parts << tr("The springs are free.");
    else if (m_state.force)
        parts << tr("The springs push %1.").arg(local(units::show(*m_state.force, m_units)));
    const double at = m_travel.squeezedPlace(), place = m_slider->place();
    if (m_state.turns && *m_state.turns > 0.05) {
        const QString turns = turnWords(*m_state.turns);
        parts << (place > at ? tr("Backed off %1.").arg(turns) : tr("Turned in %1.").arg(turns));
    }
    if (const QString thread = threadWords(); !thread.isEmpty())
        parts << thread.left(1).toUpper() + thread.mid(1) + QLatin1Char('.');
    return parts.join(QLatin1Char(' '));
}

QString SectionView::words() const {
    QStringList parts;
    if (m_state.springLength)
        parts << tr("Springs %1").arg(length(*m_state.springLength));
    if (const QString coils = coilWords(); !coils.isEmpty())
        parts << coils;
    return (parts.isEmpty() ? QString() : parts.join(QStringLiteral(", ")) + QStringLiteral(". ")) +
           sentence();
}

void SectionView::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), c.panel);
    const bool warn = m_state.coils == spring::Coils::Solid || m_state.coils == spring::Coils::Tight;
    paintHead(painter, coilWords(), warn ? coilColour() : c.ink, warn);
    if (!isFolded()) {
        QRectF area = body();
        area.setBottom(m_slider->y() - Look::now().pxF(isTall() ? 22 : 4));
        paintDrawing(painter, area);
    }
    paintStops(painter);
}

void SectionView::light(const CheckPlace& place) {
    m_lit = place;
    update();
}

void SectionView::paintDrawing(QPainter& painter, const QRectF& area) {
    const Look& look = Look::now();
    const Section section = sectionAt(m_job, m_travel, m_slider->place());
    const bool tall = isTall();
    // Tall: room under the drawing for its sizes, and beside it for the names.
    const bool named = tall && area.height() >= look.pxF(kNamedPx) && area.width() >= look.pxF(400);
    const QRectF sheet = named ? area.adjusted(look.pxF(90), look.pxF(4), -look.pxF(100), -look.pxF(38))
                               : area.adjusted(look.pxF(4), look.pxF(2), -look.pxF(4), -look.pxF(4));
    if (sheet.width() < 40 || sheet.height() < 30)
        return;
    const auto at = SectionTransform::fit(m_bounds, sheet, look.pxF(named ? 0.5 : kSmallestWhole));
    drawSection(painter, section, at, coilColour());
    drawSectionLit(painter, section, at, m_lit.section, m_lit.springs);
    if (named && !at.half) {
        drawSectionNames(painter, section, at, area, m_travel.isPull);
        paintSizes(painter, section, at);
    } else {
        paintReadout(painter, area, at, section);
    }
}

void SectionView::paintReadout(QPainter& painter, const QRectF& area, const SectionTransform& at,
                               const Section& section) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    // Over the free end of the screw, left of plate and nut, there is always room.
    const SectionPart* plate = section.find(SectionPart::Role::Plate);
    double right = plate ? at.toScreen(m_bounds.left(), 0).x() : area.right();
    for (const auto& part : section.parts)
        if (part.role == SectionPart::Role::Plate)
            right = at.toScreen(part.x0, 0).x();
    double bottom = area.bottom();
    for (const auto& part : section.parts)
        if (part.role == SectionPart::Role::Nut || part.role == SectionPart::Role::Screw)
            if (at.toScreen(part.x0, 0).x() < right)
                bottom = std::min(bottom, at.toScreen(0, part.high).y());
    const QRectF room(area.left() + look.pxF(2), area.top(), right - area.left() - look.pxF(18),
                      bottom - area.top());
    struct Line {
        QString words;
        QColor colour;
        bool bold = false;
    };
    std::vector<Line> lines;
    if (m_state.springLength)
        lines.push_back({tr("springs %1").arg(length(*m_state.springLength)), c.touch, true});
    if (m_state.force && !isTall())
        lines.push_back({m_state.force->high <= units::Force()
                             ? tr("free")
                             : tr("push %1").arg(local(units::show(*m_state.force, m_units))),
                         c.ink});
    if (const QString thread = threadWords(); !thread.isEmpty() && !isTall())
        lines.push_back(
            {thread, m_state.threadLeft->mm() < 0 ? c.breaks.text : c.ink, m_state.threadLeft->mm() < 0});
    if (section.anyGuessed)
        lines.push_back({tr("dashes: size not given"), c.muted});
    double y = room.top();
    for (const Line& line : lines) {
        painter.setFont(look.font(line.bold ? Type::LabelBold : Type::Label));
        painter.setPen(line.colour);
        const WrappedText text = wrapText(line.words, painter.font(), room.width(), 0, 1.28);
        if (y + text.height() > room.bottom())
            return;
        drawWrapped(painter, text, {room.left(), y});
        y += text.height();
    }
}

void SectionView::paintSizes(QPainter& painter, const Section& section, const SectionTransform& at) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const auto size = [&](double from, double to, double below, const QString& words, const QColor& colour,
                          double y, bool bold) {
        const QPointF a = at.toScreen(from, -below), b = at.toScreen(to, -below);
        painter.setPen(QPen(colour, 1));
        painter.drawLine(a + QPointF(0, 2), QPointF(a.x(), y + 4));
        painter.drawLine(b + QPointF(0, 2), QPointF(b.x(), y + 4));
        painter.setPen(QPen(colour, 1.4));
        painter.setBrush(colour);
        painter.drawLine(QPointF(a.x(), y), QPointF(b.x(), y));
        if (b.x() - a.x() > 20) {
            drawArrowHead(painter, QPointF(a.x(), y), QPointF(b.x(), y));
            drawArrowHead(painter, QPointF(b.x(), y), QPointF(a.x(), y));
        }
        painter.setPen(colour);
        painter.setFont(look.font(bold ? Type::LabelBold : Type::Label));
        const double wide = QFontMetricsF(painter.font()).horizontalAdvance(words);
        if (wide < b.x() - a.x() - 4)
            drawLine(painter, QRectF(a.x(), y - look.pxF(20), b.x() - a.x(), look.pxF(18)), Qt::AlignHCenter,
                     words, false);
        else
            // Under the line, away from the plate.
            drawLine(painter,
                     QRectF(bold ? (a.x() + b.x() - wide) / 2 : b.x() - wide, y + look.pxF(4), wide + 1,
                            look.pxF(18)),
                     Qt::AlignLeft, words, false);
    };
    const double foot = at.toScreen(0, -section.high).y();
    if (m_state.springLength && section.springTo > section.springFrom)
        size(section.springFrom, section.springTo, section.springAt,
             tr("spring %1").arg(length(*m_state.springLength)), c.touch, foot + look.pxF(14), true);
    const auto* screw = section.find(SectionPart::Role::Screw);
    const auto* nut = section.find(SectionPart::Role::Nut);
    if (screw && nut && screw->known && section.threadTo > section.threadFrom + 1) {
        const double y = at.toScreen(0, -std::max(screw->high, nut->high)).y() + look.pxF(30);
        size(section.threadFrom, section.threadTo, screw->high,
             tr("thread %1").arg(length(units::Length::fromMm(section.threadTo - section.threadFrom))), c.ink,
             y, false);
    }
}

} // namespace pw::gui
