#pragma once

#include "app/paper/ink.h"
#include "app/paper/sheet_data.h"

#include <functional>

namespace pw::paper {

/// The plate to scale on the shop sheet: plan on its offcut, sizes from the two edges, leaders, section.
/// Lines after ISO 128, sizes after ISO 129-1. mm on the sheet.
class PlanDrawing {
public:
    /// The largest usual scale at which all of it keeps within this room.
    PlanDrawing(const SheetData& data, double roomWide, double roomHigh);

    double height() const;
    double scale() const { return m_scale; } ///< the number after 1:
    /// Are the two edges it is measured from those of the offcut?
    bool fromOffcut() const { return m_fromOffcut; }
    /// The centre of a hole from the left and the lower edge, mm of plate.
    shape::Point fromEdges(const MarkedHole& hole) const;

    void paint(Ink& ink, shape::Point corner);

private:
    struct Round { ///< a size that gets a leader
        QString words;
        std::vector<shape::Circle> circles; ///< on paper, any of which it may point at
        bool rim = false;
    };
    struct Leader {
        QString words;
        shape::Point tip, knee;
    };

    void fit(double roomWide, double roomHigh);
    shape::Point turned(shape::Point plate) const; ///< into the coordinates that are drawn
    shape::Loop turned(const shape::Loop& loop) const;
    shape::Point place(shape::Point drawn) const; ///< of turned coordinates on paper
    double sectionHeight() const;
    double below() const;
    std::vector<Round> rounds() const;
    void placeLeaders();
    void paintOffcut(Ink& ink);
    void paintPlate(Ink& ink);
    void paintSizes(Ink& ink);
    void paintSection(Ink& ink);
    void paintLeaders(Ink& ink);
    void paintNames(Ink& ink);
    void line(Ink& ink, shape::Point a, shape::Point b, const Stroke& stroke);
    void words(Ink& ink, shape::Point at, const QString& text, bool bold, Side side, double turn = 0);
    void arrow(Ink& ink, shape::Point tip, shape::Point from);
    void size(Ink& ink, shape::Point a, shape::Point b, const QString& text);

    const SheetData& m_data;
    units::System m_system;
    shape::Loop m_rim;
    std::vector<MarkedHole> m_holes;
    shape::Box m_rimBox, m_seen; ///< of the rim, of all that is drawn; turned coordinates
    shape::Point m_datum;        ///< where the two edges meet
    bool m_fromOffcut = false, m_wholeOffcut = false;
    shape::Point m_cutAlong{1, 0}; ///< way of the section
    double m_scale = 1, m_leaderWide = 0, m_above = 0;
    shape::Point m_corner; ///< of the plan's lower left, on paper
    std::vector<Leader> m_leaders;
    std::vector<std::pair<shape::Point, shape::Point>> m_lines; ///< drawn so far, for words to keep clear of
    std::vector<shape::Box> m_words;                            ///< written so far
};

/// The scale to draw `content` at in this room, as the number after 1:. Metric 1, 2, 2.5, 5 and tens of them
/// (ISO 5455, with the customary 1:2.5), inches 1, 2, 4, 8, ... (common practice, no published source).
double scaleFor(const shape::Box& content, double roomWide, double roomHigh, units::System system);
/// The next smaller drawing's.
double scaleAfter(double scale, units::System system);

} // namespace pw::paper
