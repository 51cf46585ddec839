#pragma once

#include "app/engine/check.h"
#include "app/engine/ladder.h"
#include "core/jobfile/tree.h"
#include "core/rack/read_rack.h"
#include "geometry/placement/fit.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

/// Which piece on the rack will do: fit and full verdict of each, best first.
namespace pw::engine {

/// What counts where two pieces have the same verdict.
enum class Prefer { LeastWaste, Lightest, ThickestMargin, QuickestCut };
std::string_view wordOf(Prefer prefer); ///< "least-waste", "lightest", "thickest-margin", "quickest-cut"
Found<Prefer> preferFrom(std::string_view word);

struct RackOptions {
    Prefer prefer = Prefer::LeastWaste;
    /// Called now and then, from any thread, with 0..1 and what is being done; false stops the work, and
    /// rankRack() throws Stopped.
    std::function<bool(double, std::string_view)> progress;
    std::size_t best = 40; ///< so many of the first get the best place that can be found, the rest a good one
};

/// One kind of piece and what it would do for the job. Everything to draw it stands here.
struct PieceAnswer {
    std::size_t row = 0; ///< of `offcuts` in the rack file
    std::string name, where, note;
    bool owned = true;
    int count = 1;
    units::Length thickness; ///< counted on: thinnest place less pits
    std::string steel;       ///< as judged
    placement::Stock stock;
    double areaMm2 = 0;

    bool fits = false;
    Found<placement::Placement> place;        ///< of the first plate
    std::vector<placement::Placement> others; ///< of the rest of a stack, as far as they come from this piece
    placement::Spacing spacing;
    std::string shortOf; ///< what keeps it from being used as it is: "4 mm too narrow", "holds if ..."
    std::vector<std::string> remarks; ///< mended figures, a guessed steel, a hole that serves as bore

    verdict::Grade grade = verdict::Grade::Incomplete; ///< of the tool made from it, once it fits
    Found<double> margin;                              ///< least margin over wanted
    std::string weakest, reason;
    Found<double> massKg, cutMinutes;
};

struct RackAnswer {
    std::vector<PieceAnswer> pieces;   ///< best first
    std::string best;                  ///< name of the first, if the tool may be made from it
    std::vector<rack::Remark> refused; ///< pieces with wrong figures, left out
    std::vector<Missing> missing;      ///< of the job: without these nothing can be laid on a piece
    util::Problems problems;           ///< of the job's plate
    shape::Region plate;               ///< what was laid on the pieces, for drawing
    Prefer prefer = Prefer::LeastWaste;
    units::System preferred = units::System::Metric;
};

/// Every piece of the rack against the job, in two threads. Those that fit are checked whole in their own
/// thickness and steel; pieces of one thickness and steel share the check. Order: what is owned and may be
/// used, what may be bought, what would not hold, what does not fit; within these by verdict, then by
/// preference.
RackAnswer rankRack(const job::Job& job, const rack::RackReading& rack, const RackOptions& options = {});

/// The job with its plate from this piece: thickness, steel, tests, and the bore that the piece brings.
job::Job jobOnPiece(const job::Job& job, const rack::Offcut& offcut,
                    const placement::Placement* place = nullptr);

/// The changes to a job file that make the job's plate come from this piece where the answer puts it; null:
/// the field goes. What else stands beside those fields stays.
std::vector<std::pair<std::string, jobfile::Tree>> changesFor(const PieceAnswer& answer,
                                                              const rack::Offcut& offcut);

/// The rack once plates are cut from a piece.
struct Cutting {
    jobfile::Tree rack; ///< one piece fewer of its kind, and what is left of it in the list behind
    std::vector<std::string> rests; ///< names of what is left, largest first; none: nothing usable
    std::vector<std::string> words; ///< what was left out of it, sentences
    double cutMm2 = 0;              ///< plates with their kerf
    double droppedMm2 = 0;          ///< webs too thin to count, and crumbs
};

/// All plates of the answer cut in one step; the rack given stays as it is, so that the step can be undone.
/// Where they leave the piece in one it keeps its outline and has the plates' places as holes. Steel between
/// a cut and an edge that is thinner than the spacing that would be kept there is not counted; where that
/// opens a way across, the piece falls into parts, each a row of its own. What no disc of the usable width
/// goes into is dropped. What is left keeps thickness, steel and place.
Cutting cutFrom(const jobfile::Tree& rack, const rack::Offcut& offcut, const shape::Region& plate,
                const PieceAnswer& answer);

/// The rack of cutFrom().
jobfile::Tree afterCutting(const jobfile::Tree& rack, const rack::Offcut& offcut, const shape::Region& plate,
                           const PieceAnswer& answer);

/// The piece that the job names and where the plate lies on it; for drawing under the plan.
struct PieceUnder {
    std::string name;
    placement::Stock stock; ///< in plate coordinates: the plate stays where it is, the piece is laid under it
    bool fits = false;
    std::string trouble; ///< why it does not
};
Found<PieceUnder> pieceUnder(const job::Job& job, const rack::RackReading& rack);

/// Adds the check `stock.fit` to a report: a plate that does not lie on its piece cannot be cut.
void addStockFit(Report& report, const PieceUnder& under);

/// Marks the rungs of a ladder of which there is a piece: as thick as rolled plate of that thickness may be
/// (0.5 mm either way: EN 10029 class B allows so much and more, from memory), owned, whatever its size.
void markOnRack(Ladder& ladder, const rack::RackReading& rack);

/// Where the job's `rack` points, beside the job file. Before it is read, rackToRead() is asked
/// (rack_place.h).
std::filesystem::path rackFileOf(const job::Job& job, const std::filesystem::path& jobFile);

/// An area as a mechanic sees it before him, the square piece that has as much: "276 x 276 mm". How much it
/// is, not what shape it has.
std::string asPiece(double mm2, units::System system);

/// As `rack --json` prints it.
jobfile::Tree toTree(const RackAnswer& answer);
std::string toWords(const RackAnswer& answer);

} // namespace pw::engine
