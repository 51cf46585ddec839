#pragma once

#include "core/shape/loop.h"
#include "core/units/format.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

/// What the user told us about one tool for one task, typed and checked figure by figure. Nothing derived is
/// here. Keys of the job file have the same names in snake_case. A figure that was left out is empty, never
/// 0.
namespace pw::job {

using units::Angle;
using units::Area;
using units::Force;
using units::Length;
using units::Range;
using units::Rate;
using units::Stress;
using units::Temperature;

template<class T>
using Given = std::optional<T>;

enum class Work { Compress, Pull };

struct PointXY {
    Length x, y;
    bool operator==(const PointXY&) const = default;
};

enum class HoleShape { Round, Slot, Open };

/// Shape of a hole other than a plain round one. For Slot: length is end to end, turn from the ray through
/// the station (or from x for extra holes). For Open: the slot runs out to the rim along that direction.
struct HoleForm {
    HoleShape shape = HoleShape::Round;
    Given<Length> length, width;
    Given<Angle> turn;
    bool operator==(const HoleForm&) const = default;
};

/// Calipers over two pins (outside to outside) or between them. Pins are counted from 1, turning left.
struct PinReading {
    int first = 1, second = 2;
    Given<Length> over, between;
    bool operator==(const PinReading&) const = default;
};

struct Stations {
    Given<int> count;
    Given<Length> circle; ///< diameter
    Given<Angle> start;
    std::vector<PointXY> at; ///< replaces count, circle, start
    Given<Length> accessHole;
    HoleForm hole;
    Given<Length> land, retainer, keeper, pin, pinEnd;
    std::vector<bool> loaded;
    std::vector<PinReading> readings; ///< what `circle` or `at` was found from; nothing is worked out of it
    bool operator==(const Stations&) const = default;
};

struct Load {
    Given<Range<Force>> total;
    std::vector<double> share;
    bool operator==(const Load&) const = default;
};

struct SpringReading {
    Length length;
    Range<Force> force;
    bool operator==(const SpringReading&) const = default;
};

struct Spring {
    std::string name;
    Given<int> perStation;
    Given<Length> assembledLength;
    std::vector<SpringReading> loads;
    Given<Rate> rate;
    Given<Length> freeLength, solidLength, wire, coilOutside;
    Given<double> activeCoils, totalCoils;
    std::string ends;           ///< "closed ground", "closed", "plain ground", "plain", or empty
    Given<Stress> shearModulus; ///< key "G"
    Given<std::string> wireMaterial;
    bool operator==(const Spring&) const = default;
};

struct Travel {
    Given<Length> compressFurther, swell;
    bool operator==(const Travel&) const = default;
};

/// A grade by name, or figures of the user's own.
struct Material {
    std::string name;
    Given<Stress> yield, ultimate, E;
    Given<double> nu;
    Given<double> density;   ///< kg/m3
    Given<double> expansion; ///< per K
    bool operator==(const Material&) const = default;
};

enum class OutlineShape { Disc, Bar, Rectangle, Polygon };

struct Outline {
    OutlineShape shape = OutlineShape::Disc;
    Given<Length> diameter, length, width, corner;
    bool roundEnds = false;
    std::vector<shape::Vertex> points; ///< polygon, mm, plate coordinates
    bool operator==(const Outline&) const = default;
};

struct ExtraHole {
    PointXY at;
    Given<Length> diameter;
    HoleForm form;
    bool drilled = false; ///< even where it is wide enough to burn
    bool operator==(const ExtraHole&) const = default;
};

enum class FileTest { NotTried, Bites, Skates };
enum class BendTest { NotTried, Bent, Snapped };
enum class CrackTest { NotTried, None, Seen };

struct ShopTests {
    FileTest file = FileTest::NotTried;
    BendTest bend = BendTest::NotTried;
    CrackTest cracks = CrackTest::NotTried;
    bool operator==(const ShopTests&) const = default;
};

struct Plate {
    Given<Outline> outline;
    Given<Length> thickness;
    Given<int> stacked;
    Given<Length> bore;
    std::string boreThread; ///< as typed, already checked; replaces bore
    std::vector<ExtraHole> holes;
    Given<Material> steel;
    ShopTests tests;
    bool operator==(const Plate&) const = default;
};

enum class Contact { Uniform, Hard };

struct Centre {
    Given<Length> bearingOutside, bearingInside;
    Contact contact = Contact::Uniform;
    bool operator==(const Centre&) const = default;
};

enum class Turns { Nut, Screw };
enum class Into { Shaft, Bar, Plate, Nut };
enum class ThreadCondition { Good, Worn, Rusty, Damaged };
enum class Lubrication { Dry, Oiled, Moly };

struct Screw {
    std::string thread; ///< as typed, already checked
    std::string grade, nutGrade;
    Given<Turns> turns;
    Given<Into> into;
    Given<Material> intoMaterial;
    Given<ThreadCondition> threadCondition;
    Given<Length> engagement, standoff, usableLength, freeLength, nutHeight, washerOutside, washerThickness,
        pointDiameter;
    Given<Length>
        threadLength; ///< from the free tip back to the plain shank; threaded all the way when absent
    Given<Lubrication> lubrication;
    Given<Range<double>> threadFriction, collarFriction;
    Given<Length> wrench;
    Given<Force> handPull;
    bool hammering = false;
    bool operator==(const Screw&) const = default;
};

struct Ram {
    Given<Force> capacity;
    Given<Area> area;
    Given<Stress> maxPressure;
    std::string rod, rodGrade;
    Given<Length> stroke;
    bool operator==(const Ram&) const = default;
};

enum class BackKind { Shaft, Bar, Block, StopBolt, None };

struct Back {
    BackKind kind = BackKind::Shaft;
    Given<Length> span, width, thickness;
    Given<Material> steel;
    /// Of a stop bolt in the shaft's end; `pad` is the head or pad across, where it seats on the shaft's
    /// face.
    std::string thread, grade;
    Given<Length> engagement, pad;
    bool operator==(const Back&) const = default;
};

enum class Fit { Straight, Taper, RustOnly };

struct Bolts {
    Given<int> count;
    std::string thread, grade;
    Given<Length> engagement;
    Given<ThreadCondition> threadCondition;
    bool operator==(const Bolts&) const = default;
};

struct Flange {
    Given<Length> outside, root, thickness;
    Given<Material> material;
    bool operator==(const Flange&) const = default;
};

struct Jaws {
    Given<int> count;
    Given<Length> width, overlap;
    bool operator==(const Jaws&) const = default;
};

struct Hub {
    Fit fit = Fit::Straight;
    Given<Length> shaft, shaftBore, length, outside;
    Given<Range<Length>> interference;
    Given<Angle> halfAngle;
    Given<Length> draw;
    Given<Material> hubMaterial, shaftMaterial;
    Given<Range<double>> friction;
    Given<double> rust;
    Given<Range<Force>> force; ///< `rust only`: the stated guess
    Given<Bolts> bolts;
    Given<Flange> flange;
    Given<Jaws> jaws;
    bool operator==(const Hub&) const = default;
};

struct Legs {
    Given<int> count;
    Given<Length> span, length;
    std::string thread, grade;
    bool operator==(const Legs&) const = default;
};

struct Heat {
    Given<Temperature> part, tool;
    bool operator==(const Heat&) const = default;
};

struct Obstacle {
    PointXY at;
    Length diameter;
    std::string note;
    bool operator==(const Obstacle&) const = default;
};

enum class Process { PlasmaTable, TorchTable, HandTorch, SawAndDrill, Milled };

/// The piece on the rack that the plate is to come from, and where on it the plate lies: its origin and x axis
/// in the piece's own coordinates, turned counter-clockwise.
struct PieceChoice {
    std::string name;
    Given<PointXY> at;
    Given<Angle> turn;
    bool operator==(const PieceChoice&) const = default;
};

struct Cutting {
    Given<Process> process;
    Given<Length> kerf, layoutError, growth;
    Given<Length> edgeMargin; ///< steel left between the cut and the piece's edge, holes and bad areas
    bool operator==(const Cutting&) const = default;
};

struct Wanted {
    Given<double> margin;
    Given<Length> setLimit;
    Given<Force> stamp;
    bool operator==(const Wanted&) const = default;
};

struct Job {
    std::string title, notes;
    Given<Work> work;
    Stations stations;
    Load load;
    std::vector<Spring> springs;
    Travel travel;
    Plate plate;
    Centre centre;
    Given<Screw> screw;
    Given<Ram> ram;
    Given<Back> back;
    Given<Hub> hub;
    Given<Legs> legs;
    Heat heat;
    std::vector<Obstacle> keepClear;
    std::string rack; ///< the rack file, beside the job unless it says where
    Given<PieceChoice> piece;
    Cutting cutting;
    Wanted wanted;
    /// The units the figures were mostly typed in; decides which units answers lead with.
    units::System preferred = units::System::Metric;
    bool operator==(const Job&) const = default;
};

} // namespace pw::job
