#include "tests/app/gui/support/fake_engine.h"

#include "core/job/station_places.h"
#include "core/material/stock.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/build.h"
#include "geometry/outline/tagged_region.h"

#include <algorithm>
#include <cmath>

namespace pw::testing {

namespace {

using verdict::Check;
using verdict::CheckKind;
using verdict::Grade;

Check force(const char* id, const char* title, double demand, double capacity, double wanted, Grade grade,
            std::vector<shape::Point> where = {}) {
    Check c;
    c.id = id;
    c.member = "plate";
    c.title = title;
    c.kind = CheckKind::Force;
    c.grade = grade;
    c.demand = demand;
    c.capacity = capacity;
    c.unit = "N";
    c.margin = capacity / demand;
    c.wanted = wanted;
    c.basis =
        "Folds at " + std::to_string(static_cast<int>(capacity)) + " N along a ring through the stations.";
    c.source = "Made up for trying the window, no published source";
    c.where = std::move(where);
    return c;
}

Check fit(const char* id, const char* title, double margin, double wanted, Grade grade) {
    Check c;
    c.id = id;
    c.member = "plate";
    c.title = title;
    c.kind = CheckKind::Fit;
    c.grade = grade;
    c.unit = "mm";
    c.margin = margin;
    c.wanted = wanted;
    c.basis = "What is left when hole and land are as far off as the process allows.";
    c.source = "common practice, no published source";
    return c;
}

std::shared_ptr<const engine::Picture> picture(const job::Job& job, const shape::Region& region,
                                               double worst) {
    const double t = job.plate.thickness->mm();
    auto mesh = mesh::makeMesh(outline::tagged(region), {.far = 8, .nearBore = 3, .nearAccess = 3});
    if (!mesh)
        return nullptr;
    auto p = std::make_shared<engine::Picture>();
    p->mesh = std::move(*mesh);
    const auto stations = job::stationCentres(job.stations);
    const double bore = job.plate.bore->mm() / 2;
    p->vonMises.resize(p->mesh.nodeCount());
    p->deflection.resize(p->mesh.nodeCount());
    for (Eigen::Index i = 0; i < p->mesh.nodeCount(); ++i) {
        const shape::Point at{p->mesh.nodes(0, i), p->mesh.nodes(1, i)};
        const double r = std::max(shape::norm(at), bore);
        double value = std::pow(bore / r, 0.9);
        for (const auto& s : stations)
            value += 0.16 * std::exp(-std::pow(shape::distance(at, s) / 14, 2));
        p->vonMises[i] = worst * value / 1.05;
        p->deflection[i] = -0.4 * std::pow((r - bore) / 70, 1.5) * std::pow(10 / t, 3);
    }
    return p;
}

void need(engine::Report& report, bool there, const char* field, const char* how) {
    if (!there)
        report.missing.push_back({field, how});
}

} // namespace

engine::Report fakeCheck(const job::Job& job, const engine::CheckOptions&) {
    engine::Report r;
    r.title = job.title;
    r.preferred = job.preferred;
    const auto& s = job.stations;
    need(r, s.circle.has_value() || !s.at.empty(), "stations.circle",
         "Needed: the pin circle. Measure over two opposite pins, then take off one pin.");
    need(r, s.accessHole.has_value(), "stations.access_hole",
         "Needed: the access hole. The keeper's width and 3 mm more.");
    need(r, job.plate.thickness.has_value(), "plate.thickness",
         "Needed: the plate's thickness. Measure clear of the burnt edge.");
    need(r, job.plate.bore.has_value(), "plate.bore",
         "Needed: the bore. The screw's size and half a millimetre.");
    if (!job.plate.outline ||
        (job.plate.outline->shape == job::OutlineShape::Disc && !job.plate.outline->diameter))
        need(r, false, "plate.outline.diameter", "Needed: how far across the disc is.");
    r.cautions = {"170 J is stored in the springs.", "Stand out of line, glasses on, chain it.",
                  "Prove it once on solid packing: 44 N·m, dial 0.15 mm, and 0.00 when slack."};
    if (!r.missing.empty()) {
        r.reason = r.missing.front().how;
        r.cautions.clear();
        return r;
    }
    const auto built = outline::buildRegion(job);
    if (!built.ok()) {
        r.problems = built.problems;
        r.reason = built.problems.empty() ? "The plate is not whole." : built.problems.front().message;
        return r;
    }
    r.region = std::make_shared<const shape::Region>(built.region);
    r.stations = job::stationCentres(s);
    const double t = job.plate.thickness->mm(), k = std::pow(t / 10, 2);
    r.grade = t >= 10 ? Grade::Holds : t >= 8 ? Grade::Thin : t >= 5 ? Grade::Sets : Grade::Breaks;
    r.reason = t >= 10  ? "The plate stays flat at full spring load. First to give: the plate, at its bore."
               : t >= 8 ? "Nothing yields to see, but the plate has less margin than you want."
               : t >= 5 ? "6 mm bends for good: 0.37 mm of set at full spring load, starting at the bore."
                        : "The plate folds along the ring of holes before the springs are down.";
    const Grade g = r.grade;
    const shape::Point bore{job.plate.bore->mm() / 2, 0};
    r.checks = {force("plate.collapse", "Plate, folding", 7500, 24000 * k, 3, g, {bore}),
                force("plate.hung_station", "One pin hung", 7500, 15000 * k, 1.5, g, {r.stations.front()}),
                force("back.bending", "Backing bar", 7500, 21800, 2, Grade::Holds),
                force("screw.stress", "Screw", 7500, 30000, 2, Grade::Holds),
                force("thread.shaft", "Thread in the shaft", 7500, 38000, 2, Grade::Holds),
                fit("access.keeper", "Room for keeper", 6, 3, Grade::Holds),
                fit("plate.ligament", "Steel to the rim", 15, 5, Grade::Holds),
                fit("land.width", "Land left", 4.1, 1, Grade::Holds),
                fit("load.coil_bind", "Coils apart", 15, 3, Grade::Holds),
                force("thread.nut", "Thread in the nut", 7500, 61000, 2, Grade::Holds),
                force("centre.washer", "Washer dishing", 7500, 44000, 2, Grade::Holds)};
    Check unknown;
    unknown.id = "travel.thread";
    unknown.title = "Thread left";
    unknown.grade = Grade::Incomplete;
    unknown.kind = CheckKind::Fit;
    unknown.unit = "mm";
    unknown.basis = "Needs the screw's usable length.";
    r.checks.push_back(unknown);
    r.weakest = "plate.collapse";
    const double worst = 150 / k;
    r.load.total = units::Range<units::Force>{units::Force::fromN(6800), units::Force::fromN(7500)};
    r.load.source = "springs";
    r.screw.torque = units::Torque::fromNm(35);
    r.screw.stopTorque = units::Torque::fromNm(44 * k);
    r.screw.ratedLoad = units::Force::fromN(9400 * k);
    r.plate.field.emplace();
    r.plate.field->peakStressMpa = worst;
    r.plate.field->peakAt = shape::polar(job.plate.bore->mm() / 2, 1.1);
    r.plate.field->peakPlace = "at the bore edge";
    r.plate.firstYieldFactor = 205 / worst;
    r.plate.collapseFactor = 3.2 * k;
    r.plate.setMm = g == Grade::Sets || g == Grade::Breaks ? 0.37 : 0.0;
    r.plate.massKg = 0.18 * t;
    // Straight to first yield, then ever flatter until it folds.
    const double yields = std::min(205 / worst, 3.0 * k), bend = 0.3 / std::pow(t / 10, 3);
    for (const double share : {0.0, yields / (3.2 * k), 0.8, 0.95, 1.0})
        if (r.plate.curve.empty() || 3.2 * k * share > r.plate.curve.back().factor)
            r.plate.curve.push_back(
                {3.2 * k * share, 3.2 * k * share * bend * (1 + 3 * share * share * share)});
    if (g != Grade::Holds)
        r.changes.push_back(
            {"plate.collapse", "Use 10 mm. Then it holds. 0.7 kg heavier.", "plate.thickness", "10 mm"});
    r.picture = picture(job, built.region, worst);
    return r;
}

engine::Ladder fakeLadder(const job::Job& job, const engine::CheckOptions& options) {
    engine::Ladder ladder;
    for (const auto& stock : material::stockThicknesses(job.preferred)) {
        job::Job other = job;
        other.plate.thickness = stock.thickness;
        const engine::Report report = fakeCheck(other, options);
        engine::Rung rung;
        rung.label = stock.label;
        rung.thickness = stock.thickness;
        rung.grade = report.grade;
        if (const auto* weakest = report.find(report.weakest)) {
            rung.weakest = weakest->id;
            rung.weakestTitle = weakest->title;
            rung.marginOverWanted = weakest->marginOverWanted();
        }
        rung.setMm = report.plate.setMm;
        rung.massKg = report.plate.massKg;
        if (ladder.thinnestThatHolds.empty() && rung.grade == verdict::Grade::Holds)
            ladder.thinnestThatHolds = rung.label;
        ladder.rungs.push_back(rung);
    }
    return ladder;
}

jobfile::Tree eightPinJob() {
    jobfile::Tree t = jobfile::Tree::object();
    t.set("platewright", 1);
    t.set("title", "Clutch pack, 8 pins");
    t.set("work", "compress");
    t.set("stations.count", 8);
    t.set("stations.circle", "130 mm");
    t.set("stations.access_hole", "20 mm");
    t.set("stations.keeper", "14 mm");
    t.set("stations.retainer", "30 mm");
    t.set("stations.pin", "8 mm");
    jobfile::Tree spring = jobfile::Tree::object();
    spring.set("name", "outer");
    spring.set("assembled_length", "42 mm");
    spring.set("loads[0].length", "42 mm");
    spring.set("loads[0].force", "790-870 N");
    spring.set("rate", "21 N/mm");
    t.set("springs[0]", spring);
    t.set("travel.compress_further", "3 mm");
    t.set("plate.outline.shape", "disc");
    t.set("plate.outline.diameter", "180 mm");
    t.set("plate.thickness", "10 mm");
    t.set("plate.bore", "26 mm");
    t.set("plate.steel", "unknown scrap");
    t.set("screw.thread", "M24");
    t.set("screw.grade", "8.8");
    t.set("screw.washer_outside", "44 mm");
    t.set("screw.lubrication", "oiled");
    t.set("back.kind", "bar");
    t.set("back.span", "150 mm");
    t.set("back.width", "60 mm");
    t.set("back.thickness", "25 mm");
    t.set("cutting.process", "plasma table");
    t.set("cutting.layout_error", "0.5 mm");
    t.set("wanted.margin", 2);
    return t;
}

} // namespace pw::testing
