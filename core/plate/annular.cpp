#include "core/plate/annular.h"

#include "core/util/require.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

// Letters: y deflection, theta slope, M radial moment, T = r Q, h = theta' + theta/r, s = ln(r / r_i).
// A piece is walked outward from r_i, so s >= 0 and every function below is a sum of positive terms: nothing
// cancels, however narrow the ring.
namespace pw::plate {

namespace {

constexpr double kTwoPi = 2.0 * std::numbers::pi;

/// Integrals from 0 to s, and once more from 0 to s.
struct Growth {
    double e = 0, e1 = 0; ///< of exp(2s)
    double a = 0, a1 = 0; ///< of s exp(2s)
    double b = 0, b1 = 0; ///< of exp(2s) ((exp(2s) - 1)/2 - s)
    double g = 0;         ///< (exp(2s) - 1)/2 - s itself
};

Growth growthAt(double s) {
    Growth sum;
    if (s <= 0)
        return sum;
    double twoTerm = 1, fourTerm = 1; // (2s)^n / n!, (4s)^n / n!
    for (int n = 0; n < 2000; ++n) {
        const double m = n;
        const double e = twoTerm * s / (m + 1), a = twoTerm * s * s / (m + 2);
        sum.e += e;
        sum.e1 += e * s / (m + 2);
        sum.a += a;
        sum.a1 += a * s / (m + 3);
        double b = 0;
        if (n >= 2) {
            // 2^n (2^n - 1 - n) / (2 n!) s^n; the bracket is exact in doubles while it matters.
            const double c = n < 50 ? twoTerm * (std::ldexp(1.0, n) - 1.0 - m) / 2 : fourTerm / 2;
            b = c * s / (m + 1);
            sum.b += b;
            sum.b1 += b * s / (m + 2);
            sum.g += twoTerm / 2;
        }
        if (n > 4 && b <= 1e-18 * sum.b && a <= 1e-18 * sum.a)
            break;
        twoTerm *= 2 * s / (m + 1);
        fourTerm *= 4 * s / (m + 1);
    }
    return sum;
}

struct State {
    double y = 0, theta = 0, moment = 0, t = 0;
};

using Piece = AnnularSolution::Piece;

/// The state at r, from the state at the piece's inner end.
State walk(const Piece& piece, double nu, double r) {
    const double d = piece.rigidity, q = piece.pressure, t = piece.shearTimesRadius;
    State end;
    if (piece.from ==
        0) { // middle of a solid plate; the reference radius of the logarithm is the piece's own end
        end.y = piece.deflection;
        end.t = t - q * r * r / 2;
        const double log = std::log(r / piece.to);
        const double point = t == 0 || r == 0 ? 0 : t / d * r / 2 * (log - 0.5);
        end.theta = piece.slope * r + point - q * r * r * r / (16 * d);
        end.y += piece.slope * r * r / 2 + (t == 0 || r == 0 ? 0 : t / d * r * r / 4 * (log - 1)) -
                 q * r * r * r * r / (64 * d);
        const double h = 2 * piece.slope + (t == 0 ? 0 : t / d * log) - q * r * r / (4 * d);
        const double thetaOverR = piece.slope + (t == 0 ? 0 : t / d / 2 * (log - 0.5)) - q * r * r / (16 * d);
        end.moment = d * (h - (1 - nu) * thetaOverR);
        return end;
    }
    const double ri = piece.from, s = std::log1p((r - ri) / ri);
    const Growth f = growthAt(s);
    const double h = piece.moment / d + (1 - nu) * piece.slope / ri;
    const double square = ri * ri, half = q * square * square / (2 * d);
    const double rTheta = ri * piece.slope + square * (h * f.e + t / d * f.a) - half * f.b;
    end.theta = rTheta / r;
    end.y = piece.deflection + ri * piece.slope * s + square * (h * f.e1 + t / d * f.a1) - half * f.b1;
    end.moment = d * (h + t / d * s - q * square / (2 * d) * f.g - (1 - nu) * end.theta / r);
    end.t = t - q * square * f.e;
    return end;
}

/// Mt = nu Mr + (1 - nu^2) D theta / r, with the local rigidity.
double tangentialMomentOf(const Piece& piece, double nu, double r, const State& state) {
    return r > 0 ? nu * state.moment + (1 - nu * nu) * piece.rigidity * state.theta / r : state.moment;
}

void startFrom(Piece& piece, const State& state) {
    piece.deflection = state.y;
    piece.slope = state.theta;
    piece.moment = state.moment;
    piece.shearTimesRadius = state.t;
}

/// Loads on the circle r, as a fall of T.
double lineAt(const AnnularPlate& plate, double r) {
    double total = 0;
    for (const LineLoad& line : plate.lines)
        if (line.radius == r)
            total += line.total;
    return total / kTwoPi;
}

std::vector<Piece> piecesOf(const AnnularPlate& plate) {
    std::vector<double> cuts = {plate.inner, plate.outer};
    for (const LineLoad& line : plate.lines)
        cuts.push_back(line.radius);
    for (const RingPressure& ring : plate.rings)
        cuts.insert(cuts.end(), {ring.from, ring.to});
    for (const SoftRing& soft : plate.soft)
        cuts.insert(cuts.end(), {soft.from, soft.to});
    std::erase_if(cuts, [&](double r) { return r < plate.inner || r > plate.outer; });
    std::sort(cuts.begin(), cuts.end());
    cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());

    std::vector<Piece> pieces;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        Piece piece;
        piece.from = cuts[i];
        piece.to = cuts[i + 1];
        piece.rigidity = plate.rigidity;
        for (const SoftRing& soft : plate.soft)
            if (soft.from <= piece.from && soft.to >= piece.to)
                piece.rigidity *= soft.factor;
        for (const RingPressure& ring : plate.rings)
            if (ring.from <= piece.from && ring.to >= piece.to)
                piece.pressure += ring.pressure;
        pieces.push_back(piece);
    }
    return pieces;
}

/// What starts the walk at the inner edge: two unknowns.
State startState(const AnnularPlate& plate, double first, double second) {
    if (plate.inner == 0) // y and curvature
        return {first, second, 0, 0};
    switch (plate.innerEdge) {
    case Edge::Free:
        return {first, second, 0, 0};
    case Edge::Supported:
        return {0, first, 0, second};
    case Edge::Guided:
        return {first, 0, second, 0};
    case Edge::Fixed:
        return {0, 0, first, second};
    }
    util::require(false, "unknown edge");
    return {};
}

/// One walk from edge to edge. `loaded` off: the answer to the unknowns alone.
struct Walk {
    State end;      ///< at the outer edge, after the loads that stand on it
    double atDatum; ///< deflection there
    std::vector<Piece> pieces;
};

Walk walkThrough(const AnnularPlate& plate, std::vector<Piece> pieces, double datum, bool loaded,
                 double first, double second) {
    State state = startState(plate, first, second);
    Walk result;
    result.atDatum = state.y;
    for (Piece& piece : pieces) {
        if (!loaded)
            piece.pressure = 0;
        else
            state.t -= lineAt(plate, piece.from);
        startFrom(piece, state);
        if (datum > piece.from && datum <= piece.to)
            result.atDatum = walk(piece, plate.poisson, datum).y;
        state = walk(piece, plate.poisson, piece.to);
    }
    if (loaded)
        state.t -= lineAt(plate, plate.outer);
    result.end = state;
    result.pieces = std::move(pieces);
    return result;
}

bool holdsUp(Edge edge) {
    return edge == Edge::Supported || edge == Edge::Fixed;
}

/// The two things that must be 0 at the outer edge.
std::array<double, 2> outerMisses(const AnnularPlate& plate, const Walk& walk, bool held) {
    std::array<double, 2> miss{};
    const State& end = walk.end;
    switch (plate.outerEdge) {
    case Edge::Free:
        miss = {end.t, end.moment};
        break;
    case Edge::Supported:
        miss = {end.y, end.moment};
        break;
    case Edge::Guided:
        miss = {end.t, end.theta};
        break;
    case Edge::Fixed:
        miss = {end.y, end.theta};
        break;
    }
    if (!held) // balance makes T = 0 of itself; what is open is the height
        miss[0] = walk.atDatum;
    return miss;
}

std::optional<util::Problem> flawOf(const AnnularPlate& plate, bool held) {
    const auto bad = [](const std::string& message) { return util::Problem{"plate", message}; };
    if (!(plate.outer > 0) || !(plate.inner >= 0) || !(plate.inner < plate.outer) ||
        !std::isfinite(plate.outer))
        return bad("a round plate needs an outer radius above its inner one, and neither below 0");
    if (!(plate.rigidity > 0) || !std::isfinite(plate.rigidity))
        return bad("a plate needs a thickness and a modulus above 0");
    if (!(plate.poisson > -1) || !(plate.poisson <= 0.5))
        return bad("Poisson's ratio must lie above -1 and not above 0.5");
    double sum = 0, size = 0;
    for (const LineLoad& line : plate.lines) {
        if (!(line.radius >= plate.inner) || !(line.radius <= plate.outer) || !std::isfinite(line.total))
            return bad("a line load must stand on the plate, between its inner and outer edge");
        sum += line.total;
        size += std::abs(line.total);
    }
    for (const RingPressure& ring : plate.rings) {
        if (!(ring.from >= plate.inner) || !(ring.to <= plate.outer) || !(ring.from < ring.to) ||
            !std::isfinite(ring.pressure))
            return bad("a ring pressure must lie on the plate, between its inner and outer edge");
        const double total = ring.pressure * std::numbers::pi * (ring.to - ring.from) * (ring.to + ring.from);
        sum += total;
        size += std::abs(total);
    }
    for (std::size_t i = 0; i < plate.soft.size(); ++i) {
        const SoftRing& soft = plate.soft[i];
        if (!(soft.from < soft.to) || !(soft.factor > 0))
            return bad("a weakened ring needs a width and a factor above 0");
        for (std::size_t j = 0; j < i; ++j)
            if (soft.from < plate.soft[j].to && plate.soft[j].from < soft.to)
                return bad("weakened rings may not overlap");
    }
    if (!held && std::abs(sum) > 1e-9 * size)
        return bad("nothing holds the plate up: give an edge a support or make the loads balance");
    if (plate.datum && (!(*plate.datum >= plate.inner) || !(*plate.datum <= plate.outer)))
        return bad("the circle of zero deflection must lie on the plate");
    return std::nullopt;
}

} // namespace

util::Result<AnnularSolution> solveAnnular(const AnnularPlate& plate) {
    const bool held = holdsUp(plate.outerEdge) || (plate.inner > 0 && holdsUp(plate.innerEdge));
    if (const auto flaw = flawOf(plate, held))
        return *flaw;

    const std::vector<Piece> pieces = piecesOf(plate);
    const double datum = plate.datum.value_or(plate.outer);
    const auto misses = [&](bool loaded, double first, double second) {
        return outerMisses(plate, walkThrough(plate, pieces, datum, loaded, first, second), held);
    };
    // Two unknowns, two conditions: Cramer's rule, which does not care how the rows and columns are scaled.
    const auto load = misses(true, 0, 0), one = misses(false, 1, 0), two = misses(false, 0, 1);
    const double determinant = one[0] * two[1] - two[0] * one[1];
    util::require(determinant != 0 && std::isfinite(determinant), "annular plate: restraints leave it loose");
    const double first = (two[0] * load[1] - load[0] * two[1]) / determinant;
    const double second = (one[1] * load[0] - load[1] * one[0]) / determinant;

    Walk walked = walkThrough(plate, pieces, datum, true, first, second);
    AnnularSolution solution;
    solution.m_inner = plate.inner;
    solution.m_outer = plate.outer;
    solution.m_poisson = plate.poisson;
    solution.m_pieces = std::move(walked.pieces);
    solution.m_innerReaction = plate.inner > 0 ? startState(plate, first, second).t / plate.inner : 0;
    solution.m_outerReaction = holdsUp(plate.outerEdge) ? -walked.end.t / plate.outer : 0;
    return solution;
}

AnnularState AnnularSolution::at(double radius) const {
    const double slack = 1e-9 * m_outer;
    util::require(radius >= m_inner - slack && radius <= m_outer + slack,
                  "annular plate asked at r = " + std::to_string(radius) + ", off the plate");
    const double r = std::clamp(radius, m_inner, m_outer);
    const Piece* piece = &m_pieces.back();
    for (const Piece& candidate : m_pieces)
        if (r < candidate.to) {
            piece = &candidate;
            break;
        }
    const State state = walk(*piece, m_poisson, r);
    AnnularState result;
    result.deflection = state.y;
    result.slope = state.theta;
    result.radialMoment = state.moment;
    result.tangentialMoment = tangentialMomentOf(*piece, m_poisson, r, state);
    result.shear = r > 0 ? state.t / r : 0;
    return result;
}

/// The value of `pick` that ranks highest: sampled, then closed in on by golden section.
template<class Pick, class Rank>
AnnularExtreme AnnularSolution::extreme(Pick pick, Rank rank) const {
    constexpr int kSteps = 64;
    constexpr double kGolden = 0.6180339887498949;
    std::optional<AnnularExtreme> best;
    const auto offer = [&](double value, double radius) {
        if (!best || rank(value) > rank(best->value))
            best = {value, radius};
    };
    for (const Piece& piece : m_pieces) {
        // Asked of the piece itself, so that both sides of a jump are seen.
        const auto valueAt = [&](double r) {
            const State state = walk(piece, m_poisson, r);
            const double across = tangentialMomentOf(piece, m_poisson, r, state);
            return pick(AnnularState{state.y, state.theta, state.moment, across, 0});
        };
        const double step = (piece.to - piece.from) / kSteps;
        double top = piece.from, topValue = valueAt(top);
        for (int i = 0; i <= kSteps; ++i) {
            const double r = i == kSteps ? piece.to : piece.from + i * step;
            const double value = valueAt(r);
            offer(value, r);
            if (rank(value) > rank(topValue)) {
                topValue = value;
                top = r;
            }
        }
        double low = std::max(piece.from, top - step), high = std::min(piece.to, top + step);
        for (int i = 0; i < 60; ++i) {
            const double left = high - kGolden * (high - low), right = low + kGolden * (high - low);
            if (rank(valueAt(left)) > rank(valueAt(right)))
                high = right;
            else
                low = left;
        }
        offer(valueAt((low + high) / 2), (low + high) / 2);
    }
    return *best;
}

namespace {
double sizeOf(double value) {
    return std::abs(value);
}
double itself(double value) {
    return value;
}
} // namespace

AnnularExtreme AnnularSolution::largestDeflection() const {
    return extreme([](const AnnularState& s) { return s.deflection; }, sizeOf);
}

AnnularExtreme AnnularSolution::largestRadialMoment() const {
    return extreme([](const AnnularState& s) { return s.radialMoment; }, sizeOf);
}

AnnularExtreme AnnularSolution::largestTangentialMoment() const {
    return extreme([](const AnnularState& s) { return s.tangentialMoment; }, sizeOf);
}

AnnularExtreme AnnularSolution::highestRadialMoment() const {
    return extreme([](const AnnularState& s) { return s.radialMoment; }, itself);
}

double AnnularSolution::shearIntegral(double from, double to) const {
    if (from > to)
        return -shearIntegral(to, from);
    double sum = 0;
    for (const Piece& piece : m_pieces) {
        const double low = std::max(from, piece.from), high = std::min(to, piece.to);
        if (high <= low)
            continue;
        if (piece.from == 0) {
            util::require(piece.shearTimesRadius == 0 || low > 0,
                          "shear under a point load has no finite integral");
            if (piece.shearTimesRadius != 0)
                sum += piece.shearTimesRadius * std::log(high / low);
            sum -= piece.pressure * (high - low) * (high + low) / 4;
            continue;
        }
        const auto upTo = [&](double r) {
            const double s = std::log1p((r - piece.from) / piece.from);
            return piece.shearTimesRadius * s - piece.pressure * piece.from * piece.from / 2 * growthAt(s).g;
        };
        sum += upTo(high) - upTo(low);
    }
    return sum;
}

} // namespace pw::plate
