#include "core/jobfile/read.h"

#include "core/jobfile/sections.h"
#include "core/jobfile/version.h"
#include "core/util/say.h"

namespace pw::jobfile {

namespace {

constexpr std::size_t kMostSprings = 20;

constexpr Word<job::Work> kWorks[] = {{"compress", job::Work::Compress}, {"pull", job::Work::Pull}};

/// Shares are listed apart from the stations, so their number can only be compared here.
void compareSharesWithStations(FieldReader& figures, job::Job& job) {
    const auto& stations = job.stations;
    const std::size_t count = !stations.at.empty() ? stations.at.size()
                              : stations.count     ? static_cast<std::size_t>(*stations.count)
                                                   : job.load.share.size();
    if (job.load.share.empty() || job.load.share.size() == count)
        return;
    figures.problem("load.share", say("has %1 entries for %2 stations; one is needed for each",
                                      {job.load.share.size(), count}));
    job.load.share.clear();
}

/// A screw cannot sit deeper in a thread than the thread is long.
void compareEngagementWithHole(FieldReader& figures, const job::Job& job) {
    if (!job.screw || !job.screw->engagement)
        return;
    const job::Screw& screw = *job.screw;
    const job::Into into =
        screw.into.value_or(job.plate.boreThread.empty() ? job::Into::Shaft : job::Into::Plate);
    std::optional<units::Length> hole;
    std::string field;
    if (into == job::Into::Plate)
        hole = job.plate.thickness, field = "plate.thickness";
    else if (into == job::Into::Nut)
        hole = screw.nutHeight, field = "screw.nut_height";
    else if (into == job::Into::Bar && job.back)
        hole = job.back->thickness, field = "back.thickness";
    const double slack = 0.01; // mm, rounding between units
    if (hole && screw.engagement->mm() > hole->mm() + slack)
        figures.problem("screw.engagement",
                        say("is more than \"%1\": the thread ends there; give the smaller", {field}));
}

void readAll(FieldReader& figures, job::Job& job) {
    figures.acceptKey("platewright");
    figures.text("title", job.title);
    figures.text("notes", job.notes, kLongestNotes);
    figures.choice("work", job.work, kWorks);
    figures.part("stations", job.stations, readStations);
    figures.part("load", job.load, readLoad);
    figures.rows("springs", job.springs, kMostSprings, readSpring);
    figures.part("travel", job.travel, readTravel);
    figures.part("plate", job.plate, readPlate);
    figures.part("centre", job.centre, readCentre);
    figures.part("screw", job.screw, readScrew);
    figures.part("ram", job.ram, readRam);
    figures.part("back", job.back, readBack);
    figures.part("hub", job.hub, readHub);
    figures.part("legs", job.legs, readLegs);
    figures.part("heat", job.heat, readHeat);
    figures.rows("keep_clear", job.keepClear, kMostHoles, readObstacle);
    figures.text("rack", job.rack);
    figures.part("piece", job.piece, readPiece);
    figures.part("cutting", job.cutting, readCutting);
    figures.part("wanted", job.wanted, readWanted);
    compareSharesWithStations(figures, job);
    compareEngagementWithHole(figures, job);
}

} // namespace

Reading readJob(const Tree& tree) {
    Reading reading;
    if (auto trouble = versionTrouble(tree))
        reading.problems.push_back(std::move(*trouble));
    if (!tree.members())
        return reading;
    Findings findings;
    FieldReader figures(&tree, "", findings);
    readAll(figures, reading.job);
    figures.close();
    reading.job.preferred =
        findings.inchFigures > findings.metricFigures ? units::System::Inch : units::System::Metric;
    reading.problems.insert(reading.problems.end(), findings.problems.begin(), findings.problems.end());
    reading.unknownKeys = std::move(findings.unknownKeys);
    reading.suggestions = std::move(findings.suggestions);
    return reading;
}

} // namespace pw::jobfile
