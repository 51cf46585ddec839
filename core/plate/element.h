#pragma once

#include "core/plate/mesh.h"

#include <array>
#include <Eigen/Dense>

/// The shear-deformable (Mindlin-Reissner) plate element. Inside: mm, N, MPa, radians.
///
/// z points the way that w counts positive; the stations press on the lower face (z = -t/2) and lift.
/// Rotations beta are slopes: u = -z beta. Curvature kappa = (d bx/dx, d by/dy, d bx/dy + d by/dx), moments M
/// = D kappa (N.mm per mm), positive when they stretch the lower face. Shear strain gamma = grad w - beta.
namespace pw::plate {

/// Quadrature on the reference triangle (0,0) (1,0) (0,1); weights sum to 1/2. Exact to degree 4.
/// Source: Dunavant, Int. J. Numer. Meth. Eng. 21 (1985) 1129-1148, table II, 6 points.
inline constexpr int kPoints = 6;
struct QuadraturePoint {
    double r, s, weight;
};
const std::array<QuadraturePoint, kPoints>& quadrature();

/// Shape functions of the 6-node triangle and their reference derivatives at (r, s).
struct ShapeFunctions {
    Eigen::Matrix<double, 6, 1> value;
    Eigen::Matrix<double, 2, 6> slope; ///< rows d/dr, d/ds
};
ShapeFunctions shapeFunctions(double r, double s);

using ElementNodes = Eigen::Matrix<double, 2, 6>;
ElementNodes elementNodes(const Mesh& mesh, Eigen::Index triangle);

/// Unknowns of one element: w, bx, by at the six nodes, then the two of the rotation bubble 27 r s (1 - r -
/// s).
inline constexpr int kNodal = 18;
inline constexpr int kElementUnknowns = 20;
using StrainMatrix = Eigen::Matrix<double, 3, kElementUnknowns>;
using ElementMatrix = Eigen::Matrix<double, kElementUnknowns, kElementUnknowns>;
using NodalMatrix = Eigen::Matrix<double, kNodal, kNodal>;

/// Elastic figures of a plate of one thickness.
struct Section {
    double thickness = 0, E = 0, nu = 0;
    /// D: 3 x 3, E t^3 / (12 (1 - nu^2)) times plane-stress.
    Eigen::Matrix3d bending() const;
    /// (5/6) G t.
    double shear() const;
};

/// What does not change while a plate bends: the geometry of one element in matrices.
///
/// Element MITC7: w in P2, rotations in P2 + bubble, shear strain tied into the rotated Raviart-Thomas space
/// of second order (tangential parts at two Gauss points a side and the mean over the element), which keeps
/// it free of locking as t -> 0. Source: Bathe, Brezzi, Cho, "The MITC7 and MITC9 plate bending elements",
/// Computers & Structures 32 (1989) 797-814.
struct ElementGeometry {
    std::array<StrainMatrix, kPoints> curvature; ///< kappa at the quadrature points from the 20 unknowns
    std::array<double, kPoints> area;            ///< mm2 that each quadrature point stands for
    ElementMatrix shearPerStiffness;             ///< shear stiffness matrix for (5/6) G t = 1
    bool valid = false;                          ///< false: the element is turned inside out somewhere
};

/// `frame` turns the rotations of a node: its unknowns are then along the angle and a quarter turn on from
/// it.
ElementGeometry elementGeometry(const ElementNodes& nodes, const std::array<double, 6>& frame = {});

/// Elastic stiffness, 20 x 20.
ElementMatrix elasticStiffness(const ElementGeometry& geometry, const Section& section);

/// Takes the two bubble unknowns out of K u = f.
struct Condensed {
    NodalMatrix stiffness;
    Eigen::Matrix<double, kNodal, 1> force;
    /// bubble = bubbleForce - bubbleNodal * u
    Eigen::Matrix<double, 2, kNodal> bubbleNodal;
    Eigen::Vector2d bubbleForce;
};
Condensed condense(const ElementMatrix& stiffness, const Eigen::Matrix<double, kElementUnknowns, 1>& force);

} // namespace pw::plate
