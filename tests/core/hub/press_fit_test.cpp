#include "core/hub/press_fit.h"

#include "tests/support/chance.h"
#include "tests/support/csv.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw::hub;
using pw::testing::Chance;

namespace {

constexpr int kTries = 200;
/// Same formula, other order of operations.
constexpr double kRounding = 1e-12;

PressFit steelOnSteel(double shaft, double bore, double outside) {
    const Stress e = Stress::fromMpa(210000);
    return {Length::fromMm(shaft), Length::fromMm(bore), Length::fromMm(outside), e, e, 0.3, 0.3};
}

PressFit any(Chance& chance) {
    PressFit fit;
    fit.shaft = Length::fromMm(chance.between(5, 200));
    fit.shaftBore = fit.shaft * (chance.between(0, 1) < 0.3 ? 0 : chance.between(0.05, 0.9));
    fit.outside = fit.shaft * chance.between(1.1, 4);
    fit.hubE = Stress::fromMpa(chance.between(60000, 215000));
    fit.shaftE = Stress::fromMpa(chance.between(60000, 215000));
    fit.hubNu = chance.between(0.2, 0.36);
    fit.shaftNu = chance.between(0.2, 0.36);
    return fit;
}

// Rows of tests/reference/press_fits.csv; each names its book.
TEST(PressFit, MeetsTheHandbooksExamples) {
    std::map<std::string, std::function<double()>> ours;
    // Ugural: bronze bush 40/60 in a steel ring of 120, 0.05 mm on the radius.
    const PressFit ugural{Length::fromMm(60),
                          Length::fromMm(40),
                          Length::fromMm(120),
                          Stress::fromMpa(210000.),
                          Stress::fromMpa(105000.),
                          0.3,
                          0.3};
    ours["PF-U-b2"] = [&] {
        return shaftHoopStress(ugural, contactPressure(ugural, Length::fromMm(0.1))).mpa();
    };
    // Mott 13-2: bronze bush 2.0/2.5 in a steel sleeve of 3.5 in.
    const PressFit mott{Length::fromInch(2.5),
                        Length::fromInch(2),
                        Length::fromInch(3.5),
                        Stress::fromPsi(30e6),
                        Stress::fromPsi(17e6),
                        0.27,
                        0.27};
    const Stress p = contactPressure(mott, Length::fromInch(0.0032));
    ours["PF-M-p"] = [&] { return p.ksi() * 1000; };
    ours["PF-M-so"] = [&] { return hubHoopStress(mott, p).ksi() * 1000; };
    ours["PF-M-si"] = [&] { return shaftHoopStress(mott, p).ksi() * 1000; };
    // Brown, eq. (3.15): solid shaft of radius 2 in, hub of 3 in, 0.0005 in on the radius.
    const PressFit brown{Length::fromInch(4),
                         Length(),
                         Length::fromInch(6),
                         Stress::fromPsi(30e6),
                         Stress::fromPsi(30e6),
                         0.3,
                         0.3};
    ours["PF-solid"] = [&] { return contactPressure(brown, Length::fromInch(0.001)).ksi() * 1000; };
    std::size_t rows = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/press_fits.csv")) {
        const auto found = ours.find(row.at("id"));
        if (found == ours.end())
            continue;
        ++rows;
        const double figure = found->second();
        // Printed to four figures; recomputed to seven.
        if (!row.at("published").empty()) {
            EXPECT_NEAR(figure, std::stod(row.at("published")), 5e-4 * std::abs(figure)) << row.at("id");
        }
        EXPECT_NEAR(figure, std::stod(row.at("recomputed")), 1e-6 * std::abs(figure)) << row.at("id");
    }
    EXPECT_EQ(rows, ours.size());
}

// PF-F: mu p pi d L.
TEST(PressFit, SlipsAtFrictionTimesPressureTimesFace) {
    const Force slip = slipForce(Length::fromMm(50), Length::fromMm(40), Stress::fromMpa(30), 0.12);
    EXPECT_NEAR(slip.newton(), 0.12 * 30 * std::numbers::pi * 50 * 40, 1e-9);
}

/// A ring in plane stress by stepping outward from a free surface: equilibrium d(sr)/dr = (st - sr)/r and
/// Hooke's law, nothing else. Scaled to the pressure at the other surface.
struct Ring {
    double E, nu, radial = 0, u = 1;

    void step(double& r, double h) {
        const auto slope = [this](double at, double s, double w) {
            const double hoop = E * w / at + nu * s;
            return std::pair{(hoop - s) / at, (1 - nu * nu) / E * s - nu * w / at};
        };
        const auto [a1, b1] = slope(r, radial, u);
        const auto [a2, b2] = slope(r + h / 2, radial + h / 2 * a1, u + h / 2 * b1);
        const auto [a3, b3] = slope(r + h / 2, radial + h / 2 * a2, u + h / 2 * b2);
        const auto [a4, b4] = slope(r + h, radial + h * a3, u + h * b3);
        radial += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
        u += h / 6 * (b1 + 2 * b2 + 2 * b3 + b4);
        r += h;
    }
};

struct AtFit {
    double moved, hoop, hoopAtFree;
};

AtFit stepped(double E, double nu, double free, double fit, double pressure) {
    constexpr int kSteps = 4000;
    Ring ring{E, nu};
    double r = free;
    if (free <= 0) { // round a solid middle both stresses are alike
        r = fit * 1e-3;
        ring.u = r;
        ring.radial = E / (1 - nu);
    }
    const double hoopAtFree = E * ring.u / r + nu * ring.radial, h = (fit - r) / kSteps;
    for (int i = 0; i < kSteps; ++i)
        ring.step(r, h);
    const double scale = -pressure / ring.radial;
    return {scale * ring.u, scale * (E * ring.u / fit + nu * ring.radial), scale * hoopAtFree};
}

/// Fourth-order steps, each at most 1/1000 of the radius.
constexpr double kStepped = 1e-7;

TEST(PressFit, BothPartsMeetWhereThePressureIsTheSame) {
    Chance chance(20240611);
    for (int i = 0; i < kTries; ++i) {
        const PressFit fit = any(chance);
        const double delta = fit.shaft.mm() * chance.between(1e-4, 2e-3);
        const Stress p = contactPressure(fit, Length::fromMm(delta));
        ASSERT_GT(p.mpa(), 0);
        const double r = fit.shaft.mm() / 2;
        const AtFit hub = stepped(fit.hubE.mpa(), fit.hubNu, fit.outside.mm() / 2, r, p.mpa());
        const AtFit shaft = stepped(fit.shaftE.mpa(), fit.shaftNu, fit.shaftBore.mm() / 2, r, p.mpa());
        // Compatibility: hub out, shaft in, together half the interference on the diameter.
        EXPECT_NEAR(hub.moved - shaft.moved, delta / 2, kStepped * delta) << i;
        // Hoop stresses that go with it.
        EXPECT_NEAR(hubHoopStress(fit, p).mpa(), hub.hoop, kStepped * hub.hoop) << i;
        EXPECT_NEAR(shaftHoopStress(fit, p).mpa(), shaft.hoop, -kStepped * shaft.hoop) << i;
        // Von Mises: hoop and -p at the hub's bore; at the shaft's bore the hoop alone, in a solid shaft p
        // both ways.
        const double mises = std::sqrt(hub.hoop * hub.hoop + hub.hoop * p.mpa() + p.mpa() * p.mpa());
        EXPECT_NEAR(hubMisesStress(fit, p).mpa(), mises, 1e-6 * mises) << i;
        EXPECT_NEAR(shaftMisesStress(fit, p).mpa(), -shaft.hoopAtFree,
                    1e-6 * p.mpa() - 1e-6 * shaft.hoopAtFree)
            << i;
    }
}

TEST(PressFit, AFineBoreHoldsAsASolidShaftButItsEdgeBearsTwice) {
    Chance chance(20240612);
    for (int i = 0; i < kTries; ++i) {
        PressFit fit = any(chance);
        const Length delta = fit.shaft * 1e-3;
        fit.shaftBore = {};
        const Stress solid = contactPressure(fit, delta);
        fit.shaftBore = fit.shaft * 1e-6;
        EXPECT_NEAR(contactPressure(fit, delta) / solid, 1, 1e-9) << i;
        EXPECT_NEAR(shaftMisesStress(fit, solid) / solid, 2, 1e-9) << i; // a hole in an evenly pressed disc
    }
}

TEST(PressFit, SizesScaleAwayAndStiffnessGoesThrough) {
    Chance chance(20240613);
    for (int i = 0; i < kTries; ++i) {
        const PressFit fit = any(chance);
        const Length delta = fit.shaft * 1e-3;
        const Stress p = contactPressure(fit, delta);
        const double k = chance.between(0.1, 10);
        PressFit larger = fit;
        larger.shaft = fit.shaft * k, larger.shaftBore = fit.shaftBore * k, larger.outside = fit.outside * k;
        EXPECT_NEAR(contactPressure(larger, delta * k) / p, 1, kRounding) << i;
        PressFit stiffer = fit;
        stiffer.hubE = fit.hubE * k, stiffer.shaftE = fit.shaftE * k;
        EXPECT_NEAR(contactPressure(stiffer, delta) / p, k, k * kRounding) << i;
        EXPECT_NEAR(contactPressure(fit, delta * k) / p, k, k * kRounding) << i;
    }
}

TEST(PressFit, ALooseFitPressesNowhere) {
    const PressFit fit = steelOnSteel(50, 0, 100);
    EXPECT_EQ(contactPressure(fit, Length()), Stress());
    EXPECT_EQ(contactPressure(fit, Length::fromMm(-0.1)), Stress());
}

TEST(PressFit, AHubInsideItsShaftIsABug) {
    EXPECT_FALSE(steelOnSteel(50, 0, 50).isSound());
    EXPECT_FALSE(steelOnSteel(50, 50, 100).isSound());
    EXPECT_FALSE(steelOnSteel(50, -1, 100).isSound());
    EXPECT_ANY_THROW(contactPressure(steelOnSteel(50, 0, 40), Length::fromMm(0.1)));
}

} // namespace
