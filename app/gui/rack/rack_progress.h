#pragma once

#include <QWidget>

namespace pw::gui {

class WordButton;

/// That the pieces are being ranked, and how far: a thin bar, words, and a way to stop it.
class RackProgress : public QWidget {
    Q_OBJECT

public:
    explicit RackProgress(QWidget* parent = nullptr);

    void setBusy(double done, const QString& what);
    /// What there is to say when nothing runs; empty: nothing. `again`: it can be asked for once more.
    void setIdle(const QString& words = {}, bool again = false);
    bool isBusy() const { return m_busy; }
    QString words() const { return m_words; }
    WordButton* button() const { return m_button; }

Q_SIGNALS:
    void stopAsked();
    void againAsked();

protected:
    void paintEvent(QPaintEvent*) override;

private:
    double m_done = 0;
    QString m_words;
    bool m_busy = false;
    WordButton* m_button;
};

} // namespace pw::gui
