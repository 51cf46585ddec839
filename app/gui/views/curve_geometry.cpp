#include "app/gui/views/curve_geometry.h"

#include <algorithm>
#include <cmath>
#include <limits>

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

double LoadCurve::nearestFactor(double across, double up, double pxPerMm, double pxPerFactor) const {
    double best = 0, least = std::numeric_limits<double>::max();
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double ax = points[i - 1].deflectionMm * pxPerMm, ay = points[i - 1].factor * pxPerFactor;
        const double dx = points[i].deflectionMm * pxPerMm - ax, dy = points[i].factor * pxPerFactor - ay;
        const double length = dx * dx + dy * dy;
        const double t =
            length > 0 ? std::clamp(((across - ax) * dx + (up - ay) * dy) / length, 0.0, 1.0) : 0.0;
        const double far = std::hypot(ax + t * dx - across, ay + t * dy - up);
        if (far < least) {
            least = far;
            best = points[i - 1].factor + t * (points[i].factor - points[i - 1].factor);
        }
    }
    return best;
}

double LoadCurve::nextMark(double factor, bool above) const {
    double next = above ? lastFactor() : 0;
    for (const auto& mark : marks) {
        if (!mark.onCurve)
            continue;
        if (above && mark.factor > factor + 1e-9)
            next = std::min(next, mark.factor);
        else if (!above && mark.factor < factor - 1e-9)
            next = std::max(next, mark.factor);
    }
    return next;
}

double LoadCurve::bendShare(double factor) const {
    const double elastic = elasticMm();
    if (!(elastic > 0))
        return factor;
    const auto bent = deflectionAt(factor);
    return bent ? *bent / elastic : factor; // past folding only the solved shape is known
}

double LoadCurve::elasticMm() const {
    return !isEmpty() && points[1].factor > 0 ? points[1].deflectionMm / points[1].factor : 0;
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
    if (const auto full = curve.deflectionAt(1); full && curve.setMm)
        curve.restMm = std::max(0.0, *full - curve.elasticMm());
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
