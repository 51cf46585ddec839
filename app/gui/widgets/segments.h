#pragma once

#include "app/gui/widgets/look.h"

#include <QStringList>
#include <QWidget>

class QButtonGroup;

namespace pw::gui {

/// A row of words of which one is chosen. Left and right go along it.
class Segments : public QWidget {
    Q_OBJECT

public:
    Segments(const QStringList& words, const QString& name, QWidget* parent = nullptr);

    /// Less room around the words, and rows of at most so many: for a narrow place.
    void setTight(bool tight, int perRow);
    int current() const;
    void setCurrent(int index);

Q_SIGNALS:
    /// By the user's hand only.
    void chosen(int index);

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void relayout();
    QButtonGroup* m_group;
    bool m_tight = false;
    int m_perRow = 100;
};

} // namespace pw::gui
