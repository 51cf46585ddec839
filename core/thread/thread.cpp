#include "core/thread/thread.h"

#include "core/thread/series.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <cmath>
#include <numbers>

// D major diameter, P pitch, E pitch diameter, K minor diameter; s screw, n nut. mm inside.
namespace pw::thread {

namespace {

constexpr double kPi = std::numbers::pi;

Length mm(double value) {
    return Length::fromMm(value);
}

Area circle(double diameter) {
    return Area::fromMm2(kPi / 4 * diameter * diameter);
}

double tanFlank(const Thread& t) {
    return std::tan(flankAngle(t).radian());
}

/// ISO 2904: clearance at the crest of a trapezoidal thread, by pitch.
double trapezoidalClearance(double pitch) {
    return pitch < 2 ? 0.15 : pitch < 6 ? 0.25 : pitch < 14 ? 0.5 : 1.0;
}

/// ASME B1.5, class 2G, inch: allowance and tolerance of the pitch diameter, and the gap at the root.
struct AcmeLimits {
    double pitchAllowance, pitchTolerance, rootClearance;
};

AcmeLimits acmeLimits(double diameter, double pitch) {
    return {0.008 * std::sqrt(diameter), 0.006 * std::sqrt(diameter) + 0.030 * std::sqrt(pitch),
            pitch < 0.0999 ? 0.010 : 0.020};
}

/// The least pitch diameter of an ACME screw, inch.
double acmeScrewPitchLeast(double diameter, double pitch) {
    const AcmeLimits limits = acmeLimits(diameter, pitch);
    return diameter - pitch / 2 - limits.pitchAllowance - limits.pitchTolerance;
}

double inchPitch(const Thread& t) {
    return t.pitch.inch();
}

StripLimits unifiedLimits(const Thread& t) {
    const double d = t.diameter.inch(), p = inchPitch(t);
    // The tolerance of the pitch diameter supposes an engagement: the diameter for the coarse and fine
    // series, nine pitches for the others. ASME B1.1-2003 section 5 (from memory; gives the printed limits of
    // 3/4-16).
    const bool byDiameter = t.series == "UNC" || t.series == "UNF";
    const double engagement = byDiameter ? d : 9 * p;
    const double tolerance =
        0.0015 * std::cbrt(d) + 0.0015 * std::sqrt(engagement) + 0.015 * std::cbrt(p * p);
    const double allowance = 0.300 * tolerance;
    const double pitchDiameterBasic = pitchDiameter(t).inch();
    double minorTolerance = p > 0.25 ? 0.15 * p : 0.25 * p - 0.4 * p * p;
    if (d < 0.2499)
        minorTolerance =
            std::min(0.394 * p, std::max(minorTolerance, 0.05 * std::cbrt(p * p) + 0.03 * p / d - 0.002));
    return {Length::fromInch(minorDiameter(t).inch() + minorTolerance),
            Length::fromInch(pitchDiameterBasic + 1.300 * tolerance),
            Length::fromInch(d - allowance - 0.060 * std::cbrt(p * p)),
            Length::fromInch(pitchDiameterBasic - allowance - tolerance),
            say("classes 2A and 2B, ASME B1.1")};
}

/// ISO 965-1 takes the tolerance at the geometric mean of the diameter's step.
double stepMean(double diameter) {
    constexpr double kSteps[] = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};
    for (std::size_t i = 1; i < std::size(kSteps); ++i)
        if (diameter <= kSteps[i])
            return std::sqrt(kSteps[i - 1] * kSteps[i]);
    return diameter;
}

StripLimits metricLimits(const Thread& t) {
    const double d = t.diameter.mm(), p = t.pitch.mm();
    // ISO 965-1, formulas in micrometres (from memory).
    const double allowance = (15 + 11 * p) / 1000;
    const double screwPitch = 90 * std::pow(p, 0.4) * std::pow(stepMean(d), 0.1) / 1000;
    const double nutPitch = 1.32 * screwPitch;
    const double screwMajor = (180 * std::cbrt(p * p) - 3.15 / std::sqrt(p)) / 1000;
    const double nutMinor = (p < 1 ? 433 * p - 190 * std::pow(p, 1.22) : 230 * std::pow(p, 0.7)) / 1000;
    return {mm(minorDiameter(t).mm() + nutMinor), mm(pitchDiameter(t).mm() + nutPitch),
            mm(d - allowance - screwMajor), mm(pitchDiameter(t).mm() - allowance - screwPitch),
            say("6g and 6H, ISO 965-1")};
}

StripLimits whitworthLimits(const Thread& t) {
    const double d = t.diameter.inch(), p = inchPitch(t), perInch = 1 / p;
    // BS 84 medium class, engagement of one diameter (from memory).
    const double tolerance = 0.002 * std::cbrt(d) + 0.003 * std::sqrt(d) + 0.005 * std::sqrt(p);
    const double minorTolerance = 0.2 * p + (perInch > 25 ? 0.004 : perInch > 21 ? 0.005 : 0.007);
    return {Length::fromInch(minorDiameter(t).inch() + minorTolerance),
            Length::fromInch(pitchDiameter(t).inch() + tolerance),
            Length::fromInch(d - tolerance - 0.01 * std::sqrt(p)),
            Length::fromInch(pitchDiameter(t).inch() - tolerance), say("medium class, BS 84 (from memory)")};
}

StripLimits acmeStripLimits(const Thread& t) {
    const double d = t.diameter.inch(), p = inchPitch(t);
    const AcmeLimits limits = acmeLimits(d, p);
    return {minorDiameter(t), Length::fromInch(d - p / 2 + limits.pitchTolerance),
            Length::fromInch(d - std::max(0.05 * p, 0.005)), Length::fromInch(acmeScrewPitchLeast(d, p)),
            say("class 2G, ASME B1.5")};
}

/// Area over the engagement at a cylinder where the shorn thread is `width` wide, once a pitch.
Area shearArea(const Thread& t, Length engagement, double cylinder, double width) {
    util::require(engagement.mm() >= 0, "thread: negative engagement");
    return Area::fromMm2(kPi * engagement.mm() * cylinder / t.pitch.mm() * std::max(0.0, width));
}

} // namespace

Length pitchDiameter(const Thread& t) {
    const double d = t.diameter.mm(), p = t.pitch.mm();
    switch (t.form) {
    case Form::Unified:
    case Form::Metric:
        return mm(d - 3 * std::sqrt(3.0) / 8 * p);
    case Form::Whitworth:
        return mm(d - 0.640327 * p);
    case Form::Acme:
    case Form::Trapezoidal:
        return mm(d - p / 2);
    }
    return {};
}

Length minorDiameter(const Thread& t) {
    const double d = t.diameter.mm(), p = t.pitch.mm();
    switch (t.form) {
    case Form::Unified:
    case Form::Metric:
        return mm(d - 5 * std::sqrt(3.0) / 8 * p);
    case Form::Whitworth:
        return mm(d - 1.280654 * p);
    case Form::Acme:
    case Form::Trapezoidal:
        return mm(d - p);
    }
    return {};
}

Length rootDiameter(const Thread& t) {
    const double d = t.diameter.mm(), p = t.pitch.mm();
    switch (t.form) {
    case Form::Unified:
        return mm(d - 1.299038 * p);
    case Form::Metric:
        return mm(d - 1.226869 * p);
    case Form::Whitworth:
        return mm(d - 1.280654 * p);
    case Form::Acme: {
        const AcmeLimits limits = acmeLimits(t.diameter.inch(), inchPitch(t));
        return mm(d - p) - Length::fromInch(limits.rootClearance + 1.5 * limits.pitchTolerance);
    }
    case Form::Trapezoidal:
        return mm(d - p - 2 * trapezoidalClearance(p));
    }
    return {};
}

Area rootArea(const Thread& t) {
    return circle(rootDiameter(t).mm());
}

Area tensileStressArea(const Thread& t) {
    switch (t.form) {
    case Form::Unified:
        return circle(t.diameter.mm() - 0.974279 * t.pitch.mm());
    case Form::Acme: {
        const double pitchLeast = acmeScrewPitchLeast(t.diameter.inch(), inchPitch(t)) * units::kMmPerInch;
        return circle((pitchLeast + rootDiameter(t).mm()) / 2);
    }
    case Form::Metric:
    case Form::Whitworth:
    case Form::Trapezoidal:
        return circle((pitchDiameter(t).mm() + rootDiameter(t).mm()) / 2);
    }
    return {};
}

Angle flankAngle(const Thread& t) {
    switch (t.form) {
    case Form::Unified:
    case Form::Metric:
        return Angle::fromDegree(30);
    case Form::Whitworth:
        return Angle::fromDegree(27.5);
    case Form::Acme:
        return Angle::fromDegree(14.5);
    case Form::Trapezoidal:
        return Angle::fromDegree(15);
    }
    return {};
}

Angle leadAngle(const Thread& t) {
    // An ACME screw is looked at where it carries, at its least pitch diameter; the steeper helix turns back
    // easier.
    const double diameter = t.form == Form::Acme
                                ? acmeScrewPitchLeast(t.diameter.inch(), inchPitch(t)) * units::kMmPerInch
                                : pitchDiameter(t).mm();
    return Angle::fromRadian(std::atan2(t.lead().mm(), kPi * diameter));
}

Length tappingDrill(const Thread& t) {
    // Depth of a full thread on the diameter, of which three quarters are cut.
    const double full = t.form == Form::Whitworth ? 1.280654 : 1.299038;
    switch (t.form) {
    case Form::Metric: {
        // Half a step goes to the even tenth: gives the printed 6.8 for M8 and 10.2 for M12.
        const double tenths = (t.diameter.mm() - t.pitch.mm()) * 10;
        return mm(std::nearbyint(std::round(tenths * 1000) / 1000) / 10);
    }
    case Form::Unified:
    case Form::Whitworth: {
        const double inches = t.diameter.inch() - 0.75 * full * inchPitch(t);
        return Length::fromInch(t.diameter.inch() < 0.2499 ? inches : std::round(inches * 64) / 64);
    }
    case Form::Acme:
    case Form::Trapezoidal:
        return minorDiameter(t);
    }
    return {};
}

StripLimits stripLimits(const Thread& t) {
    switch (t.form) {
    case Form::Unified:
        return unifiedLimits(t);
    case Form::Metric:
        return metricLimits(t);
    case Form::Whitworth:
        return whitworthLimits(t);
    case Form::Acme:
        return acmeStripLimits(t);
    case Form::Trapezoidal:
        return {minorDiameter(t), pitchDiameter(t), t.diameter, pitchDiameter(t),
                say("basic sizes, ISO 2904")};
    }
    return {};
}

Area screwShearArea(const Thread& t, Length engagement) {
    const StripLimits limits = stripLimits(t);
    const double nutMinor = limits.nutMinorMost.mm();
    return shearArea(t, engagement, nutMinor,
                     t.pitch.mm() / 2 + (limits.screwPitchLeast.mm() - nutMinor) * tanFlank(t));
}

Area nutShearArea(const Thread& t, Length engagement) {
    const StripLimits limits = stripLimits(t);
    const double screwMajor = limits.screwMajorLeast.mm();
    return shearArea(t, engagement, screwMajor,
                     t.pitch.mm() / 2 + (screwMajor - limits.nutPitchMost.mm()) * tanFlank(t));
}

} // namespace pw::thread
