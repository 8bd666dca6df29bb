package org.fizzhull.forecast.conditioning;

import org.fizzhull.forecast.measured.HeldPiece;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;

/**
 * Solves one input for the mean reading of the dunks: the bubble size, or the size of the mould where that is known so
 * badly that it moves the reading more. The reading R grows with both, nearly in a straight line over the standard
 * normal score z of the input, so that a secant finds the only root at once. Whether the scale feels the plume is
 * drawn, with {@link HeldPiece#PLUME_FELT}. The weight of the draw is the prior density of the score over the slope,
 * <pre>  ln w = -z^2/2 - ln(dR/dz),</pre>
 * exact for any spread of the reading; how several readings lie around their mean weights it too. What the next piece
 * lifts more than the dunked ones is put on the solved value afterwards, as own/(dB/dz) with B what is to spare at the
 * drop, which rises more steeply than R where the layer was not full yet or some of it has gone. Cost: some six force
 * balances a reading, no voyage. One instance serves one thread.
 */
final class LiftReadingSolver implements LiftSolver {
    /** Score beyond which no root is looked for: four standard deviations off the prior's median. */
    private static final double FARTHEST = 4;

    /** Ends of the uniform numbers of which a normal quantile is taken. */
    private static final double RAREST = 1e-6;

    /** Most secant steps. */
    private static final int MOST_PASSES = 20;

    /** Found to this, kg. */
    private static final double CLOSE = 1e-8;

    /** First step of the secant, standard normal score. */
    private static final double FIRST_STEP = 0.5;
    /** Step to both sides for dR/dz, standard normal score. */
    private static final double SLOPE_STEP = 1e-3;

    /** All dunks of the question. */
    private final DunkReadings bowls;
    /** Column of the input that is solved. */
    private final int column;
    /** Its prior, SI. */
    private final Prior prior;

    /** True mean reading of this draw, kg. */
    private double reading;

    /** Whether the scale feels the plume in this draw. */
    private boolean plumeFelt;

    /** What the next piece lifts more than those that were dunked, kg. */
    private double own;

    /** Solves the input of a column with its prior. */
    private LiftReadingSolver(DunkReadings bowls, int column, Prior prior) {
        this.bowls = bowls;
        this.column = column;
        this.prior = prior;
    }

    /** Solves whichever of bubble size and mould size moves the reading more, by one standard deviation at the medians. */
    static LiftReadingSolver of(DunkReadings bowls, Factors factors) {
        LiftReadingSolver bubble = on(Input.BUBBLE_SIZE, bowls, factors);
        if (factors.column(Input.MOULD_SIZE) < 0) {
            return bubble;
        }
        LiftReadingSolver size = on(Input.MOULD_SIZE, bowls, factors);
        return size.reach(factors) > bubble.reach(factors) ? size : bubble;
    }

    /** Solves one input. */
    private static LiftReadingSolver on(Input input, DunkReadings bowls, Factors factors) {
        return new LiftReadingSolver(bowls, factors.column(input), factors.solved(input));
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
        // the true mean reading, and whether the scale feels the plume: 9 draws of 10 around the middle of the choice
        reading = bowls.shown() + bowls.deviation() * Normal.quantile(error);
        double felt = HeldPiece.PLUME_FELT;
        plumeFelt = Math.abs(choice - 0.5) <= felt / 2;
        // what is left of the choice is a uniform number again, whose middle is that of the choice
        double left = plumeFelt
                ? (choice - (1 - felt) / 2) / felt
                : choice < 0.5 ? choice / (1 - felt) : (choice - felt) / (1 - felt);
        own = bowls.own() * Normal.quantile(Math.max(RAREST, Math.min(1 - RAREST, left)));
    }

    @Override
    public double solve(double[] inputs, boolean near) {
        // the score at which the reading is met, and how steeply the reading rises there
        double before = inputs[column];
        double score = root(inputs);
        double slope = Math.abs(score) <= FARTHEST ? slope(inputs, score) : 0;
        double spareSlope = slope > 0 ? spareSlope(inputs, score) : 0;
        if (!(spareSlope > 0)) {
            inputs[column] = before;
            return Double.NEGATIVE_INFINITY;
        }
        inputs[column] = value(score);
        double weight = -0.5 * score * score - Math.log(slope) + bowls.logRest(inputs, plumeFelt);
        inputs[column] = value(Math.max(-FARTHEST, Math.min(FARTHEST, score + own / spareSlope)));
        return weight;
    }

    /** The score at which the reading is met; NaN where there is none within the range. */
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

    /** dR/dz at a score, kg. */
    private double slope(double[] inputs, double score) {
        return (over(inputs, score + SLOPE_STEP) - over(inputs, score - SLOPE_STEP)) / (2 * SLOPE_STEP);
    }

    /** dB/dz at a score, kg, B what is to spare at the drop. */
    private double spareSlope(double[] inputs, double score) {
        inputs[column] = value(score + SLOPE_STEP);
        double above = bowls.spare(inputs);
        inputs[column] = value(score - SLOPE_STEP);
        return (above - bowls.spare(inputs)) / (2 * SLOPE_STEP);
    }

    /** Value of the input at a score, SI. */
    private double value(double score) {
        return prior.quantile(Normal.cumulative(score));
    }

    /** Reading at a score less the true one, kg; leaves the value in the inputs. */
    private double over(double[] inputs, double score) {
        inputs[column] = value(score);
        return bowls.reading(inputs, plumeFelt) - reading;
    }
}
