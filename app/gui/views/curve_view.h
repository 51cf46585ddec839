#pragma once

#include "app/gui/views/curve_geometry.h"
#include "app/gui/views/strip_pane.h"
#include "core/units/format.h"

#include <memory>

namespace pw::gui {

/// How far the plate bends under a rising load, until it folds; full load, proof, first yield and folding
/// are marked, and what stays when it is let go. A load is taken hold of on the curve, or by the arrow keys.
class CurveView : public StripPane {
    Q_OBJECT

public:
    explicit CurveView(QWidget* parent = nullptr);

    void setUnits(units::System system);
    void setReport(std::shared_ptr<const engine::Report> report);
    const LoadCurve& curve() const { return m_curve; }
    /// The load that is looked at, over full load; 1 until somebody moves it.
    double factor() const { return m_factor; }
    /// All marks in words.
    QString words() const;

Q_SIGNALS:
    void factorChanged(double factor);

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent*) override;
    void focusInEvent(QFocusEvent*) override { update(); }
    void focusOutEvent(QFocusEvent*) override { update(); }

private:
    struct Axes;
    Axes axes() const;
    void paintAxes(QPainter& painter, const Axes& axes);
    void paintLine(QPainter& painter, const Axes& axes);
    void paintMarks(QPainter& painter, const Axes& axes);
    void setFactor(double factor);
    QString nowWords() const;
    QString markName(CurveMark::Kind kind) const;
    QString load(double factor) const;
    QString bend(double mm) const;
    bool isLowerBound() const;

    std::shared_ptr<const engine::Report> m_report;
    LoadCurve m_curve;
    double m_factor = 1;
    units::System m_units = units::System::Metric;
};

} // namespace pw::gui
