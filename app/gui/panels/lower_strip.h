#pragma once

#include "app/gui/document/document.h"
#include "app/gui/document/ladder_finder.h"
#include "core/rack/read_rack.h"

#include <array>
#include <memory>
#include <QWidget>

namespace pw::gui {

class CurveView;
class LadderView;
class SectionView;
class Segments;
class StripPane;
class WordButton;

/// Below the plan: the section, the load against the bend, the thickness ladder; as many side by side as
/// there is room for, the others by a word. Folded it keeps one row to work with.
class LowerStrip : public QWidget {
    Q_OBJECT

public:
    LowerStrip(Document& document, LadderFunction ladder, QWidget* parent = nullptr);

    void setUnits(units::System system);
    /// The answer for the job as it is now. The ladder is looked for once the verdict is there.
    void setReport(std::shared_ptr<const engine::Report> report);
    /// The pieces there are, for the ladder to mark their thicknesses; null: none.
    void setRack(std::shared_ptr<const rack::RackReading> rack);
    /// Bent asks for the load, any other view for the section.
    void showLoad(bool load);

    void setFolded(bool folded);
    bool isFolded() const { return m_folded; }
    bool isSearching() const { return m_finder->isBusy(); }

    SectionView* section() const { return m_section; }
    CurveView* curve() const { return m_curve; }
    LadderView* ladder() const { return m_ladder; }
    WordButton* foldButton() const { return m_fold; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// By the user's hand.
    void foldAsked(bool folded);

protected:
    void resizeEvent(QResizeEvent*) override { relayout(); }
    void paintEvent(QPaintEvent*) override;

private:
    enum Pane { Section, Load, Ladder };
    int panesWide() const;
    void relayout();
    void jobChanged();
    job::Job question() const;
    void showLadder();
    void place(const std::vector<int>& panes, const QRect& area, int headLeft, int headTop);

    Document& m_document;
    LadderFinder* m_finder;
    SectionView* m_section;
    CurveView* m_curve;
    LadderView* m_ladder;
    std::shared_ptr<const engine::Ladder> m_found; ///< as it was worked out, without the rack's marks
    std::shared_ptr<const rack::RackReading> m_rack;
    std::array<StripPane*, 3> m_panes;
    Segments* m_two;   ///< section or load
    Segments* m_three; ///< one of all
    WordButton* m_fold;
    units::System m_units = units::System::Metric;
    int m_chosen = Section;
    bool m_folded = false;
    std::vector<int> m_rules; ///< px, hairlines between the panes
};

} // namespace pw::gui
