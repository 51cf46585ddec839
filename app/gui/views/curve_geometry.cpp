#include "app/gui/views/curve_geometry.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

std::optional<double> LoadCurve::deflectionAt(double factor) const {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const auto& a = points[i - 1];
        const auto& b = points[i];
        if (factor <= b.factor + 1e-9) {
            const double way = b.factor - a.factor;
            return way > 0 ? a.deflectionMm + (b.deflectionMm - a.deflectionMm) * (factor - a.factor) / way
                           : b.deflectionMm;
        }
    }
    return {};
}

std::optional<double> LoadCurve::factorAt(double deflectionMm) const {
    for (std::size_t i = 1; i < points.size(); ++i) {
        const auto& a = points[i - 1];
        const auto& b = points[i];
        if (deflectionMm <= b.deflectionMm) {
            const double way = b.deflectionMm - a.deflectionMm;
            return way > 0 ? a.factor + (b.factor - a.factor) * (deflectionMm - a.deflectionMm) / way
                           : b.factor;
        }
    }
    return {};
}

LoadCurve loadCurve(const engine::Report& report) {
    LoadCurve curve;
    curve.points = report.plate.curve;
    if (report.load.total)
        curve.designN = report.load.total->high.newton();
    if (curve.isEmpty())
        return curve;
    const auto mark = [&](CurveMark::Kind kind, double factor) {
        const auto at = curve.deflectionAt(factor);
        curve.marks.push_back({kind, factor, at.value_or(curve.points.back().deflectionMm), at.has_value()});
    };
    mark(CurveMark::Kind::Design, 1);
    mark(CurveMark::Kind::Proof, kProofFactor);
    if (report.plate.firstYieldFactor)
        mark(CurveMark::Kind::Yield, *report.plate.firstYieldFactor);
    if (report.plate.collapseFactor)
        mark(CurveMark::Kind::Folding, *report.plate.collapseFactor);
    std::ranges::stable_sort(curve.marks, {}, &CurveMark::factor);
    if (report.plate.setMm && *report.plate.setMm >= 0.005)
        curve.setMm = *report.plate.setMm;
    curve.mostMm = 0;
    for (const auto& p : curve.points) {
        curve.mostFactor = std::max(curve.mostFactor, p.factor);
        curve.mostMm = std::max(curve.mostMm, p.deflectionMm);
    }
    for (const auto& m : curve.marks)
        curve.mostFactor = std::max(curve.mostFactor, m.factor);
    curve.mostFactor *= 1.06;
    curve.mostMm = std::max(curve.mostMm, 1e-6) * 1.02;
    return curve;
}

double roundStep(double most, int parts) {
    if (!(most > 0) || parts < 1)
        return 1;
    const double decade = std::pow(10.0, std::floor(std::log10(most / parts)));
    for (const double step : {1.0, 2.0, 5.0, 10.0})
        if (most / (step * decade) <= parts + 1e-9)
            return step * decade;
    return 10 * decade;
}

} // namespace pw::gui
