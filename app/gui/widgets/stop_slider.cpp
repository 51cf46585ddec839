#include "app/gui/widgets/stop_slider.h"

#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

namespace pw::gui {

namespace {

constexpr int kSteps = 1000;
constexpr double kCatch = 0.015; ///< of the whole way

} // namespace

StopSlider::StopSlider(const QString& name, QWidget* parent) : QSlider(Qt::Horizontal, parent) {
    setAccessibleName(name);
    setRange(0, kSteps);
    setSingleStep(kSteps / 100);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&Look::now(), &Look::changed, this, [this] { updateGeometry(); });
}

void StopSlider::setStops(std::vector<double> stops) {
    m_stops = std::move(stops);
    update();
}

double StopSlider::place() const {
    return static_cast<double>(value()) / kSteps;
}

void StopSlider::setPlace(double place) {
    const QSignalBlocker quiet(this);
    setValue(static_cast<int>(std::lround(std::clamp(place, 0.0, 1.0) * kSteps)));
}

double StopSlider::xOf(double place) const {
    const double edge = Look::now().pxF(14);
    return edge + place * (width() - 2 * edge);
}

double StopSlider::placeAt(double x) const {
    const double edge = Look::now().pxF(14);
    return std::clamp((x - edge) / std::max(width() - 2 * edge, 1.0), 0.0, 1.0);
}

QSize StopSlider::sizeHint() const {
    return {Look::now().px(240), Look::now().px(30)};
}

QSize StopSlider::minimumSizeHint() const {
    return {Look::now().px(90), Look::now().px(30)};
}

void StopSlider::go(double place) {
    const int before = value();
    setPlace(place);
    if (value() == before)
        return;
    update();
    Q_EMIT moved(this->place());
}

void StopSlider::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    setFocus(Qt::MouseFocusReason);
    mouseMoveEvent(event);
}

void StopSlider::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton))
        return;
    double place = placeAt(event->position().x());
    for (const double stop : m_stops)
        if (std::abs(place - stop) < kCatch)
            place = stop;
    go(place);
}

void StopSlider::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
}

void StopSlider::keyPressEvent(QKeyEvent* event) {
    const double step = static_cast<double>(singleStep()) / kSteps, now = place();
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        go(now - step);
        break;
    case Qt::Key_Right:
    case Qt::Key_Up:
        go(now + step);
        break;
    case Qt::Key_Home:
        go(0);
        break;
    case Qt::Key_End:
        go(1);
        break;
    case Qt::Key_PageUp: {
        double to = 1;
        for (const double stop : m_stops)
            if (stop > now + 1e-3)
                to = std::min(to, stop);
        go(to);
        break;
    }
    case Qt::Key_PageDown: {
        double to = 0;
        for (const double stop : m_stops)
            if (stop < now - 1e-3)
                to = std::max(to, stop);
        go(to);
        break;
    }
    default:
        QSlider::keyPressEvent(event);
    }
}

void StopSlider::wheelEvent(QWheelEvent* event) {
    const double turned = event->angleDelta().y() / 120.0;
    go(place() + turned * singleStep() / kSteps);
    event->accept();
}

void StopSlider::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double y = height() / 2.0, x = xOf(place()), line = look.pxF(4);
    QPen pen(c.strongRule, line);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(QPointF(xOf(0), y), QPointF(xOf(1), y));
    if (isEnabled()) {
        pen.setColor(c.touch);
        painter.setPen(pen);
        painter.drawLine(QPointF(xOf(0), y), QPointF(x, y));
    }
    painter.setPen(QPen(c.ink, look.pxF(1.8)));
    for (const double stop : m_stops)
        painter.drawLine(QPointF(xOf(stop), y - look.pxF(9)), QPointF(xOf(stop), y + look.pxF(9)));
    if (!isEnabled())
        return;
    const double r = look.pxF(13);
    painter.setPen(QPen(c.panel, look.pxF(2.5)));
    painter.setBrush(c.touch);
    painter.drawEllipse(QPointF(x, y), r, r);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(c.onTouch, look.pxF(1.8)));
        painter.drawEllipse(QPointF(x, y), r - look.pxF(5), r - look.pxF(5));
    }
}

} // namespace pw::gui
