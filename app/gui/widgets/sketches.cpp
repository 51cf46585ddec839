#include "app/gui/widgets/bench_scene.h"
#include "app/gui/widgets/measure_card.h"

#include <QPainter>

namespace pw::gui {

namespace {

/// A vernier from above: beam and two jaws that reach down to `jaw`.
void vernier(BenchScene& s, double left, double right, double top, double jaw) {
    s.tool({QPointF(left - 8, top), QPointF(right + 8, top), QPointF(right + 8, top + 7),
            QPointF(left - 8, top + 7)});
    s.tool({QPointF(left - 8, top), QPointF(left, top), QPointF(left, jaw), QPointF(left - 3, jaw)});
    s.tool({QPointF(right + 8, top), QPointF(right, top), QPointF(right, jaw), QPointF(right + 3, jaw)});
}

} // namespace

void drawSketch(QPainter& painter, const QRectF& box, Sketch sketch) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.topLeft());
    painter.scale(box.width() / 92, box.height() / 74);
    BenchScene s(painter);
    // Everything is drawn on a sheet of 92 x 74.
    switch (sketch) {
    case Sketch::None:
        break;
    case Sketch::OverPins: {
        QPainterPath arc;
        arc.moveTo(22, 45);
        arc.cubicTo(26, 20, 66, 20, 70, 45);
        s.dashed(arc);
        vernier(s, 15, 77, 11, 56);
        s.disc({22, 45}, 7);
        s.disc({70, 45}, 7);
        s.size({15, 65}, {77, 65});
        break;
    }
    case Sketch::HoleAcross:
        s.steel(QRectF(8, 14, 76, 46));
        s.hole({46, 37}, 18);
        s.size({28, 37}, {64, 37});
        break;
    case Sketch::PinAcross:
        vernier(s, 31, 61, 9, 44);
        s.disc({46, 36}, 15);
        s.size({31, 62}, {61, 62});
        break;
    case Sketch::Thickness: {
        QPainterPath plate;
        plate.moveTo(92, 28);
        plate.lineTo(36, 28);
        plate.cubicTo(24, 28, 24, 46, 36, 46);
        plate.lineTo(92, 46);
        s.steel(plate);
        s.tool({QPointF(52, 6), QPointF(58, 6), QPointF(60, 27), QPointF(50, 27)});
        s.tool({QPointF(52, 68), QPointF(58, 68), QPointF(60, 47), QPointF(50, 47)});
        s.size({74, 28}, {74, 46});
        break;
    }
    case Sketch::AcrossPlate:
        s.disc({46, 32}, 24);
        s.hole({46, 32}, 5);
        s.size({22, 64}, {70, 64});
        s.line({22, 40}, {22, 68});
        s.line({70, 40}, {70, 68});
        break;
    case Sketch::LooseSpring:
        s.line({6, 66}, {86, 66});
        s.coil(38, 12, 62, 28, 7, 4.5);
        s.size({68, 8}, {68, 66});
        s.line({56, 8}, {74, 8});
        break;
    case Sketch::SpringOnScale:
        s.steel(QRectF(12, 54, 52, 10));
        s.steel(QRectF(18, 10, 40, 6));
        s.coil(38, 20, 51, 24, 5, 4);
        s.size({74, 16}, {74, 54});
        s.tool({QPointF(36, 2), QPointF(40, 2), QPointF(40, 10), QPointF(36, 10)});
        break;
    case Sketch::SolidSpring:
        s.steel(QRectF(14, 12, 48, 8));
        s.steel(QRectF(14, 52, 48, 8));
        s.coil(38, 25, 48, 28, 5, 4);
        s.size({72, 20}, {72, 52});
        break;
    case Sketch::Wire:
        vernier(s, 38, 50, 6, 34);
        s.disc({44, 28}, 6);
        s.coil(44, 46, 66, 52, 2, 9);
        s.size({66, 22}, {66, 34});
        break;
    case Sketch::ThreadPitch:
        s.thread(QRectF(6, 22, 80, 24), 9);
        s.size({24, 58}, {69, 58});
        s.line({24, 46}, {24, 64});
        s.line({69, 46}, {69, 64});
        break;
    case Sketch::Washer:
        s.disc({46, 32}, 25);
        s.hole({46, 32}, 11);
        s.size({21, 66}, {71, 66});
        break;
    case Sketch::Standoff:
        s.steel(QRectF(8, 8, 14, 58));
        s.steel(QRectF(22, 30, 42, 14));
        s.steel(QRectF(52, 18, 7, 38));
        s.size({22, 64}, {59, 64});
        break;
    case Sketch::Bar:
        s.steel(QRectF(10, 20, 72, 14));
        s.tool({QPointF(14, 34), QPointF(22, 34), QPointF(22, 50), QPointF(14, 50)});
        s.tool({QPointF(70, 34), QPointF(78, 34), QPointF(78, 50), QPointF(70, 50)});
        s.size({22, 60}, {70, 60});
        break;
    case Sketch::CutEdge: {
        QPainterPath left, right;
        left.addPolygon(QPolygonF{{6, 24}, {40, 24}, {42, 34}, {39, 42}, {41, 52}, {6, 52}, {6, 24}});
        right.addPolygon(QPolygonF{{86, 24}, {52, 24}, {54, 33}, {51, 43}, {53, 52}, {86, 52}, {86, 24}});
        s.steel(left);
        s.steel(right);
        s.size({30, 16}, {41, 16});
        break;
    }
    case Sketch::Angle: {
        QPainterPath circle;
        circle.addEllipse(QPointF(34, 44), 24, 24);
        s.dashed(circle);
        s.line({34, 44}, {82, 44});
        s.line({34, 44}, {64, 14});
        s.disc({51, 27}, 6);
        s.size({58, 44}, {53, 31});
        break;
    }
    }
    painter.restore();
}

} // namespace pw::gui
