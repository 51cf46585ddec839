#pragma once

#include "core/plate/element.h"
#include "core/plate/unknowns.h"

#include <Eigen/SparseCore>
#include <memory>
#include <vector>

namespace pw::plate {

/// The plate's stiffness matrix: lower triangle, its pattern worked out once, its values as often as wanted.
class Stiffness {
public:
    Stiffness(const Mesh& mesh, const Unknowns& unknowns);

    void clear();
    void add(Eigen::Index triangle, const NodalMatrix& element);
    const Eigen::SparseMatrix<double>& lower() const { return m_matrix; }

private:
    Eigen::SparseMatrix<double> m_matrix;
    std::vector<int> m_slot; ///< per triangle 18 x 18: where an entry goes, -1 for none
};

/// The one door to a sparse direct solver: factor a symmetric positive definite matrix, then solve as often
/// as wanted. Another library can stand in behind it.
class SparseSolver {
public:
    SparseSolver();
    ~SparseSolver();
    SparseSolver(SparseSolver&&) noexcept;
    SparseSolver& operator=(SparseSolver&&) noexcept;

    /// False when the matrix is not positive definite. The pattern is analysed at the first call only.
    bool factor(const Eigen::SparseMatrix<double>& lower);
    Eigen::VectorXd solve(const Eigen::VectorXd& right) const;

private:
    struct Impl;
    std::unique_ptr<Impl> m_impl;
};

} // namespace pw::plate
