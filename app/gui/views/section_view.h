#pragma once

#include "app/gui/views/check_place.h"
#include "app/gui/views/section_geometry.h"
#include "app/gui/views/section_paint.h"
#include "app/gui/views/strip_pane.h"
#include "core/units/format.h"

#include <memory>

namespace pw::gui {

class StopSlider;

/// The section through the stack to scale, with a slider from assembled through squeezed to free. Shows
/// springs, push and thread at each place of the travel, and where the coils touch.
class SectionView : public StripPane {
    Q_OBJECT

public:
    explicit SectionView(QWidget* parent = nullptr);

    void setUnits(units::System system);
    void setJob(const job::Job& job);
    /// The thread left over comes with the report.
    void setReport(std::shared_ptr<const engine::Report> report);

    /// What an opened check is about, in touch blue.
    void light(const CheckPlace& place);
    const CheckPlace& lit() const { return m_lit; }

    StopSlider* slider() const { return m_slider; }
    const StackTravel& travel() const { return m_travel; }
    const StackState& state() const { return m_state; }
    /// Everything the view says at this place, in one paragraph.
    QString words() const;

protected:
    void relayout() override;
    void paintEvent(QPaintEvent*) override;

private:
    void settle();
    void paintDrawing(QPainter& painter, const QRectF& area);
    void paintReadout(QPainter& painter, const QRectF& area, const SectionTransform& at,
                      const Section& section);
    void paintSizes(QPainter& painter, const Section& section, const SectionTransform& at);
    struct Stop;
    std::vector<Stop> stops() const;
    void paintStops(QPainter& painter);
    void paintTurns(QPainter& painter);
    bool isTall() const;
    QString length(units::Length value) const;
    QString coilWords() const;
    QColor coilColour() const;
    QString threadWords() const;
    QString turnWords(double turns) const;
    QString sentence() const;

    job::Job m_job;
    std::shared_ptr<const engine::Report> m_report;
    units::System m_units = units::System::Metric;
    StackTravel m_travel;
    StackState m_state;
    CheckPlace m_lit;
    QRectF m_bounds; ///< mm
    StopSlider* m_slider;
    bool m_touched = false; ///< the user moved it; stay there
};

} // namespace pw::gui
