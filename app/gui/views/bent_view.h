#pragma once

#include "app/gui/views/bent_raster.h"
#include "app/gui/views/bent_shape.h"
#include "app/gui/views/camera.h"
#include "app/gui/views/field_scale.h"
#include "core/units/format.h"

#include <memory>
#include <optional>
#include <QTimer>
#include <QWidget>

namespace pw::gui {

class StopSlider;

/// The plate in three dimensions, bent, drawn larger than it is by a stated factor, coloured like the plan.
/// The mouse and the arrow keys turn it, the slider draws the bend larger or smaller.
class BentView : public QWidget {
    Q_OBJECT

public:
    explicit BentView(QWidget* parent = nullptr);

    void setUnits(units::System system);
    void setReport(std::shared_ptr<const engine::Report> report, const job::Job& job);
    /// The load that is drawn, over full load, and the bend there over the solved one.
    void setLoad(double factor, double share);
    /// What stands over the view at its top left.
    void setHead(const QRect& taken);

    const Camera& camera() const { return m_camera; }
    /// Times the deflection is drawn larger.
    double times() const { return exaggeration(m_step); }
    StopSlider* slider() const { return m_slider; }

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent*) override;
    void mouseDoubleClickEvent(QMouseEvent*) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent*) override { update(); }

private:
    int lastStep() const;
    void setStep(int step);
    void turn(QPointF byPx);
    void settle();
    QRectF sheet() const;
    QString words() const;
    QString hint() const;
    void paintPlate(QPainter& painter);
    void paintFlatRim(QPainter& painter);
    std::optional<QPointF> worstSpot() const;
    void paintWords(QPainter& painter);

    std::shared_ptr<const engine::Report> m_report;
    std::shared_ptr<const engine::Picture> m_picture;
    BentShape m_shape;
    FieldScale m_scale;
    units::System m_units = units::System::Metric;
    double m_thickness = 0;
    Camera m_camera = Camera::first();
    int m_step = 0, m_clear = 0;
    double m_load = 1, m_share = 1;
    bool m_chosen = false; ///< the user said how much larger
    BentRaster m_raster;
    int m_over = 2; ///< of the last picture
    QRect m_head;
    bool m_byKeyboard = false;
    QTimer m_rest; ///< while it is turned a large view is drawn coarser
    std::optional<QPointF> m_drag;
    StopSlider* m_slider;
};

} // namespace pw::gui
