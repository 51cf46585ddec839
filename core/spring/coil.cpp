#include "core/spring/coil.h"

#include "core/util/say.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <numbers>
#include <string>

namespace pw::spring {

using std::numbers::pi;

std::optional<Ends> endsFrom(std::string_view words) {
    if (words == "closed ground")
        return Ends::ClosedGround;
    if (words == "closed")
        return Ends::Closed;
    if (words == "plain ground")
        return Ends::PlainGround;
    if (words == "plain")
        return Ends::Plain;
    return std::nullopt;
}

Rate rateOf(Length wire, Length meanCoil, double activeCoils, Stress shearModulus) {
    const double d = wire.mm(), mean = meanCoil.mm();
    return Rate::fromNPerMm(shearModulus.mpa() * d * d * d * d / (8 * mean * mean * mean * activeCoils));
}

double wahlFactor(double index) {
    return (4 * index - 1) / (4 * index - 4) + 0.615 / index;
}

double bergstraesserFactor(double index) {
    return (4 * index + 2) / (4 * index - 3);
}

Stress shearStress(Force force, Length wire, Length meanCoil) {
    const double d = wire.mm();
    return Stress::fromMpa(bergstraesserFactor(meanCoil / wire) * 8 * force.newton() * meanCoil.mm() /
                           (pi * d * d * d));
}

Force forceAtUncorrectedStress(Stress stress, Length wire, Length meanCoil) {
    const double d = wire.mm();
    return Force::fromN(pi * stress.mpa() * d * d * d / (8 * meanCoil.mm()));
}

Length deflectionPerCoil(Stress stress, Length wire, Length meanCoil, Stress shearModulus) {
    return Length::fromMm(pi * stress.mpa() * meanCoil.mm() * meanCoil.mm() /
                          (shearModulus.mpa() * wire.mm()));
}

double deadCoils(Ends ends) {
    switch (ends) {
    case Ends::ClosedGround:
    case Ends::Closed:
        return 2;
    case Ends::PlainGround:
        return 1;
    case Ends::Plain:
        break;
    }
    return 0;
}

Length solidLength(Length wire, double totalCoils, Ends ends) {
    const bool ground = ends == Ends::ClosedGround || ends == Ends::PlainGround;
    return wire * (ground ? totalCoils : totalCoils + 1);
}

Length sumOfLeastGaps(Length wire, Length meanCoil, double activeCoils) {
    return Length::fromMm(activeCoils *
                          (0.0015 * meanCoil.mm() * meanCoil.mm() / wire.mm() + 0.1 * wire.mm()));
}

Stress Wire::strength(Length wire) const {
    return Stress::fromMpa(a / std::pow(wire.mm(), m));
}

std::optional<Wire> wireNamed(std::string_view name) {
    struct Entry {
        std::string_view astm;
        Wire wire;
    };
    // Shear moduli: the row for the wire sizes of packs like these (over 3 mm).
    static constexpr std::array kWires = {
        Entry{"a228", {PW_SAY("music wire"), 2211, 0.145, 80000, 0.45}},
        Entry{"a229", {PW_SAY("oil-tempered wire"), 1855, 0.187, 77200, 0.50}},
        Entry{"a227", {PW_SAY("hard-drawn wire"), 1783, 0.190, 78600, 0.45}},
        Entry{"a232", {PW_SAY("chrome-vanadium wire"), 2005, 0.168, 77200, 0.50}},
        Entry{"a401", {PW_SAY("chrome-silicon wire"), 1974, 0.108, 77200, 0.50}},
    };
    std::string low;
    for (const char c : name)
        low += c == '-' ? ' ' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    for (const Entry& entry : kWires) {
        std::string plain(entry.wire.name);
        std::replace(plain.begin(), plain.end(), '-', ' ');
        const std::string shortName = plain.substr(0, plain.rfind(' '));
        if (low.find(entry.astm) != std::string::npos || low == plain || low == shortName)
            return entry.wire;
    }
    return std::nullopt;
}

} // namespace pw::spring
