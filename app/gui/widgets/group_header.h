#pragma once

#include <QAbstractButton>

namespace pw::gui {

/// The head of a group of figures. Closed: its title, small, and the whole group as a sentence. Open: the
/// title.
class GroupHeader : public QAbstractButton {
    Q_OBJECT

public:
    explicit GroupHeader(const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setSentence(const QString& sentence);
    /// A dashed mark: something in it is needed; or the ink mark of a figure that is wrong.
    void setNeeds(bool needs);
    bool isOpen() const { return isChecked(); }
    void setOpen(bool open);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;
    bool event(QEvent* event) override;

private:
    void speak();
    QString m_sentence;
    bool m_needs = false;
};

} // namespace pw::gui
