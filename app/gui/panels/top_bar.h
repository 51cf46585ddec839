#pragma once

#include <string> // first: moc of Qt 6.4 stumbles over <compare> alone

#include "core/units/format.h"

#include <QWidget>

class QMenu;

namespace pw::gui {

class Segments;
class TextBlock;
class WordButton;

/// Words, no pictures: the job and its history on the left, units and outputs on the right.
class TopBar : public QWidget {
    Q_OBJECT

public:
    explicit TopBar(QMenu* jobMenu, QWidget* parent = nullptr);

    void setHistory(bool canUndo, const QString& undoText, bool canRedo, const QString& redoText);
    /// "Changed since saved", "Saved", "Not saved yet".
    void setFileWords(const QString& words);
    void setUnits(units::System system);
    void setOutputs(bool possible);
    /// The rack stands where the plan stood: the word leads back.
    void setRackOpen(bool open);

    WordButton* jobButton() const { return m_job; }
    WordButton* undoButton() const { return m_undo; }
    WordButton* redoButton() const { return m_redo; }
    WordButton* rackButton() const { return m_rack; }
    WordButton* cutButton() const { return m_cut; }
    WordButton* solidButton() const { return m_solid; }

    QSize sizeHint() const override;

Q_SIGNALS:
    void undo();
    void redo();
    void unitsChosen(units::System system);
    void cutFile();
    void solid();
    void rack();

protected:
    void paintEvent(QPaintEvent*) override;

private:
    WordButton *m_job, *m_undo, *m_redo, *m_rack, *m_cut, *m_solid;
    TextBlock* m_words;
    Segments* m_units;
};

} // namespace pw::gui
