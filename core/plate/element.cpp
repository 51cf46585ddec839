#include "core/plate/element.h"

#include <cmath>

namespace pw::plate {

const std::array<QuadraturePoint, kPoints>& quadrature() {
    static const std::array<QuadraturePoint, kPoints> points = [] {
        constexpr double a = 0.445948490915965, wa = 0.223381589678011 / 2;
        constexpr double b = 0.091576213509771, wb = 0.109951743655322 / 2;
        return std::array<QuadraturePoint, kPoints>{{{a, a, wa},
                                                     {1 - 2 * a, a, wa},
                                                     {a, 1 - 2 * a, wa},
                                                     {b, b, wb},
                                                     {1 - 2 * b, b, wb},
                                                     {b, 1 - 2 * b, wb}}};
    }();
    return points;
}

ShapeFunctions shapeFunctions(double r, double s) {
    const double q = 1 - r - s;
    ShapeFunctions n;
    n.value << q * (2 * q - 1), r * (2 * r - 1), s * (2 * s - 1), 4 * q * r, 4 * r * s, 4 * s * q;
    n.slope << 1 - 4 * q, 4 * r - 1, 0, 4 * (q - r), 4 * s, -4 * s, //
        1 - 4 * q, 0, 4 * s - 1, -4 * r, 4 * r, 4 * (q - s);
    return n;
}

ElementNodes elementNodes(const Mesh& mesh, Eigen::Index triangle) {
    ElementNodes nodes;
    for (int i = 0; i < 6; ++i)
        nodes.col(i) = mesh.nodes.col(mesh.triangles(i, triangle));
    return nodes;
}

Eigen::Matrix3d Section::bending() const {
    const double d = E * thickness * thickness * thickness / (12 * (1 - nu * nu));
    Eigen::Matrix3d m;
    m << d, d * nu, 0, d * nu, d, 0, 0, 0, d * (1 - nu) / 2;
    return m;
}

double Section::shear() const {
    return 5.0 / 6.0 * E / (2 * (1 + nu)) * thickness;
}

namespace {

constexpr int kTies = 8;

/// The rotated Raviart-Thomas space of second order on the reference triangle:
///   e_r = a1 + b1 r + c1 s + s (d r + e s),  e_s = a2 + b2 r + c2 s - r (d r + e s).
Eigen::Matrix<double, 2, kTies> tiedSpace(double r, double s) {
    Eigen::Matrix<double, 2, kTies> e;
    e << 1, r, s, 0, 0, 0, s * r, s * s, //
        0, 0, 0, 1, r, s, -r * r, -r * s;
    return e;
}

struct TyingPoint {
    double r, s, tr, ts; ///< place and reference direction
};

/// Two Gauss points a side.
const std::array<TyingPoint, 6>& tyingPoints() {
    static const double g = 0.5 / std::sqrt(3.0);
    static const std::array<TyingPoint, 6> points{{{0.5 - g, 0, 1, 0},
                                                   {0.5 + g, 0, 1, 0},
                                                   {0.5 + g, 0.5 - g, -1, 1},
                                                   {0.5 - g, 0.5 + g, -1, 1},
                                                   {0, 0.5 + g, 0, 1},
                                                   {0, 0.5 - g, 0, 1}}};
    return points;
}

/// From the eight tied values to the eight coefficients of the space.
const Eigen::Matrix<double, kTies, kTies>& fromTies() {
    static const Eigen::Matrix<double, kTies, kTies> inverse = [] {
        Eigen::Matrix<double, kTies, kTies> m = Eigen::Matrix<double, kTies, kTies>::Zero();
        for (int i = 0; i < 6; ++i) {
            const TyingPoint& p = tyingPoints()[i];
            m.row(i) = Eigen::RowVector2d(p.tr, p.ts) * tiedSpace(p.r, p.s);
        }
        for (const QuadraturePoint& p : quadrature())
            m.bottomRows<2>() += p.weight * tiedSpace(p.r, p.s);
        return Eigen::Matrix<double, kTies, kTies>(m.inverse());
    }();
    return inverse;
}

/// The seven functions of the rotations (six nodes and the bubble) and their reference derivatives.
struct RotationFunctions {
    Eigen::Matrix<double, 7, 1> value;
    Eigen::Matrix<double, 2, 7> slope;
};

RotationFunctions rotationFunctions(const ShapeFunctions& n, double r, double s) {
    RotationFunctions f;
    const double q = 1 - r - s;
    f.value << n.value, 27 * r * s * q;
    f.slope << n.slope, Eigen::Vector2d(27 * s * (q - r), 27 * r * (q - s));
    return f;
}

int betaX(int function) {
    return function < 6 ? 3 * function + 1 : kNodal;
}

} // namespace

ElementGeometry elementGeometry(const ElementNodes& nodes, const std::array<double, 6>& frame) {
    using TieMatrix = Eigen::Matrix<double, kTies, kElementUnknowns>;
    ElementGeometry g;
    g.valid = true;

    struct AtPoint {
        ShapeFunctions n;
        Eigen::Matrix2d jacobian; ///< rows d(x, y)/dr, d(x, y)/ds
        double det;
    };
    std::array<AtPoint, kPoints> at;
    for (int i = 0; i < kPoints; ++i) {
        const QuadraturePoint& p = quadrature()[i];
        at[i].n = shapeFunctions(p.r, p.s);
        at[i].jacobian = at[i].n.slope * nodes.transpose();
        at[i].det = at[i].jacobian.determinant();
        g.valid = g.valid && at[i].det > 0;
        g.area[i] = at[i].det * p.weight;
    }
    if (!g.valid)
        return g;

    // Tied values of the covariant shear strain grad w - beta, as rows over the 20 unknowns.
    TieMatrix ties = TieMatrix::Zero();
    const auto addTie = [&](int row, const ShapeFunctions& n, const RotationFunctions& f,
                            const Eigen::RowVector2d& direction, double weight) {
        const Eigen::RowVector2d tangent = direction * (n.slope * nodes.transpose());
        const Eigen::Matrix<double, 1, 6> slopeW = direction * n.slope;
        for (int k = 0; k < 6; ++k)
            ties(row, 3 * k) += weight * slopeW(k);
        for (int k = 0; k < 7; ++k) {
            ties(row, betaX(k)) -= weight * f.value(k) * tangent(0);
            ties(row, betaX(k) + 1) -= weight * f.value(k) * tangent(1);
        }
    };
    for (int i = 0; i < 6; ++i) {
        const TyingPoint& p = tyingPoints()[i];
        const ShapeFunctions n = shapeFunctions(p.r, p.s);
        addTie(i, n, rotationFunctions(n, p.r, p.s), {p.tr, p.ts}, 1);
    }
    for (int i = 0; i < kPoints; ++i) {
        const QuadraturePoint& p = quadrature()[i];
        const RotationFunctions f = rotationFunctions(at[i].n, p.r, p.s);
        addTie(6, at[i].n, f, {1, 0}, p.weight);
        addTie(7, at[i].n, f, {0, 1}, p.weight);
    }
    TieMatrix coefficients = fromTies() * ties;

    // Turns the rotations of framed nodes, columns over the unknowns.
    const auto turn = [&](auto& m) {
        for (int k = 0; k < 6; ++k) {
            if (frame[k] == 0)
                continue;
            const double c = std::cos(frame[k]), s = std::sin(frame[k]);
            const auto x = m.col(3 * k + 1).eval(), y = m.col(3 * k + 2).eval();
            m.col(3 * k + 1) = c * x + s * y;
            m.col(3 * k + 2) = -s * x + c * y;
        }
    };
    turn(coefficients);

    Eigen::Matrix<double, kTies, kTies> tied = Eigen::Matrix<double, kTies, kTies>::Zero();
    for (int i = 0; i < kPoints; ++i) {
        const QuadraturePoint& p = quadrature()[i];
        const Eigen::Matrix2d inverse = at[i].jacobian.inverse();
        const Eigen::Matrix<double, 2, 7> slope = inverse * rotationFunctions(at[i].n, p.r, p.s).slope;
        StrainMatrix& b = g.curvature[i];
        b.setZero();
        for (int k = 0; k < 7; ++k) {
            const int x = betaX(k), y = x + 1;
            b(0, x) = slope(0, k);
            b(1, y) = slope(1, k);
            b(2, x) = slope(1, k);
            b(2, y) = slope(0, k);
        }
        turn(b);
        const Eigen::Matrix<double, 2, kTies> shear = inverse * tiedSpace(p.r, p.s);
        tied.noalias() += g.area[i] * shear.transpose() * shear;
    }
    const TieMatrix half = tied * coefficients;
    g.shearPerStiffness.noalias() = coefficients.transpose() * half;
    return g;
}

ElementMatrix elasticStiffness(const ElementGeometry& geometry, const Section& section) {
    ElementMatrix k = section.shear() * geometry.shearPerStiffness;
    const Eigen::Matrix3d d = section.bending();
    for (int i = 0; i < kPoints; ++i) {
        const StrainMatrix db = geometry.area[i] * d * geometry.curvature[i];
        k.noalias() += geometry.curvature[i].transpose() * db;
    }
    return k;
}

Condensed condense(const ElementMatrix& stiffness, const Eigen::Matrix<double, kElementUnknowns, 1>& force) {
    Condensed c;
    const Eigen::Matrix2d inner = stiffness.bottomRightCorner<2, 2>().inverse();
    c.bubbleNodal = inner * stiffness.bottomLeftCorner<2, kNodal>();
    c.bubbleForce = inner * force.tail<2>();
    c.stiffness = stiffness.topLeftCorner<kNodal, kNodal>();
    c.stiffness.noalias() -= stiffness.topRightCorner<kNodal, 2>() * c.bubbleNodal;
    c.force = force.head<kNodal>() - stiffness.topRightCorner<kNodal, 2>() * c.bubbleForce;
    return c;
}

} // namespace pw::plate
