#pragma once

#include "app/gui/document/rack_document.h"
#include "app/gui/models/fields.h"

#include <QPointer>
#include <QWidget>

class QBoxLayout;

namespace pw::gui {

class PieceFigures;
class PieceView;
class WordButton;

/// One piece of the rack: its figures, and beside them the piece to scale as it comes out of them.
class PieceEditor : public QWidget {
    Q_OBJECT

public:
    explicit PieceEditor(QWidget* parent = nullptr);

    void setPiece(RackDocument* rack, std::size_t row);
    std::size_t row() const { return m_row; }
    void setUnits(units::System system);
    void setSnap(double mm);

    PieceFigures& figures() { return *m_figures; }
    PieceView& view() { return *m_view; }
    WordButton* doneButton() const { return m_done; }
    WordButton* pointsButton() const { return m_points; }
    WordButton* sidesButton() const { return m_sides; }

Q_SIGNALS:
    void done();
    /// Corner points are to be pasted, or worked out of four sides and a diagonal.
    void pointsAsked();
    void sidesAsked();

protected:
    void resizeEvent(QResizeEvent*) override;
    void paintEvent(QPaintEvent*) override;

private:
    void settle();

    QPointer<RackDocument> m_rack;
    std::size_t m_row = 0;
    QBoxLayout* m_halves;
    PieceFigures* m_figures;
    PieceView* m_view;
    WordButton *m_done, *m_points, *m_sides;
};

} // namespace pw::gui
