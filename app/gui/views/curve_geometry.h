#pragma once

#include "app/engine/report.h"

#include <optional>
#include <QPointF>
#include <QRectF>
#include <vector>

/// Load against bend, without painting.
namespace pw::gui {

/// One thing marked on the curve.
struct CurveMark {
    enum class Kind { Design, Proof, Yield, Folding };
    Kind kind = Kind::Design;
    double factor = 0;       ///< load over design load
    double deflectionMm = 0; ///< on the curve
    bool onCurve = true;     ///< false: past its end
    bool operator==(const CurveMark&) const = default;
};

/// The bend is the mean lift of the loaded places (the stations) against the centre's bearing.
struct LoadCurve {
    std::vector<engine::PlateReport::CurvePoint> points;
    double designN = 0;                ///< 0: not known, loads are then shown as factors
    std::vector<CurveMark> marks;      ///< by rising load
    std::optional<double> setMm;       ///< of the design load, anywhere, when there is any to see
    std::optional<double> restMm;      ///< what of it the curve's own places keep, for drawing it let go
    double mostFactor = 1, mostMm = 1; ///< the plot's ends
    bool isEmpty() const { return points.size() < 2; }
    /// Deflection at a load, in straight lines between the points; nothing past the end.
    std::optional<double> deflectionAt(double factor) const;
    /// The other way.
    std::optional<double> factorAt(double deflectionMm) const;
    /// Load of the place on the curve that is nearest to a place on the screen: `across` px along the bend,
    /// `up` px along the load, from where both are nothing.
    double nearestFactor(double across, double up, double pxPerMm, double pxPerFactor) const;
    /// The next mark (or end) above or below a load.
    double nextMark(double factor, bool above) const;
    /// Bend at a load over what it would be at full load if nothing yielded (the start of the curve, drawn
    /// out). By this the solved elastic shape is drawn larger or smaller; past yield it is that shape still.
    double bendShare(double factor) const;
    /// mm a full load where nothing yields yet; 0 when it is not known. Letting go runs back by it.
    double elasticMm() const;
    double lastFactor() const { return points.empty() ? 0 : points.back().factor; }
};

/// The load of proving over the design load. MODEL: proof load.
inline constexpr double kProofFactor = 1.25;

LoadCurve loadCurve(const engine::Report& report);

/// Round steps (1, 2 or 5 times a power of ten) that cut `most` into at most `parts`.
double roundStep(double most, int parts);

} // namespace pw::gui
