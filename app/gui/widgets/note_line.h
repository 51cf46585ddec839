#pragma once

#include <QString>
#include <QWidget>

namespace pw::gui {

/// What stands under a field that is needed (with the dashed mark, muted) or was not understood (ink).
class NoteLine : public QWidget {
    Q_OBJECT

public:
    explicit NoteLine(QWidget* parent = nullptr);

    void set(const QString& text, bool needed);
    QString text() const { return m_text; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return {100, heightForWidth(284)}; }

protected:
    void paintEvent(QPaintEvent*) override;

private:
    QString m_text;
    bool m_needed = false;
};

} // namespace pw::gui
