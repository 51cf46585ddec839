#pragma once

#include <QScrollArea>

namespace pw::gui {

/// A column that scrolls up and down. Its thumb lies over the content's margin, so that nothing moves when
/// the content grows past the column.
class SlimScrollArea : public QScrollArea {
    Q_OBJECT

public:
    explicit SlimScrollArea(QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    class Thumb;
    void place();
    Thumb* m_thumb;
};

} // namespace pw::gui
