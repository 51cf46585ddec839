#pragma once

#include "app/engine/report.h"
#include "app/gui/views/field_bands.h"
#include "app/gui/views/plan_geometry.h"
#include "app/gui/widgets/palette.h"

#include <memory>
#include <QImage>
#include <QSize>

namespace pw::gui {

/// The coloured field under the plan's lines, kept as an image until place, size or field change.
class FieldLayer {
public:
    enum class What { Stress, Deflection };

    /// `top` of the scale in MPa or mm. `yield` in MPa, 0: no hatch.
    void set(std::shared_ptr<const engine::Picture> picture, What what, double top, double yield);
    bool isEmpty() const { return m_bands.empty(); }

    /// Where there is steel, the image shows its band; elsewhere the lowest one.
    const QImage& image(const PlanTransform& transform, QSize size, double devicePixelRatio, Tone tone);

private:
    std::shared_ptr<const engine::Picture> m_picture;
    What m_what = What::Stress;
    double m_top = 0, m_yield = 0;
    std::vector<Band> m_bands;
    Band m_yielded;
    QImage m_image;
    PlanTransform m_at;
    Tone m_tone = Tone::Light;
};

} // namespace pw::gui
