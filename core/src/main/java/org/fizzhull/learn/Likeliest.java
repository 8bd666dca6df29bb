package org.fizzhull.learn;

import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.ejml.data.DMatrixRMaj;

/**
 * The point of the smallest sum of squared residuals, by Levenberg's and Marquardt's method of Commons Math with central
 * differences of n parameters. Stops where sum or parameters change by less than 1e-10 of themselves. Cost: 2 n + 1
 * evaluations a step, at most 200 steps.
 */
public final class Likeliest {
    private static final int MOST_STEPS = 200;
    private static final double CLOSE = 1e-10;

    private Likeliest() {}

    /** Residuals as a function of the parameters. */
    public interface Residuals {
        /**
         * {@return one residual for each datum, at one value of each parameter}
         *
         * @param parameters values of the parameters
         */
        double[] at(double[] parameters);
    }

    /**
     * {@return the likeliest parameters}
     *
     * @param residuals what is left between readings and model
     * @param start first guess
     * @param steps step of each parameter for the differences
     */
    public static Laplace find(Residuals residuals, double[] start, double[] steps) {
        Optimum optimum = optimum(residuals, start, steps);
        double[] point = optimum.getPoint().toArray();
        double[][] slopes = jacobian(residuals, point, steps);
        return Laplace.of(point, new DMatrixRMaj(slopes));
    }

    static Optimum optimum(Residuals residuals, double[] start, double[] steps) {
        MultivariateJacobianFunction model = point -> {
            double[] at = point.toArray();
            return new Pair<>(
                    new ArrayRealVector(residuals.at(at), false),
                    new Array2DRowRealMatrix(jacobian(residuals, at, steps), false));
        };
        int count = residuals.at(start).length;
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(CLOSE)
                .withParameterRelativeTolerance(CLOSE)
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .model(model)
                        .target(new double[count])
                        .lazyEvaluation(false)
                        .maxEvaluations(MOST_STEPS)
                        .maxIterations(MOST_STEPS)
                        .build());
    }

    private static double[][] jacobian(Residuals residuals, double[] point, double[] steps) {
        double[] at = point.clone();
        double[][] slopes = new double[residuals.at(at).length][at.length];
        for (int k = 0; k < at.length; k++) {
            at[k] = point[k] + steps[k];
            double[] more = residuals.at(at).clone();
            at[k] = point[k] - steps[k];
            double[] less = residuals.at(at).clone();
            at[k] = point[k];
            for (int i = 0; i < slopes.length; i++) {
                slopes[i][k] = (more[i] - less[i]) / (2 * steps[k]);
            }
        }
        return slopes;
    }
}
