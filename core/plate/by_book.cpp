#include "core/plate/by_book.h"

#include "core/plate/annular.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::plate {

namespace {

using std::numbers::pi;

util::Problem flaw(const std::string& field, const std::string& message) {
    return {field, message};
}

/// G of an isotropic material times 5/6.
double shearStiffnessOf(const ByBookInputs& in) {
    return 5.0 / 6.0 * in.modulus.mpa() / (2 * (1 + in.poisson)) * in.thickness.mm() * in.stacked;
}

/// Moment per width: 1 N.mm/mm is 1 N, 1 lbf.in/in is 1 lbf.
std::string perWidth(double moment, units::System system) {
    return system == units::System::Metric
               ? units::number(moment, 4) + "\u00a0N\u00b7mm/mm"
               : say("%1\u00a0lbf\u00b7in/in", {units::number(moment / units::kNewtonPerPoundForce, 4)});
}

util::Result<ByBook> disc(const ByBookInputs& in) {
    const double t = in.thickness.mm(), n = in.stacked, load = in.load.newton();
    const double rim = in.across.mm() / 2, bore = in.bore.mm() / 2, circle = in.pinCircle.mm() / 2;
    const double hole = in.accessHole.mm();
    if (!(circle > 0) || circle >= rim)
        return flaw("stations.circle", say("the pin circle must lie on the disc, inside its rim"));
    const double bearIn = std::max(in.bearingInside.mm() / 2, bore);
    const double bearOut = std::min(in.bearingOutside.mm() / 2, rim);
    if (!(bearOut > bearIn))
        return flaw("centre.bearing_outside", say("the centre bearing must be larger than the bore"));
    const double eta = 1 - in.stations * hole / (2 * pi * circle);
    if (eta <= 0)
        return flaw("stations.access_hole",
                    say("the access holes leave nothing between them on the pin circle"));

    AnnularPlate plate;
    plate.outer = rim;
    plate.inner = bore;
    plate.poisson = in.poisson;
    plate.rigidity = in.modulus.mpa() * n * t * t * t / (12 * (1 - in.poisson * in.poisson));
    plate.datum = rim;
    const double ring = pi * (bearOut * bearOut - bearIn * bearIn);
    plate.rings.push_back({bearIn, bearOut, load / ring});
    const double low = std::max(bore, circle - in.land.mm() / 2),
                 high = std::min(rim, circle + in.land.mm() / 2);
    if (in.land.mm() > 0 && high > low)
        plate.rings.push_back({low, high, -load / (pi * (high * high - low * low))});
    else
        plate.lines.push_back({circle, -load});
    const double softIn = std::max(bore, circle - hole / 2), softOut = std::min(rim, circle + hole / 2);
    if (hole > 0 && softOut > softIn)
        plate.soft.push_back({softIn, softOut, eta});
    const auto solved = solveAnnular(plate);
    if (!solved)
        return solved.problem();

    // Nominal bending in the plate, and over the ligaments in the ring of the holes.
    const double perMoment = 6 / (n * t * t);
    double atBore = std::max(std::abs(solved->largestRadialMoment().value),
                             std::abs(solved->largestTangentialMoment().value));
    double atHoles = 0;
    if (!plate.soft.empty()) {
        atBore = 0;
        constexpr int kSteps = 100;
        for (int i = 0; i <= kSteps; ++i) {
            const double r = softIn + (softOut - softIn) * i / kSteps;
            // Just inside the ring at its outer end, where the rigidity jumps.
            const AnnularState s = solved->at(i == kSteps ? r - 1e-9 * rim : r);
            atHoles = std::max({atHoles, std::abs(s.radialMoment), std::abs(s.tangentialMoment)});
            const double inside = bore + (softIn - bore) * i / kSteps;
            const AnnularState solid = solved->at(std::min(inside, softIn - 1e-9 * rim));
            if (inside < softIn)
                atBore = std::max({atBore, std::abs(solid.radialMoment), std::abs(solid.tangentialMoment)});
        }
    }
    const bool holesGovern = atHoles / eta > atBore;
    ByBook result;
    result.ligamentEfficiency = eta;
    result.moment = holesGovern ? atHoles : atBore;
    result.stress = Stress::fromMpa(perMoment * (holesGovern ? atHoles / eta : atBore));
    result.where = holesGovern ? say("between the access holes")
                   : bore > 0  ? say("at the bore")
                               : say("in the middle");
    const double rise = solved->inner().deflection - solved->outer().deflection;
    result.deflection = Length::fromMm(std::abs(rise));
    if (bore > 0)
        result.shearDeflection =
            Length::fromMm(std::abs(solved->shearIntegral(bore, rim)) / shearStiffnessOf(in));
    const auto show = [&](auto q) { return units::show(q, in.system); };
    const std::string thick =
        in.stacked > 1 ? std::to_string(in.stacked) + " x " + show(in.thickness) : show(in.thickness);
    const std::string moment = say(
        "largest moment %1 %2, %3 = %4",
        {perWidth(result.moment, in.system), result.where,
         std::string("6 M / ") + (in.stacked > 1 ? "(n t\u00b2)" : "t\u00b2") + (holesGovern ? " / eta" : ""),
         show(result.stress)});
    const std::string shape =
        say("annular plate %1 to %2, %3, %4 over the lands on a %5 circle against %6 to %7 in the "
            "middle",
            {show(in.bore), show(in.across), thick, show(in.load), show(in.pinCircle), show(in.bearingInside),
             show(in.bearingOutside)});
    result.text =
        hole > 0
            ? say("%1; eta = 1 - %2 x %3 / (pi x %4) = %5; %6",
                  {shape, in.stations, show(in.accessHole), show(in.pinCircle), units::number(eta), moment})
            : say("%1; %2", {shape, moment});
    result.source = say("Roark 7th ed. Table 11.2 equations; Timoshenko, Theory of Plates and Shells, art. "
                        "17; ligament efficiency (p - d)/p");
    return result;
}

/// Half a bar, from its middle: a cantilever under half the load.
util::Result<ByBook> bar(const ByBookInputs& in) {
    const double t = in.thickness.mm(), n = in.stacked, half = in.across.mm() / 2,
                 arm = in.pinCircle.mm() / 2;
    const double force = in.load.newton() / 2, width = in.width.mm(), bore = in.bore.mm(),
                 hole = in.accessHole.mm();
    if (in.stations != 2)
        return flaw("stations.count", say("the bar estimate is for two stations, one at each end"));
    if (!(width > std::max(bore, hole)))
        return flaw("plate.outline.width", say("the bar must be wider than its holes"));
    if (!(arm > 0) || arm >= half)
        return flaw("stations.circle", say("the stations must lie on the bar"));
    const double ri = std::max(in.bearingInside.mm(), bore) / 2, ro = in.bearingOutside.mm() / 2;
    if (!(ro > ri))
        return flaw("centre.bearing_outside", say("the centre bearing must be larger than the bore"));
    // Centroid of half a ring under even pressure.
    const double reach = 4 / (3 * pi) * (ro * ro * ro - ri * ri * ri) / (ro * ro - ri * ri);
    const double land = std::max(in.land.mm(), 0.0) / 2;
    const double landIn = hole / 2;

    // Share of a ring that lies beyond a line at distance x from its centre, as force times arm: integrated
    // in strips.
    const auto momentOfRing = [](double inner, double outer, double from) {
        constexpr int kStrips = 200;
        double area = 0, moment = 0;
        for (int i = 0; i < kStrips; ++i) {
            const double s = -outer + 2 * outer * (i + 0.5) / kStrips;
            const double chord = 2 * std::sqrt(outer * outer - s * s) -
                                 (std::abs(s) < inner ? 2 * std::sqrt(inner * inner - s * s) : 0);
            area += chord;
            if (s > from)
                moment += chord * (s - from);
        }
        return moment / area; // per unit of the ring's whole force
    };
    const auto momentAt = [&](double x) {
        const double stations =
            land > landIn && land > 0 ? momentOfRing(landIn, land, x - arm) : std::max(0.0, arm - x);
        // The whole centre reaction is twice `force`; what lies beyond x acts against the stations.
        const double centre = 2 * momentOfRing(ri, ro, x);
        return force * (stations - centre);
    };
    const auto netWidth = [&](double x) {
        double net = width;
        if (x < bore / 2)
            net -= 2 * std::sqrt(bore * bore / 4 - x * x);
        if (std::abs(x - arm) < hole / 2)
            net -= 2 * std::sqrt(hole * hole / 4 - (x - arm) * (x - arm));
        return net;
    };
    ByBook result;
    constexpr int kSteps = 400;
    double worst = 0, at = 0, slope = 0, deflection = 0;
    double boreRise = 0;
    const double e = in.modulus.mpa() * n * t * t * t / 12;
    double shear = 0;
    for (int i = 0; i < kSteps; ++i) {
        const double dx = half / kSteps, x = (i + 0.5) * dx, moment = momentAt(x), net = netWidth(x);
        const double share = std::abs(moment) / net;
        if (share > worst) {
            worst = share;
            at = x;
        }
        const double bend = moment / (e * net) * dx;
        deflection += (slope + bend / 2) * dx;
        slope += bend;
        if (x <= bore / 2)
            boreRise = deflection;
        shear += (momentAt(x - dx / 2) - momentAt(x + dx / 2)) / (net * shearStiffnessOf(in));
    }
    const double governing = netWidth(at);
    result.moment = worst;
    result.ligamentEfficiency = governing / width;
    result.stress = Stress::fromMpa(6 * worst / (n * t * t));
    result.deflection = Length::fromMm(std::abs(deflection - boreRise));
    result.shearDeflection = Length::fromMm(std::abs(shear));
    result.where = at <= bore / 2                  ? say("beside the bore")
                   : std::abs(at - arm) < hole / 2 ? say("beside the access hole")
                                                   : say("in the bar");
    const auto show = [&](auto q) { return units::show(q, in.system); };
    result.text =
        say("bar as a beam: half of %1 at %2 from the middle, bearing at %3; net width %4 of %5 %6, moment "
            "%7, 6 M / %8 = %9",
            {show(in.load), show(in.pinCircle * 0.5), show(Length::fromMm(reach)),
             show(Length::fromMm(governing)), show(in.width), result.where, perWidth(worst, in.system),
             in.stacked > 1 ? "(n t\u00b2)" : "t\u00b2", show(result.stress)});
    result.source = say("beam theory with net section; Timoshenko, Strength of Materials, part I");
    return result;
}

} // namespace

util::Result<ByBook> byBook(const ByBookInputs& in) {
    if (!(in.thickness.mm() > 0) || !std::isfinite(in.thickness.mm()))
        return flaw("plate.thickness", say("the plate needs a thickness above 0"));
    if (in.stacked < 1)
        return flaw("plate.stacked", say("at least one plate"));
    if (!(in.modulus.mpa() > 0))
        return flaw("plate.steel", say("the steel needs a modulus above 0"));
    if (!(in.load.newton() > 0) || !std::isfinite(in.load.newton()))
        return flaw("load.total", say("no load to carry"));
    if (in.stations < 1)
        return flaw("stations.count", say("how many stations carry the load: count the pins"));
    if (in.shape == job::OutlineShape::Disc)
        return disc(in);
    if (in.shape == job::OutlineShape::Bar)
        return bar(in);
    return flaw("plate.outline.shape",
                say("there is no handbook case for this outline; the field solution stands alone"));
}

util::Result<ByBook> byBook(const job::Job& job, Force load, Length bearingInside, Length bearingOutside,
                            Stress modulus, double poisson) {
    ByBookInputs in;
    const job::Plate& plate = job.plate;
    if (!plate.outline)
        return flaw("plate.outline", say("the shape of the plate and its size, disc 140 mm for one"));
    if (!plate.thickness)
        return flaw("plate.thickness", say("measure the plate's thickness"));
    in.shape = plate.outline->shape;
    const bool isBar = in.shape == job::OutlineShape::Bar;
    const auto across = isBar ? plate.outline->length : plate.outline->diameter;
    if ((in.shape == job::OutlineShape::Disc || isBar) && !across)
        return flaw(isBar ? "plate.outline.length" : "plate.outline.diameter", say("measure it"));
    if (isBar && !plate.outline->width)
        return flaw("plate.outline.width", say("measure it"));
    in.across = across.value_or(Length());
    in.width = plate.outline->width.value_or(Length());
    in.thickness = *plate.thickness;
    in.stacked = plate.stacked.value_or(1);
    // A tapped bore is as wide as its thread, which is where the bearing begins.
    in.bore = plate.boreThread.empty() ? plate.bore.value_or(Length()) : bearingInside;
    if (!job.stations.at.empty()) {
        // Stations on one circle are what the estimate can handle.
        double least = 1e300, most = 0;
        for (const job::PointXY& at : job.stations.at) {
            const double r = std::hypot(at.x.mm(), at.y.mm());
            least = std::min(least, r);
            most = std::max(most, r);
        }
        if (most - least > 0.02 * most)
            return flaw("stations.at",
                        say("there is no handbook case for stations that are not on one circle"));
        in.stations = static_cast<int>(job.stations.at.size());
        in.pinCircle = Length::fromMm(least + most);
    } else {
        if (!job.stations.circle)
            return flaw("stations.circle", say("measure the pin circle"));
        in.stations = job.stations.count.value_or(0);
        in.pinCircle = *job.stations.circle;
    }
    in.accessHole = job.stations.accessHole.value_or(Length());
    in.land = job.stations.land.value_or(job.stations.retainer.value_or(Length()));
    in.bearingInside = bearingInside;
    in.bearingOutside = bearingOutside;
    in.load = load;
    in.modulus = modulus;
    in.poisson = poisson;
    in.system = job.preferred;
    return byBook(in);
}

} // namespace pw::plate
