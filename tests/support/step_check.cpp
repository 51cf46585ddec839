// Reads a STEP file with OpenCASCADE and prints what it holds, one "key values" a line, lengths in mm:
//   step_check FILE
// Of an assembly also the parts it is made of: "part NAME", "partcolour R G B", once for each place.
// A program of its own, so that the tests do not carry the library's start-up.

#include <Bnd_Box.hxx>
#include <BRepAdaptor_Surface.hxx>
#include <BRepBndLib.hxx>
#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <cstdio>
#include <GProp_GProps.hxx>
#include <iostream>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Quantity_Color.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TCollection_AsciiString.hxx>
#include <TColStd_SequenceOfAsciiString.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>

int main(int argc, char** argv) {
    if (argc != 2)
        return 2;
    Message::DefaultMessenger()->ChangePrinters().Clear();
    STEPCAFControl_Reader reader;
    reader.SetNameMode(Standard_True);
    reader.SetColorMode(Standard_True);
    if (reader.ReadFile(argv[1]) != IFSelect_RetDone)
        return 1;
    TColStd_SequenceOfAsciiString lengths, angles, solidAngles;
    reader.ChangeReader().FileUnits(lengths, angles, solidAngles);
    for (const TCollection_AsciiString& unit : lengths)
        std::cout << "unit " << unit.ToCString() << "\n";

    Handle(TDocStd_Document) document = new TDocStd_Document("XCAF");
    if (!reader.Transfer(document))
        return 1;
    const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(document->Main());
    const Handle(XCAFDoc_ColorTool) colours = XCAFDoc_DocumentTool::ColorTool(document->Main());
    TDF_LabelSequence labels;
    shapes->GetFreeShapes(labels);
    std::cout.precision(15);
    for (const TDF_Label& label : labels) {
        const TopoDS_Shape shape = XCAFDoc_ShapeTool::GetShape(label);
        Handle(TDataStd_Name) name;
        if (label.FindAttribute(TDataStd_Name::GetID(), name))
            std::cout << "name " << TCollection_AsciiString(name->Get()).ToCString() << "\n";
        Quantity_Color colour;
        if (colours->GetColor(shape, XCAFDoc_ColorSurf, colour) ||
            colours->GetColor(shape, XCAFDoc_ColorGen, colour)) {
            double r = 0, g = 0, b = 0;
            colour.Values(r, g, b, Quantity_TOC_sRGB);
            std::cout << "colour " << r << " " << g << " " << b << "\n";
        }
        TDF_LabelSequence placed;
        XCAFDoc_ShapeTool::GetComponents(label, placed);
        for (const TDF_Label& each : placed) {
            TDF_Label part;
            Handle(TDataStd_Name) called;
            if (!XCAFDoc_ShapeTool::GetReferredShape(each, part))
                continue;
            if (part.FindAttribute(TDataStd_Name::GetID(), called))
                std::cout << "part " << TCollection_AsciiString(called->Get()).ToCString() << "\n";
            Quantity_Color paint;
            const TopoDS_Shape piece = XCAFDoc_ShapeTool::GetShape(part);
            if (colours->GetColor(piece, XCAFDoc_ColorSurf, paint) ||
                colours->GetColor(piece, XCAFDoc_ColorGen, paint)) {
                double r = 0, g = 0, b = 0;
                paint.Values(r, g, b, Quantity_TOC_sRGB);
                std::cout << "partcolour " << r << " " << g << " " << b << "\n";
            }
        }
        std::cout << "sound " << BRepCheck_Analyzer(shape).IsValid() << "\n";
        for (TopExp_Explorer each(shape, TopAbs_SOLID); each.More(); each.Next())
            std::cout << "solid 1\n";
        for (TopExp_Explorer each(shape, TopAbs_FACE); each.More(); each.Next()) {
            const BRepAdaptor_Surface surface(TopoDS::Face(each.Current()));
            if (surface.GetType() == GeomAbs_Cylinder) {
                const gp_Pnt axis = surface.Cylinder().Location();
                std::cout << "cylinder " << axis.X() << " " << axis.Y() << " " << surface.Cylinder().Radius()
                          << "\n";
            } else {
                std::cout << (surface.GetType() == GeomAbs_Plane ? "plane 1\n" : "other 1\n");
            }
        }
        GProp_GProps properties;
        BRepGProp::VolumeProperties(shape, properties, 1e-10);
        std::cout << "volume " << properties.Mass() << "\n";
        Bnd_Box box;
        BRepBndLib::AddOptimal(shape, box, Standard_False, Standard_False);
        double x0 = 0, y0 = 0, z0 = 0, x1 = 0, y1 = 0, z1 = 0;
        box.Get(x0, y0, z0, x1, y1, z1);
        std::cout << "box " << x0 << " " << y0 << " " << z0 << " " << x1 << " " << y1 << " " << z1 << "\n";
    }
    return 0;
}
