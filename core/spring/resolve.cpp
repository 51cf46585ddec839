#include "core/spring/resolve.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

// Inside: N and mm.
namespace pw::spring {

namespace {

/// Typical commercial tolerance on a spring's force, EN 15800 (from memory).
constexpr double kNominal = 0.10;
/// Assumed free length over assembled where no rate is to be had, each on its safe side: short and stiff for
/// the force, long for the travel. Common practice, no published source.
constexpr double kFreeForForce = 1.25, kFreeForTravel = 1.8;
/// Two routes to the same rate may differ by so much before they contradict each other: 10 % of tolerance and
/// some reading error. Wire sizes come in to the fourth power, so they get more room.
constexpr double kRatesAgree = 0.15, kWireAgrees = 0.25;
/// Least gaps over solid length where the wire is not known. Common practice, no published source.
constexpr double kGapsOfSolid = 0.10;

struct Reading {
    double length;
    Range<double> force;
    double nominal;
};

Range<double> widened(double nominal) {
    return {nominal * (1 - kNominal), nominal * (1 + kNominal)};
}

/// A rate by one route, with the words for it.
struct Route {
    Range<double> rate;
    double nominal;
    double agrees;
    std::string words;
};

class Resolver {
public:
    Resolver(const job::Spring& spring, int index, units::System system) : m_in(spring), m_system(system) {
        m_out.field = std::string("springs[") + std::to_string(index) + "]";
        m_out.name = spring.name.empty() ? say("spring %1", {index + 1}) : spring.name;
        m_out.perStation = spring.perStation.value_or(1);
    }

    Resolved run() {
        readWire();
        readReadings();
        if (!findAssembled() || !findForce())
            return m_out;
        findSolid();
        m_out.known = true;
        return m_out;
    }

private:
    template<class Q>
    std::string show(Q value) const {
        return units::show(value, m_system);
    }
    std::string showLength(double mm) const { return show(Length::fromMm(mm)); }
    std::string showRate(double k) const { return show(Rate::fromNPerMm(k)); }

    void assume(const std::string& text) { m_out.assumptions.push_back(m_out.name + ": " + text); }
    void miss(const std::string& key, const std::string& text) {
        m_out.missing.push_back({m_out.field + "." + key, text});
    }
    void wrong(const std::string& key, const std::string& text) {
        m_out.problems.push_back({m_out.field + "." + key, text});
    }

    void readWire() {
        m_out.wireMaterial = m_in.wireMaterial.value_or("");
        if (!m_in.wire)
            return;
        m_out.wire = m_in.wire;
        if (m_in.coilOutside) {
            if (*m_in.coilOutside <= *m_in.wire * 2.0)
                wrong("coil_outside",
                      say("the coil must be more than two wires across (%1 over the outside of wire %2)",
                          {show(*m_in.coilOutside), show(*m_in.wire)}));
            else
                m_out.meanCoil = *m_in.coilOutside - *m_in.wire;
        }
        m_ends = endsFrom(m_in.ends);
        if (m_in.activeCoils)
            m_active = m_in.activeCoils;
        else if (m_in.totalCoils && m_ends)
            m_active = *m_in.totalCoils - deadCoils(*m_ends);
        else if (m_in.totalCoils) {
            m_active = *m_in.totalCoils - 2;
            assume(say("ends taken as closed, so two of the %1 coils do not work; say how the ends are made",
                       {units::number(*m_in.totalCoils)}));
        }
        if (m_active && *m_active <= 0) {
            wrong("active_coils",
                  say("a spring needs working coils; count them without the closed end coils"));
            m_active.reset();
        }
    }

    std::optional<Route> rateFromWire() {
        if (!m_out.wire || !m_out.meanCoil || !m_active)
            return std::nullopt;
        Stress g = kUsualShearModulus;
        std::string words;
        if (m_in.shearModulus) {
            g = *m_in.shearModulus;
        } else if (const auto wire = wireNamed(m_out.wireMaterial)) {
            g = Stress::fromMpa(wire->shearModulus);
            words = say("G %1 for %2", {show(g), say(wire->name.data())});
        } else {
            words = say("G %1 assumed (Shigley Table 10-5 runs from 77.2 to 82.7 GPa)", {show(g)});
        }
        const double k = rateOf(*m_out.wire, *m_out.meanCoil, *m_active, g).newtonPerMm();
        return Route{{k, k},
                     k,
                     kWireAgrees,
                     say("wire %1, mean coil %2, %3 active coils, %4",
                         {show(*m_out.wire), show(*m_out.meanCoil), units::number(*m_active), words})};
    }

    void readReadings() {
        for (const job::SpringReading& reading : m_in.loads) {
            const double low = reading.force.low.newton(), high = reading.force.high.newton();
            m_readings.push_back({reading.length.mm(),
                                  reading.force.isOne() ? widened(low) : Range<double>{low, high},
                                  (low + high) / 2});
            m_anyNominal = m_anyNominal || reading.force.isOne();
        }
        std::sort(m_readings.begin(), m_readings.end(),
                  [](const Reading& a, const Reading& b) { return a.length < b.length; });
    }

    bool findAssembled() {
        if (m_in.assembledLength) {
            m_out.assembled = *m_in.assembledLength;
        } else if (!m_in.loads.empty()) {
            m_out.assembled = m_in.loads.front().length;
        } else {
            miss(
                "assembled_length",
                say("how long %1 is in the pack, before squeezing: measure between its seats", {m_out.name}));
            return false;
        }
        return true;
    }

    void stand(double reference, Range<double> force, Range<double> steep, Range<double> gentle) {
        m_out.reference = Length::fromMm(reference);
        m_out.force = {Force::fromN(force.low), Force::fromN(force.high)};
        m_out.steep = {Rate::fromNPerMm(steep.low), Rate::fromNPerMm(steep.high)};
        m_out.gentle = {Rate::fromNPerMm(gentle.low), Rate::fromNPerMm(gentle.high)};
        // The soft spring through a low reading may well be the longer one.
        const double longest =
            std::max(reference + force.high / gentle.high, reference + force.low / gentle.low);
        m_out.freeForTravel = Length::fromMm(longest);
        if (m_in.freeLength && !m_out.rateAssumed)
            m_out.freeForTravel = std::max(m_out.freeForTravel, *m_in.freeLength);
    }

    /// Takes the first route, and lets the stiffest of those that contradict it set the high end.
    std::optional<Range<double>> settled(const std::vector<Route>& routes) {
        if (routes.empty())
            return std::nullopt;
        Range<double> rate = routes.front().rate;
        for (const Route& other : routes) {
            const double off = other.nominal / routes.front().nominal - 1;
            if (std::abs(off) <= other.agrees)
                continue;
            wrong("rate", say("%1: figures contradict each other: %2 from %3, but %4 from %5; the stiffer "
                              "one is taken for the force",
                              {m_out.name, showRate(routes.front().nominal), routes.front().words,
                               showRate(other.nominal), other.words}));
            rate.high = std::max(rate.high, other.rate.high);
        }
        return rate;
    }

    bool findForce() {
        const bool spread =
            m_readings.size() >= 2 && m_readings.back().length - m_readings.front().length > 1e-6;
        if (spread)
            return fromReadings();
        if (!m_readings.empty())
            return fromOneReading();
        return fromRateAndFreeLength();
    }

    /// Least squares through (length, force): slope with the sign of a rate, and the force at `at`.
    struct Line {
        double rate, force;
    };
    template<class Pick>
    Line lineThrough(double at, Pick pick) const {
        double n = 0, x = 0, y = 0, xx = 0, xy = 0;
        for (const Reading& r : m_readings) {
            const double dx = at - r.length, f = pick(r);
            n += 1, x += dx, y += f, xx += dx * dx, xy += dx * f;
        }
        const double rate = (n * xy - x * y) / (n * xx - x * x);
        return {rate, (y - rate * x) / n};
    }

    bool fromReadings() {
        const double at = m_readings.front().length;
        const Line low = lineThrough(at, [](const Reading& r) { return r.force.low; });
        const Line high = lineThrough(at, [](const Reading& r) { return r.force.high; });
        const Line mid = lineThrough(at, [](const Reading& r) { return r.nominal; });
        if (mid.rate <= 0 || low.rate <= 0 || high.rate <= 0) {
            wrong("loads", say("%1: the force must rise as the spring gets shorter; check which reading "
                               "belongs to which length",
                               {m_out.name}));
            return false;
        }
        if (m_anyNominal)
            assume(say("nominal forces taken 10 % either way"));
        for (const Reading& r : m_readings) {
            const double dx = at - r.length, f = mid.force + mid.rate * dx;
            if (f < r.force.low * (1 - 1e-9) || f > r.force.high * (1 + 1e-9))
                wrong("loads", say("%1: the reading at %2 lies off the straight line through the others (%3 "
                                   "read, %4 on the line); take it again",
                                   {m_out.name, showLength(r.length), show(Force::fromN(r.nominal)),
                                    show(Force::fromN(f))}));
        }
        std::vector<Route> routes = {{{std::min(low.rate, mid.rate), std::max(high.rate, mid.rate)},
                                      mid.rate,
                                      kRatesAgree,
                                      say("the readings")}};
        // Readings close together fix a rate badly, so a stated one contradicts them only when it misses a
        // range.
        if (m_in.rate) {
            const double k = m_in.rate->newtonPerMm(), span = m_readings.back().length - at;
            const Reading &shortest = m_readings.front(), &longest = m_readings.back();
            const bool meets = longest.force.low + k * span <= shortest.force.high &&
                               longest.force.high + k * span >= shortest.force.low;
            routes.push_back({{k, k}, k, meets ? 1e300 : kRatesAgree, say("the stated rate")});
        }
        if (const auto wire = rateFromWire())
            routes.push_back(*wire);
        const Range<double> steep = *settled(routes);
        stand(at, {low.force, high.force}, steep, {low.rate, high.rate});
        checkFreeLength(at + mid.force / mid.rate, mid.rate,
                        mid.force + mid.rate * (at - m_out.assembled.mm()));
        return true;
    }

    void checkFreeLength(double fromLine, double rate, double assembledForce) {
        if (!m_in.freeLength)
            return;
        const double off = std::abs(m_in.freeLength->mm() - fromLine) * rate;
        if (off > kRatesAgree * assembledForce)
            wrong("free_length", say("%1: figures contradict each other: a free length of %2 is given, but "
                                     "the forces say %3; the longer one is taken for the travel",
                                     {m_out.name, show(*m_in.freeLength), showLength(fromLine)}));
    }

    bool fromOneReading() {
        const Reading& r = m_readings.front();
        std::vector<Route> routes;
        // A nominal reading already carries its 10 %, and the rate goes with it.
        const auto scaled = [&](double k) { return m_anyNominal ? widened(k) : Range<double>{k, k}; };
        if (m_in.rate) {
            const double k = m_in.rate->newtonPerMm();
            routes.push_back({scaled(k), k, kRatesAgree, say("the stated rate")});
        }
        if (m_in.freeLength) {
            const double x = m_in.freeLength->mm() - r.length;
            if (x <= 0)
                wrong("free_length",
                      say("%1: the free length %2 must be more than the length of the reading, %3",
                          {m_out.name, show(*m_in.freeLength), showLength(r.length)}));
            else
                routes.push_back({{r.force.low / x, r.force.high / x},
                                  r.nominal / x,
                                  kRatesAgree,
                                  say("the reading and the free length %1", {show(*m_in.freeLength)})});
        }
        if (auto wire = rateFromWire()) {
            if (routes.empty())
                assume(say("rate %1 from %2", {showRate(wire->nominal), wire->words}));
            wire->rate = scaled(wire->nominal);
            routes.push_back(*wire);
        }
        if (m_anyNominal)
            assume(say("one nominal force of %1 taken as %2 (10 % either way)",
                       {show(Force::fromN(r.nominal)),
                        units::show(Range<Force>{Force::fromN(r.force.low), Force::fromN(r.force.high)},
                                    m_system)}));
        if (const auto rate = settled(routes)) {
            stand(r.length, r.force, *rate, *rate);
            return true;
        }
        const double base = std::max(m_out.assembled.mm(), r.length);
        const double forForce = kFreeForForce * base, forTravel = kFreeForTravel * base;
        const double x = forForce - r.length;
        m_out.rateAssumed = true;
        stand(r.length, r.force, {r.force.low / x, r.force.high / x}, {r.force.low / x, r.force.high / x});
        m_out.freeForTravel = Length::fromMm(forTravel);
        assume(say("no rate to be had: free length assumed %1 (1.25 x assembled, stiff) for the force and %2 "
                   "(1.8 x assembled, long) for the travel; a second reading settles it",
                   {showLength(forForce), showLength(forTravel)}));
        miss("loads", say("a second force of %1 at another length (push it on a scale), or its free length: "
                          "fixes the rate",
                          {m_out.name}));
        return true;
    }

    bool fromRateAndFreeLength() {
        std::vector<Route> routes;
        if (m_in.rate)
            routes.push_back({widened(m_in.rate->newtonPerMm()), m_in.rate->newtonPerMm(), kRatesAgree,
                              say("the stated rate")});
        if (auto wire = rateFromWire()) {
            if (routes.empty())
                assume(say("rate %1 from %2", {showRate(wire->nominal), wire->words}));
            wire->rate = widened(wire->nominal);
            routes.push_back(*wire);
        }
        const auto rate = settled(routes);
        if (!rate) {
            miss("loads",
                 say("the force of %1 at a length (the manual, or push one on a scale); or its rate and free "
                     "length; or wire, outside of coil and active coils with the free length",
                     {m_out.name}));
            return false;
        }
        if (!m_in.freeLength) {
            miss("free_length",
                 say("the length of %1 when nothing presses on it; or its force at a length", {m_out.name}));
            return false;
        }
        const double x = m_in.freeLength->mm() - m_out.assembled.mm();
        if (x <= 0) {
            wrong("free_length", say("%1: the free length %2 must be more than the assembled length %3",
                                     {m_out.name, show(*m_in.freeLength), show(m_out.assembled)}));
            return false;
        }
        assume(say("nominal figures taken 10 % either way"));
        stand(m_out.assembled.mm(), {rate->low * x, rate->high * x}, *rate, *rate);
        return true;
    }

    void findSolid() {
        if (m_in.solidLength) {
            m_out.solid = m_in.solidLength;
        } else if (m_out.wire && (m_in.totalCoils || m_active)) {
            const Ends ends = m_ends.value_or(Ends::Closed);
            const double total = m_in.totalCoils.value_or(m_active.value_or(0) + deadCoils(ends));
            m_out.solid = solidLength(*m_out.wire, total, ends);
            assume(m_ends
                       ? say("solid length %1 from %2 coils of %3 wire, ends %4",
                             {show(*m_out.solid), units::number(total), show(*m_out.wire), m_in.ends})
                       : say("solid length %1 from %2 coils of %3 wire, ends taken as closed and not ground",
                             {show(*m_out.solid), units::number(total), show(*m_out.wire)}));
        } else {
            miss("solid_length", say("the length of %1 with its coils touching: squeeze one in a vice and "
                                     "measure, or count all coils and measure the wire",
                                     {m_out.name}));
            return;
        }
        if (m_out.wire && m_out.meanCoil && m_active) {
            m_out.leastGaps = sumOfLeastGaps(*m_out.wire, *m_out.meanCoil, *m_active);
            m_out.gapsBasis =
                say("sum of least gaps n (0.0015 D\u00b2/d + 0.1 d) of EN 13906-1 (from memory)");
        } else {
            m_out.leastGaps = *m_out.solid * kGapsOfSolid;
            m_out.gapsBasis = say("a tenth of the solid length, common practice, no published source");
        }
        if (*m_out.solid >= m_out.assembled)
            wrong("solid_length",
                  say("%1: the solid length %2 is not under the assembled length %3; measure both again",
                      {m_out.name, show(*m_out.solid), show(m_out.assembled)}));
    }

    const job::Spring& m_in;
    units::System m_system;
    Resolved m_out;
    std::vector<Reading> m_readings;
    bool m_anyNominal = false;
    std::optional<double> m_active;
    std::optional<Ends> m_ends;
};

} // namespace

Range<Force> Resolved::forceAt(Length length) const {
    const Length shorter = reference - length;
    const Range<Rate>& rate = shorter >= Length() ? steep : gentle;
    const Force none;
    return {std::max(none, force.low + rate.low * shorter), std::max(none, force.high + rate.high * shorter)};
}

units::Energy Resolved::energyAt(Length length) const {
    const double f = forceAt(length).high.newton();
    if (f <= 0)
        return {};
    // A rate assumed stiff for the force would give too little energy: take the long travel instead.
    if (rateAssumed)
        return units::Energy::fromBase(f * std::max(0.0, (freeForTravel - length).mm()) / 2);
    return units::Energy::fromBase(f * f / (2 * gentle.high.newtonPerMm()));
}

Resolved resolve(const job::Spring& spring, int index, units::System system) {
    return Resolver(spring, index, system).run();
}

} // namespace pw::spring
