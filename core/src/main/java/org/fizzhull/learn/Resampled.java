package org.fizzhull.learn;

import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.fizzhull.learn.fit.Laplace;
import org.fizzhull.numeric.Normal;

/**
 * Whole draws of a density known but for a factor: importance sampling from a multivariate t law around a normal guess (its
 * tails are wider than any that is looked for), the guess moved to the weighted draws where too few of them count, and
 * systematic resampling (Kitagawa 1996, from memory) so that how the inputs depend on one another survives.
 *
 * <pre>
 * w_i ~ p(z_i)/q(z_i),   q(z) ~ (1 + |s|^2/nu)^(-(nu + n)/2),   effective = 1/sum w_i^2
 * </pre>
 *
 * z_i draw, w_i its weight (they sum to 1), p the density looked for, q that of the t law with nu = 8 degrees of freedom in n
 * dimensions, s the draw's distance from the guess in standard deviations.
 *
 * @param draws whole draws, equally heavy
 * @param effective number of independent draws that the weighted ones are worth (Kish 1965, from memory)
 */
record Resampled(double[][] draws, double effective) {
    /** Degrees of freedom of the t law. */
    private static final int TAILS = 8;

    /** Weighted draws of a round. */
    static final int PROPOSALS = 4096;
    /** Rounds at most; after the last its draws are taken as they are, and {@link #effective} tells. */
    private static final int MOST_ROUNDS = 4;

    /** Effective draws over proposals that are enough (assumed). */
    private static final double ENOUGH = 0.1;

    /**
     * {@return draws of a density}
     *
     * @param guess normal law near it
     * @param logDensity logarithm of the density, but for a constant
     * @param kept number of draws to keep
     * @param seed seed of the draws; each round has its own
     */
    static Resampled of(Laplace guess, ToDoubleFunction<double[]> logDensity, int kept, long seed) {
        Laplace around = guess;
        for (int round = 1; ; round++) {
            SplittableRandom random = new SplittableRandom(seed + round);
            double[][] drawn = new double[PROPOSALS][];
            double[] weights = new double[PROPOSALS];
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < PROPOSALS; i++) {
                weights[i] = propose(around, random, drawn, i) + logDensity.applyAsDouble(drawn[i]);
                most = Math.max(most, weights[i]);
            }
            // weights, scaled by the largest so that none overflows
            double sum = 0;
            for (int i = 0; i < PROPOSALS; i++) {
                weights[i] = Math.exp(weights[i] - most);
                sum += weights[i];
            }
            double squares = 0;
            for (int i = 0; i < PROPOSALS; i++) {
                weights[i] /= sum;
                squares += weights[i] * weights[i];
            }
            // enough draws count, or the guess was moved often enough
            double effective = 1 / squares;
            if (effective >= ENOUGH * PROPOSALS || round == MOST_ROUNDS) {
                return new Resampled(resample(drawn, weights, kept, random.nextDouble()), effective);
            }
            around = moved(drawn, weights, around);
        }
    }

    /** Draws z_i into {@code drawn} and returns minus the logarithm of its density under the t law, but for a constant. */
    private static double propose(Laplace around, SplittableRandom random, double[][] drawn, int i) {
        int n = around.mean.length;
        double[] scores = new double[n];
        double square = 0;
        for (int k = 0; k < n; k++) {
            scores[k] = Normal.quantile(random.nextDouble(1e-15, 1));
            square += scores[k] * scores[k];
        }
        // a normal score over the root of a chi-squared one over its degrees of freedom: a t law
        double chi = 0;
        for (int k = 0; k < TAILS; k++) {
            double score = Normal.quantile(random.nextDouble(1e-15, 1));
            chi += score * score;
        }
        drawn[i] = around.at(scores, Math.sqrt(TAILS / chi));
        return 0.5 * (TAILS + n) * Math.log1p(square / chi);
    }

    /** A normal law with mean and covariance of the weighted draws, with a tenth of the old one against collapse. */
    private static Laplace moved(double[][] drawn, double[] weights, Laplace old) {
        int n = old.mean.length;
        // weighted mean
        double[] mean = new double[n];
        for (int i = 0; i < drawn.length; i++) {
            for (int k = 0; k < n; k++) {
                mean[k] += weights[i] * drawn[i][k];
            }
        }
        // weighted covariance, with a tenth of the old
        DMatrixRMaj covariance = old.covariance.copy();
        for (int k = 0; k < n; k++) {
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int i = 0; i < drawn.length; i++) {
                    sum += weights[i] * (drawn[i][k] - mean[k]) * (drawn[i][j] - mean[j]);
                }
                covariance.set(k, j, sum + 0.1 * covariance.get(k, j));
            }
        }
        return new Laplace(mean, covariance);
    }

    /** Draws in proportion to their weights, by evenly spaced marks from one random start. */
    private static double[][] resample(double[][] drawn, double[] weights, int kept, double start) {
        double[][] draws = new double[kept][];
        double sum = weights[0];
        int at = 0;
        for (int i = 0; i < kept; i++) {
            // the draw whose share of the running sum holds the mark
            double mark = (i + start) / kept;
            while (sum < mark && at < weights.length - 1) {
                sum += weights[++at];
            }
            draws[i] = drawn[at].clone();
        }
        return draws;
    }
}
