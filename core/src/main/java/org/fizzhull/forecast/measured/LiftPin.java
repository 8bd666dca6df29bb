package org.fizzhull.forecast.measured;

import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;

/**
 * Solves one input for the mean reading of the dunks: the bubble size, or the size of the mould where that is known so badly that it moves the
 * reading more. The reading R grows with both, nearly in a straight line over the standard normal score z of the input, so
 * that a secant finds the only root at once. Whether the scale feels the plume is drawn, with {@link HeldPiece#PLUME_FELT}.
 * The weight of the draw is the prior density of the score over the slope,
 * <pre>  ln w = -z^2/2 - ln(dR/dz),</pre>
 * exact for any spread of the reading; how several readings lie around their mean weighs it too. Cost: some six force balances
 * a dunk, no voyage. One instance serves one thread.
 */
final class LiftPin implements MeasuredPin {
    /** Score beyond which no root is looked for: four standard deviations off the prior's median. */
    private static final double FARTHEST = 4;

    private static final int MOST_PASSES = 20;

    /** Found to this, kg. */
    private static final double CLOSE = 1e-8;

    private static final double FIRST_STEP = 0.5;
    private static final double SLOPE_STEP = 1e-3;

    private final Bowls bowls;
    private final int column;
    private final Prior prior;

    /** True reading of this draw, kg. */
    private double reading;

    private boolean plumeFelt;

    private LiftPin(Bowls bowls, int column, Prior prior) {
        this.bowls = bowls;
        this.column = column;
        this.prior = prior;
    }

    /** Solves whichever of bubble size and mould size moves the reading more, by one standard deviation at the medians. */
    static LiftPin of(Bowls bowls, Factors factors) {
        LiftPin bubble = on(Input.BUBBLE_SIZE, bowls, factors);
        if (factors.column(Input.MOULD_SIZE) < 0) {
            return bubble;
        }
        LiftPin size = on(Input.MOULD_SIZE, bowls, factors);
        return size.reach(factors) > bubble.reach(factors) ? size : bubble;
    }

    private static LiftPin on(Input input, Bowls bowls, Factors factors) {
        return new LiftPin(bowls, factors.column(input), factors.solved(input));
    }

    /** How far one standard deviation moves the reading, kg. */
    private double reach(Factors factors) {
        double[] inputs = factors.medians();
        return Math.abs(over(inputs, 1) - over(inputs, 0));
    }

    @Override
    public int column() {
        return column;
    }

    @Override
    public void measure(double error, double choice) {
        reading = bowls.shown() + bowls.deviation() * Normal.quantile(error);
        plumeFelt = choice <= HeldPiece.PLUME_FELT;
    }

    @Override
    public double pin(double[] inputs, boolean near) {
        double before = inputs[column];
        double score = root(inputs);
        double slope = Math.abs(score) <= FARTHEST ? slope(inputs, score) : 0;
        inputs[column] = slope > 0 ? value(score) : before;
        return slope > 0
                ? -0.5 * score * score - Math.log(slope) + bowls.logRest(inputs, plumeFelt)
                : Double.NEGATIVE_INFINITY;
    }

    private double root(double[] inputs) {
        double a = 0;
        double atA = over(inputs, a);
        double b = atA > 0 ? -FIRST_STEP : FIRST_STEP;
        double atB = over(inputs, b);
        for (int pass = 0; pass < MOST_PASSES && Math.abs(atB) > CLOSE; pass++) {
            double next = b - atB * (b - a) / (atB - atA);
            if (!(Math.abs(next) <= 2 * FARTHEST)) {
                return Double.NaN;
            }
            a = b;
            atA = atB;
            b = Math.max(-FARTHEST, Math.min(FARTHEST, next));
            atB = over(inputs, b);
        }
        return Math.abs(atB) <= CLOSE ? b : Double.NaN;
    }

    private double slope(double[] inputs, double score) {
        return (over(inputs, score + SLOPE_STEP) - over(inputs, score - SLOPE_STEP)) / (2 * SLOPE_STEP);
    }

    private double value(double score) {
        return prior.quantile(Normal.cumulative(score));
    }

    private double over(double[] inputs, double score) {
        inputs[column] = value(score);
        return bowls.reading(inputs, plumeFelt) - reading;
    }
}
