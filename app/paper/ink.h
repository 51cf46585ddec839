#pragma once

#include "core/shape/loop.h"

#include <QColor>
#include <QPainter>
#include <QPainterPath>
#include <QString>
#include <vector>

namespace pw::paper {

/// How a line is drawn: width in mm, lengths of dash and gap in mm (none: drawn through).
struct Stroke {
    double width = 0.22;
    QColor colour = Qt::black;
    std::vector<double> dashes;
};

enum class Side { Left, Middle, Right };

/// Words as they stand on a page: the box of their ink, mm.
struct Written {
    int page = 1;
    shape::Box box;
    QString words;
    bool across = false; ///< pale, across the page and meant to lie under others
};

/// Draws on a sheet in mm, x to the right and y down.
class Ink {
public:
    /// `perMm`: units of the device in one mm.
    Ink(QPainter& painter, double perMm);

    void line(shape::Point a, shape::Point b, const Stroke& stroke);
    void rectangle(const shape::Box& box, const Stroke& stroke, const QColor& fill = Qt::transparent);
    void polygon(const std::vector<shape::Point>& corners, const Stroke& stroke,
                 const QColor& fill = Qt::transparent);
    /// A closed curve whose corners `place` puts on the sheet; place turns y over and is otherwise true.
    template<class Place>
    void loop(const shape::Loop& loop, const Place& place, const Stroke& stroke) {
        QPainterPath path;
        for (std::size_t i = 0; i < loop.size(); ++i)
            addSide(path, loop.side(i), place, i == 0);
        path.closeSubpath();
        draw(path, stroke);
    }
    void dot(shape::Point centre, double diameter, const QColor& colour = Qt::black);

    /// From here on every text is noted in `log` as well; none: no more.
    void noteIn(std::vector<Written>* log) { m_log = log; }
    /// What is drawn from now on stands on this page, from 1.
    void onPage(int number) { m_page = number; }

    /// One line of words on its baseline. `turn` in degrees, counter-clockwise as read.
    void text(shape::Point at, const QString& words, double size, bool bold = false, Side side = Side::Left,
              const QColor& colour = Qt::black, double turn = 0);
    /// The same, pale and across the page: whatever is written over it can be read as well.
    void textAcross(shape::Point middle, const QString& words, double size, double turn);
    static double widthOf(const QString& words, double size, bool bold = false);
    /// Of the ink of words with their baseline's start (middle, end) at the origin.
    static shape::Box boxOf(const QString& words, double size, bool bold, Side side, double turn = 0);
    /// Cut with dots to `width`.
    static QString cut(const QString& words, double width, double size, bool bold = false);
    /// Broken between words into lines no wider than `width`; the last of `most` is cut with dots.
    static std::vector<QString> wrapped(const QString& words, double width, double size, int most,
                                        bool bold = false);

    void keepWithin(const shape::Box& box);
    void keepWithinNoMore();

private:
    /// Cubics over at most an eighth of a turn: off by less than 1e-6 of the radius.
    template<class Place>
    static void addSide(QPainterPath& path, const shape::Side& side, const Place& place, bool first) {
        const auto at = [&](shape::Point p) {
            const shape::Point q = place(p);
            return QPointF(q.x, q.y);
        };
        if (first)
            path.moveTo(at(side.from));
        if (!side.isArc()) {
            path.lineTo(at(side.to));
            return;
        }
        const int pieces = piecesOf(side);
        const double reach = reachOf(side, pieces);
        for (int i = 0; i < pieces; ++i) {
            const double t0 = static_cast<double>(i) / pieces, t1 = static_cast<double>(i + 1) / pieces;
            const shape::Point a = side.pointAt(t0), b = side.pointAt(t1);
            path.cubicTo(at(a + reach * side.tangentAt(t0)), at(b - reach * side.tangentAt(t1)), at(b));
        }
    }
    static int piecesOf(const shape::Side& side);
    static double reachOf(const shape::Side& side, int pieces); ///< of a piece's handles, mm
    void draw(const QPainterPath& path, const Stroke& stroke);

    QPainter& m_painter;
    std::vector<Written>* m_log = nullptr;
    int m_page = 1;
    bool m_across = false;
};

} // namespace pw::paper
