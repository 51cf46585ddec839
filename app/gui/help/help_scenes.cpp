#include "app/gui/help/help_scenes.h"

#include "app/gui/widgets/bench_scene.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/verdict_mark.h"

#include <cmath>
#include <numbers>
#include <QCoreApplication>
#include <QPainter>

namespace pw::gui {

namespace {

constexpr double kWidth = 600;

class HelpScenes {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::HelpScenes)

public:
    explicit HelpScenes(QPainter& painter) : m_painter(painter), m_scene(painter) {}

    /// A squeezed pack from the side, cut through the middle. `down`: how far the nut has gone.
    void pack(QPointF at, double scale, double down, bool keepers) {
        m_painter.save();
        m_painter.translate(at);
        m_painter.scale(scale, scale);
        const double land = 30 + down; // face the plate bears on
        m_scene.steel(QRectF(-150, 120, 300, 16));
        for (const double x : {-100.0, 100.0}) {
            m_scene.steel(QRectF(x - 6, -4, 12, 124)); // pin
            m_scene.coil(x, land + 16, 116, 44, 5, 6);
            m_scene.steel(QRectF(x - 28, land, 56, 11)); // retainer
        }
        m_scene.steel(QRectF(-20, 70, 40, 66)); // shaft
        m_scene.stud(QRectF(-10, -72, 20, 192), 6);
        plate(land);
        if (keepers)
            for (const double x : {-100.0, 100.0})
                for (const double side : {-1.0, 1.0})
                    m_scene.steel(QRectF(x + side * 10 - 4, land - 13, 8, 13));
        m_scene.steel(QRectF(-38, land - 40, 76, 12)); // washer
        m_scene.steel(QRectF(-26, land - 66, 52, 26)); // nut
        m_scene.line(QPointF(-9, land - 66), QPointF(-9, land - 40));
        m_scene.line(QPointF(9, land - 66), QPointF(9, land - 40));
        m_scene.axis(QPointF(0, -84), QPointF(0, 142));
        m_painter.restore();
    }

    void stack() {
        pack({300, 96}, 1, 0, true);
        m_scene.name({318, 70}, {470, 20}, tr("Nut"), true);
        m_scene.name({335, 92}, {470, 52}, tr("Washer"), true);
        m_scene.name({448, 112}, {470, 84}, tr("Plate"), true);
        m_scene.name({425, 132}, {470, 116}, tr("Retainer"), true);
        m_scene.name({422, 170}, {470, 148}, tr("Spring"), true);
        m_scene.name({200, 98}, {130, 20}, tr("Pin"), false);
        m_scene.name({190, 120}, {130, 52}, tr("Keeper"), false);
        m_scene.name({184, 104}, {130, 84}, tr("Access hole"), false);
        m_scene.name({292, 160}, {130, 148}, tr("Stud"), false);
        m_scene.name({286, 200}, {130, 180}, tr("Shaft"), false);
    }

    void order() {
        const struct {
            double x, down;
            bool keepers;
            QString words;
        } steps[] = {{100, 0, true, tr("Assembled")},
                     {300, 14, false, tr("Squeezed, keepers out")},
                     {500, -24, false, tr("Let up, springs free")}};
        for (const auto& step : steps) {
            pack({step.x, 70}, 0.6, step.down, step.keepers);
            drawLine(m_painter, QRectF(step.x - 98, 164, 196, 24), Qt::AlignHCenter, step.words);
        }
        m_scene.push({186, 70}, {212, 70});
        m_scene.push({386, 70}, {412, 70});
    }

    void plan() {
        const QPointF c(300, 122);
        m_scene.disc(c, 112);
        QPainterPath ring;
        ring.addEllipse(c, 72, 72);
        for (int i = 0; i < 6; ++i) {
            const double angle = i * std::numbers::pi / 3;
            const QPointF at = c + QPointF(std::cos(angle), -std::sin(angle)) * 72;
            QPainterPath land;
            land.addEllipse(at, 29, 29);
            m_scene.dashed(land);
            m_scene.hole(at, 20);
        }
        m_scene.dashed(ring);
        m_scene.hole(c, 15);
        m_scene.size(c - QPointF(72, 0), c + QPointF(72, 0));
        const QPointF a = c + QPointF(36, -62.35), b = c + QPointF(-36, -62.35);
        m_scene.size(b + QPointF(20, 0), a - QPointF(20, 0));
        m_scene.name(c + QPointF(60, 0), {450, 122}, tr("Pin circle"), true);
        m_scene.name(a + QPointF(14, -12), {450, 58}, tr("Access hole"), true);
        m_scene.name(c + QPointF(36 + 26, 62.35 + 12), {450, 186}, tr("Land"), true);
        m_scene.name(c + QPointF(-6, -62.35), {150, 34}, tr("Steel left"), false);
        m_scene.name(c + QPointF(-10, 8), {150, 186}, tr("Bore"), false);
        m_scene.name(c + QPointF(-111, -10), {150, 90}, tr("Rim"), false);
    }

    void verdicts() {
        using verdict::Grade;
        double x = 60;
        for (const Grade grade : {Grade::Holds, Grade::Thin, Grade::Sets, Grade::Breaks, Grade::Incomplete}) {
            drawVerdictMark(m_painter, QRectF(x - 36, 8, 72, 44), grade, m_scene.colours().of(grade).text);
            drawLine(m_painter, QRectF(x - 59, 58, 118, 24), Qt::AlignHCenter, verdictWord(grade));
            x += 120;
        }
    }

    /// A puller from the side: hub on its shaft, plate, bolts into the hub, screw against the shaft.
    void pull() {
        m_scene.steel(QRectF(200, 88, 330, 44)); // shaft
        m_scene.steel(QRectF(300, 40, 60, 48));  // hub above
        m_scene.steel(QRectF(300, 132, 60, 48)); // and below it
        for (const double y : {58.0, 154.0}) {
            m_scene.thread(QRectF(110, y, 220, 10), 6);
            m_scene.steel(QRectF(100, y - 6, 14, 22));
        }
        m_scene.steel(QRectF(124, 28, 26, 164)); // plate
        m_scene.thread(QRectF(56, 101, 144, 18), 7);
        m_scene.steel(QRectF(36, 95, 22, 30));
        m_scene.axis({20, 110}, {560, 110});
        m_scene.push({290, 30}, {240, 30});
        m_scene.name({138, 40}, {150, 14}, tr("Plate"), true);
        m_scene.name({240, 159}, {240, 200}, tr("Bolts into the hub"), true);
        m_scene.name({350, 50}, {400, 30}, tr("Hub"), true);
        m_scene.name({470, 100}, {490, 60}, tr("Shaft"), true);
        m_scene.name({90, 118}, {100, 200}, tr("Screw"), false);
    }

    /// Where to stand, from above.
    void stand() {
        const Palette& colours = m_scene.colours();
        QPolygonF cone[2];
        for (const int side : {0, 1}) {
            const double s = side ? 1 : -1;
            cone[side] << QPointF(300 + s * 24, 92) << QPointF(300 + s * 290, 40)
                       << QPointF(300 + s * 290, 180) << QPointF(300 + s * 24, 128);
            m_painter.setPen(Qt::NoPen);
            m_painter.setBrush(QBrush(colours.muted, Qt::BDiagPattern));
            m_painter.drawPolygon(cone[side]);
        }
        m_scene.steel(QRectF(276, 60, 14, 100));
        m_scene.steel(QRectF(310, 70, 34, 80));
        m_scene.thread(QRectF(246, 103, 64, 14), 6);
        m_scene.axis({20, 110}, {580, 110});
        for (const double y : {26.0, 194.0})
            person({300, y});
        drawLine(m_painter, QRectF(324, 14, 250, 24), Qt::AlignLeft, tr("Stand here, beside it"));
        for (const double x : {40.0, 420.0}) {
            const QRectF label(x, 98, 140, 24);
            m_painter.fillRect(label.adjusted(-4, 0, 4, 0), colours.field);
            m_painter.setPen(colours.ink);
            drawLine(m_painter, label, Qt::AlignHCenter, tr("In line: nobody"));
        }
    }

private:
    /// Someone upright, as large as the tool.
    void person(QPointF at) {
        QPainterPath body;
        body.moveTo(at + QPointF(-9, 22));
        body.lineTo(at + QPointF(-12, -6));
        body.quadTo(at + QPointF(0, -14), at + QPointF(12, -6));
        body.lineTo(at + QPointF(9, 22));
        body.closeSubpath();
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(m_scene.colours().steelEdge);
        m_painter.drawPath(body);
        m_painter.drawEllipse(at + QPointF(0, -16), 7, 8);
        m_painter.setPen(m_scene.colours().ink);
    }

    void plate(double land) {
        m_scene.steel(QRectF(-150, land - 28, 300, 28));
        m_painter.setPen(Qt::NoPen);
        for (const double x : {-100.0, 100.0}) {
            // Through the access hole its far edge shows, and what stands in it.
            m_painter.fillRect(QRectF(x - 19, land - 27, 38, 26), m_scene.colours().field);
            m_scene.line({x - 19, land - 28}, {x - 19, land});
            m_scene.line({x + 19, land - 28}, {x + 19, land});
            m_scene.steel(QRectF(x - 6, -4, 12, land + 4));
        }
    }

    QPainter& m_painter;
    BenchScene m_scene;
};

} // namespace

QImage helpScene(const QString& name, double ratio) {
    const struct {
        const char* name;
        double height;
        void (HelpScenes::*draw)();
    } known[] = {{"stack", 240, &HelpScenes::stack}, {"plan", 244, &HelpScenes::plan},
                 {"order", 194, &HelpScenes::order}, {"verdicts", 88, &HelpScenes::verdicts},
                 {"pull", 216, &HelpScenes::pull},   {"stand", 222, &HelpScenes::stand}};
    for (const auto& scene : known) {
        if (name != QLatin1String(scene.name))
            continue;
        const double scale = Look::now().scale();
        QImage image(QSizeF(kWidth * scale * ratio, scene.height * scale * ratio).toSize(),
                     QImage::Format_ARGB32_Premultiplied);
        image.setDevicePixelRatio(ratio);
        image.fill(Look::now().colours().field);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(scale, scale);
        QFont font = Look::now().font(Type::Label);
        font.setPixelSize(14);
        painter.setFont(font);
        painter.setPen(Look::now().colours().ink);
        HelpScenes scenes(painter);
        (scenes.*scene.draw)();
        return image;
    }
    return {};
}

} // namespace pw::gui
