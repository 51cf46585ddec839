#include "geometry/exchange/dxf_frame.h"

#include "geometry/exchange/dxf_tags.h"

#include <algorithm>

namespace pw::exchange::frame {

namespace {

using shape::Point;
using tags::flatPoint;
using tags::handle;
using tags::point;
using tags::real;
using tags::text;
using tags::whole;

/// Every object of an R2000 file has a number of its own, in hexadecimal. Those of the frame are fixed.
enum Handle : int {
    kTableVport = 0x1,
    kTableLtype,
    kTableLayer,
    kTableStyle,
    kTableView,
    kTableUcs,
    kTableAppid,
    kTableDimstyle,
    kTableBlockRecord,
    kVport = 0x10,
    kLtypeByBlock,
    kLtypeByLayer,
    kLtypeContinuous,
    kStyle,
    kAppid,
    kDimstyle,
    kPaperSpace = kModelSpace + 1,
    kModelBlock,
    kModelBlockEnd,
    kPaperBlock,
    kPaperBlockEnd,
    kRoot = 0x30,
    kGroups,
    kLayouts,
    kLineStyles,
    kPlotSettings,
    kPlotStyles,
    kPlotStyleNormal,
    kLineStyle,
    kModelLayout,
    kPaperLayout,
    kFirstLayer = 0x40,
};
constexpr int kNoOwner = 0;

Point middle(const shape::Box& box) {
    return (box.low + box.high) * 0.5;
}

void beginSection(std::string& out, std::string_view name) {
    text(out, 0, "SECTION");
    text(out, 2, name);
}

void endSection(std::string& out) {
    text(out, 0, "ENDSEC");
}

void variable(std::string& out, std::string_view name) {
    text(out, 9, name);
}

void headerCommon(std::string& out, const Sheet& sheet) {
    variable(out, "$INSBASE");
    point(out, 10, {});
    variable(out, "$EXTMIN");
    point(out, 10, sheet.extents.low);
    variable(out, "$EXTMAX");
    point(out, 10, sheet.extents.high);
    variable(out, "$LIMMIN");
    flatPoint(out, 10, sheet.extents.low);
    variable(out, "$LIMMAX");
    flatPoint(out, 10, sheet.extents.high);
    variable(out, "$LUNITS"); // decimal
    whole(out, 70, 2);
    variable(out, "$LUPREC");
    whole(out, 70, 4);
    variable(out, "$CLAYER");
    text(out, 8, "0");
}

// ---- R2000 ----

void beginTable(std::string& out, std::string_view name, int id, int count) {
    text(out, 0, "TABLE");
    text(out, 2, name);
    handle(out, 5, id);
    handle(out, 330, kNoOwner);
    text(out, 100, "AcDbSymbolTable");
    whole(out, 70, count);
}

void endTable(std::string& out) {
    text(out, 0, "ENDTAB");
}

void beginRecord(std::string& out, std::string_view type, int id, int owner, std::string_view marker) {
    text(out, 0, type);
    handle(out, type == "DIMSTYLE" ? 105 : 5, id);
    handle(out, 330, owner);
    text(out, 100, "AcDbSymbolTableRecord");
    text(out, 100, marker);
}

void namedRecord(std::string& out, std::string_view type, int id, int owner, std::string_view marker,
                 std::string_view name) {
    beginRecord(out, type, id, owner, marker);
    text(out, 2, name);
    whole(out, 70, 0);
}

void lineType(std::string& out, int id, std::string_view name) {
    namedRecord(out, "LTYPE", id, kTableLtype, "AcDbLinetypeTableRecord", name);
    text(out, 3, "");
    whole(out, 72, 65);
    whole(out, 73, 0);
    real(out, 40, 0);
}

/// The window a reader opens with: the whole drawing in the middle.
void viewPort(std::string& out, const Sheet& sheet) {
    namedRecord(out, "VPORT", kVport, kTableVport, "AcDbViewportTableRecord", "*Active");
    flatPoint(out, 10, {0, 0});
    flatPoint(out, 11, {1, 1});
    flatPoint(out, 12, middle(sheet.extents));
    flatPoint(out, 13, {0, 0});
    flatPoint(out, 14, {10, 10});
    flatPoint(out, 15, {10, 10});
    flatPoint(out, 16, {0, 0}); // seen from above
    real(out, 36, 1);
    point(out, 17, {0, 0});
    real(out, 40, std::max(sheet.extents.height(), sheet.extents.width() * 0.75) * 1.1);
    real(out, 41, 4.0 / 3.0);
    real(out, 42, 50);
    real(out, 43, 0);
    real(out, 44, 0);
    real(out, 50, 0);
    real(out, 51, 0);
    whole(out, 71, 0);
    whole(out, 72, 1000);
    whole(out, 73, 1);
    whole(out, 74, 3);
    for (int code = 75; code <= 78; ++code)
        whole(out, code, 0);
}

void layerTable(std::string& out, const Sheet& sheet) {
    beginTable(out, "LAYER", kTableLayer, static_cast<int>(sheet.layers.size()) + 1);
    int id = kFirstLayer;
    const auto layer = [&](std::string_view name, int colour) {
        namedRecord(out, "LAYER", id++, kTableLayer, "AcDbLayerTableRecord", name);
        whole(out, 62, colour);
        text(out, 6, "Continuous");
        whole(out, 370, -3);
        handle(out, 390, kPlotStyleNormal);
    };
    layer("0", 7);
    for (const DxfLayer& each : sheet.layers)
        layer(each.name, each.colour);
    endTable(out);
}

void tables(std::string& out, const Sheet& sheet) {
    beginSection(out, "TABLES");
    beginTable(out, "VPORT", kTableVport, 1);
    viewPort(out, sheet);
    endTable(out);

    beginTable(out, "LTYPE", kTableLtype, 3);
    lineType(out, kLtypeByBlock, "ByBlock");
    lineType(out, kLtypeByLayer, "ByLayer");
    lineType(out, kLtypeContinuous, "Continuous");
    endTable(out);

    layerTable(out, sheet);

    beginTable(out, "STYLE", kTableStyle, 1);
    namedRecord(out, "STYLE", kStyle, kTableStyle, "AcDbTextStyleTableRecord", "STANDARD");
    real(out, 40, 0);
    real(out, 41, 1);
    real(out, 50, 0);
    whole(out, 71, 0);
    real(out, 42, 2.5);
    text(out, 3, "txt");
    text(out, 4, "");
    endTable(out);

    beginTable(out, "VIEW", kTableView, 0);
    endTable(out);
    beginTable(out, "UCS", kTableUcs, 0);
    endTable(out);

    beginTable(out, "APPID", kTableAppid, 1);
    namedRecord(out, "APPID", kAppid, kTableAppid, "AcDbRegAppTableRecord", "ACAD");
    endTable(out);

    beginTable(out, "DIMSTYLE", kTableDimstyle, 1);
    text(out, 100, "AcDbDimStyleTable");
    namedRecord(out, "DIMSTYLE", kDimstyle, kTableDimstyle, "AcDbDimStyleTableRecord", "STANDARD");
    endTable(out);

    beginTable(out, "BLOCK_RECORD", kTableBlockRecord, 2);
    beginRecord(out, "BLOCK_RECORD", kModelSpace, kTableBlockRecord, "AcDbBlockTableRecord");
    text(out, 2, "*Model_Space");
    handle(out, 340, kModelLayout);
    beginRecord(out, "BLOCK_RECORD", kPaperSpace, kTableBlockRecord, "AcDbBlockTableRecord");
    text(out, 2, "*Paper_Space");
    handle(out, 340, kPaperLayout);
    endTable(out);
    endSection(out);
}

/// Objects that early readers do not know by themselves have to be declared.
void classes(std::string& out) {
    beginSection(out, "CLASSES");
    const auto declare = [&](std::string_view name, std::string_view marker) {
        text(out, 0, "CLASS");
        text(out, 1, name);
        text(out, 2, marker);
        text(out, 3, "ObjectDBX Classes");
        whole(out, 90, 0);
        whole(out, 280, 0);
        whole(out, 281, 0);
    };
    declare("ACDBDICTIONARYWDFLT", "AcDbDictionaryWithDefault");
    declare("ACDBPLACEHOLDER", "AcDbPlaceHolder");
    declare("LAYOUT", "AcDbLayout");
    endSection(out);
}

void emptyBlock(std::string& out, std::string_view name, int begin, int end, int owner, bool paper) {
    const auto entity = [&](std::string_view type, int id) {
        text(out, 0, type);
        handle(out, 5, id);
        handle(out, 330, owner);
        text(out, 100, "AcDbEntity");
        if (paper)
            whole(out, 67, 1);
        text(out, 8, "0");
    };
    entity("BLOCK", begin);
    text(out, 100, "AcDbBlockBegin");
    text(out, 2, name);
    whole(out, 70, 0);
    point(out, 10, {});
    text(out, 3, name);
    text(out, 1, "");
    entity("ENDBLK", end);
    text(out, 100, "AcDbBlockEnd");
}

void beginDictionary(std::string& out, std::string_view type, int id, int owner) {
    text(out, 0, type);
    handle(out, 5, id);
    handle(out, 330, owner);
    text(out, 100, "AcDbDictionary");
    whole(out, 281, 1);
}

void entry(std::string& out, std::string_view name, int id) {
    text(out, 3, name);
    handle(out, 350, id);
}

void layout(std::string& out, std::string_view name, int id, int space, bool paper, const Sheet& sheet) {
    text(out, 0, "LAYOUT");
    handle(out, 5, id);
    handle(out, 330, kLayouts);
    text(out, 100, "AcDbPlotSettings");
    text(out, 1, "");
    text(out, 2, "none_device");
    text(out, 4, "");
    text(out, 6, "");
    for (const int code : {40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 140, 141})
        real(out, code, 0);
    real(out, 142, 1);
    real(out, 143, 1);
    whole(out, 70, paper ? 688 : 1712);
    whole(out, 72, sheet.units == units::System::Metric ? 1 : 0);
    whole(out, 73, 0);
    whole(out, 74, paper ? 5 : 1);
    text(out, 7, "");
    whole(out, 75, 16);
    real(out, 147, 1);
    real(out, 148, 0);
    real(out, 149, 0);
    text(out, 100, "AcDbLayout");
    text(out, 1, name);
    whole(out, 70, 1);
    whole(out, 71, paper ? 1 : 0);
    flatPoint(out, 10, sheet.extents.low);
    flatPoint(out, 11, sheet.extents.high);
    point(out, 12, {});
    point(out, 14, sheet.extents.low);
    point(out, 15, sheet.extents.high);
    real(out, 146, 0);
    point(out, 13, {});
    point(out, 16, {1, 0});
    point(out, 17, {0, 1});
    whole(out, 76, 0);
    handle(out, 330, space);
}

void objects(std::string& out, const Sheet& sheet) {
    beginSection(out, "OBJECTS");
    beginDictionary(out, "DICTIONARY", kRoot, kNoOwner);
    entry(out, "ACAD_GROUP", kGroups);
    entry(out, "ACAD_LAYOUT", kLayouts);
    entry(out, "ACAD_MLINESTYLE", kLineStyles);
    entry(out, "ACAD_PLOTSETTINGS", kPlotSettings);
    entry(out, "ACAD_PLOTSTYLENAME", kPlotStyles);
    beginDictionary(out, "DICTIONARY", kGroups, kRoot);
    beginDictionary(out, "DICTIONARY", kLayouts, kRoot);
    entry(out, "Model", kModelLayout);
    entry(out, "Layout1", kPaperLayout);
    beginDictionary(out, "DICTIONARY", kLineStyles, kRoot);
    entry(out, "Standard", kLineStyle);
    beginDictionary(out, "DICTIONARY", kPlotSettings, kRoot);
    beginDictionary(out, "ACDBDICTIONARYWDFLT", kPlotStyles, kRoot);
    entry(out, "Normal", kPlotStyleNormal);
    text(out, 100, "AcDbDictionaryWithDefault");
    handle(out, 340, kPlotStyleNormal);
    text(out, 0, "ACDBPLACEHOLDER");
    handle(out, 5, kPlotStyleNormal);
    handle(out, 330, kPlotStyles);

    text(out, 0, "MLINESTYLE");
    handle(out, 5, kLineStyle);
    handle(out, 330, kLineStyles);
    text(out, 100, "AcDbMlineStyle");
    text(out, 2, "STANDARD");
    whole(out, 70, 0);
    text(out, 3, "");
    whole(out, 62, 256);
    real(out, 51, 90);
    real(out, 52, 90);
    whole(out, 71, 2);
    for (const double offset : {0.5, -0.5}) {
        real(out, 49, offset);
        whole(out, 62, 256);
        text(out, 6, "BYLAYER");
    }

    layout(out, "Model", kModelLayout, kModelSpace, false, sheet);
    layout(out, "Layout1", kPaperLayout, kPaperSpace, true, sheet);
    endSection(out);
}

} // namespace

std::string beforeEntitiesR2000(const Sheet& sheet) {
    const bool metric = sheet.units == units::System::Metric;
    std::string out;
    beginSection(out, "HEADER");
    variable(out, "$ACADVER");
    text(out, 1, "AC1015");
    variable(out, "$DWGCODEPAGE");
    text(out, 3, "ANSI_1252");
    headerCommon(out, sheet);
    variable(out, "$INSUNITS"); // 1 inches, 4 millimetres
    whole(out, 70, metric ? 4 : 1);
    variable(out, "$MEASUREMENT"); // 0 inch patterns, 1 metric ones
    whole(out, 70, metric ? 1 : 0);
    variable(out, "$HANDSEED");
    handle(out, 5, sheet.nextHandle);
    endSection(out);

    classes(out);
    tables(out, sheet);

    beginSection(out, "BLOCKS");
    emptyBlock(out, "*Model_Space", kModelBlock, kModelBlockEnd, kModelSpace, false);
    emptyBlock(out, "*Paper_Space", kPaperBlock, kPaperBlockEnd, kPaperSpace, true);
    endSection(out);

    beginSection(out, "ENTITIES");
    return out;
}

std::string afterEntitiesR2000(const Sheet& sheet) {
    std::string out;
    endSection(out);
    objects(out, sheet);
    text(out, 0, "EOF");
    return out;
}

std::string beforeEntitiesR12(const Sheet& sheet) {
    const auto beginOldTable = [](std::string& out, std::string_view name, int count) {
        text(out, 0, "TABLE");
        text(out, 2, name);
        whole(out, 70, count);
    };
    std::string out;
    beginSection(out, "HEADER");
    variable(out, "$ACADVER");
    text(out, 1, "AC1009");
    headerCommon(out, sheet);
    variable(out, "$HANDLING"); // no handles in this file
    whole(out, 70, 0);
    endSection(out);

    beginSection(out, "TABLES");
    beginOldTable(out, "LTYPE", 1);
    text(out, 0, "LTYPE");
    text(out, 2, "CONTINUOUS");
    whole(out, 70, 0);
    text(out, 3, "Solid line");
    whole(out, 72, 65);
    whole(out, 73, 0);
    real(out, 40, 0);
    endTable(out);
    beginOldTable(out, "LAYER", static_cast<int>(sheet.layers.size()) + 1);
    const auto layer = [&](std::string_view name, int colour) {
        text(out, 0, "LAYER");
        text(out, 2, name);
        whole(out, 70, 0);
        whole(out, 62, colour);
        text(out, 6, "CONTINUOUS");
    };
    layer("0", 7);
    for (const DxfLayer& each : sheet.layers)
        layer(each.name, each.colour);
    endTable(out);
    beginOldTable(out, "STYLE", 1);
    text(out, 0, "STYLE");
    text(out, 2, "STANDARD");
    whole(out, 70, 0);
    real(out, 40, 0);
    real(out, 41, 1);
    real(out, 50, 0);
    whole(out, 71, 0);
    real(out, 42, 2.5);
    text(out, 3, "txt");
    text(out, 4, "");
    endTable(out);
    endSection(out);

    beginSection(out, "BLOCKS");
    endSection(out);
    beginSection(out, "ENTITIES");
    return out;
}

std::string afterEntitiesR12() {
    std::string out;
    endSection(out);
    text(out, 0, "EOF");
    return out;
}

} // namespace pw::exchange::frame
