#pragma once

#include <QColor>
#include <QPainterPath>
#include <QPolygonF>
#include <QRectF>
#include <QString>

class QPainter;

namespace pw::gui {

struct Palette;

/// What the small scenes of the bench are drawn with: grey steel, dark tools, one blue size line. In the
/// painter's own units; lines are as thick as they are at 96 dpi in those units.
class BenchScene {
public:
    explicit BenchScene(QPainter& painter);

    const Palette& colours() const { return m_colours; }

    void steel(const QPainterPath& path);
    void steel(const QRectF& rect);
    void disc(QPointF c, double r);
    void hole(QPointF c, double r);
    /// A tool of the bench: dark.
    void tool(const QPolygonF& polygon);
    void line(QPointF a, QPointF b);
    void dashed(const QPainterPath& path);
    /// A centre line.
    void axis(QPointF a, QPointF b);
    /// The blue size line, with an arrow at each end.
    void size(QPointF a, QPointF b);
    /// A spring from the side, in front and behind the same wire.
    void coil(double x, double top, double bottom, double width, int turns, double wire);
    /// A thread lying down.
    void thread(const QRectF& r, double pitch);
    /// A thread standing up.
    void stud(const QRectF& r, double pitch);
    /// An arrow of a force or a way, in ink.
    void push(QPointF from, QPointF to);
    /// A name at the end of a thin leader; the text stands to the side it is asked for.
    void name(QPointF at, QPointF text, const QString& words, bool right);

private:
    void filled(const QPainterPath& path, const QColor& fill);
    void arrow(QPointF tip, QPointF from, const QColor& colour, double length);
    void coilLines(double x, double top, double width, int turns, double pitch);

    QPainter& m_painter;
    const Palette& m_colours;
};

} // namespace pw::gui
