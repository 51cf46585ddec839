#pragma once

#include "app/gui/views/ladder_geometry.h"
#include "app/gui/views/strip_pane.h"
#include "core/units/format.h"

#include <memory>
#include <optional>

namespace pw::gui {

/// The same tool in every stock thickness: the verdict's mark at its margin over the wanted one, set and
/// weight, the thickness it has now. A click or Enter takes a thickness.
class LadderView : public StripPane {
    Q_OBJECT

public:
    explicit LadderView(QWidget* parent = nullptr);

    void setUnits(units::System system);
    /// The thickness of the job as it is now.
    void setThickness(std::optional<units::Length> thickness);
    /// Null: none yet. While `busy` the last one stays, paler.
    void setLadder(std::shared_ptr<const engine::Ladder> ladder);
    void setBusy(bool busy);
    /// Why there can be none.
    void setTrouble(const QString& words);

    std::shared_ptr<const engine::Ladder> ladder() const { return m_ladder; }
    const LadderLayout& layoutNow() const { return m_layout; }
    /// The rung that the keyboard or the mouse is on, else the current one; -1 for none.
    int lookedAt() const;
    /// What there is to say about a rung, in one paragraph.
    QString wordsOf(int rung) const;

Q_SIGNALS:
    /// A thickness was taken, as it is typed ("10 mm", "3/8 in").
    void picked(const QString& label);

protected:
    void relayout() override;
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent*) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent*) override;

private:
    struct Rows; ///< heights of the plot and the rows under it
    Rows rows() const;
    void fitRungs();
    void lookAt(int rung);
    void take(int rung);
    QString headWords() const;
    QString shortLabel(const engine::Rung& rung) const;
    void paintColumns(QPainter& painter, const Rows& rows);
    double roomBeside(double place, const Rows& rows) const;
    void paintPlot(QPainter& painter, const Rows& rows);
    void paintRows(QPainter& painter, const Rows& rows);
    void paintBars(QPainter& painter, double top, double bottom, bool set);
    void paintMore(QPainter& painter, const Rows& rows);
    double markWidth() const;
    bool isClear(const QRectF& box, const Rows& rows) const; ///< of marks
    QString gradeOf(int rung) const;
    QString reasonOf(int rung) const;

    std::shared_ptr<const engine::Ladder> m_ladder;
    std::optional<units::Length> m_thickness;
    units::System m_units = units::System::Metric;
    QString m_trouble;
    bool m_busy = false;
    LadderLayout m_layout;
    int m_looked = -1;
    QRectF m_thinner, m_thicker; ///< words that scroll to the rungs out of sight
    bool m_byKeyboard = false;
};

} // namespace pw::gui
