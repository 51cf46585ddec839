#pragma once

#include "app/gui/widgets/look.h"

#include <QTimer>
#include <QWidget>
#include <utility>
#include <vector>

class QAbstractButton;
class QLineEdit;

namespace pw::gui {

enum class FieldState {
    Typed,         ///< typed and understood
    Assumed,       ///< ours until the user says otherwise
    Needed,        ///< empty, and nothing can be said without it
    Empty,         ///< empty, and that is fine
    NotUnderstood, ///< the text stays as typed, the last good value still counts
    WorkedOut      ///< follows from the rest; no box
};

/// One figure: its label, its box in one of the states of the look, and the same figure in the other unit.
/// What is wrong, and how to measure, stands below the row that holds the box.
class FieldBox : public QWidget {
    Q_OBJECT

public:
    enum class Mode { Edit, Choice, OpenChoice };
    using Choices = std::vector<std::pair<QString, QString>>; ///< value, words

    FieldBox(Mode mode, const QString& label, QWidget* parent = nullptr);

    void setLabel(const QString& label);
    QString label() const { return m_label; }
    void setChoices(Choices choices);

    /// The value as the box shows it (for a choice: the value of one). The text of a box that is being typed
    /// in is left alone unless `force`.
    void setValue(const QString& value, bool force = false);
    /// The text as if it had just been typed: it stays until it is taken (leaving the box offers it again) or
    /// Escape.
    void keepTyped(const QString& text);
    QString value() const;
    void setEcho(const QString& echo);
    void setState(FieldState state);
    FieldState state() const { return m_state; }
    /// What stands in an empty box that assumes something.
    void setAssumed(const QString& text);
    bool isActive() const; ///< the keyboard is in it
    /// What is below (how to measure, what is wrong), for those who cannot see it.
    void setSpoken(const QString& text);
    QWidget* focusTarget() const;

    /// The width it wants so that label and longest choice are not cut.
    int wantedWidth() const;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void typed(const QString& text); ///< after a short pause in typing
    void left(const QString& text);  ///< by Enter or by leaving, when something was typed
    void picked(const QString& value);
    void activated(); ///< the keyboard came in
    void deactivated();

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void placeParts();
    void openMenu();
    QRectF boxRect() const;
    QString shownWords() const;
    bool echoFits() const;

    Mode m_mode;
    QString m_label, m_echo, m_assumed, m_value;
    Choices m_choices;
    FieldState m_state = FieldState::Empty;
    QLineEdit* m_edit = nullptr;
    QAbstractButton* m_button = nullptr;
    QTimer m_pause;
    bool m_dirty = false;
};

} // namespace pw::gui
