#include "app/engine/check.h"

#include "app/engine/advice.h"
#include "app/engine/find_loads.h"
#include "app/engine/flange_checks.h"
#include "app/engine/gauge.h"
#include "app/engine/lopsided.h"
#include "app/engine/mend.h"
#include "app/engine/plate_report.h"
#include "core/hub/hub.h"
#include "core/job/assumed.h"
#include "core/job/station_places.h"
#include "core/loadpath/load_path.h"
#include "core/material/hot.h"
#include "core/plate/by_book.h"
#include "core/spring/pack.h"
#include "core/util/require.h"
#include "core/util/say.h"
#include "core/verdict/lopsided_checks.h"
#include "core/verdict/plate_checks.h"
#include "geometry/outline/build.h"
#include "geometry/outline/clearance.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace pw::engine {

namespace {

using units::Force;
using units::Length;
using verdict::Check;
using verdict::Grade;

/// Land taken where neither it nor the retainer is given, over the access hole. Common practice, no published
/// source.
constexpr double kLandOverHole = 1.4;

/// A land narrower than this carries nothing worth solving for (no saw or drill is that true), mm and part of
/// its radius.
constexpr double kLeastLand = 0.1, kLeastLandOfRadius = 0.01;

constexpr double kSteelE = 207000; ///< MPa, of screws and legs. Source: Shigley 9th ed. Table A-5.

/// Deflections past this part of the thickness are stiffer in truth than a small-deflection solution says.
constexpr double kMembraneDeflection = 0.5;

std::string nameOf(shape::Part part, int index) {
    switch (part) {
    case shape::Part::Rim:
        return say("the rim");
    case shape::Part::Bore:
        return say("the bore");
    case shape::Part::Access:
        return say("access hole %1", {index + 1});
    case shape::Part::Extra:
        return say("extra hole %1", {index + 1});
    }
    return {};
}

/// The figure of this many digits that is not over `value`, which is more than 0.
double floorTo(double value, int digits) {
    const double step = std::pow(10.0, std::floor(std::log10(value)) - digits + 1);
    return std::floor(value / step * (1 + 1e-12)) * step;
}

/// Begins with a capital and ends with a stop.
std::string asSentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    if (!text.empty() && text.back() != '.')
        text += '.';
    return text;
}

std::vector<loadpath::Ligament> ligamentsOf(const shape::Region& region) {
    std::vector<loadpath::Ligament> named;
    for (const outline::Ligament& l : outline::ligaments(region))
        named.push_back(
            {say("between %1 and %2", {nameOf(l.b, l.ib), nameOf(l.a, l.ia)}), l.width, {l.onA, l.onB}});
    return named;
}

Length tappedBore(const job::Job& job) {
    const auto thread = thread::parse(job.plate.boreThread);
    return thread ? thread::tappingDrill(*thread) : Length();
}

/// One check of a job, step by step; each step reads what the ones before it left in the report.
class Checker {
public:
    /// `tried`: the load taken when nobody states one.
    Checker(const job::Job& job, const CheckOptions& options, Found<Force> tried = std::nullopt)
        : m_job(job), m_options(options),
          m_models(options.models ? options.models : std::make_shared<ModelCache>()), m_tried(tried) {}

    Report run() {
        m_report.title = m_job.title;
        m_report.preferred = m_job.preferred;
        m_assumed = job::assume(m_job);
        append(m_report.assumptions, m_assumed.sentences);
        setUpLoadPath();
        findLoads();
        buildShape();
        bendPlate();
        followLoadPath();
        judge();
        return std::move(m_report);
    }

private:
    static void append(std::vector<std::string>& to, const std::vector<std::string>& from) {
        for (const std::string& line : from)
            if (const std::string said = asSentence(line); std::find(to.begin(), to.end(), said) == to.end())
                to.push_back(said);
    }

    void need(const std::string& field) { need(missingFigure(field)); }
    void need(const Missing& missing) {
        for (const Missing& m : m_report.missing)
            if (m.field == missing.field)
                return;
        m_report.missing.push_back(missing);
    }

    void tell(double part, std::string_view what) {
        if (m_options.progress && !m_options.progress(part, what))
            throw Stopped{};
    }

    void findLoads() {
        m_report.stations = job::stationCentres(m_job.stations);
        if (m_report.stations.empty()) {
            if (m_job.stations.at.empty() && !m_job.stations.count)
                need("stations.count");
            if (m_job.stations.at.empty() && !m_job.stations.circle)
                need("stations.circle");
        }
        m_found = engine::findLoads(m_job, m_setup, m_tried);
        append(m_report.assumptions, m_found.assumptions);
        m_report.problems.insert(m_report.problems.end(), m_found.problems.begin(), m_found.problems.end());
        for (const Missing& missing : m_found.missing)
            need(missing);
        m_report.load = m_found.load;
        m_report.hub = m_found.hub;
        if (!pack().known())
            return;
        m_report.travel.release = pack().releaseTravel;
        m_report.travel.toSolid = pack().clearanceToSolid;
        append(m_report.checks, spring::checkSprings(m_job, pack()));
    }

    const spring::PackLoads& pack() const { return m_found.pack; }

    void buildShape() {
        std::optional<Length> tapped;
        if (!m_job.plate.boreThread.empty())
            tapped = tappedBore(m_job);
        outline::Built built = outline::buildRegion(m_job, tapped);
        for (const util::Problem& p : built.problems)
            m_report.problems.push_back(p);
        const bool tappedForScrew = m_job.screw && m_job.screw->into == job::Into::Plate;
        for (const std::string& field : built.missing)
            need(field == "plate.bore" && tappedForScrew ? "plate.bore_thread" : field);
        m_shapeSound = built.ok();
        if (!built.region.rim.vertices.empty())
            m_report.region = std::make_shared<shape::Region>(std::move(built.region));
        if (!m_job.plate.thickness)
            need("plate.thickness");
        m_report.landOutside = loadpath::landOf(m_job);
        if (m_report.landOutside && !m_assumed.land)
            append(m_report.assumptions, {say("Bolts or legs bear on standard washers, %1 across",
                                              {units::show(*m_report.landOutside, m_job.preferred)})});
        if (!m_report.landOutside && m_job.stations.accessHole) {
            m_report.landOutside = *m_job.stations.accessHole * kLandOverHole;
            append(m_report.assumptions,
                   {say(m_job.work == job::Work::Pull ? PW_SAY("The land is not given: taken as %1 for the "
                                                               "bending. Measure the bolts' washers across.")
                                                      : PW_SAY("The land is not given: taken as %1 for the "
                                                               "bending. Measure the retainer across."),
                        {units::show(*m_report.landOutside, m_job.preferred)})});
        }
        if (!m_report.landOutside && !m_report.stations.empty())
            need("stations.land");
        // A thread that no table has is a problem of its own.
        if (!m_setup.bearing && (!m_job.screw || m_job.screw->thread.empty()))
            need("screw.thread");
    }

    void setUpLoadPath() {
        m_setup = loadpath::setUp(m_job);
        append(m_report.assumptions, m_setup.assumptions);
        append(m_report.problems, m_setup.problems);
        if (m_setup.bearing) {
            append(m_report.assumptions, m_setup.bearing->assumptions);
            m_report.bearingInside = m_setup.bearing->inside;
            m_report.bearingOutside = m_setup.bearing->outside;
        }
    }

    void followLoadPath() {
        const std::vector<loadpath::Ligament> ligaments =
            m_shapeSound ? ligamentsOf(*m_report.region) : std::vector<loadpath::Ligament>{};
        loadpath::FromPlate plate;
        if (m_field)
            plate.screwMoment = units::Torque::fromNmm(m_field->reaction.screwMoment * m_assumed.stacked);
        const loadpath::LoadPath path = loadpath::loadPath(m_job, m_setup, pack(), ligaments, plate);
        append(m_report.assumptions, path.assumptions);
        append(m_report.problems, path.problems);
        append(m_report.checks, path.checks);
        if (m_job.work == job::Work::Pull && pack().known())
            pullFlange();
        m_report.travel.threadLeft = path.threadLeft;
        m_report.travel.threadNeeded = path.threadNeeded;
        m_report.travel.moments = path.moments;
    }

    void pullFlange() {
        FlangeCheckOptions options;
        options.strengthFactor = flangeStrength();
        std::vector<std::string> assumed;
        append(m_report.checks, flangeChecks(m_job, pack().design() * loadpath::hammerFactorOf(m_job),
                                             loadpath::scaleOf(m_job.wanted), assumed, options));
        append(m_report.assumptions, assumed);
    }

    /// What heat leaves of the pulled flange. Grey iron has no factors in a standard and keeps its strength
    /// to about 400 C (common practice, no published source); steel loses by its proportional limit.
    double flangeStrength() const {
        if (!m_job.heat.part || !m_job.hub)
            return 1;
        const auto& given = m_job.hub->flange && m_job.hub->flange->material ? m_job.hub->flange->material
                                                                             : m_job.hub->hubMaterial;
        const auto metal =
            given ? material::resolve(*given) : util::Result<material::Material>(util::Problem{});
        return metal && !metal->brittle ? material::hotFactors(*m_job.heat.part).kp : 1.0;
    }

    static void append(util::Problems& to, const util::Problems& from) {
        for (const util::Problem& problem : from)
            if (std::find(to.begin(), to.end(), problem) == to.end())
                to.push_back(problem);
    }

    static void append(std::vector<Check>& to, const std::vector<Check>& from) {
        to.insert(to.end(), from.begin(), from.end());
    }

    /// The plate as one of the stack's loose plates sees it.
    PlateTask plateTask() const {
        PlateTask task;
        const material::Material& steel = *m_setup.members.plate;
        task.region = *m_report.region;
        task.section = {m_job.plate.thickness->mm(), steel.E.mpa(), steel.nu};
        task.hardContact = m_job.centre.contact == job::Contact::Hard;
        task.bearing = {{0, 0}, m_report.bearingInside->mm() / 2, m_report.bearingOutside->mm() / 2, 0};
        const bool round = m_job.stations.hole.shape == job::HoleShape::Round;
        const double hole = round && m_job.stations.accessHole ? m_job.stations.accessHole->mm() / 2 : 0;
        for (std::size_t i = 0; i < m_report.stations.size(); ++i) {
            const double force = i < pack().perStation.size() ? pack().perStation[i].high.newton() : 0;
            task.stations.push_back(
                {m_report.stations[i], hole, m_report.landOutside->mm() / 2, force / m_assumed.stacked});
        }
        return task;
    }

    double startAngle() const {
        const shape::Point first = m_report.stations.front();
        return std::atan2(first.y, first.x);
    }

    bool canBend() const {
        return m_shapeSound && pack().known() && m_setup.bearing && m_setup.members.plate &&
               m_report.landOutside && m_job.plate.thickness && !m_report.stations.empty() &&
               pack().design().newton() > 0;
    }

    /// What makes the field unsolvable although every figure is there, in words; empty when nothing does.
    std::string obstacle(const PlateTask& task) const {
        for (std::size_t i = 0; i < task.stations.size(); ++i)
            if (task.stations[i].force > 0 &&
                task.stations[i].outside - task.stations[i].inside <=
                    std::max(kLeastLand, kLeastLandOfRadius * task.stations[i].outside))
                return say("no land is left round the access holes");
        double boreRadius = 0;
        for (const shape::Hole& hole : task.region.holes)
            if (hole.part == shape::Part::Bore)
                boreRadius = std::max(boreRadius, shape::bounds(hole.loop).high.x);
        if (task.bearing.outside <= boreRadius || task.bearing.outside <= task.bearing.inside)
            return say("the centre bearing is smaller than the bore: nothing to press on");
        return {};
    }

    void bendPlate() {
        if (m_report.region && m_job.plate.thickness && m_setup.members.plate)
            m_report.plate.massKg = shape::area(*m_report.region) * m_job.plate.thickness->mm() *
                                    m_assumed.stacked * m_setup.members.plate->density * 1e-9;
        m_findings.designLoad = pack().known() ? pack().design().newton() : 0;
        m_findings.span = span();
        if (!m_options.bend || !canBend())
            return;
        const material::Material& steel = *m_setup.members.plate;
        const PlateTask task = plateTask();
        m_obstacle = obstacle(task);
        if (!m_obstacle.empty())
            return;
        if (auto book = plate::byBook(m_job, pack().design(), *m_report.bearingInside,
                                      *m_report.bearingOutside, steel.E, steel.nu))
            m_report.plate.byBook = ByBookReport{
                book->moment, book->stress.mpa(), book->deflection.mm(), book->ligamentEfficiency,
                book->text,   book->source};

        const auto start = std::chrono::steady_clock::now();
        FieldOptions options;
        options.models = m_models;
        options.progress = [&](double part) {
            tell(0.05 + 0.45 * part, say("Bending the plate"));
            return true;
        };
        auto field = solvePlateField(task, options);
        if (!field) {
            m_report.problems.push_back(field.problem());
            return;
        }
        if (const auto doubt = plate::doubtOf(field->trust, m_options.trust)) {
            m_report.problems.push_back(
                {"plate", say("The bending of this plate cannot be worked out well enough for a verdict: %1.",
                              {*doubt})});
            return;
        }
        const double solveMs =
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
        m_report.plate.field = fieldReport(*field, task, startAngle(), solveMs);
        m_report.plate.points = pointReports(*field, task, m_options.at);
        m_report.picture = std::make_shared<Picture>(pictureOf(*field, task));
        m_field = std::make_unique<PlateField>(std::move(*field));
        m_findings.peakStress = m_field->peakStress;
        m_findings.peakPlace = m_report.plate.field->peakPlace;
        m_findings.peakAt = {m_report.plate.field->peakAt};
        m_findings.peakErrorPercent = m_field->errorPercent;
        m_findings.sharpCorner = !m_field->sharpCorners.empty();
        noteField();
        if (!verdict::isBrittle(steel, demands())) {
            m_findings.firstYieldFactor = steel.yield.mpa() / m_field->peakStress;
            m_report.plate.firstYieldFactor = m_findings.firstYieldFactor;
            bendPastYield(task, steel);
            loadUnevenly(task, steel);
        }
        tiltRetainers(task);
        if (m_options.spread)
            for (const Moved& row :
                 whatMovesTheAnswer(*m_field, task, startAngle(), m_setup.bearing->nutFace.mm() / 2))
                m_report.plate.spread.push_back({row.what, row.peakStressMpa, row.deflectionMm});
    }

    /// A hung station and a stuck one.
    void loadUnevenly(const PlateTask& task, const material::Material& steel) {
        FieldOptions options;
        options.models = m_models;
        options.progress = [&](double part) {
            tell(0.8 + 0.2 * part, say("Trying one station hung"));
            return true;
        };
        const auto at = [&](int station) { return m_report.stations[station]; };
        const auto hung = hungStation(task, yieldForCollapse(), options);
        if (hung && *hung) {
            m_report.checks.push_back(verdict::hungStationCheck(m_findings.designLoad, (*hung)->station,
                                                                (*hung)->collapseFactor, (*hung)->reached,
                                                                at((*hung)->station)));
            // A strongback on two legs or bolts tips until both carry; of three one can be left slack.
            const bool canHang = m_job.work != job::Work::Pull || m_report.stations.size() > 2;
            if (auto screw = !canHang
                                 ? std::nullopt
                                 : loadpath::hungScrew(
                                       m_job, m_setup, Force::fromN((*hung)->loadLeft * m_assumed.stacked),
                                       units::Torque::fromNmm((*hung)->screwMoment * m_assumed.stacked),
                                       (*hung)->screwStation, at((*hung)->screwStation)))
                m_report.checks.push_back(std::move(*screw));
            if (m_job.work != job::Work::Pull) // a puller's bolts stay in until it is slack
                m_report.checks.push_back(verdict::tipCheck((*hung)->tipOffset, task.bearing.outside,
                                                            (*hung)->tipStation, at((*hung)->tipStation),
                                                            m_job.preferred));
        }
        if (m_job.work == job::Work::Pull)
            return; // nothing of a puller rusts to its station
        // Where a place has yielded through, a set begins to show.
        const auto stuck = stuckStation(task, 1.5 * steel.yield.mpa(), options);
        if (stuck && *stuck)
            m_report.checks.push_back(verdict::stuckStationCheck((*stuck)->extraForce * m_assumed.stacked,
                                                                 wrenchAdds(), (*stuck)->station,
                                                                 at((*stuck)->station), m_job.preferred));
    }

    /// What the stated wrench and pull can make beyond the design load, at low friction. N.
    std::optional<double> wrenchAdds() const {
        if (!m_setup.torque || !m_job.screw || !m_job.screw->wrench || !m_job.screw->handPull)
            return std::nullopt;
        const Force most =
            loadpath::mostLoadOf(*m_setup.torque, *m_job.screw->handPull * *m_job.screw->wrench);
        return std::max(0.0, (most - pack().design()).newton());
    }

    double yieldForCollapse() const {
        return m_setup.yieldForCollapse.value_or(m_setup.members.plate->yield).mpa();
    }

    void tiltRetainers(const PlateTask& task) {
        if (m_job.work == job::Work::Pull)
            return;
        const Length across = m_job.stations.retainer.value_or(*m_report.landOutside);
        if (const auto tilt = retainerTilt(*m_field, task, across.mm()))
            m_report.checks.push_back(verdict::tiltCheck(tilt->tilt, tilt->station,
                                                         m_report.stations[tilt->station], m_job.preferred));
    }

    void bendPastYield(const PlateTask& task, const material::Material& steel) {
        FieldOptions options;
        options.models = m_models;
        options.progress = [&](double part) {
            tell(0.5 + 0.5 * part, say("Bending it past yield"));
            return true;
        };
        const double hammer = loadpath::hammerFactorOf(m_job);
        auto set = solvePlateSet(task, steel.yield.mpa(), hammer, options);
        if (!set) {
            m_report.problems.push_back(set.problem());
            return;
        }
        if (yieldForCollapse() != steel.yield.mpa()) { // hot: it sets early and folds late
            auto folding = followToCollapse(task, yieldForCollapse(), options);
            if (!folding) {
                m_report.problems.push_back(folding.problem());
                return;
            }
            set->path = std::move(*folding);
        }
        m_findings.followed = true;
        m_findings.collapseFactor = set->path.collapseFactor / hammer;
        m_findings.collapseReached = set->path.collapsed;
        m_findings.unloadingFailed = set->path.unloadingFailed;
        m_findings.set = set->setMm;
        m_findings.setAtProof = set->setAtProofMm;
        m_report.plate.collapseFactor = set->path.collapseFactor;
        m_report.plate.collapseIsLowerBound = !set->path.collapsed;
        m_report.plate.setMm = set->setMm;
        m_report.plate.setAtProofMm = set->setAtProofMm;
        for (const plate::PlasticPath::Point& p : set->path.curve)
            m_report.plate.curve.push_back({p.factor, p.deflection});
    }

    void noteField() {
        const double t = m_job.plate.thickness->mm();
        std::vector<std::string> notes;
        if (m_report.plate.field->deflectionMm &&
            std::abs(*m_report.plate.field->deflectionMm) > kMembraneDeflection * t)
            notes.push_back(say("The plate bends by more than half its thickness; the stiffening that comes "
                                "with that is not counted, which is on the safe side."));
        if (!m_field->settled)
            notes.push_back(say("The worst stress has not settled: the last mesh moved it by %1 %.",
                                {units::number(m_field->errorPercent, 2)}));
        if (!m_field->sharpCorners.empty() && !verdict::isBrittle(*m_setup.members.plate, demands()))
            notes.push_back(say("A sharp inside corner has no finite elastic stress; the plate is judged by "
                                "set and folding there. Round it."));
        const plate::Reaction& centre = m_field->reaction;
        if (centre.screwMoment > 0)
            notes.push_back(say("The load is %1 off the middle, more than the centre bearing can balance by "
                                "pushing; the screw bends with %2.",
                                {units::show(Length::fromMm(centre.offset), m_job.preferred),
                                 units::show(units::Torque::fromNmm(centre.screwMoment * m_assumed.stacked),
                                             m_job.preferred)}));
        if (centre.lifted > 0.01)
            notes.push_back(say("The washer bears on %1 % of its ring; the rest lifts.",
                                {units::number(100 * (1 - centre.lifted), 2)}));
        append(m_report.assumptions, notes);
    }

    /// The largest distance between loaded stations; the plate's own size when there is one or none.
    double span() const {
        double most = 0;
        for (shape::Point a : m_report.stations)
            for (shape::Point b : m_report.stations)
                most = std::max(most, shape::distance(a, b));
        if (most == 0 && m_report.region)
            most = std::max(shape::bounds(m_report.region->rim).width(),
                            shape::bounds(m_report.region->rim).height());
        return most;
    }

    verdict::PlateDemands demands() const {
        verdict::PlateDemands d;
        d.wantedMargin = m_assumed.margin;
        if (m_job.wanted.setLimit)
            d.setLimit = m_job.wanted.setLimit->mm();
        d.loadIsStated = m_found.stated;
        d.hammer = loadpath::hammerFactorOf(m_job);
        d.unknownSteel = m_setup.members.plate && m_setup.members.plate->unknown;
        d.tests = m_job.plate.tests;
        d.system = m_job.preferred;
        return d;
    }

    void judge() {
        if (m_setup.members.plate) {
            std::vector<Check> checks = verdict::checkPlate(m_findings, *m_setup.members.plate, demands());
            if (!m_obstacle.empty())
                for (Check& check : checks)
                    if (check.id == "plate.collapse" || check.id == "plate.set") {
                        check.grade = Grade::Breaks;
                        check.basis = m_obstacle;
                    }
            append(m_report.checks, checks);
        }
        const bool judged =
            std::none_of(m_report.checks.begin(), m_report.checks.end(), [](const Check& check) {
                return check.grade == Grade::Incomplete &&
                       (check.id == "plate.collapse" || check.id == "plate.set");
            });
        if (!judged)
            withholdFigures();
        rate(judged);
        std::stable_sort(m_report.checks.begin(), m_report.checks.end(), weakerFirst);
        const bool answer = m_report.missing.empty() && m_report.problems.empty();
        m_report.grade = answer ? verdict::worst(m_report.checks) : Grade::Incomplete;
        if (const int weakest = verdict::weakestLink(m_report.checks); weakest >= 0 && answer)
            m_report.weakest = m_report.checks[weakest].id;
        m_report.cautions = cautionsFor(m_job, m_report);
        m_report.steps = stepsFor(m_job, m_report, &m_report.lastSteps);
        m_report.reason = reasonFor(m_job, m_report);
    }

    /// What came out of a bending that could not be judged is no figure to go by.
    void withholdFigures() {
        m_report.plate.collapseFactor = m_report.plate.setMm = m_report.plate.setAtProofMm = std::nullopt;
        m_report.plate.curve.clear();
    }

    void rate(bool plateJudged) {
        if (!pack().known())
            return;
        const loadpath::RatedLoadPath rated = loadpath::rate(m_job, pack(), m_setup.torque, m_report.checks);
        append(m_report.checks, rated.checks);
        append(m_report.assumptions, rated.rating.notes);
        if (m_setup.torque) {
            const units::Range<units::Torque> range = loadpath::torqueFor(*m_setup.torque, pack().design());
            m_report.screw.torqueRange = range;
            m_report.screw.torque = (range.low + range.high) / 2;
            m_report.screw.kFactor = loadpath::kFactor(*m_setup.torque);
        }
        if (!rated.rating.known || !plateJudged || !(m_findings.collapseFactor || m_findings.peakStress))
            return; // without the plate there is nothing to rate
        m_report.screw.ratedLoad = rated.rating.rated;
        m_report.screw.stopTorque = rated.rating.stop;
        if (m_job.work == job::Work::Pull && m_job.ram && m_job.ram->area)
            m_report.screw.stopPressure = asGaugeShows(mostOfRam(rated.rating.rated) / *m_job.ram->area);
        m_report.screw.stamp = rated.rating.stamp;
        m_report.proof.load = rated.rating.proof;
        if (rated.rating.atProof)
            m_report.proof.torque = (rated.rating.atProof->low + rated.rating.atProof->high) / 2;
        showTables();
    }

    /// Down to what is read off a gauge, so that what is shown is never more than what is meant.
    units::Stress asGaugeShows(units::Stress pressure) const {
        return m_job.preferred == units::System::Metric
                   ? units::Stress::fromBar(floorTo(pressure.mpa() * 10, 3))
                   : units::Stress::fromPsi(floorTo(pressure.ksi() * 1000, 3));
    }

    /// Never past the ram's own capacity, nor what its valve lets through.
    Force mostOfRam(Force rated) const {
        Force most = std::min(rated, m_job.ram->capacity.value_or(rated));
        if (const auto made = loadpath::ramForce(*m_job.ram))
            most = std::min(most, *made);
        return most;
    }

    /// The plate as a gauge, the turns-and-torque card, and what is stored in the tool itself.
    void showTables() {
        Found<Dial> dial;
        Found<units::Rate> stiffness;
        if (m_field) {
            const double load = pack().design().newton();
            if (const auto reading = dialReading(*m_field, plateTask(), startAngle(), 1.0)) {
                dial = Dial{reading->deflection / load, reading->inner};
                m_report.gauge = gaugeRows(pack().design(), m_report.screw, m_report.proof, *dial);
                if (m_report.proof.load) {
                    m_report.proof.reading = dial->perNewton * m_report.proof.load->newton();
                    m_report.proof.readingAt = dial->at;
                }
            }
            stiffness = toolStiffness();
        }
        if (stiffness && m_job.work == job::Work::Pull)
            m_report.hub.jump = hub::jumpEnergy(pack().design(), *stiffness);
        m_report.card = turnsAndTorque(m_job, pack(), m_setup.torque, dial, stiffness);
    }

    /// Of plate and screw in a row: where the stations' forces work, over the load; and the screw's free
    /// length.
    Found<units::Rate> toolStiffness() const {
        const double load = pack().design().newton();
        const double work = std::abs(m_field->forces.dot(m_field->elastic.nodes.row(0).transpose()));
        double give = work * m_field->model->sector().count * m_assumed.stacked / load;
        if (m_job.screw && m_job.screw->freeLength && m_setup.members.thread)
            give += load * m_job.screw->freeLength->mm() /
                    (kSteelE * thread::tensileStressArea(*m_setup.members.thread).mm2());
        if (m_job.legs && m_job.legs->length)
            if (const auto rod = thread::parse(m_job.legs->thread))
                give += load * m_job.legs->length->mm() /
                        (kSteelE * thread::tensileStressArea(*rod).mm2() * m_job.legs->count.value_or(2));
        if (!(give > 0))
            return std::nullopt;
        return units::Rate::fromNPerMm(load / give);
    }

    /// Worst verdict first, then least margin over wanted; notes last.
    static bool weakerFirst(const Check& a, const Check& b) {
        const auto rank = [](const Check& c) {
            switch (c.grade) {
            case Grade::Breaks:
                return 0;
            case Grade::Sets:
                return 1;
            case Grade::Thin:
                return 2;
            case Grade::Incomplete:
                return 3;
            case Grade::Holds:
                return 4;
            }
            return 5;
        };
        if (rank(a) != rank(b))
            return rank(a) < rank(b);
        const bool noteA = a.kind == verdict::CheckKind::Note, noteB = b.kind == verdict::CheckKind::Note;
        if (noteA != noteB)
            return noteB;
        return a.marginOverWanted().value_or(1e9) < b.marginOverWanted().value_or(1e9);
    }

    const job::Job& m_job;
    const CheckOptions& m_options;
    std::shared_ptr<ModelCache> m_models;
    Report m_report;
    job::Assumed m_assumed;
    Found<Force> m_tried;
    loadpath::Setup m_setup;
    FoundLoads m_found;
    verdict::PlateFindings m_findings;
    std::unique_ptr<PlateField> m_field;
    std::string m_obstacle;
    bool m_shapeSound = false;
};

} // namespace

const Check* Report::find(std::string_view id) const {
    for (const Check& check : checks)
        if (check.id == id)
            return &check;
    return nullptr;
}

namespace {

/// A load in two figures, in the job's units, not over `load`.
Force roundDown(Force load, units::System system) {
    const double unit = system == units::System::Metric ? 1.0 : units::kNewtonPerPoundForce;
    return Force::fromN(floorTo(load.newton() / unit, 2) * unit);
}

/// The verdict alone, without the figures that stand for a load.
Report withoutLoad(Report report) {
    report.load = {};
    report.screw = {};
    report.proof = {};
    report.hub.jump.reset();
    report.gauge.clear();
    report.card = {};
    report.steps.clear();
    return report;
}

/// Where nobody states a load the answer is the load the tool may be used for: a first pass at some load
/// tells what the weakest link allows, since all of it goes in proportion; the verdict is then that at this
/// load. Only permanent set does not go in proportion: the load comes down until none is left.
Report rated(const job::Job& job, const CheckOptions& options) {
    constexpr double kSomeLoad = 10000, kLess = 0.85;
    constexpr int kMostTries = 8;
    CheckOptions plain = options;
    plain.spread = plain.mend = false;
    if (!plain.models)
        plain.models = std::make_shared<ModelCache>();
    Report first = Checker(job, plain, Force::fromN(kSomeLoad)).run();
    if (!first.screw.ratedLoad || !(*first.screw.ratedLoad > Force()))
        return withoutLoad(std::move(first)); // it may be used for nothing: the load tried is no answer
    Force load = roundDown(*first.screw.ratedLoad, job.preferred);
    Report report;
    for (int i = 0; i < kMostTries; ++i) {
        report = Checker(job, plain, load).run();
        const Check* set = report.find("plate.set");
        if (!set || set->grade == Grade::Holds || report.grade == Grade::Incomplete)
            break;
        load = roundDown(load * kLess, job.preferred);
    }
    CheckOptions whole = options;
    whole.models = plain.models;
    whole.mend = false;
    return Checker(job, whole, load).run();
}

bool nobodyStatesALoad(const job::Job& job) {
    return job.work == job::Work::Pull && findLoads(job, loadpath::setUp(job), std::nullopt).nobodys;
}

} // namespace

Report check(const job::Job& job, const CheckOptions& options) {
    try {
        Report report = nobodyStatesALoad(job) ? rated(job, options) : Checker(job, options).run();
        if (options.mend)
            report.changes = mends(job, report, options);
        return report;
    } catch (const util::Bug& bug) {
        Report report;
        report.title = job.title;
        report.preferred = job.preferred;
        report.problems.push_back(
            {"", say("the program tripped over itself (%1); please keep this job file and report it",
                     {bug.what()})});
        report.reason = report.problems.front().message;
        return report;
    }
}

} // namespace pw::engine
