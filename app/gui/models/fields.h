#pragma once

#include "core/job/job.h"
#include "core/jobfile/tree.h"

#include <functional>
#include <QString>
#include <string>
#include <utility>
#include <vector>

/// The questions of a job as plain data: which there are, in which order, how they are asked and measured.
namespace pw::gui {

enum class FieldKind {
    Text,
    Length, ///< one figure or a range
    Force,  ///< one figure or a range
    Rate,
    Stress,
    Area,
    Temperature,
    Angle,
    Count,
    Number,
    NumberRange,
    Thread,
    Flag,      ///< yes or no, kept as true or false
    Choice,    ///< one of the words
    OpenChoice ///< one of the words, or something typed
};

/// The small picture in a measuring card: a scene at the bench, grey steel with one blue size line.
enum class Sketch {
    None,
    OverPins,
    HoleAcross,
    PinAcross,
    Thickness,
    AcrossPlate,
    LooseSpring,
    SpringOnScale,
    SolidSpring,
    Wire,
    ThreadPitch,
    Washer,
    Standoff,
    Bar,
    CutEdge,
    Angle
};

/// A part of the plan that a field can light.
enum class PlanPart {
    None,
    Rim,
    RimLength,
    RimWidth,
    Bore,
    Circle,
    Access,
    Start,
    Land,
    Keeper,
    Pin,
    Bearing,
    Extra,        ///< where an extra hole is
    ExtraSize,    ///< how wide it is
    Corner,       ///< of a polygon
    Station,      ///< one that is placed by itself
    Obstacle,     ///< what stands in the way: where
    ObstacleSize, ///< and how wide
    Piece,        ///< the piece of steel under the plate: where it lies
    PieceTurn,    ///< and how it is turned
};

struct Field {
    std::string path{}; ///< in the job file
    QString label{};
    FieldKind kind = FieldKind::Text;
    QString how{}; ///< how to measure it and how wrong it may be
    Sketch sketch = Sketch::None;
    PlanPart part = PlanPart::None;
    std::size_t index = 0; ///< which of several such parts, counted in the job file
    QString assumed{}; ///< what counts when it is left empty, as it would be typed; shown as an assumption
    bool needed = false;
    bool wide = false;                                   ///< a row of its own
    std::vector<std::pair<QString, QString>> choices{};  ///< value in the file, words
    std::function<bool(const jobfile::Tree&)> applies{}; ///< empty: always
    /// For a figure that is not simply the value at its path: how to find it (null: not given), and how to
    /// put it.
    std::function<jobfile::Tree(const jobfile::Tree&)> get{};
    std::function<void(jobfile::Tree&, const jobfile::Tree&)> put{};
    QString remark{};  ///< what follows for this very figure; under its box
    bool keep = false; ///< half of something: may be changed, not emptied

    bool appliesTo(const jobfile::Tree& tree) const { return !applies || applies(tree); }
    jobfile::Tree valueIn(const jobfile::Tree& tree) const;
    jobfile::Tree with(const jobfile::Tree& tree, const jobfile::Tree& value) const;
};

struct FieldGroup {
    /// "squeezed", "stations", "load", "hub", "grip", "steel", "piece", "holes", "centre", "ram", "back",
    /// "heat", "cutting", "wanted"
    std::string id;
    QString title;
    std::vector<Field> fields;
    bool applies = true; ///< false: not asked in this kind of work
};

/// The groups in the order in which a mechanic meets them. Springs are not in it: see springFields.
std::vector<FieldGroup> fieldGroups(const jobfile::Tree& tree);

/// The figures of spring `index`; readings are "loads[i]" below it.
struct SpringFields {
    std::vector<Field> main;                  ///< what a manual prints
    std::vector<std::vector<Field>> readings; ///< length and force, one pair a reading
    std::vector<Field> more;                  ///< wire and coil, for those who have no force
};
SpringFields springFields(const jobfile::Tree& tree, std::size_t index);

/// Where the load comes from when the tree says so by itself.
enum class LoadSource { Springs, Given };
LoadSource loadSource(const jobfile::Tree& tree);

bool isPull(const jobfile::Tree& tree);
std::string textAt(const jobfile::Tree& tree, std::string_view path);

/// Which group holds a path; "load" for springs. Empty when none does.
std::string groupOf(const jobfile::Tree& tree, const std::string& path);

} // namespace pw::gui
