package org.fizzhull.learn.fit;

import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.ejml.data.DMatrixRMaj;

/**
 * The point of the smallest sum of squared residuals, by the Levenberg-Marquardt method of Commons Math with central
 * differences. Stops where sum or parameters change by less than 1e-10 of themselves. Cost: 2 n + 2 evaluations a step for n
 * parameters, at most 200 steps. Stateless; {@link Learner} is its only user in the library.
 */
public final class LeastSquaresFit {
    /** Steps at most. */
    private static final int MOST_STEPS = 200;
    /** Relative change of sum or parameters at which the search ends. */
    private static final double CLOSE = 1e-10;

    private LeastSquaresFit() {}

    /** Residuals as a function of the parameters, each with a standard deviation of 1. */
    public interface Residuals {
        /**
         * {@return one residual for each datum, at one value of each parameter}
         *
         * @param parameters values of the parameters
         */
        double[] at(double[] parameters);
    }

    /**
     * {@return the likeliest parameters with the normal law around them}
     *
     * @param residuals distances of readings from the model over their standard deviations
     * @param start first guess of the parameters
     * @param steps step of each parameter for the differences, above 0
     */
    public static Laplace find(Residuals residuals, double[] start, double[] steps) {
        // a law of residuals with kinks may be walked around without an end: the likeliest point met is as good a guess
        Nearest nearest = new Nearest(residuals, start);
        double[] point;
        try {
            point = optimum(nearest, start, steps).getPoint().toArray();
        } catch (TooManyEvaluationsException endless) {
            point = nearest.point.clone();
        }
        double[][] slopes = jacobian(residuals, point, steps);
        return Laplace.of(point, new DMatrixRMaj(slopes));
    }

    /** Residuals that remember where they were least. Serves one thread. */
    private static final class Nearest implements Residuals {
        private final Residuals residuals;
        private double[] point;
        private double least = Double.POSITIVE_INFINITY;

        Nearest(Residuals residuals, double[] start) {
            this.residuals = residuals;
            point = start.clone();
        }

        @Override
        public double[] at(double[] parameters) {
            double[] all = residuals.at(parameters);
            double sum = 0;
            for (double r : all) {
                sum += r * r;
            }
            if (sum < least) {
                least = sum;
                point = parameters.clone();
            }
            return all;
        }
    }

    /** The optimum as the library finds it, with its sum of squares. */
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

    /** Slopes of all residuals, one row each, by central differences. */
    private static double[][] jacobian(Residuals residuals, double[] point, double[] steps) {
        double[] at = point.clone();
        double[][] slopes = new double[residuals.at(at).length][at.length];
        for (int k = 0; k < at.length; k++) {
            // one parameter at a time, a step either way; residuals may be written over, so they are copied
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
