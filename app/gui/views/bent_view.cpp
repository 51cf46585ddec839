#include "app/gui/views/bent_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/stress_scale.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

namespace pw::gui {

namespace {

/// How far the slider goes past the factor that shows the bend plainly.
constexpr int kMoreSteps = 2;
/// A view of more pixels is drawn without smoothing while it is turned.
constexpr double kSmoothPixels = 420e3;
constexpr int kRestMs = 140;
constexpr double kKeyPx = 12; ///< an arrow key turns it as far as so many pixels of dragging

} // namespace

BentView::BentView(QWidget* parent)
    : QWidget(parent), m_slider(new StopSlider(tr("How much larger the bend is drawn"), this)) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setAccessibleName(tr("Bent plate"));
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, qOverload<>(&QWidget::update));
    connect(m_slider, &StopSlider::moved, this, [this](double place) {
        m_chosen = true;
        setStep(static_cast<int>(std::lround(place * lastStep())));
    });
    connect(&Look::now(), &Look::changed, this, [this] {
        settle();
        update();
    });
    settle();
}

int BentView::lastStep() const {
    return m_clear + kMoreSteps;
}

void BentView::setUnits(units::System system) {
    m_units = system;
    settle();
    update();
}

void BentView::setHead(const QRect& taken) {
    m_head = taken;
    settle();
}

void BentView::setReport(std::shared_ptr<const engine::Report> report, const job::Job& job) {
    m_report = std::move(report);
    const auto picture = m_report ? m_report->picture : nullptr;
    if (picture != m_picture) {
        m_picture = picture;
        m_shape = picture ? bentShape(*picture) : BentShape{};
        const int before = m_step;
        m_clear = clearStep(m_shape);
        // The bend of two thicknesses can be compared while the factor stays; it only goes where it must.
        m_step = m_chosen ? std::min(before, lastStep()) : m_clear;
    }
    m_scale = m_report ? stressScale(*m_report, job, m_units) : FieldScale{};
    m_thickness = job.plate.thickness ? job.plate.thickness->mm() * job.plate.stacked.value_or(1) : 0.0;
    settle();
    update();
}

void BentView::setLoad(double factor, double share) {
    if (factor == m_load && share == m_share)
        return;
    m_load = factor;
    m_share = share;
    m_rest.start();
    settle();
    update();
}

void BentView::focusInEvent(QFocusEvent* event) {
    m_byKeyboard = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    update();
}

void BentView::setStep(int step) {
    step = std::clamp(step, 0, lastStep());
    m_step = step;
    settle();
    m_rest.start();
    update();
}

QRectF BentView::sheet() const {
    const Look& look = Look::now();
    const double right = std::min(look.pxF(176), width() * 0.3);
    const double foot = std::max(look.pxF(70), height() - m_slider->y() + look.pxF(6));
    QRectF sheet = QRectF(rect()).adjusted(look.pxF(18), m_head.bottom() + look.pxF(12), -right, -foot);
    if (sheet.width() < 60 || sheet.height() < 40)
        sheet = QRectF(rect()).adjusted(10, 10, -10, -10);
    return sheet;
}

void BentView::settle() {
    const Look& look = Look::now();
    std::vector<double> stops;
    for (int i = 0; i <= lastStep(); ++i)
        stops.push_back(static_cast<double>(i) / lastStep());
    m_slider->setStops(stops);
    m_slider->setSingleStep(1000 / lastStep());
    m_slider->setPlace(static_cast<double>(m_step) / lastStep());
    m_slider->setAccessibleDescription(words());
    m_slider->setVisible(!m_shape.isEmpty());
    setAccessibleDescription(
        words() + QLatin1Char(' ') +
        tr("The arrow keys turn it, plus and minus draw the bend larger or smaller, Home starts over."));
    // Beside the words where there is room between them and the legend, else over them.
    const QFontMetricsF bold(look.font(Type::LabelBold)), plain(look.font(Type::Label));
    const double taken =
        look.pxF(40) + std::max(bold.horizontalAdvance(words()), plain.horizontalAdvance(hint()));
    const double legend = look.pxF(120);
    const double beside = width() - taken - legend;
    const bool over = beside < look.pxF(130);
    const double wide = std::min(over ? width() - legend - look.pxF(24) : beside, look.pxF(260));
    m_slider->setGeometry(QRectF(over ? look.pxF(10) : taken, height() - look.pxF(over ? 88 : 46),
                                 std::max(wide, look.pxF(60)), look.pxF(30))
                              .toRect());
    // Less load does not bring it nearer: what is drawn smaller is bent less.
    const double grow = times() * std::max(m_share, 1.0), half = m_thickness / 2;
    m_camera.fit(m_shape.radius, m_shape.low * grow - half, m_shape.high * grow + half, sheet());
}

void BentView::resizeEvent(QResizeEvent*) {
    settle();
}

void BentView::turn(QPointF byPx) {
    m_camera.turn(byPx / std::max(Look::now().scale(), 0.1));
    settle();
    m_rest.start();
    update();
}

void BentView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    m_drag = event->position();
    setCursor(Qt::ClosedHandCursor);
}

void BentView::mouseMoveEvent(QMouseEvent* event) {
    if (!m_drag)
        return;
    const QPointF by = event->position() - *m_drag;
    m_drag = event->position();
    // The near side follows the hand.
    turn({by.x(), by.y()});
}

void BentView::mouseReleaseEvent(QMouseEvent*) {
    m_drag.reset();
    setCursor(Qt::OpenHandCursor);
}

void BentView::mouseDoubleClickEvent(QMouseEvent*) {
    m_camera = Camera::first();
    settle();
    update();
}

void BentView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        turn({-kKeyPx, 0});
        break;
    case Qt::Key_Right:
        turn({kKeyPx, 0});
        break;
    case Qt::Key_Up:
        turn({0, -kKeyPx});
        break;
    case Qt::Key_Down:
        turn({0, kKeyPx});
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
    case Qt::Key_Minus:
        m_chosen = true;
        setStep(m_step + (event->key() == Qt::Key_Minus ? -1 : 1));
        break;
    case Qt::Key_Home:
        m_chosen = false;
        m_camera = Camera::first();
        setStep(m_clear);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

QString BentView::hint() const {
    return tr("Drag to turn it. Dashes: where the rim was.");
}

QString BentView::words() const {
    if (m_shape.isEmpty())
        return tr("Not worked out yet. The verdict says what is needed first.");
    return m_step == 0 ? tr("Bend drawn as large as it is")
                       : tr("Bend drawn %1 times larger than it is").arg(QLocale().toString(times(), 'f', 0));
}

void BentView::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), look.colours().ground);
    if (!m_shape.isEmpty()) {
        paintFlatRim(painter);
        paintPlate(painter);
        const QRectF area =
            QRectF(rect()).adjusted(0, m_head.bottom() + look.pxF(10), -look.pxF(12), -look.pxF(24));
        const QRectF legend = drawLegend(painter, area, stressLegend(m_scale, m_units));
        if (const auto spot = worstSpot())
            drawWorstSpot(painter, *spot, *m_report->plate.field, m_units,
                          QRectF(rect()).adjusted(0, std::max(0.0, m_head.bottom() - look.pxF(46)), 0, 0),
                          legend);
    }
    paintWords(painter);
    if (hasFocus() && m_byKeyboard)
        drawFocusRing(painter, QRectF(rect()).adjusted(1, 1, -1, -1), look.pxF(3));
}

void BentView::paintFlatRim(QPainter& painter) {
    if (m_shape.most * times() * m_share < 1e-3)
        return;
    const Palette& c = Look::now().colours();
    QPen pen(c.muted, 1.2);
    pen.setDashPattern({6 / 1.2, 4 / 1.2});
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    // Sides follow one another within a piece of rim; joined they dash evenly.
    QPolygonF line;
    std::uint32_t last = 0;
    for (const auto& e : m_shape.edges) {
        if (e.hole)
            continue;
        const auto& a = m_shape.rim[e.a];
        const auto& b = m_shape.rim[e.b];
        const auto from = m_camera.see(a.x, a.y, 0), to = m_camera.see(b.x, b.y, 0);
        if (line.isEmpty() || (e.a != last && QLineF(line.last(), {from.x, from.y}).length() > 0.5)) {
            painter.drawPolyline(line);
            line = {QPointF(from.x, from.y)};
        }
        line << QPointF(to.x, to.y);
        last = e.b;
    }
    painter.drawPolyline(line);
}

void BentView::paintPlate(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double ratio = devicePixelRatioF();
    const double pixels = width() * height() * ratio * ratio;
    m_over = m_rest.isActive() && pixels > kSmoothPixels ? 1 : 2;
    const double zoom = ratio * m_over;
    Camera camera = m_camera;
    camera.scale *= zoom;
    camera.centre *= zoom;
    m_raster.draw(m_shape, camera, m_thickness, times() * m_share, size() * zoom);
    BentRaster::Paint paint;
    for (int i = 0; i < kScaleBands; ++i)
        paint.bands.push_back(bandColour(look.tone(), i).rgba());
    // The solved stress rises with the load; the scale stays.
    const double load = std::max(m_load, 1e-6);
    paint.top = (m_scale.top > 0 ? m_scale.top : 1) / load;
    paint.yield = m_scale.yield / load;
    paint.hatch = hatchColour().rgba();
    paint.rimWall = mixed(c.steel, c.ground, 0.25).rgba();
    paint.holeWall = (c.tone == Tone::Dark ? mixed(c.ground, c.steel, 0.4) : c.steelEdge).rgba();
    paint.line = c.steelEdge.rgba();
    paint.lineWidth = 1.6 * ratio;
    paint.hatchPitch = kHatchPitch * ratio;
    paint.hatchWidth = kHatchWidth * ratio;
    QImage image = m_raster.image(paint, m_over);
    image.setDevicePixelRatio(ratio);
    painter.drawImage(QPointF(0, 0), image);
}

std::optional<QPointF> BentView::worstSpot() const {
    if (!m_report || !m_report->plate.field || m_drag || m_load != 1)
        return {}; // its figure is that of full load
    const shape::Point at = m_report->plate.field->peakAt;
    // The bend there is that of the nearest point of the shape.
    const BentShape::Point* nearest = nullptr;
    double least = 1e30;
    for (const auto& p : m_shape.points) {
        const double far = std::hypot(p.x - at.x, p.y - at.y);
        if (far < least) {
            least = far;
            nearest = &p;
        }
    }
    if (!nearest)
        return {};
    const auto seen = m_camera.see(nearest->x, nearest->y, nearest->w * times() * m_share + m_thickness / 2);
    const double zoom = devicePixelRatioF() * m_over;
    const int x = static_cast<int>(seen.x * zoom), y = static_cast<int>(seen.y * zoom);
    if (x < 0 || y < 0 || x >= m_raster.size().width() || y >= m_raster.size().height())
        return {};
    // Hidden behind another part of the plate it is not marked.
    if (m_raster.surfaceAt(x, y) != BentRaster::Nothing &&
        m_raster.depthAt(x, y) > seen.depth + 0.03 * m_shape.radius)
        return {};
    return QPointF(seen.x, seen.y);
}

void BentView::paintWords(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    if (m_shape.isEmpty()) {
        painter.setFont(look.font(Type::Sentence));
        painter.setPen(c.muted);
        drawLine(painter,
                 QRectF(look.pxF(16), m_head.bottom() + look.pxF(6), width() - look.pxF(32), look.pxF(24)),
                 Qt::AlignLeft, words());
        return;
    }
    // From the foot up: the hint where it fits whole, the factor in as many lines as it needs.
    const double x = look.pxF(16), wide = width() - look.pxF(130);
    double foot = height() - look.pxF(8);
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.muted);
    if (QFontMetricsF(painter.font()).horizontalAdvance(hint()) <= wide) {
        drawLine(painter, QRectF(x, foot - look.pxF(24), wide, look.pxF(22)), Qt::AlignLeft, hint());
        foot -= look.pxF(24);
    }
    painter.setFont(look.font(Type::LabelBold));
    painter.setPen(c.ink);
    const WrappedText text = wrapText(words(), painter.font(), wide, 2);
    drawWrapped(painter, text, {x, foot - text.height()});
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.muted);
    if (!m_report || !m_report->load.total)
        return;
    const QString force = local(units::show(m_report->load.total->high * m_load, m_units));
    const QString load = m_load == 1 ? tr("Full load, %1").arg(force) : tr("Load %1").arg(force);
    const QRectF line(m_head.right() + look.pxF(12), m_head.y(), width() - m_head.right() - look.pxF(26),
                      m_head.height());
    if (QFontMetricsF(painter.font()).horizontalAdvance(load) <= line.width())
        drawLine(painter, line, Qt::AlignRight, load);
}

} // namespace pw::gui
