package org.fizzhull.numeric;

/**
 * Solves tridiagonal systems by elimination without pivoting (the Thomas algorithm). Stable where the matrix is
 * diagonally dominant by rows or by columns, as implicit diffusion gives; the caller answers for that: nothing is
 * checked, and a zero on the diagonal gives infinities. Cost: some 8 n operations; allocates nothing. Stateless. Used
 * by {@code drying.solver}.
 */
public final class Tridiagonal {
    private Tridiagonal() {}

    /**
     * Solves {@code lower[i] x[i-1] + diagonal[i] x[i] + upper[i] x[i+1] = right[i]} for the first n unknowns. The
     * solution stands in {@code right}; {@code diagonal} is overwritten; {@code lower[0]} and {@code upper[n-1]} are
     * not read.
     *
     * @param lower coefficients below the diagonal
     * @param diagonal the diagonal; overwritten
     * @param upper coefficients above the diagonal
     * @param right right-hand side on entry, solution on return
     * @param n number of unknowns; longer arrays are left alone beyond it
     */
    public static void solve(double[] lower, double[] diagonal, double[] upper, double[] right, int n) {
        // forward elimination, then back substitution; what the next row needs stays in local variables, since each row
        // waits for the one before and a fast compiler would send it through memory
        double pivot = diagonal[0];
        double rest = right[0];
        for (int i = 1; i < n; i++) {
            double factor = lower[i] / pivot;
            pivot = diagonal[i] - factor * upper[i - 1];
            rest = right[i] - factor * rest;
            diagonal[i] = pivot;
            right[i] = rest;
        }
        double found = rest / pivot;
        right[n - 1] = found;
        for (int i = n - 2; i >= 0; i--) {
            found = (right[i] - upper[i] * found) / diagonal[i];
            right[i] = found;
        }
    }
}
