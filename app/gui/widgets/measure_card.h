#pragma once

#include "app/gui/models/fields.h"

#include <QWidget>

namespace pw::gui {

/// Opens under a field: a small scene of the bench on the left, how to measure and how wrong it may be beside
/// it.
class MeasureCard : public QWidget {
    Q_OBJECT

public:
    MeasureCard(Sketch sketch, const QString& how, QWidget* parent = nullptr);

    void set(Sketch sketch, const QString& how);
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return {100, heightForWidth(284)}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    Sketch m_sketch;
    QString m_how;
};

/// One of the small scenes, in a box of 92 x 74 design pixels: grey steel, one blue size line.
void drawSketch(QPainter& painter, const QRectF& box, Sketch sketch);

} // namespace pw::gui
