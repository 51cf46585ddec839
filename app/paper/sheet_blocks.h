#pragma once

#include "app/paper/plan_drawing.h"
#include "app/paper/sheet_data.h"
#include "app/paper/sheet_layout.h"

/// What stands on a shop sheet, block by block, each for the width it gets (mm). A block without rows says
/// nothing.
namespace pw::paper {

Block holeTable(const SheetData& data, const PlanDrawing& drawing, double wide);
/// Divider settings, and how each hole is made, with step drills.
Block dividers(const SheetData& data, double wide);
Block makeThem(const SheetData& data, double wide);

/// What is stamped, in a frame, in both unit systems.
Block stamp(const SheetData& data, double wide);
Block proof(const SheetData& data, double wide);
Block gaugeTable(const SheetData& data, double wide);
/// Every check with its margin as a bar against what is wanted.
Block checks(const SheetData& data, double wide);

/// The order of work up to the letting up (or the pull), and from there on.
Block firstSteps(const SheetData& data, double wide);
Block lastSteps(const SheetData& data, double wide);
/// A box for each station, out and in.
Block keepersCounted(const SheetData& data, double wide);
Block cautions(const SheetData& data, double wide);
Block turnsCard(const SheetData& data, double wide);
Block cardNotes(const SheetData& data, double wide); ///< what too high and too low mean
Block threadInHand(const SheetData& data, double wide);
Block useLog(const SheetData& data, double wide, int lines);
Block assumptions(const SheetData& data, double wide);

/// The verdict's mark: the plate seen from its edge, `wide` mm across.
void drawMark(Ink& ink, shape::Point middle, double wide, verdict::Grade grade);

} // namespace pw::paper
