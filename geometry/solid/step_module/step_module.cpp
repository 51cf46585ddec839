#include "geometry/solid/step_module.h"

#include <algorithm>
#include <APIHeaderSection_MakeHeader.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakeVertex.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <exception>
#include <gp_Ax2.hxx>
#include <gp_Circ.hxx>
#include <gp_Pln.hxx>
#include <gp_Trsf.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <mutex>
#include <Quantity_Color.hxx>
#include <sstream>
#include <Standard_CLocaleSentry.hxx>
#include <Standard_Failure.hxx>
#include <stdexcept>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <StepData_Protocol.hxx>
#include <StepData_StepModel.hxx>
#include <StepData_StepWriter.hxx>
#include <StepRepr_NextAssemblyUsageOccurrence.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopLoc_Location.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Solid.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <XSControl_WorkSession.hxx>

namespace pw::solid {

namespace {

/// The writer doubles quotes and backslashes but passes other signs on raw, which the standard forbids. So it
/// gets these words, and what we spelled ourselves is put in their place.
constexpr const char* kProductHere = "PLATEWRIGHT-PRODUCT-NAME";
constexpr const char* kDescriptionHere = "PLATEWRIGHT-DESCRIPTION";

gp_Pnt at(const std::array<double, 2>& p) {
    return {p[0], p[1], 0};
}

gp_Circ circleOf(const StepEdge& edge) {
    const gp_Dir along = edge.counterClockwise ? gp::DZ() : gp::DZ().Reversed();
    return {gp_Ax2(at(edge.centre), along, gp::DX()), edge.radius};
}

TopoDS_Wire wireOf(const std::vector<StepEdge>& edges) {
    BRepBuilderAPI_MakeWire wire;
    if (edges.size() == 1 && edges.front().kind == StepEdge::Kind::Circle) {
        wire.Add(BRepBuilderAPI_MakeEdge(circleOf(edges.front())).Edge());
        return wire.Wire();
    }
    // Neighbours share their corner, so the wire closes whatever the last bits of the coordinates are.
    std::vector<TopoDS_Vertex> corners;
    for (const StepEdge& edge : edges)
        corners.push_back(BRepBuilderAPI_MakeVertex(at(edge.from)).Vertex());
    for (std::size_t i = 0; i < edges.size(); ++i) {
        const TopoDS_Vertex& from = corners[i];
        const TopoDS_Vertex& to = corners[(i + 1) % corners.size()];
        wire.Add(edges[i].kind == StepEdge::Kind::Line
                     ? BRepBuilderAPI_MakeEdge(from, to).Edge()
                     : BRepBuilderAPI_MakeEdge(circleOf(edges[i]), from, to).Edge());
    }
    return wire.Wire();
}

TopoDS_Shape solidOf(const StepPart& part) {
    BRepBuilderAPI_MakeFace face(gp_Pln(gp::XOY()), wireOf(part.wires.front()), Standard_True);
    for (std::size_t i = 1; i < part.wires.size(); ++i)
        face.Add(wireOf(part.wires[i]));
    TopoDS_Shape solid = BRepPrimAPI_MakePrism(face.Face(), gp_Vec(0, 0, part.thickness)).Shape();
    if (solid.ShapeType() != TopAbs_SOLID || !BRepCheck_Analyzer(solid).IsValid())
        throw std::runtime_error("its outline makes no sound solid");
    return solid;
}

bool isAssembly(const StepRequest& request) {
    return request.parts.size() > 1 || request.parts.front().at.size() > 1;
}

/// What stands in the file until the name is put in; of one length, so that none is the beginning of another.
std::string partHere(std::size_t index) {
    std::string number = std::to_string(index);
    return "PLATEWRIGHT-PART-" + std::string(4 - std::min<std::size_t>(4, number.size()), '0') + number;
}

Handle(TDocStd_Document) documentOf(const StepRequest& request) {
    Handle(TDocStd_Document) document = new TDocStd_Document("XCAF");
    const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(document->Main());
    const Handle(XCAFDoc_ColorTool) colours = XCAFDoc_DocumentTool::ColorTool(document->Main());
    const bool assembly = isAssembly(request);
    TDF_Label whole;
    if (assembly) {
        whole = shapes->NewShape();
        TDataStd_Name::Set(whole, TCollection_ExtendedString(kProductHere));
    }
    for (std::size_t i = 0; i < request.parts.size(); ++i) {
        const StepPart& part = request.parts[i];
        const TDF_Label label = shapes->AddShape(solidOf(part), Standard_False);
        const std::string name = assembly ? partHere(i) : kProductHere;
        TDataStd_Name::Set(label, TCollection_ExtendedString(name.c_str()));
        colours->SetColor(label,
                          Quantity_Color(part.colour[0], part.colour[1], part.colour[2], Quantity_TOC_sRGB),
                          XCAFDoc_ColorGen);
        for (const std::array<double, 3>& at : part.at) {
            if (!assembly)
                break;
            gp_Trsf move;
            move.SetTranslation(gp_Vec(at[0], at[1], at[2]));
            const TDF_Label placed = shapes->AddComponent(whole, label, TopLoc_Location(move));
            TDataStd_Name::Set(placed, TCollection_ExtendedString(name.c_str()));
        }
    }
    if (assembly)
        shapes->UpdateAssemblies();
    return document;
}

Handle(TCollection_HAsciiString) ascii(const std::string& text) {
    return new TCollection_HAsciiString(text.c_str());
}

void replaceQuoted(std::string& text, const std::string& from, const std::string& to) {
    const std::string quoted = "'" + from + "'";
    for (std::size_t i = text.find(quoted); i != std::string::npos; i = text.find(quoted, i + to.size() + 2))
        text.replace(i, quoted.size(), "'" + to + "'");
}

/// The library numbers the places of parts on and on through the process; here from 1.
void numberPlaces(const Handle(StepData_StepModel) & model) {
    int number = 0;
    for (int i = 1; i <= model->NbEntities(); ++i) {
        const auto place = Handle(StepRepr_NextAssemblyUsageOccurrence)::DownCast(model->Value(i));
        if (!place.IsNull())
            place->SetId(new TCollection_HAsciiString(++number));
    }
}

/// Every field: what is left out is filled with the clock, the machine or the library's own name.
void setHeader(const Handle(StepData_StepModel) & model) {
    APIHeaderSection_MakeHeader header(model);
    header.SetName(ascii(kProductHere));
    header.SetTimeStamp(ascii("2000-01-01T00:00:00"));
    header.SetAuthorValue(1, ascii(""));
    header.SetOrganizationValue(1, ascii(""));
    header.SetPreprocessorVersion(ascii("Platewright"));
    header.SetOriginatingSystem(ascii("Platewright"));
    header.SetAuthorisation(ascii(""));
    header.SetDescriptionValue(1, ascii(kDescriptionHere));
    header.SetImplementationLevel(ascii("2;1"));
}

void set(const char* name, const char* value) {
    if (!Interface_Static::SetCVal(name, value))
        throw std::runtime_error(std::string("OpenCASCADE does not know the setting ") + name);
}

void set(const char* name, int value) {
    if (!Interface_Static::SetIVal(name, value))
        throw std::runtime_error(std::string("OpenCASCADE does not know the setting ") + name);
}

std::string write(const StepRequest& request) {
    // The settings belong to the whole process, hence the lock; its words would go to our standard output.
    static std::mutex mutex;
    const std::lock_guard lock(mutex);
    const Standard_CLocaleSentry pointAsDecimalMark;
    Message::DefaultMessenger()->ChangePrinters().Clear();

    STEPCAFControl_Controller::Init(); // registers the settings; the writer looks at some when it is made
    set("write.step.unit", request.inches ? "INCH" : "MM");
    set("write.step.schema", "AP214IS");
    set("write.step.product.name", kProductHere);
    set("write.step.assembly", isAssembly(request) ? 1 : 0);
    set("write.surfacecurve.mode", 0); // no curves in parameter space: nothing here needs them

    STEPCAFControl_Writer writer;
    writer.SetColorMode(Standard_True);
    writer.SetNameMode(Standard_True);
    if (!writer.Transfer(documentOf(request), STEPControl_AsIs))
        throw std::runtime_error("OpenCASCADE could not turn it into STEP");

    const Handle(StepData_StepModel) model = writer.ChangeWriter().Model();
    setHeader(model);
    numberPlaces(model);
    StepData_StepWriter text(model);
    text.SendModel(Handle(StepData_Protocol)::DownCast(writer.ChangeWriter().WS()->Protocol()));
    std::ostringstream out;
    out.imbue(std::locale::classic());
    if (!text.Print(out))
        throw std::runtime_error("OpenCASCADE could not write it");
    std::string file = out.str();
    replaceQuoted(file, kProductHere, request.product);
    replaceQuoted(file, kDescriptionHere, request.description);
    for (std::size_t i = 0; i < request.parts.size(); ++i)
        replaceQuoted(file, partHere(i), request.parts[i].name);
    return file;
}

} // namespace

} // namespace pw::solid

extern "C" __attribute__((visibility("default"))) bool pwWriteStep(const pw::solid::StepRequest& request,
                                                                   std::string& textOrReason);

bool pwWriteStep(const pw::solid::StepRequest& request, std::string& textOrReason) {
    try {
        textOrReason = pw::solid::write(request);
        return true;
    } catch (const Standard_Failure& failure) {
        textOrReason = failure.GetMessageString();
    } catch (const std::exception& failure) {
        textOrReason = failure.what();
    }
    return false;
}
