#pragma once

#include <QSlider>
#include <vector>

namespace pw::gui {

/// A slider along which some places have a meaning (assembled, squeezed, free). Left and right move it,
/// Page Up and Page Down go from stop to stop. Places are 0..1.
class StopSlider : public QSlider {
    Q_OBJECT

public:
    explicit StopSlider(const QString& name, QWidget* parent = nullptr);

    /// Ticks; the thumb catches on them when it comes near.
    void setStops(std::vector<double> stops);
    double place() const;
    /// Without telling anybody.
    void setPlace(double place);

    /// Where a place lies, px from the left edge of the widget.
    double xOf(double place) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// By the user's hand only.
    void moved(double place);

protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void go(double place);
    double placeAt(double x) const;
    std::vector<double> m_stops;
};

} // namespace pw::gui
