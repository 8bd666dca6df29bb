package org.fizzhull.learn;

import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.fizzhull.uncertainty.Normal;

/**
 * Whole draws of a density known but for a factor: importance sampling from a multivariate t law around a normal guess (its
 * tails are wider than any that is looked for), the guess moved to the weighted draws where too few of them count, and
 * systematic resampling (Kitagawa 1996, from memory) so that how the inputs depend on one another survives.
 *
 * @param draws whole draws, equally heavy
 * @param effective how many independent ones the weighted draws are worth (Kish 1965, from memory)
 */
record Resampled(double[][] draws, double effective) {
    /** Degrees of freedom of the t law. */
    private static final int TAILS = 8;

    static final int PROPOSALS = 4096;
    private static final int MOST_ROUNDS = 4;

    /** Share of the proposals that is enough. */
    private static final double ENOUGH = 0.1;

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
            double effective = 1 / squares;
            if (effective >= ENOUGH * PROPOSALS || round == MOST_ROUNDS) {
                return new Resampled(resample(drawn, weights, kept, random.nextDouble()), effective);
            }
            around = moved(drawn, weights, around);
        }
    }

    /** Draws one; returns minus the logarithm of its density, but for a constant. */
    private static double propose(Laplace around, SplittableRandom random, double[][] drawn, int i) {
        int n = around.mean.length;
        double[] scores = new double[n];
        double square = 0;
        for (int k = 0; k < n; k++) {
            scores[k] = Normal.quantile(random.nextDouble(1e-15, 1));
            square += scores[k] * scores[k];
        }
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
        double[] mean = new double[n];
        for (int i = 0; i < drawn.length; i++) {
            for (int k = 0; k < n; k++) {
                mean[k] += weights[i] * drawn[i][k];
            }
        }
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

    private static double[][] resample(double[][] drawn, double[] weights, int kept, double start) {
        double[][] draws = new double[kept][];
        double sum = weights[0];
        int at = 0;
        for (int i = 0; i < kept; i++) {
            double mark = (i + start) / kept;
            while (sum < mark && at < weights.length - 1) {
                sum += weights[++at];
            }
            draws[i] = drawn[at].clone();
        }
        return draws;
    }
}
