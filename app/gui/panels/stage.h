#pragma once

#include "app/gui/document/ladder_finder.h"
#include "app/gui/views/plan_view.h"

#include <QSplitter>

namespace pw::gui {

class LowerStrip;

/// The middle of the window: the plan, and the lower strip under it. Where both stand is remembered.
class Stage : public QSplitter {
    Q_OBJECT

public:
    Stage(Document& document, LadderFunction ladder, QWidget* parent = nullptr);

    PlanView& plan() { return *m_plan; }
    LowerStrip& strip() { return *m_strip; }

    void setUnits(units::System system);
    void setReport(std::shared_ptr<const engine::Report> report);
    /// What the user chose, into the session.
    void remember() const;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fold(bool folded);
    void settle();

    PlanView* m_plan;
    LowerStrip* m_strip;
    int m_height = 0;            ///< of the open strip, in design px; 0: as designed
    std::optional<bool> m_asked; ///< folded or not, by the user's hand
};

} // namespace pw::gui
