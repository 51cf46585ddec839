#pragma once

#include "app/gui/widgets/look.h"

#include <QWidget>

namespace pw::gui {

/// One of the views of the lower strip: a head with its title and, at the right, what it says at the moment.
class StripPane : public QWidget {
    Q_OBJECT

public:
    StripPane(const QString& title, QWidget* parent);

    QString title() const { return m_title; }
    /// Room that others take of the head, px; a title there as well then stands where the title would.
    void setHeadRoom(int left, int right, int top = 0);
    /// Folded: only the one row that can be worked with.
    void setFolded(bool folded);
    bool isFolded() const { return m_folded; }

    QSize minimumSizeHint() const override;

protected:
    virtual void relayout() {}
    void resizeEvent(QResizeEvent*) override { relayout(); }

    QRectF head() const; ///< between what others take
    QRectF body() const; ///< below the head, within the margins
    void paintHead(QPainter& painter, const QString& note, const QColor& colour, bool bold = false) const;
    /// Muted words in the middle of an empty body.
    void paintEmpty(QPainter& painter, const QString& words) const;

private:
    QString m_title;
    int m_left = 0, m_right = 0, m_top = 0;
    bool m_folded = false;
};

} // namespace pw::gui
