// Solves small symmetric positive definite systems whose size is known when compiling. Eigen's own solver calls kernels
// made for large matrices, which cost several times the arithmetic here; the backward sweep stands on this.
#pragma once

#include <cmath>

#include <Eigen/Core>

namespace fleetrung::motion
{

/// Replaces `right` by the solution of matrix * x = right (Cholesky). False where the matrix is not positive definite.
template <int n, int columns>
[[nodiscard]] bool solveInPlace(Eigen::Matrix<double, n, n> matrix, Eigen::Matrix<double, n, columns>& right)
{
    // Lower factor, column by column; the diagonal holds the inverses of its elements.
    for (int j = 0; j < n; ++j) {
        double pivot = matrix(j, j);
        for (int k = 0; k < j; ++k)
            pivot -= matrix(j, k) * matrix(j, k);
        if (!(pivot > 0))
            return false;
        const double inverse = 1 / std::sqrt(pivot);
        matrix(j, j) = inverse;
        for (int i = j + 1; i < n; ++i) {
            double value = matrix(i, j);
            for (int k = 0; k < j; ++k)
                value -= matrix(i, k) * matrix(j, k);
            matrix(i, j) = value * inverse;
        }
    }
    for (int c = 0; c < columns; ++c) {
        for (int i = 0; i < n; ++i) {
            double value = right(i, c);
            for (int k = 0; k < i; ++k)
                value -= matrix(i, k) * right(k, c);
            right(i, c) = value * matrix(i, i);
        }
        for (int i = n - 1; i >= 0; --i) {
            double value = right(i, c);
            for (int k = i + 1; k < n; ++k)
                value -= matrix(k, i) * right(k, c);
            right(i, c) = value * matrix(i, i);
        }
    }
    return true;
}

} // namespace fleetrung::motion
