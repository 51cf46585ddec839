#include "core/hub/hub.h"

#include "core/hub/taper.h"
#include "core/units/format.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

// Inside: mm, N, MPa, degrees C.
namespace pw::hub {

namespace {

using material::Material;

/// Plain steel where nobody says. EN 1993-1-1, 3.2.6.
constexpr double kSteelE = 210000, kSteelNu = 0.3;
/// Interference and draw may differ by this before they contradict each other: reading error. Common
/// practice, no published source.
constexpr double kAgree = 0.15;
/// Joining clearance over diameter, DIN 7190-1 (from memory).
constexpr double kSlideOfDiameter = 1e-3;
/// A dull red heat. Common practice, no published source.
constexpr Temperature kHottest = Temperature::fromCelsius(600);
/// Less than any metal on metal, however it is greased. Common practice, no published source.
constexpr double kLeastFriction = 0.01;
constexpr double kSteepestDegree = 45;

struct Part {
    Material metal;
    bool known = false; ///< the user named it
};

class Fitted {
public:
    explicit Fitted(const job::Job& job) : m_job(job), m_in(*job.hub) {}

    HubForces run() {
        m_out.told = m_in.shaft || m_in.length || m_in.outside || m_in.interference || m_in.halfAngle ||
                     m_in.draw || m_in.friction || m_in.rust || m_in.force || m_in.shaftBore ||
                     m_in.hubMaterial || m_in.shaftMaterial || m_in.fit != job::Fit::Straight;
        findFriction();
        if (m_in.fit == job::Fit::RustOnly && (m_in.interference || m_in.draw))
            assume(say("interference and draw are not used: the fit is held by rust only"));
        if (m_in.fit != job::Fit::RustOnly && findSizes())
            solve();
        if (m_in.force)
            takeStatedForce();
        else if (m_in.fit == job::Fit::RustOnly)
            miss("force", say("what rust alone may ask: no figures give it. State a guess, high rather than "
                              "low, such as what it took the last time, or what the puller may carry"));
        m_out.known = m_out.pull.has_value();
        // The fit's figures are not wanted where the force is stated.
        if (m_in.force)
            m_out.missing.clear();
        return m_out;
    }

private:
    template<class Q>
    std::string show(Q value) const {
        return units::show(value, m_job.preferred);
    }
    void assume(const std::string& text) { m_out.assumptions.push_back(say("hub: %1", {text})); }
    void remark(std::string text) { m_out.remarks.push_back(std::move(text)); }
    void miss(const std::string& key, std::string text) {
        m_out.missing.push_back({"hub." + std::string(key), std::move(text)});
    }
    void wrong(const std::string& key, std::string text) {
        m_out.problems.push_back({"hub." + std::string(key), std::move(text)});
    }

    bool isTaper() const { return m_in.fit == job::Fit::Taper; }

    void findFriction() {
        m_out.friction = m_in.friction.value_or(kPullingFriction);
        m_out.rust = m_in.rust.value_or(1);
        if (!(m_out.friction.low >= kLeastFriction && m_out.friction.high >= m_out.friction.low)) {
            wrong("friction", say("Nothing is that slippery: friction must be at least 0.01, the low end "
                                  "first. Leave it out for 0.10 to 0.35."));
            m_sound = false;
        }
        if (!(m_out.rust >= 1)) {
            wrong("rust", say("Rust only adds: 1 is clean, 1.5 rusty, 2.5 rusted fast."));
            m_sound = false;
        }
    }

    /// Everything the fit needs; says all that is missing at once.
    bool findSizes() {
        const std::size_t before = m_out.missing.size();
        if (!m_in.shaft)
            miss("shaft",
                 isTaper() ? say("the diameter of the taper halfway along the fit: half the sum of both ends")
                           : say("the diameter of the shaft in the hub: measure it where it comes out"));
        if (!m_in.length)
            miss("length", say("how far hub and shaft touch, along the shaft: the depth of the bore without "
                               "its recesses"));
        if (!m_in.outside)
            miss("outside",
                 say("the outside of the hub round the shaft: its boss, not the rim or the flange"));
        if (isTaper() && !m_in.halfAngle)
            miss("half_angle",
                 say("the angle of one side to the axis: half the difference of both end diameters over "
                     "their distance is its tangent (1:10 on the diameter is 2.86 deg)"));
        if (isTaper() && !m_in.draw && !m_in.interference)
            miss("draw", say("how far the hub was pushed up the taper from where it just touches: the "
                             "manual, or the marks of the nut"));
        if (!isTaper() && !m_in.interference)
            miss("interference",
                 say("how much larger the shaft is than the free bore, on the diameter: the manual, the fit "
                     "on the drawing, or micrometer and bore gauge on a like pair"));
        return m_out.missing.size() == before && findInterference() && checkSizes();
    }

    bool findInterference() {
        if (!isTaper() && (m_in.halfAngle || m_in.draw))
            assume(say("half angle and draw belong to a taper; the fit is straight, so they are not used"));
        if (m_in.interference) {
            if (m_in.interference->low < Length() || m_in.interference->high < m_in.interference->low) {
                wrong("interference", say("A shaft smaller than its bore does not hold by interference: take "
                                          "0 for the loose end, the low end first, or say \"rust only\"."));
                return false;
            }
            m_out.interference = m_in.interference;
        }
        if (!isTaper())
            return true;
        if (const double b = m_in.halfAngle->degree(); !(b > 0 && b <= kSteepestDegree)) {
            wrong("half_angle", say("The side of a taper stands at more than 0 and at most 45 deg to the "
                                    "axis; at 0 the fit is \"straight\"."));
            return false;
        }
        if (m_in.draw)
            takeDraw();
        return true;
    }

    void takeDraw() {
        if (*m_in.draw < Length()) {
            wrong("draw", say("The draw is how far the hub went up the taper: 0 or more."));
            return;
        }
        const Length drawn = interferenceFromDraw(*m_in.draw, *m_in.halfAngle);
        if (!m_out.interference) {
            m_out.interference = Range<Length>::exactly(drawn);
            assume(say("interference %1 from a draw of %2", {show(drawn), show(*m_in.draw)}));
            return;
        }
        Range<Length>& stated = *m_out.interference;
        if (drawn > stated.high * (1 + kAgree) || drawn < stated.low * (1 - kAgree)) {
            wrong("draw", say("Figures contradict each other: a draw of %1 makes %2 of interference, but %3 "
                              "is stated; the tighter is taken for the pull.",
                              {show(*m_in.draw), show(drawn), show(stated)}));
            stated.high = std::max(stated.high, drawn);
        }
    }

    bool checkSizes() {
        const Length shaft = *m_in.shaft, bore = m_in.shaftBore.value_or(Length()), outside = *m_in.outside;
        const Length lean = isTaper() ? *m_in.length * std::tan(m_in.halfAngle->radian()) : Length();
        if (*m_in.length <= Length())
            wrong("length", say("Hub and shaft must touch over some length."));
        else if (bore < Length() || shaft <= Length())
            wrong("shaft", say("A diameter is more than 0."));
        else if (shaft <= lean)
            wrong("half_angle", say("The taper runs to a point within the fit: check half angle, length and "
                                    "shaft (the diameter halfway along)."));
        else if (bore >= shaft - lean)
            wrong("shaft_bore", say("The bore of the shaft must be less than the shaft, %1 at its thin end.",
                                    {show(shaft - lean)}));
        else if (outside <= shaft + lean)
            wrong("outside", say("The hub must be larger than the shaft in it, %1 at its thick end.",
                                 {show(shaft + lean)}));
        else
            return m_sound;
        return false;
    }

    /// The user's metal, or steel: nothing usual is stiffer, so the grip comes out high rather than low.
    bool findPart(const Given<job::Material>& given, const std::string& key, const std::string& what,
                  Length thickness, Part& part) {
        if (!given) {
            part.metal.E = Stress::fromMpa(kSteelE);
            part.metal.nu = kSteelNu;
            assume(say("%1 taken as steel", {what}));
            return true;
        }
        const auto found = material::resolve(*given, thickness);
        if (!found) {
            wrong(found.problem().field.empty() ? key : key + "." + found.problem().field,
                  found.problem().message);
            return false;
        }
        part = {*found, true};
        if (found->expansionAssumed)
            assume(say("thermal expansion of the %1 taken as steel's, 12e-6 for each kelvin (EN 1993-1-1)",
                       {what}));
        return true;
    }

    void solve() {
        Part hub, shaft;
        const bool hubSound =
            findPart(m_in.hubMaterial, "hub_material", say("hub"), (*m_in.outside - *m_in.shaft) / 2.0, hub);
        const bool shaftSound =
            findPart(m_in.shaftMaterial, "shaft_material", say("shaft"), *m_in.shaft, shaft);
        if (!hubSound || !shaftSound)
            return;
        m_fit = {*m_in.shaft,   m_in.shaftBore.value_or(Length()),
                 *m_in.outside, hub.metal.E,
                 shaft.metal.E, hub.metal.nu,
                 shaft.metal.nu};
        m_out.hubMetal = hub.metal.metal;
        if (!m_in.shaftBore)
            assume(say("shaft taken as solid"));
        if (isTaper())
            assume(say("shaft diameter %1 taken as that halfway along the taper", {show(*m_in.shaft)}));
        // A stated force asks for neither.
        if (!m_in.friction && !m_in.force)
            assume(say("friction 0.10 to 0.35 for pulling off (common practice, no published source)"));
        if (m_out.rust > 1 && !m_in.force)
            assume(say("rust multiplies the friction by %1 (common practice, no published source)",
                       {units::number(m_out.rust)}));

        const Temperature part = m_job.heat.part.value_or(kRoom);
        // A hub is warmed by itself, with a torch; cold comes to both.
        const Temperature besides = std::min(part, kRoom);
        m_out.pressure = pressureAt(part, besides, hub.metal, shaft.metal);
        m_out.pull = pullOf(*m_out.pressure);
        m_out.from = PullFrom::Fit;
        if (part > kRoom)
            m_out.pullShaftWarm = pullOf(pressureAt(part, part, hub.metal, shaft.metal));
        findHeat(hub.metal, shaft.metal);
        speakOfHeat(part);
        speakOfTaper();
        m_out.hubStress = stressOf(hub, hubStressIn(hub));
        m_out.shaftStress = stressOf(shaft, &shaftMisesStress);
        speakOfStress(hub, shaft);
    }

    Range<Stress> pressureAt(Temperature hubAt, Temperature shaftAt, const Material& hub,
                             const Material& shaft) const {
        const auto left = [&](Length cold) {
            return contactPressure(
                m_fit, interferenceAt(cold, m_fit.shaft, hub.expansion, hubAt, shaft.expansion, shaftAt));
        };
        return {left(m_out.interference->low), left(m_out.interference->high)};
    }

    Range<Force> pullOf(Range<Stress> pressure) const {
        const Range<double> friction = m_out.friction * m_out.rust;
        const auto force = [&](Stress p, double mu) {
            return isTaper() ? releaseForce(m_fit.shaft, *m_in.length, p, mu, *m_in.halfAngle)
                             : slipForce(m_fit.shaft, *m_in.length, p, mu);
        };
        return {force(pressure.low, friction.low), force(pressure.high, friction.high)};
    }

    void findHeat(const Material& hub, const Material& shaft) {
        const Range<Length>& cold = *m_out.interference;
        const Length none, d = m_fit.shaft;
        m_out.heatToFree = {temperatureToOpen(cold.low, none, d, hub.expansion),
                            temperatureToOpen(cold.high, none, d, hub.expansion)};
        const auto low = temperatureToOpenTogether(cold.low, none, d, hub.expansion, shaft.expansion);
        const auto high = temperatureToOpenTogether(cold.high, none, d, hub.expansion, shaft.expansion);
        if (low && high)
            m_out.heatToFreeTogether = {*low, *high};
        m_out.roomToSlide = d * kSlideOfDiameter;
        const Temperature sliding = temperatureToOpen(cold.high, *m_out.roomToSlide, d, hub.expansion);
        const std::vector<std::string> figures{show(*m_out.heatToFree), show(*m_out.roomToSlide),
                                               show(sliding)};
        remark(say(
            m_out.heatToFreeTogether
                ? PW_SAY(
                      "Heated by itself, the hub is free at %1; to slide off by hand it wants %2 of room, %3 "
                      "at the tightest.")
                : PW_SAY(
                      "Heated by itself, the hub is free at %1; to slide off by hand it wants %2 of room, %3 "
                      "at the tightest. Once the shaft is as hot, nothing is gained."),
            {figures[0], figures[1], figures[2]}));
        if (m_out.heatToFree->high > kHottest)
            remark(say("That is hotter than a hub is ever made: heat alone does not free it. Check the "
                       "interference (on the diameter) or the draw."));
    }

    void speakOfHeat(Temperature part) {
        if (part < kRoom)
            assume(say("hub and shaft both at %1", {show(part)}));
        if (part <= kRoom)
            return;
        assume(m_in.force
                   ? say("hub at %1, shaft still at %2", {show(part), show(kRoom)})
                   : say("hub at %1, shaft still at %2: with a shaft as warm it asks for %3, so pull while "
                         "the shaft is cold",
                         {show(part), show(kRoom), show(*m_out.pullShaftWarm)}));
        if (m_out.pressure->high <= Stress())
            remark(say("At %1 nothing of the interference is left while the shaft is cold.", {show(part)}));
    }

    void speakOfTaper() {
        if (!isTaper())
            return;
        const Range<double> friction = m_out.friction * m_out.rust;
        m_out.letsGoByItself = hub::letsGoByItself(friction.high, *m_in.halfAngle);
        // Rust that has once broken loose holds no more.
        m_out.mayLetGoByItself = hub::letsGoByItself(m_out.friction.low, *m_in.halfAngle);
        const std::string steep =
            say("tan(half angle) is %1", {units::number(std::tan(m_in.halfAngle->radian()))});
        if (m_out.letsGoByItself)
            remark(say("This taper lets go by itself (%1, friction at most %2): stand clear when the nut "
                       "comes off, and leave it on by a few turns.",
                       {steep, units::number(friction.high)}));
        else if (m_out.mayLetGoByItself)
            remark(say(
                "This taper may let go by itself (%1, friction from %2): leave the nut on by a few turns.",
                {steep, units::number(m_out.friction.low)}));
        else
            remark(say("A taper lets go all at once: leave the nut on by a few turns."));
    }

    using StressAt = Stress (*)(const PressFit&, Stress);

    /// A brittle hub parts by its hoop tension.
    static StressAt hubStressIn(const Part& hub) {
        return hub.metal.brittle ? &hubHoopStress : &hubMisesStress;
    }

    Given<FitStress> stressOf(const Part& part, StressAt stressAt) const {
        if (!part.known)
            return std::nullopt;
        const Stress stress = stressAt(m_fit, contactPressure(m_fit, m_out.interference->high));
        const Stress limit = part.metal.brittle ? part.metal.ultimate : part.metal.yield;
        return FitStress{stress, limit, stress > limit};
    }

    void speakOfStress(const Part& hub, const Part& shaft) {
        const auto speak = [&](const Part& part, const Given<FitStress>& at, const char* brittle,
                               const char* ductile) {
            if (at && at->over)
                remark(say(part.metal.brittle ? brittle : ductile,
                           {show(at->stress), part.metal.name, show(at->limit)}));
        };
        speak(hub, m_out.hubStress,
              PW_SAY("At the tightest the fit asks %1 of the hub (%2, ultimate %3): it may be cracked; look "
                     "before "
                     "you pull."),
              PW_SAY("At the tightest the fit asks %1 of the hub (%2, yield %3): it has given way, so it "
                     "grips less "
                     "than these figures say."));
        speak(
            shaft, m_out.shaftStress,
            PW_SAY("At the tightest the fit asks %1 of the shaft (%2, ultimate %3): it may be cracked; look "
                   "before "
                   "you pull."),
            PW_SAY(
                "At the tightest the fit asks %1 of the shaft (%2, yield %3): it has given way, so it grips "
                "less than these figures say."));
    }

    void takeStatedForce() {
        if (m_in.force->low < Force() || m_in.force->high < m_in.force->low) {
            wrong("force", say("A pull is more than nothing, the low end first."));
            return;
        }
        m_out.pullOfFit = m_out.pull;
        m_out.pull = m_in.force;
        m_out.pullShaftWarm.reset();
        m_out.from = PullFrom::Stated;
        assume(m_out.rust > 1 || m_job.heat.part.value_or(kRoom) > kRoom
                   ? say("pull of %1 as stated; rust and heat are not counted on top", {show(*m_in.force)})
                   : say("pull of %1 as stated", {show(*m_in.force)}));
        if (m_out.pullOfFit && m_out.pullOfFit->high > m_in.force->high)
            remark(say("The figures of the fit could ask for more than the force stated: %1.",
                       {show(*m_out.pullOfFit)}));
    }

    const job::Job& m_job;
    const job::Hub& m_in;
    HubForces m_out;
    PressFit m_fit;
    bool m_sound = true; ///< friction and rust make sense
};

} // namespace

HubForces hubForces(const job::Job& job) {
    if (!job.hub)
        return {};
    return Fitted(job).run();
}

Energy jumpEnergy(Force pull, Rate stiffness) {
    util::require(stiffness > Rate(), "jumpEnergy: nothing is stretched without a stiffness");
    return Energy::fromBase(pull.newton() * pull.newton() / (2 * stiffness.newtonPerMm()));
}

} // namespace pw::hub
