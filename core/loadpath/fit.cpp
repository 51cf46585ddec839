#include "core/loadpath/fit.h"

#include "core/job/assumed.h"
#include "core/loadpath/factors.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr const char* kCommonPractice = PW_SAY("common practice, no published source");
const Length kLeastLand = Length::fromMm(1), kLeastKeeperRoom = Length::fromMm(3),
             kLeastLigament = Length::fromMm(5);
constexpr double kPickReach = 1.5, kLigamentOfThickness = 0.5;

/// Margin in mm against a least amount: `thin` under it, `breaks` at or under `gone`.
Check roomCheck(const std::string& id, const std::string& member, const std::string& title, Length demand,
                Length capacity, Length margin, Length wanted) {
    Check check;
    check.id = id;
    check.member = member;
    check.title = title;
    check.kind = CheckKind::Fit;
    check.unit = "mm";
    check.demand = demand.mm();
    check.capacity = capacity.mm();
    check.margin = margin.mm();
    check.wanted = wanted.mm();
    check.grade = margin < wanted ? Grade::Thin : Grade::Holds;
    check.source = say(kCommonPractice);
    return check;
}

/// What to measure where no land is known.
std::string landMissing(const job::Job& job) {
    return job.work == job::Work::Pull
               ? say("how wide the bolts bear is not given: measure across the washer under a head or nut")
               : say("the retainer's diameter is not given: measure across the retainer");
}

/// The narrow way across an access hole: what a keeper must pass.
std::optional<Length> openingOf(const job::Stations& stations) {
    if (stations.hole.shape != job::HoleShape::Round && stations.hole.width)
        return stations.hole.width;
    return stations.accessHole;
}

Length thicknessOf(const job::Plate& plate) {
    return plate.thickness.value_or(Length()) * static_cast<double>(plate.stacked.value_or(1));
}

std::optional<double> pinCircleRadius(const job::Stations& stations) {
    if (!stations.at.empty()) {
        double least = 1e300;
        for (const job::PointXY& at : stations.at)
            least = std::min(least, std::hypot(at.x.mm(), at.y.mm()));
        return least;
    }
    if (stations.circle)
        return stations.circle->mm() / 2;
    return std::nullopt;
}

} // namespace

std::optional<Length> landOf(const job::Job& job) {
    if (job.stations.land)
        return job.stations.land;
    if (job.work != job::Work::Pull)
        return job.stations.retainer;
    const std::string& rods = job.hub && job.hub->bolts ? job.hub->bolts->thread
                              : job.legs                ? job.legs->thread
                                                        : std::string();
    if (const auto thread = thread::parse(rods))
        if (const auto washer = thread::standardWasher(*thread))
            return washer->outside;
    return std::nullopt;
}

Check landWidthCheck(const job::Job& job) {
    const char* id = "land.width";
    const std::string title = say("Land left");
    const auto land = landOf(job), hole = openingOf(job.stations);
    if (!land)
        return incompleteCheck(id, "lands", title, CheckKind::Fit, landMissing(job));
    if (!hole)
        return incompleteCheck(id, "lands", title, CheckKind::Fit,
                               say("the access hole's diameter is not given"));
    const job::Assumed process = job::assume(job);
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    const Length ideal = (*land - *hole) * 0.5,
                 left = ideal - process.habits.layoutError - process.habits.growth;
    Check check = roomCheck(id, "lands", title, process.habits.layoutError + process.habits.growth, ideal,
                            left, kLeastLand);
    if (left <= Length())
        check.grade = Grade::Breaks;
    check.basis =
        say("(land %1 - hole %2) / 2 - layout error %3 - growth %4 by %5 = %6 left, %7 wanted",
            {show(*land), show(*hole), show(process.habits.layoutError), show(process.habits.growth),
             say(job::nameOf(process.process).data()), show(left), show(kLeastLand)});
    return check;
}

Check landBearingCheck(const job::Job& job, const std::optional<material::Material>& plate, Force station,
                       double s) {
    const char* id = "land.bearing";
    const std::string title = say("Land pressure");
    const auto land = landOf(job), hole = openingOf(job.stations);
    const auto missing = [&](const std::string& what) {
        return incompleteCheck(id, "lands", title, CheckKind::Force, what);
    };
    if (!land)
        return missing(landMissing(job));
    if (!hole)
        return missing(say("the access hole's diameter is not given"));
    if (!plate)
        return missing(say("the plate's steel is not known: name a grade, or \"unknown scrap\""));
    const double outer = land->mm(), inner = hole->mm();
    const double mm2 = std::max(0.0, std::numbers::pi / 4 * (outer * outer - inner * inner));
    const units::Area area = units::Area::fromMm2(mm2);
    const Force capacity = plate->yield * kBearingOfYield * area;
    Check check =
        strengthCheck(id, "lands", title, Rule::Ductile, station.newton(), capacity.newton(), "N", s);
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    check.basis = say("%1 on a land %2 to %3, %4, against 1.8 x yield %5 (%6)",
                      {show(station), show(*hole), show(*land), show(area), show(plate->yield), plate->name});
    check.source = say("AISC 360 J7, bearing 1.8 x yield (from memory); %1", {plate->source});
    return check;
}

Check accessCheck(const job::Job& job) {
    const char* id = "access.keeper";
    const std::string title = say("Room for keeper");
    const job::Stations& stations = job.stations;
    const auto hole = openingOf(stations);
    if (!hole)
        return incompleteCheck(id, "access holes", title, CheckKind::Fit,
                               say("the access hole's diameter is not given"));
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    if (stations.pin && *hole <= *stations.pin) {
        Check check = roomCheck(id, "access holes", title, *stations.pin, *hole, *hole - *stations.pin,
                                kLeastKeeperRoom);
        check.grade = Grade::Breaks;
        check.basis = say("the pin of %1 does not pass a hole of %2", {show(*stations.pin), show(*hole)});
        return check;
    }
    if (!stations.keeper)
        return incompleteCheck(id, "access holes", title, CheckKind::Fit,
                               say("the keeper's size is not given: measure across the pair of keepers"));
    const Length room = *hole - *stations.keeper;
    Check check = roomCheck(id, "access holes", title, *stations.keeper, *hole, room, kLeastKeeperRoom);
    if (room < Length())
        check.grade = Grade::Breaks;
    check.basis = say("hole %1 - keeper %2 = %3, %4 wanted",
                      {show(*hole), show(*stations.keeper), show(room), show(kLeastKeeperRoom)});
    const Length deep = thicknessOf(job.plate), reach = *hole * kPickReach;
    if (deep > reach) {
        if (check.grade == Grade::Holds)
            check.grade = Grade::Thin;
        check.basis = say("%1; %2 of plate is deeper than a pick reaches through it, about %3",
                          {check.basis, show(deep), show(reach)});
    }
    return check;
}

Check ligamentCheck(const job::Job& job, const std::vector<Ligament>& ligaments) {
    const char* id = "plate.ligament";
    const std::string title = say("Steel left");
    if (ligaments.empty())
        return incompleteCheck(id, "plate", title, CheckKind::Fit,
                               say("the plate's outline and holes are not all given"));
    const Ligament& least =
        *std::min_element(ligaments.begin(), ligaments.end(),
                          [](const Ligament& a, const Ligament& b) { return a.width < b.width; });
    const Length width = Length::fromMm(least.width);
    const Length thickness = job.plate.thickness.value_or(Length());
    const Length wanted = std::max(kLeastLigament, thickness * kLigamentOfThickness);
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    Check check = roomCheck(id, "plate", title, wanted, width, width, wanted);
    if (width <= Length())
        check.grade = Grade::Breaks;
    check.where = least.where;
    check.basis = width <= Length() ? say("no steel %1", {least.name})
                                    : say("%1 %2, %3 wanted (the larger of %4 and half the thickness)",
                                          {show(width), least.name, show(wanted), show(kLeastLigament)});
    return check;
}

std::optional<Check> washerCheck(const job::Job& job, const CentreBearing& bearing) {
    if (bearing.throughThread)
        return std::nullopt;
    const char* id = "centre.washer";
    const std::string title = say("Washer cover");
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    const bool washer = bearing.washerOutside > Length();
    const Length outside = washer                       ? bearing.washerOutside
                           : bearing.nutFace > Length() ? bearing.nutFace
                                                        : bearing.outside;
    const std::string name = washer                       ? say("washer %1", {show(outside)})
                             : bearing.nutFace > Length() ? say("nut face %1", {show(outside)})
                                                          : say("bearing %1", {show(outside)});
    const Length bore = job.plate.bore.value_or(Length());
    const Length cover = (outside - bore) * 0.5;
    // A washer must overlap by its own thickness, or it shears and dishes into the bore.
    const Length wanted = std::max(Length::fromMm(1), bearing.washerThickness);
    Check check = roomCheck(id, "washer", title, bore, outside, cover, wanted);
    if (cover <= Length()) {
        check.grade = Grade::Breaks;
        check.basis = say("%1 does not cover the bore %2: it pulls through", {name, show(bore)});
        return check;
    }
    check.basis = say("%1 covers the bore %2 by %3", {name, show(bore), show(cover)});
    if (check.grade == Grade::Thin)
        check.basis = say("%1, at least %2 wanted", {check.basis, show(wanted)});
    if (washer && bearing.nutFace > Length() && bore > bearing.nutFace) {
        check.grade = Grade::Thin;
        check.basis =
            say("%1; the bore is wider than the nut face %2: the washer dishes into it, use a thick one",
                {check.basis, show(bearing.nutFace)});
    }
    const auto hole = job.stations.accessHole;
    const auto radius = pinCircleRadius(job.stations);
    if (hole && radius) {
        const Length gap = Length::fromMm(*radius) - *hole * 0.5 - outside * 0.5;
        const Length room = job.stations.keeper ? std::max(Length(), *hole - *job.stations.keeper) : Length();
        if (gap < Length()) {
            check.margin = gap.mm();
            check.wanted = 1;
            check.demand = outside.mm();
            check.capacity = (outside + gap * 2.0).mm();
            // Still open enough to get a keeper out past it?
            check.grade = -gap < room ? Grade::Thin : Grade::Breaks;
            check.basis = say("%1 covers %2 of the access holes; at most %3 goes between them",
                              {name, show(-gap), show(outside + gap * 2.0)});
        } else {
            check.basis = say("%1; %2 clear of the access holes", {check.basis, show(gap)});
        }
    }
    return check;
}

Check cutHolesCheck(const job::Job& job) {
    Check check;
    check.id = "cut.holes";
    check.member = "plate";
    check.title = say("Burn or drill");
    check.kind = CheckKind::Note;
    check.grade = Grade::Holds;
    check.unit = "mm";
    check.source = say(kCommonPractice);
    const job::Assumed process = job::assume(job);
    if (!job.plate.thickness)
        return incompleteCheck(check.id, check.member, check.title, check.kind,
                               say("the plate's thickness is not given"));
    const auto least = job::leastBurnedHole(process.process, *job.plate.thickness);
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    if (!least) {
        check.basis = say("%1: every hole is drilled", {say(job::nameOf(process.process).data())});
        return check;
    }
    check.capacity = least->mm();
    std::vector<std::string> drill;
    const auto offer = [&](const char* words, const std::optional<Length>& size, std::size_t number = 0) {
        if (size && *size > Length() && *size < *least)
            drill.push_back(say(words, {show(*size), number}));
    };
    offer(PW_SAY("the bore of %1"), job.plate.bore);
    offer(PW_SAY("the access holes of %1"), openingOf(job.stations));
    for (std::size_t i = 0; i < job.plate.holes.size(); ++i) {
        const job::ExtraHole& hole = job.plate.holes[i];
        offer(PW_SAY("extra hole %2 of %1"),
              hole.form.shape == job::HoleShape::Round ? hole.diameter : hole.form.width, i + 1);
    }
    if (!job.plate.boreThread.empty())
        drill.push_back(say("the bore, for its thread"));
    std::string which = say("all can be burned");
    if (!drill.empty()) {
        std::string list;
        for (const std::string& hole : drill)
            list = list.empty() ? hole : say("%1, %2", {list, hole});
        which = say("drill %1", {list});
    }
    check.basis =
        say("a %1 burns holes from about %2 in %3 plate: %4",
            {say(job::nameOf(process.process).data()), show(*least), show(*job.plate.thickness), which});
    return check;
}

} // namespace pw::loadpath
