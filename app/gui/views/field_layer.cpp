#include "app/gui/views/field_layer.h"

#include "app/gui/views/scale_legend.h"
#include "app/gui/widgets/stress_scale.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
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

/// Draws the hatch where `mask` (kOver times as large) is white. Pixel by pixel: many times quicker than as
/// many soft lines, and a drag repaints it with every answer.
void hatch(QImage& image, const QImage& mask, double devicePixelRatio, const QColor& colour) {
    const double half = kHatchWidth * devicePixelRatio / 2, pitch = kHatchPitch * devicePixelRatio;
    for (int y = 0; y < image.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < image.width(); ++x) {
            int white = 0;
            for (int j = 0; j < kOver; ++j) {
                const auto* from =
                    reinterpret_cast<const QRgb*>(mask.constScanLine(y * kOver + j)) + x * kOver;
                for (int i = 0; i < kOver; ++i)
                    white += qRed(from[i]);
            }
            if (white == 0)
                continue;
            const double across = std::abs(std::remainder((x + y) / std::numbers::sqrt2, pitch));
            const double ink = std::clamp(half - across + 0.5, 0.0, 1.0) * white / (255.0 * kOver * kOver);
            const auto mix = [ink](int under, int over) {
                return static_cast<int>(under + (over - under) * ink);
            };
            line[x] = qRgb(mix(qRed(line[x]), colour.red()), mix(qGreen(line[x]), colour.green()),
                           mix(qBlue(line[x]), colour.blue()));
        }
    }
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
        QImage mask(pixels * kOver, QImage::Format_RGB32);
        mask.fill(Qt::black);
        {
            QPainter painter(&mask);
            painter.setPen(Qt::NoPen);
            painter.setBrush(Qt::white);
            painter.setTransform(place);
            drawBand(painter, m_yielded);
        }
        hatch(m_image, mask, devicePixelRatio, hatchColour());
    }
    m_image.setDevicePixelRatio(devicePixelRatio);
    return m_image;
}

} // namespace pw::gui
