#pragma once

#include <QWidget>

namespace pw::gui {

class WordButton;

/// That something longer is being worked out, and how far: a thin bar, words, and a way to stop it. When
/// nothing runs it has something to say, or is not there.
class WorkBar : public QWidget {
    Q_OBJECT

public:
    explicit WorkBar(QWidget* parent = nullptr);

    void setBusy(double done, const QString& what);
    /// How long it will take, and whatever else is said before it starts; busy at once then with `what`.
    /// Empty: nothing to say. Stands until there is nothing to wait for.
    void setAhead(const QString& words, const QString& what);
    /// Empty words: nothing to say. `again`: what a click begins once more; empty: nothing can be.
    void setIdle(const QString& words = {}, const QString& again = {});
    bool isBusy() const { return m_busy; }
    QString words() const { return m_words; }
    QString ahead() const { return m_ahead; }
    WordButton* button() const { return m_button; }

Q_SIGNALS:
    void stopAsked();
    void againAsked();

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void settle();

    double m_done = 0;
    QString m_words, m_ahead;
    bool m_busy = false;
    WordButton* m_button;
};

} // namespace pw::gui
