package org.fizzhull.learn.fit;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * A normal law around the likeliest point, and how likely the trials are on the whole by it (Laplace's approximation;
 * Tierney and Kadane 1986, J. Am. Stat. Assoc. 81, 82, from memory):
 * <pre>  C = (J^T J)^-1,   ln p(data) = -|r|^2/2 + (ln det C)/2</pre>
 * with r the residuals, those of the standard normal prior among them, J their slopes, C the covariance of the parameters.
 * Exact for residuals that are linear in the parameters. Made by {@link LeastSquaresFit}. Immutable.
 */
public final class Laplace {
    /** LeastSquaresFit parameters; not to be written to. */
    public final double[] mean;
    /** C, in the units of the parameters. */
    public final DMatrixRMaj covariance;

    /** L, lower triangle with C = L L^T. */
    final DMatrixRMaj lower;

    /** ln det C. */
    public final double logDeterminant;

    /** With a mean and a covariance, which must be positive definite. */
    public Laplace(double[] mean, DMatrixRMaj covariance) {
        this.mean = mean;
        this.covariance = covariance;
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(mean.length, true);
        if (!cholesky.decompose(covariance.copy())) {
            throw new IllegalStateException("a covariance that is not positive definite");
        }
        lower = cholesky.getT(null);
        double log = 0;
        for (int i = 0; i < mean.length; i++) {
            log += 2 * Math.log(lower.get(i, i));
        }
        logDeterminant = log;
    }

    /**
     * {@return the law from the slopes of the residuals at the likeliest point}
     *
     * @param mean likeliest parameters
     * @param jacobian J, one row for each residual
     * @throws IllegalStateException for a parameter that moves no residual
     */
    static Laplace of(double[] mean, DMatrixRMaj jacobian) {
        DMatrixRMaj hessian = new DMatrixRMaj(mean.length, mean.length);
        CommonOps_DDRM.multTransA(jacobian, jacobian, hessian);
        DMatrixRMaj covariance = new DMatrixRMaj(hessian);
        if (!CommonOps_DDRM.invert(covariance)) {
            throw new IllegalStateException("residuals without a slope");
        }
        return new Laplace(mean, symmetric(covariance));
    }

    /** The mean of a matrix and its transpose: what inversion left unequal by rounding. */
    private static DMatrixRMaj symmetric(DMatrixRMaj matrix) {
        DMatrixRMaj other = CommonOps_DDRM.transpose(matrix, null);
        CommonOps_DDRM.add(0.5, matrix, 0.5, other, matrix);
        return matrix;
    }

    /** {@return the likeliest parameters} */
    public double[] mean() {
        return mean.clone();
    }

    /**
     * {@return the variance of a parameter, where residuals have the standard deviation 1}
     *
     * @param parameter index of the parameter, from 0
     */
    public double variance(int parameter) {
        return covariance.get(parameter, parameter);
    }

    /**
     * {@return mean + stretch L scores}
     *
     * @param scores independent standard normal scores, one for each parameter
     * @param stretch factor on the distance from the mean; not 1 for a t law
     */
    public double[] at(double[] scores, double stretch) {
        double[] z = mean.clone();
        for (int i = 0; i < z.length; i++) {
            for (int j = 0; j <= i; j++) {
                z[i] += stretch * lower.get(i, j) * scores[j];
            }
        }
        return z;
    }
}
