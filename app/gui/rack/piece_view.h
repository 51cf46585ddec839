#pragma once

#include "app/gui/document/rack_document.h"
#include "app/gui/models/fields.h"
#include "app/gui/models/rack_rows.h"
#include "app/gui/views/plan_geometry.h"

#include <optional>
#include <QPointer>
#include <QWidget>

namespace pw::gui {

/// One piece to scale while its figures are put in. Corners of a polygon and the middles of holes are
/// handles: dragged with the mouse, or gone through with Tab and moved with the arrow keys.
class PieceView : public QWidget {
    Q_OBJECT

public:
    explicit PieceView(QWidget* parent = nullptr);

    void setPiece(RackDocument* rack, std::size_t row);
    void setUnits(units::System system);
    /// What a drag and an arrow key go to, mm.
    void setSnap(double mm) { m_snapMm = mm; }
    /// The part whose figures are being typed.
    void light(PlanPart part, std::size_t index);

    struct Handle {
        PlanPart part = PlanPart::None; ///< Corner or Extra
        std::size_t index = 0;
        shape::Point at;
        std::string path; ///< of its [x, y]
    };
    const std::vector<Handle>& handles() const { return m_handles; }
    const PlanTransform& transform() const { return m_transform; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void picked(PlanPart part, std::size_t index);

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    void refresh();
    void fit();
    int handleAt(QPointF at) const;
    void pick(int handle);
    void move(int handle, shape::Point to, int gesture);
    void say();

    QPointer<RackDocument> m_rack;
    std::size_t m_row = 0;
    units::System m_units = units::System::Metric;
    double m_snapMm = 1;
    StockPicture m_picture;
    std::vector<Handle> m_handles;
    PlanTransform m_transform;
    PlanPart m_litPart = PlanPart::None;
    std::size_t m_litIndex = 0;
    int m_picked = -1, m_dragged = -1;
    int m_gesture = 0;
    shape::Point m_grabbedAt, m_before;
    QString m_trouble;
};

} // namespace pw::gui
