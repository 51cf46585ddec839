#pragma once

#include "app/engine/report.h"
#include "app/gui/document/document.h"
#include "app/gui/views/cut_picture.h"
#include "app/gui/views/dimension_note.h"
#include "app/gui/views/field_layer.h"
#include "app/gui/views/field_scale.h"
#include "app/gui/views/plan_handles.h"
#include "geometry/outline/clearance.h"
#include "geometry/placement/stock.h"

#include <functional>
#include <memory>
#include <optional>
#include <QPainterPath>
#include <QWidget>

class QMenu;

namespace pw::gui {

class BentView;
struct RowAction;
class Segments;

/// The plate from above, true to scale. Everything that is cut, and what stands in the way, is grabbed and
/// pulled, added and taken out; the keyboard reaches each of them too. Overlays show stress, deflection and
/// fit from the last report; Bent puts the plate in three dimensions over it.
class PlanView : public QWidget {
    Q_OBJECT

public:
    enum class View { Plain, Stress, Deflection, Fit, Cut, Bent };

    explicit PlanView(Document& document, QWidget* parent = nullptr);

    void setUnits(units::System system);
    /// What a drag snaps to, mm; 0: the usual step of the unit.
    void setSnap(double mm) {
        m_snapMm = mm;
        update();
    }
    /// What was found out about the job as it is now; null while the newest is being worked out keeps the
    /// old.
    void setReport(std::shared_ptr<const engine::Report> report);
    /// The piece of steel that the job's plate is to come from, in its own coordinates; null: none.
    void setPiece(std::shared_ptr<const placement::Stock> stock);
    /// While this says that a check is running, a drag shows on the plan only and reaches the job when the
    /// check is done: otherwise a quick hand would overtake every check and see no answer until it rests.
    void setBusyTest(std::function<bool()> isBusy) { m_isBusy = std::move(isBusy); }
    /// The check is done: what the drag has come to goes into the job.
    void takePending();
    void setView(View view);
    View view() const { return m_view; }
    BentView* bent() const { return m_bent; }

    /// The part that a field being typed in belongs to; None: none. `row`: which of several, as in the job
    /// file.
    void light(PlanPart part, std::size_t row = 0);
    /// Places of the check that was picked.
    void showPlaces(std::vector<shape::Point> places);

    /// What the Cut view shows; empty in the others.
    const CutPicture& cutPicture() const { return m_cut; }
    const PlanTransform& transform() const { return m_transform; }
    const PlanShape& shape() const { return m_shape; }
    void fit();
    /// Asks what to add or take out at a place (px); null when there is nothing to ask. Closed, it is
    /// deleted.
    QMenu* menuAt(QPointF at);

    QSize sizeHint() const override { return {720, 454}; }
    QSize minimumSizeHint() const override { return {240, 200}; }

Q_SIGNALS:
    /// A part was clicked or reached by keyboard.
    void picked(PlanPart part, std::size_t row);
    /// Something was put in: its row in the job file.
    void added(const std::string& row);
    void viewChanged(View view);

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    bool event(QEvent* event) override;

private:
    struct Drag {
        Grab grab;
        shape::Point from;
        Setting before;
        int gesture = 0;
        bool moved = false;
        QPointF pressedAt;
        std::optional<Setting> pending{}; ///< shown, not yet in the job
    };

    void jobChanged();
    PlanShape shapeOf(const job::Job& job) const;
    void settleField();
    QRectF sheet() const; ///< px that the plate may fill when it is fitted
    void keepInView();
    void drag(QPointF to, bool fine);
    void change(const Grab& grab, const Setting& setting, int gesture);
    void step(int right, int up, bool fine);
    void make(const RowAction& action);
    double reachMm() const;
    void select(Grab grab);
    QPainterPath screenPath(const shape::Loop& loop) const;
    QPainterPath steelPath() const;
    void paintPiece(QPainter& painter);
    void paintPieceThrough(QPainter& painter);
    void paintPlate(QPainter& painter);
    void paintEdges(QPainter& painter);
    void paintLit(QPainter& painter, const Grab& lit);
    void paintFit(QPainter& painter);
    void paintLigaments(QPainter& painter);
    void settleCut();
    void paintCut(QPainter& painter);
    void paintCutLegend(QPainter& painter);
    void settleViews();
    void showBent();
    void paintPlaces(QPainter& painter);
    void paintNotes(QPainter& painter);
    void paintWorst(QPainter& painter, const QRectF& legend);
    void paintScaleBar(QPainter& painter);
    QRectF paintLegend(QPainter& painter);
    QRectF outlinePx() const;
    QString figure(double mm) const;
    std::optional<DimensionNote> noteFor(const Grab& grab) const;
    std::optional<DimensionNote> noteForOne(const Grab& grab) const;
    Grab lit() const;

    Document& m_document;
    std::function<bool()> m_isBusy;
    Segments* m_views;
    BentView* m_bent;
    View m_view = View::Plain;
    units::System m_units = units::System::Metric;
    double m_snapMm = 0;
    PlanShape m_shape;
    PlanTransform m_transform;
    bool m_moved = false; ///< the user chose the place; do not fit by ourselves
    std::shared_ptr<const engine::Report> m_report;
    std::shared_ptr<const placement::Stock> m_stock;
    FieldLayer m_layer;
    std::vector<outline::Ligament> m_ligaments; ///< the narrowest few, for Fit
    FieldScale m_scale;
    CutPicture m_cut;
    Grab m_hover, m_selected;
    Grab m_lit; ///< index: its row in the job file
    std::vector<shape::Point> m_places;
    std::optional<Drag> m_drag;
    std::optional<QPointF> m_pan;
    int m_keyGesture = 0;
    bool m_byKeyboard = false; ///< the keyboard brought the focus here; show where it is
};

} // namespace pw::gui
