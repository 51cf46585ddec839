#include "app/gui/print/job_page.h"

#include "app/gui/models/check_text.h"
#include "app/gui/models/field_text.h"
#include "app/gui/models/fields.h"
#include "app/gui/models/sentences.h"
#include "app/gui/views/plan_geometry.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/verdict_mark.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>
#include <QDate>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>

namespace pw::gui {

namespace {

// All in tenths of a millimetre of paper.
constexpr double kMm = 10, kGap = 6 * kMm;
constexpr double kTitle = 9 * kMm, kStamp = 7.6 * kMm, kHeading = 4.2 * kMm, kText = 3.7 * kMm,
                 kSmall = 3.1 * kMm;
constexpr double kLead = 1.3;

QFont paperFont(double size, bool bold = false) {
    QFont font = Look::now().font(bold ? Type::Title : Type::Sentence); // its family; the size is paper's own
    font.setPixelSize(static_cast<int>(std::lround(size)));
    return font;
}

/// A loop in tenths of a millimetre around `origin`, at `scale`.
QPainterPath pathOf(const shape::Loop& loop, QPointF origin, double scale) {
    constexpr double kStep = 0.05; // radians of arc to one chord: 0.02 mm off on a plate of 180 at 1:2
    QPolygonF points;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        const int parts = side.isArc() ? std::max(2, int(std::ceil(std::abs(side.sweep()) / kStep))) : 1;
        for (int k = 0; k < parts; ++k) {
            const shape::Point p = side.pointAt(double(k) / parts);
            points << origin + QPointF(p.x, -p.y) * scale * kMm;
        }
    }
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

/// One sheet being filled from the top.
class Sheet {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::JobPage)

public:
    Sheet(QPainter& painter, const QSizeF& sheet, const PageData& data, const std::function<void()>& newPage)
        : m_painter(painter), m_width(sheet.width() * kMm), m_height(sheet.height() * kMm), m_data(data),
          m_report(*data.report), m_newPage(newPage) {}

    int draw() {
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.setPen(Qt::black);
        title();
        verdict();
        planAndFigures();
        checks();
        list(tr("Cautions"), m_report.cautions, false);
        list(tr("Taken for granted"), m_report.assumptions, false);
        list(tr("Order of work"), m_report.steps, true);
        return m_pages;
    }

private:
    double bottom() const { return m_height - 1.5 * kSmall; }

    /// Wrapped text at `x`, `y`; how high it is. Drawn only when asked to.
    double text(double x, double y, double width, const QString& words, double size, bool bold = false,
                bool drawn = true, int lines = 0) {
        const QFont font = paperFont(size, bold);
        const WrappedText wrapped = wrapText(words, font, width, lines, kLead);
        if (drawn) {
            m_painter.setFont(font);
            drawWrapped(m_painter, wrapped, {x, y});
        }
        return wrapped.height();
    }

    void room(double height) {
        if (m_y + height <= bottom())
            return;
        // Sheets come apart: the first says that there is another.
        text(0, bottom() + 0.2 * kSmall, m_width, tr("More on page %1").arg(m_pages + 1), kSmall);
        m_newPage();
        ++m_pages;
        m_y = 0;
        m_y += text(0, 0, m_width, tr("%1, page %2").arg(m_data.title).arg(m_pages), kSmall) + 2 * kMm;
    }

    void heading(const QString& words, double follows) {
        room(kHeading * kLead + 3 * kMm + follows);
        m_y += 3 * kMm;
        m_y += text(0, m_y, m_width, words, kHeading, true) + 0.5 * kMm;
    }

    void title() {
        m_y += text(0, m_y, m_width, m_data.title, kTitle, true, true, 2);
        QString line = QLocale().toString(QDate::currentDate(), QLocale::ShortFormat);
        if (!m_data.file.isEmpty())
            line = m_data.file + QStringLiteral(", ") + line;
        m_y += text(0, m_y, m_width, line, kSmall) + 2 * kMm;
        m_painter.setPen(QPen(Qt::black, 5));
        m_painter.drawLine(QPointF(0, m_y), QPointF(m_width, m_y));
        m_y += 3 * kMm;
    }

    void verdict() {
        const double mark = 18 * kMm, left = mark + 5 * kMm, stamps = 62 * kMm;
        m_painter.save();
        drawVerdictMark(m_painter, QRectF(0, m_y + 2 * kMm, mark, 12 * kMm), m_report.grade, Qt::black);
        m_painter.restore();
        m_painter.setPen(Qt::black);
        double y = m_y;
        const double words = m_width - left - stamps - kGap;
        y += text(left, y, words, verdictWord(m_report.grade), kTitle, true);
        y += text(left, y, words, local(m_report.reason), kText);

        const double x = m_width - stamps;
        double right = m_y;
        const auto stamp = [&](const QString& label, const QString& value) {
            text(x, right + (kStamp - kSmall) * 0.75, stamps * 0.4, label, kSmall);
            right += text(x + stamps * 0.4, right, stamps * 0.6, value, kStamp, true, true, 1);
        };
        const auto& screw = m_report.screw;
        if (screw.stopTorque)
            stamp(tr("Stop at"), local(units::show(*screw.stopTorque, m_data.units)));
        else if (screw.stopPressure)
            stamp(tr("Stop at"), local(units::showPressure(*screw.stopPressure, m_data.units)));
        if (screw.ratedLoad)
            stamp(tr("Rated load"), local(units::show(*screw.ratedLoad, m_data.units)));
        m_y = std::max({y, right, m_y + 18 * kMm}) + 3 * kMm;
    }

    void planAndFigures() {
        const double planWide = m_width * 0.5, top = m_y, wanted = 100 * kMm;
        const double x = planWide + kGap, width = m_width - x;
        double y = top;
        for (const auto& group : fieldGroups(m_data.tree)) {
            if (!group.applies)
                continue;
            const QString sentence =
                groupSentence(group.id, m_data.tree, m_data.job, m_data.report.get(), m_data.units);
            if (sentence.isEmpty())
                continue;
            y += text(x, y, width, group.title, kSmall, true);
            y += text(x, y, width, sentence, kSmall) + 0.8 * kMm;
        }
        plan(QRectF(0, top, planWide, wanted));
        m_y = std::max(y, top + wanted);
    }

    void plan(const QRectF& at) {
        const PlanShape shape = planShape(m_data.job);
        const QRectF field = at.adjusted(0, 0, 0, -8 * kMm);
        const shape::Box box = shape.plateBounds();
        const double scale = drawingScale(box, field.size() / kMm);
        const shape::Point middle = 0.5 * (box.low + box.high);
        const QPointF origin = field.center() - QPointF(middle.x, -middle.y) * scale * kMm;

        QPainterPath steel;
        if (m_report.region) {
            steel = pathOf(m_report.region->rim, origin, scale);
            for (const auto& hole : m_report.region->holes)
                steel.addPath(pathOf(hole.loop, origin, scale));
        } else {
            if (shape.rim)
                steel = pathOf(*shape.rim, origin, scale);
            if (shape.bore > 0)
                steel.addEllipse(origin, shape.bore / 2 * scale * kMm, shape.bore / 2 * scale * kMm);
            for (std::size_t i = 0; i < shape.stations.size(); ++i)
                if (const auto loop = shape.accessLoop(i))
                    steel.addPath(pathOf(*loop, origin, scale));
        }
        m_painter.setBrush(Qt::NoBrush);
        m_painter.setPen(QPen(Qt::black, 5));
        m_painter.drawPath(steel);

        QPen thin(Qt::black, 2.2);
        thin.setDashPattern({14, 4, 3, 4});
        m_painter.setPen(thin);
        if (shape.onCircle && shape.circle > 0)
            m_painter.drawEllipse(origin, shape.circle / 2 * scale * kMm, shape.circle / 2 * scale * kMm);
        const auto cross = [&](QPointF c, double arm) {
            m_painter.drawLine(c - QPointF(arm, 0), c + QPointF(arm, 0));
            m_painter.drawLine(c - QPointF(0, arm), c + QPointF(0, arm));
        };
        m_painter.setPen(QPen(Qt::black, 2.2));
        cross(origin, 3 * kMm);
        for (const auto& s : shape.stations)
            cross(origin + QPointF(s.x, -s.y) * scale * kMm, 2 * kMm);

        // A bar to lay a rule on: a printer may shrink the page.
        const double bar = scaleBarMm(scale, 50, m_data.units), drawn = bar * scale * kMm;
        const double y = at.bottom() - 3 * kMm, x = at.left() + 1 * kMm;
        m_painter.setPen(QPen(Qt::black, 3));
        m_painter.drawLine(QPointF(x, y), QPointF(x + drawn, y));
        m_painter.drawLine(QPointF(x, y - kMm), QPointF(x, y + kMm));
        m_painter.drawLine(QPointF(x + drawn, y - kMm), QPointF(x + drawn, y + kMm));
        const QString length = local(units::show(units::Length::fromMm(bar), m_data.units));
        text(x + drawn + 3 * kMm, y - kSmall * 0.65, at.right() - x - drawn - 3 * kMm,
             tr("%1 of plate. Scale 1:%2").arg(length, QLocale().toString(1 / scale)), kSmall);
    }

    void checks() {
        if (m_report.checks.empty())
            return;
        const double row = kSmall * 1.55, width = (m_width - kGap) / 2;
        const std::size_t half = (m_report.checks.size() + 1) / 2;
        heading(tr("Checks, weakest first. The line is what was wanted."), static_cast<double>(half) * row);
        const double top = m_y;
        for (std::size_t i = 0; i < m_report.checks.size(); ++i) {
            const double x = i < half ? 0 : width + kGap;
            check(m_report.checks[i], QRectF(x, top + static_cast<double>(i % half) * row, width, row));
        }
        m_y = top + static_cast<double>(half) * row;
    }

    void check(const verdict::Check& check, const QRectF& row) {
        const double value = 20 * kMm, bar = 24 * kMm;
        m_painter.save();
        drawVerdictMark(m_painter, QRectF(row.left(), row.center().y() - 2 * kMm, 3.6 * kMm, 4 * kMm),
                        check.grade, Qt::black);
        m_painter.restore();
        m_painter.setPen(Qt::black);
        m_painter.setFont(paperFont(kSmall));
        drawLine(m_painter, row.adjusted(5 * kMm, 0, -value - bar - 2 * kMm, 0), Qt::AlignLeft,
                 local(check.title));
        drawLine(m_painter, QRectF(row.right() - value, row.top(), value, row.height()), Qt::AlignRight,
                 marginText(check, m_data.units));
        const auto ratio = check.marginOverWanted();
        if (!ratio)
            return;
        const QRectF track(row.right() - value - bar, row.center().y() - 1.2 * kMm, bar, 2.4 * kMm);
        m_painter.fillRect(
            QRectF(track.topLeft(), QSizeF(bar * std::clamp(*ratio / 2, 0.02, 1.0), track.height())),
            QColor::fromRgbF(0.67F, 0.67F, 0.67F));
        m_painter.setPen(QPen(Qt::black, 4.5));
        m_painter.drawLine(QPointF(track.center().x(), row.top() + 0.4 * kMm),
                           QPointF(track.center().x(), row.bottom() - 0.4 * kMm));
        m_painter.setPen(Qt::black);
    }

    void list(const QString& words, const std::vector<std::string>& lines, bool numbered) {
        if (lines.empty())
            return;
        const double indent = numbered ? 8 * kMm : 0;
        double whole = 0;
        for (const auto& line : lines)
            whole += text(0, 0, m_width - indent, local(line), kText, false, false) + 0.4 * kMm;
        // Not torn apart over two pages unless it is longer than a page.
        heading(words, whole < 0.9 * bottom() ? whole : kText * kLead);
        int number = 0;
        for (const auto& line : lines) {
            const QString said = local(line);
            const double height = text(indent, 0, m_width - indent, said, kText, false, false);
            room(height);
            if (numbered)
                text(0, m_y, indent, QLocale().toString(++number), kText, true);
            m_y += text(indent, m_y, m_width - indent, said, kText) + 0.4 * kMm;
        }
    }

    QPainter& m_painter;
    double m_width, m_height;
    const PageData& m_data;
    const engine::Report& m_report;
    const std::function<void()>& m_newPage;
    double m_y = 0;
    int m_pages = 1;
};

} // namespace

double drawingScale(const shape::Box& box, const QSizeF& room) {
    const auto fits = [&](double scale) {
        return box.width() * scale <= room.width() && box.height() * scale <= room.height();
    };
    for (double decade = 1; decade < 1e4; decade *= 10)
        for (const double step : {1.0, 2.0, 5.0})
            if (fits(1 / (step * decade)))
                return 1 / (step * decade);
    return 1e-4;
}

int drawJobPage(QPainter& painter, const QSizeF& sheet, const PageData& data,
                const std::function<void()>& newPage) {
    return Sheet(painter, sheet, data, newPage).draw();
}

} // namespace pw::gui
