#pragma once

#include <functional>
#include <QDialog>
#include <vector>

class QVBoxLayout;

namespace pw::gui {

class Segments;
class TextBlock;

/// What a person likes, apart from any job. Every choice counts at once; there is nothing to confirm.
class Preferences : public QDialog {
    Q_OBJECT

public:
    explicit Preferences(QWidget* parent);

    /// The row of words for "units", "colours", "text", "motion", "snap_mm", "snap_inch", "paper" or
    /// "language".
    Segments* row(const QString& name) const;
    /// Shows what counts now.
    void refresh();

Q_SIGNALS:
    /// It is in the settings already.
    void changed();

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void applyLook();
    void add(QVBoxLayout* column, const QString& name, const QString& label, const QStringList& words,
             std::function<int()> now, std::function<void(int)> choose);

    struct Row {
        TextBlock* title;
        Segments* words;
        std::function<int()> now;
    };
    std::vector<Row> m_rows;
};

} // namespace pw::gui
