#include "core/plate/stiffness.h"

#include <algorithm>
#include <Eigen/SparseCholesky>

namespace pw::plate {

Stiffness::Stiffness(const Mesh& mesh, const Unknowns& unknowns) {
    const auto nodes = static_cast<int>(mesh.nodeCount());
    std::vector<int> rank(nodes);
    for (int i = 0; i < nodes; ++i)
        rank[unknowns.order()[i]] = i;

    // Ranks of the neighbours that are numbered later, in their order.
    std::vector<std::vector<int>> later(nodes);
    for (auto& list : later)
        list.reserve(40);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < 6; ++i)
            for (int j = 0; j < 6; ++j) {
                const int a = mesh.triangles(i, t), b = mesh.triangles(j, t);
                if (rank[b] > rank[a])
                    later[a].push_back(rank[b]);
            }
    for (auto& list : later) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
    }

    const int size = unknowns.count();
    std::vector<int> outer(size + 1, 0), inner;
    std::vector<std::vector<int>> offset(nodes); ///< of each later neighbour's block behind the node's own
    for (int a : unknowns.order()) {
        std::vector<int> rows;
        offset[a].reserve(later[a].size());
        for (int laterRank : later[a]) {
            const int b = unknowns.order()[laterRank];
            offset[a].push_back(static_cast<int>(rows.size()));
            for (int k = 0; k < 3; ++k)
                if (unknowns.of(b, k) >= 0)
                    rows.push_back(unknowns.of(b, k));
        }
        for (int k = 0; k < 3; ++k) {
            const int column = unknowns.of(a, k);
            if (column < 0)
                continue;
            for (int l = k; l < 3; ++l)
                if (unknowns.of(a, l) >= 0)
                    inner.push_back(unknowns.of(a, l));
            inner.insert(inner.end(), rows.begin(), rows.end());
            outer[column + 1] = static_cast<int>(inner.size());
        }
    }
    const std::vector<double> zeros(inner.size(), 0.0);
    m_matrix = Eigen::Map<const Eigen::SparseMatrix<double>>(
        size, size, static_cast<Eigen::Index>(inner.size()), outer.data(), inner.data(), zeros.data());

    const auto ownCount = [&](int node, int from) {
        int count = 0;
        for (int k = from; k < 3; ++k)
            count += unknowns.of(node, k) >= 0;
        return count;
    };
    m_slot.assign(static_cast<std::size_t>(kNodal) * kNodal * mesh.triangleCount(), -1);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        int* slots = &m_slot[static_cast<std::size_t>(kNodal) * kNodal * t];
        for (int i = 0; i < 6; ++i)
            for (int j = 0; j < 6; ++j) {
                const int a = mesh.triangles(i, t), b = mesh.triangles(j, t);
                if (rank[b] < rank[a])
                    continue;
                int block = 0;
                if (a != b) {
                    const auto at = std::lower_bound(later[a].begin(), later[a].end(), rank[b]);
                    block = offset[a][at - later[a].begin()];
                }
                for (int k = 0; k < 3; ++k) {
                    const int column = unknowns.of(a, k);
                    if (column < 0)
                        continue;
                    for (int l = a == b ? k : 0; l < 3; ++l) {
                        if (unknowns.of(b, l) < 0)
                            continue;
                        const int before = ownCount(b, a == b ? k : 0) - ownCount(b, l);
                        const int place = a == b ? before : ownCount(a, k) + block + before;
                        slots[(3 * j + l) * kNodal + 3 * i + k] = outer[column] + place;
                    }
                }
            }
    }
}

void Stiffness::clear() {
    m_matrix.coeffs().setZero();
}

void Stiffness::add(Eigen::Index triangle, const NodalMatrix& element) {
    const int* slots = &m_slot[static_cast<std::size_t>(kNodal) * kNodal * triangle];
    double* values = m_matrix.valuePtr();
    for (int row = 0; row < kNodal; ++row)
        for (int column = 0; column < kNodal; ++column)
            if (const int slot = slots[row * kNodal + column]; slot >= 0)
                values[slot] += element(row, column);
}

struct SparseSolver::Impl {
    // The unknowns are already numbered for little fill (Unknowns::order).
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower, Eigen::NaturalOrdering<int>> ldlt;
    bool analysed = false;
};

SparseSolver::SparseSolver() : m_impl(std::make_unique<Impl>()) {}
SparseSolver::~SparseSolver() = default;
SparseSolver::SparseSolver(SparseSolver&&) noexcept = default;
SparseSolver& SparseSolver::operator=(SparseSolver&&) noexcept = default;

bool SparseSolver::factor(const Eigen::SparseMatrix<double>& lower) {
    if (!m_impl->analysed)
        m_impl->ldlt.analyzePattern(lower);
    m_impl->analysed = true;
    m_impl->ldlt.factorize(lower);
    return m_impl->ldlt.info() == Eigen::Success && (m_impl->ldlt.vectorD().array() > 0).all();
}

Eigen::VectorXd SparseSolver::solve(const Eigen::VectorXd& right) const {
    return m_impl->ldlt.solve(right);
}

} // namespace pw::plate
