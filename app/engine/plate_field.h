#pragma once

#include "app/engine/model_cache.h"
#include "app/engine/report.h"
#include "core/plate/bearing.h"
#include "core/plate/elastic.h"
#include "core/plate/free_edge.h"
#include "core/plate/plastic.h"
#include "core/plate/pressure.h"
#include "core/plate/recovery.h"
#include "core/plate/trust.h"
#include "geometry/mesh/mesher.h"

#include <functional>

namespace pw::engine {

/// A plate and what presses on it. mm, N, MPa; one loose plate of a stack (its share of the load).
struct PlateTask {
    shape::Region region;
    std::vector<plate::PressureRing> stations; ///< lifting, force of each
    plate::PressureRing bearing;               ///< the ring the nut presses on; its force follows
    plate::Section section;
    bool hardContact = false; ///< a rigid flat washer instead of an even pressure
};

/// How finely to work.
struct FieldOptions {
    double settledPercent = 2; ///< the peak has settled when a finer mesh moves it by less
    int mostLevels = 4;
    int mostTriangles = 20000;
    std::function<bool(double)> progress; ///< 0..1; false stops (plate_field then throws Stopped)
    std::shared_ptr<ModelCache> models;   ///< meshes to share with other solutions; none: no sharing
};

/// A corner of the outline that points into the steel, where the elastic stress has no end. The peak is
/// looked for outside its neighbourhood: as far as the plate is thick, but never so far that another edge's
/// own peak is lost.
struct SharpCorner {
    shape::Point at;
    double room = 0; ///< mm to the nearest other edge
};

/// The elastic field of the finest mesh, and how far the meshes agreed.
struct PlateField {
    std::shared_ptr<const plate::PlateModel> model;
    Eigen::VectorXd forces; ///< on w, a value a node; balanced
    plate::ElasticSolution elastic;
    Eigen::VectorXd deflection;      ///< from the centre bearing's plane, mm
    plate::RecoveredMoments moments; ///< free edges put in
    std::vector<plate::EdgeMoment> edges;
    double peakStress = 0; ///< von Mises on the face, MPa
    int peakNode = 0;
    /// Two readings of the peak: smoothed from inside the triangles against along the free edge.
    double readingsPercent = 0;
    double errorPercent = 0; ///< how far the last mesh moved the peak
    bool settled = false;
    int levels = 0;
    std::vector<SharpCorner> sharpCorners;
    plate::Reaction reaction; ///< of the centre bearing
    plate::Trust trust;
};

/// Meshes, solves and refines until the peak has settled.
util::Result<PlateField> solvePlateField(const PlateTask& task, const FieldOptions& options = {});

/// The bending past yield of the same plate on a mesh of its own, coarser than the elastic one needs.
struct PlateSet {
    plate::PlasticPath path;
    Found<double> setMm, setAtProofMm; ///< largest residual deflection from the centre-bearing plane
};
/// `times`: the set is that of this many times the load (hammering), and of 1.25 times that.
util::Result<PlateSet> solvePlateSet(const PlateTask& task, double yield, double times = 1,
                                     const FieldOptions& options = {});

/// Folding alone, on the mesh of solvePlateSet.
util::Result<plate::PlasticPath> followToCollapse(const PlateTask& task, double yield,
                                                  const FieldOptions& options = {});

/// Fineness where a verdict asks for 1.5 and 1.1 times, not for per cents.
inline constexpr double kCoarse = 1.3;

/// Folding alone, no set, on a coarse mesh; stops once `enough` times the load is carried.
util::Result<plate::PlasticPath> solveFolding(const PlateTask& task, double yield, double enough,
                                              const FieldOptions& options = {});

/// The stations' forces and the centre's answer on a mesh.
struct Loaded {
    Eigen::VectorXd forces; ///< balanced
    plate::Reaction reaction;
};
util::Result<Loaded> loadOn(const plate::Mesh& mesh, const plate::Sector& sector, const PlateTask& task);

/// A first mesh of the sector that plate and load allow; `fineness` 1 is the elastic field's, more is
/// coarser.
util::Result<ModelCache::Model> firstModel(const PlateTask& task, double fineness,
                                           const FieldOptions& options);

/// That mesh alone, without what solving needs.
util::Result<plate::Mesh> firstMesh(const shape::Region& region, const plate::Sector& sector, double fineness,
                                    int mostTriangles);

std::vector<SharpCorner> sharpInsideCorners(const shape::Region& region);

} // namespace pw::engine
