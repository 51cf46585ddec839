#include "app/gui/views/field_layer.h"

#include "app/gui/views/scale_legend.h"
#include "app/gui/widgets/stress_scale.h"

#include <limits>
#include <QPainter>
#include <QTransform>

namespace pw::gui {

namespace {

// Drawn this much larger and brought down smoothly: neighbouring polygons then leave no seams, as they would
// when each had soft edges of its own.
constexpr int kOver = 2;

void drawBand(QPainter& painter, const Band& band) {
    for (const auto& polygon : band.polygons)
        painter.drawConvexPolygon(polygon);
}

} // namespace

void FieldLayer::set(std::shared_ptr<const engine::Picture> picture, What what, double top, double yield) {
    if (picture == m_picture && what == m_what && top == m_top && yield == m_yield)
        return;
    m_picture = std::move(picture);
    m_what = what;
    m_top = top;
    m_yield = yield;
    m_bands.clear();
    m_yielded = {};
    m_image = {};
    if (!m_picture || m_picture->mesh.triangleCount() == 0)
        return;
    const Eigen::VectorXd values =
        what == What::Stress ? m_picture->vonMises : Eigen::VectorXd(m_picture->deflection.cwiseAbs());
    std::vector<double> levels;
    for (int i = 0; i <= kScaleBands; ++i)
        levels.push_back(top * i / kScaleBands);
    m_bands = fieldBands(m_picture->mesh, m_picture->sector, values, levels);
    if (what == What::Stress && yield > 0) {
        auto parts = fieldBands(m_picture->mesh, m_picture->sector, values,
                                {0, yield, std::numeric_limits<double>::infinity()});
        m_yielded = std::move(parts.back());
    }
}

const QImage& FieldLayer::image(const PlanTransform& transform, QSize size, double devicePixelRatio,
                                Tone tone) {
    const QSize pixels = size * devicePixelRatio;
    if (m_image.size() == pixels && m_at.scale == transform.scale && m_at.origin == transform.origin &&
        m_tone == tone)
        return m_image;
    m_at = transform;
    m_tone = tone;
    QImage large(pixels * kOver, QImage::Format_RGB32);
    large.fill(bandColour(tone, 0));
    const double zoom = devicePixelRatio * kOver;
    const QTransform place(transform.scale * zoom, 0, 0, -transform.scale * zoom, transform.origin.x() * zoom,
                           transform.origin.y() * zoom);
    {
        QPainter painter(&large);
        painter.setPen(Qt::NoPen);
        painter.setTransform(place);
        for (std::size_t i = 0; i < m_bands.size(); ++i) {
            painter.setBrush(bandColour(tone, static_cast<int>(i)));
            drawBand(painter, m_bands[i]);
        }
    }
    m_image = large.scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                  .convertToFormat(QImage::Format_ARGB32_Premultiplied);
    if (!m_yielded.polygons.empty()) {
        QImage mask(pixels * kOver, QImage::Format_ARGB32_Premultiplied);
        mask.fill(Qt::transparent);
        {
            QPainter painter(&mask);
            painter.setPen(Qt::NoPen);
            painter.setBrush(Qt::black);
            painter.setTransform(place);
            drawBand(painter, m_yielded);
        }
        mask = mask.scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        QImage hatch(pixels, QImage::Format_ARGB32_Premultiplied);
        hatch.fill(Qt::transparent);
        {
            QPainter painter(&hatch);
            painter.scale(devicePixelRatio, devicePixelRatio);
            fillHatch(painter, QRectF(QPointF(0, 0), QSizeF(size)));
            painter.resetTransform();
            painter.setCompositionMode(QPainter::CompositionMode_DestinationIn);
            painter.drawImage(0, 0, mask);
        }
        QPainter painter(&m_image);
        painter.drawImage(0, 0, hatch);
    }
    m_image.setDevicePixelRatio(devicePixelRatio);
    return m_image;
}

} // namespace pw::gui
