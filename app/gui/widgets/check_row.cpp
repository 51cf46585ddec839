#include "app/gui/widgets/check_row.h"

#include "app/gui/models/check_text.h"
#include "app/gui/models/field_text.h"
#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/margin_bar.h"
#include "app/gui/widgets/plain_tip.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/verdict_mark.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QAbstractButton>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

/// The line itself is the button; the row around it paints.
class CheckRowButton : public QAbstractButton {
public:
    explicit CheckRowButton(CheckRow* row) : QAbstractButton(row), m_row(row) {
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setCheckable(true);
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        m_row->paintLine(painter, QRectF(rect()), hasFocus());
    }

private:
    CheckRow* m_row;
};

CheckRow::CheckRow(QWidget* parent) : QWidget(parent), m_button(new CheckRowButton(this)) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(m_button, &QAbstractButton::clicked, this, &CheckRow::picked);
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

double CheckRow::barWidth(double rowWidth) {
    const Look& look = Look::now();
    if (rowWidth < look.pxF(250))
        return 0; // very large type: the figure and the mark say it
    return rowWidth < look.pxF(320) ? look.pxF(52) : look.pxF(66);
}

double CheckRow::valueWidth() {
    return Look::now().pxF(64);
}

double CheckRow::titleRoom(double rowWidth) {
    const Look& look = Look::now();
    return rowWidth - look.pxF(16 + 32) - look.pxF(16) - valueWidth() - look.pxF(4) - barWidth(rowWidth) -
           look.pxF(6);
}

int CheckRow::lineHeight(int rowWidth) const {
    const Look& look = Look::now();
    // A title that is too long even in the smaller type takes two lines.
    const double wants =
        QFontMetricsF(look.font(Type::Label)).horizontalAdvance(QString::fromStdString(m_check.title));
    return look.px(wants > titleRoom(rowWidth) ? 44 : 35);
}

void CheckRow::set(const verdict::Check& check, units::System system) {
    m_check = check;
    m_system = system;
    const QString title = QString::fromStdString(check.title);
    m_button->setText(title);
    m_button->setAccessibleName(
        tr("%1: %2, %3").arg(title, verdictWord(check.grade), marginText(check, system)));
    m_button->setAccessibleDescription(QString::fromStdString(check.basis));
    m_button->setToolTip(plainTip(QString::fromStdString(check.basis)));
    updateGeometry();
    m_button->update();
    update();
}

void CheckRow::setOpen(bool open) {
    m_open = open;
    m_button->setChecked(open);
    updateGeometry();
    m_button->update();
    update();
}

int CheckRow::heightForWidth(int width) const {
    const int line = lineHeight(width);
    return m_open ? line + static_cast<int>(std::ceil(paintDetails(nullptr, width))) : line;
}

QSize CheckRow::sizeHint() const {
    return {Look::now().px(330), heightForWidth(Look::now().px(330))};
}

QSize CheckRow::minimumSizeHint() const {
    return {Look::now().px(180), Look::now().px(33)};
}

void CheckRow::resizeEvent(QResizeEvent*) {
    m_button->setGeometry(0, 0, width(), lineHeight(width()));
}

void CheckRow::paintEvent(QPaintEvent*) {
    m_button->setGeometry(0, 0, width(), lineHeight(width()));
    if (!m_open)
        return;
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.field);
    painter.fillRect(QRect(0, 0, Look::now().px(4), height()), c.of(m_check.grade).text);
    painter.translate(0, lineHeight(width()));
    paintDetails(&painter, width());
}

void CheckRow::paintLine(QPainter& painter, const QRectF& line, bool focus) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const VerdictColours& v = c.of(m_check.grade);
    painter.setRenderHint(QPainter::Antialiasing);
    const double left = look.pxF(16), right = line.right() - look.pxF(16);
    drawVerdictMark(painter, QRectF(left, line.top(), look.pxF(22), line.height()), m_check.grade, v.text);

    const QString value = marginText(m_check, m_system);
    painter.setFont(look.font(Type::RowBold));
    if (QFontMetricsF(painter.font()).horizontalAdvance(value) > valueWidth())
        painter.setFont(look.font(Type::LabelBold));
    painter.setPen(c.ink);
    const double bar = barWidth(line.width()), barLeft = right - valueWidth() - look.pxF(4) - bar;
    drawLine(painter, QRectF(right - valueWidth(), line.top(), valueWidth(), line.height()), Qt::AlignRight,
             value, false);

    const double titleLeft = left + look.pxF(32), room = titleRoom(line.width());
    const QString title = QString::fromStdString(m_check.title);
    painter.setFont(look.font(Type::Row));
    if (QFontMetricsF(painter.font()).horizontalAdvance(title) <= room) {
        drawLine(painter, QRectF(titleLeft, line.top(), room, line.height()), Qt::AlignLeft, title);
    } else {
        painter.setFont(look.font(Type::Label));
        const auto wrapped = wrapText(title, painter.font(), room, 2, 1.2);
        drawWrapped(painter, wrapped, {titleLeft, line.center().y() - wrapped.height() / 2});
    }

    const auto ratio = m_check.marginOverWanted();
    if (ratio && bar > 0) {
        const double h = look.pxF(10);
        drawMarginBar(painter, QRectF(barLeft, line.center().y() - h / 2, bar, h), *ratio, m_check.grade);
    }
    if (focus)
        drawFocusRing(painter, line.adjusted(4, 1, -4, -1), look.pxF(4));
}

double CheckRow::paintDetails(QPainter* painter, int width) const {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double left = look.pxF(48), inner = width - left - look.pxF(16);
    double y = look.pxF(2);
    const auto text = [&](const QString& words, Type type, const QColor& colour) {
        if (words.isEmpty())
            return;
        const auto wrapped = wrapText(words, look.font(type), inner);
        if (painter) {
            painter->setFont(look.font(type));
            painter->setPen(colour);
            drawWrapped(*painter, wrapped, {left, y});
        }
        y += wrapped.height() + look.pxF(4);
    };

    // can take / must take = 31 kN / 7.5 kN = 4.1
    if ((m_check.kind == verdict::CheckKind::Force || m_check.marginIsRatio) && m_check.capacity &&
        m_check.demand && m_check.margin) {
        const QFont font = look.font(Type::Label);
        const QFontMetricsF metrics(font);
        const QString words[2] = {tr("can take"), tr("must take")};
        const QString figures[2] = {checkFigure(*m_check.capacity, m_check.unit, m_system),
                                    checkFigure(*m_check.demand, m_check.unit, m_system)};
        double x = left;
        const double half = look.pxF(20);
        const auto fraction = [&](const QString(&parts)[2], const QColor& colour) {
            const double wide =
                std::max(metrics.horizontalAdvance(parts[0]), metrics.horizontalAdvance(parts[1])) +
                look.pxF(8);
            if (painter) {
                painter->setFont(font);
                painter->setPen(colour);
                drawLine(*painter, QRectF(x, y, wide, half), Qt::AlignHCenter, parts[0], false);
                drawLine(*painter, QRectF(x, y + half + 2, wide, half), Qt::AlignHCenter, parts[1], false);
                painter->setPen(QPen(colour, 1));
                painter->drawLine(QPointF(x, y + half), QPointF(x + wide, y + half));
            }
            x += wide;
        };
        const auto equals = [&] {
            if (painter) {
                painter->setFont(font);
                painter->setPen(c.muted);
                drawLine(*painter, QRectF(x, y, look.pxF(24), 2 * half), Qt::AlignHCenter,
                         QStringLiteral("="), false);
            }
            x += look.pxF(24);
        };
        fraction(words, c.muted);
        equals();
        fraction(figures, c.ink);
        equals();
        if (painter) {
            painter->setFont(look.font(Type::Title));
            painter->setPen(c.of(m_check.grade).text);
            drawLine(*painter, QRectF(x, y, look.pxF(60), 2 * half), Qt::AlignLeft,
                     marginText(m_check, m_system), false);
        }
        y += 2 * half + look.pxF(6);
    }
    // there is 14 mm, it takes 12 mm, 2 mm are left
    if (m_check.kind == verdict::CheckKind::Fit && !m_check.marginIsRatio && m_check.capacity &&
        m_check.demand && m_check.margin &&
        std::abs(*m_check.capacity - *m_check.demand - *m_check.margin) <
            1e-6 * std::max(1.0, std::abs(*m_check.capacity)))
        text(tr("there is − it takes = left: %1 − %2 = %3")
                 .arg(checkFigure(*m_check.capacity, m_check.unit, m_system),
                      checkFigure(*m_check.demand, m_check.unit, m_system), marginText(m_check, m_system)),
             Type::Label, c.ink);
    if (m_check.wanted) {
        const QString wanted = m_check.kind == verdict::CheckKind::Fit && !m_check.marginIsRatio
                                   ? checkFigure(*m_check.wanted, m_check.unit, m_system)
                                   : local(units::number(*m_check.wanted));
        text(tr("Wanted %1 or more.").arg(wanted), Type::Row, c.ink);
    }
    text(local(m_check.basis), Type::Row, c.ink);
    text(QString::fromStdString(m_check.source), Type::Label, c.muted);
    return y + look.pxF(6);
}

} // namespace pw::gui
