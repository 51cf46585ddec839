#include "geometry/exchange/dxf.h"

#include "core/job/process.h"
#include "geometry/exchange/dxf_sheet.h"
#include "geometry/exchange/dxf_text.h"

#include <algorithm>

namespace pw::exchange {

namespace {

/// Colours that stand apart on a black and on a white screen.
const std::vector<DxfLayer>& planLayers() {
    static const std::vector<DxfLayer> all = {
        {kLayerOutside, 5}, {kLayerInside, 3}, {kLayerDrill, 6}, {kLayerNote, 8}};
    return all;
}

const std::vector<DxfLayer>& pathLayers() {
    static const std::vector<DxfLayer> all = {{kLayerOutside, 5}, {kLayerInside, 3}, {kLayerLead, 1},
                                              {kLayerMark, 4},    {kLayerDrill, 6},  {kLayerNote, 8}};
    return all;
}

std::string titleAnd(const DxfOptions& options, const CutSettings& settings,
                     std::vector<std::string>& lines) {
    if (std::string title = dxfText(options.title); !title.empty())
        lines.push_back(std::move(title));
    return std::string("Units: ") + (options.units == units::System::Metric ? "mm" : "inch") + ". Plate " +
           sized(settings.thickness, options.units) +
           " thick. Cut by: " + std::string(job::nameOf(settings.process)) + ".";
}

void append(std::vector<std::string>& lines, std::vector<std::string> more) {
    for (std::string& line : more)
        if (std::find(lines.begin(), lines.end(), line) == lines.end())
            lines.push_back(std::move(line));
}

std::vector<std::string> noteLines(const CutPlan& plan, const DxfOptions& options) {
    std::vector<std::string> lines;
    lines.push_back(titleAnd(options, plan.settings, lines));
    std::string edge = "Lines are the finished edges.";
    if (plan.settings.kerf.mm() > 0)
        edge += " Kerf " + sized(plan.settings.kerf, options.units) + " is not taken off.";
    lines.push_back(std::move(edge));
    append(lines, drillLines(plan.drilled, options.units));
    for (const CutEdge& edgeInside : plan.inside)
        if (!edgeInside.note.empty())
            append(lines, {"Shaped hole: " + dxfText(edgeInside.note)});
    return lines;
}

std::vector<std::string> noteLines(const CutPath& path, const DxfOptions& options) {
    std::vector<std::string> lines;
    lines.push_back(titleAnd(options, path.settings, lines));
    lines.push_back("Lines are the middle of the cut: half the kerf of " +
                    sized(path.settings.kerf, options.units) + " is taken off, take off no more. " +
                    plainFigure(static_cast<double>(path.burns.size()), 0) + " pierces.");
    append(lines, drillLines(path.drilled, options.units));
    for (const CutEdge& edge : path.sawn)
        if (!edge.note.empty())
            append(lines, {"Shaped hole: " + dxfText(edge.note)});
    for (const std::string& note : path.notes)
        append(lines, {dxfText(note, 240)});
    return lines;
}

} // namespace

std::string toDxf(const CutPlan& plan, const DxfOptions& options) {
    DxfSheet sheet(options, planLayers());
    for (const DrilledHole& hole : plan.drilled) {
        sheet.centre(kLayerDrill, hole.centre);
        sheet.cross(kLayerDrill, hole, options.drillCircles);
    }
    for (const CutEdge& edge : plan.inside)
        sheet.edge(kLayerInside, edge.loop);
    sheet.edge(kLayerOutside, plan.outside.loop);
    for (const CutEdge& edge : plan.otherOutsides)
        sheet.edge(kLayerOutside, edge.loop);
    sheet.words(noteLines(plan, options), options.warning);
    return sheet.finish();
}

std::string toDxf(const CutPath& path, const DxfOptions& options) {
    DxfSheet sheet(options, pathLayers());
    for (const DrilledHole& hole : path.drilled) {
        sheet.centre(kLayerMark, hole.centre);
        sheet.cross(kLayerDrill, hole, options.drillCircles);
    }
    for (const CutEdge& edge : path.sawn)
        sheet.edge(kLayerDrill, edge.loop);
    for (const Burn& burn : path.burns) {
        sheet.lead(kLayerLead, burn.leadIn);
        sheet.path(burn.outside ? kLayerOutside : kLayerInside, burn.loop);
        if (burn.leadOut)
            sheet.lead(kLayerLead, *burn.leadOut);
    }
    sheet.words(noteLines(path, options), options.warning);
    return sheet.finish();
}

} // namespace pw::exchange
