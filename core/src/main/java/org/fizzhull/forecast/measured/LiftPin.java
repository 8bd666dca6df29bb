package org.fizzhull.forecast.measured;

import org.fizzhull.uncertainty.Normal;
import org.fizzhull.uncertainty.Prior;

/**
 * Solves the bubble size for one dunk: the reading grows linearly with the layer of gas, and so with the bubble size, up to
 * the most a body can hold, so that a secant finds the only root at once. Whether the scale feels the plume is drawn, with
 * {@link HeldPiece#PLUME_FELT}. The weight of the draw is the prior density of the size over the slope of the reading: exact for any spread
 * of the reading. Cost: some four force balances, no voyage.
 */
final class LiftPin implements BubblePin {
    /** Prior probability beyond which no root is looked for. */
    private static final double RAREST = 1e-9;

    private static final int MOST_PASSES = 20;

    /** Found to this, kg. */
    private static final double CLOSE = 1e-8;

    private static final double SLOPE_STEP = 1e-3;

    private final Bowl bowl;
    private final HeldPiece piece;
    private final int column;
    private final Prior prior;
    private final double lowest;
    private final double highest;

    /** True reading of this draw, kg. */
    private double reading;

    private boolean plumeFelt;

    LiftPin(Bowl bowl, HeldPiece piece, int column, Prior prior) {
        this.bowl = bowl;
        this.piece = piece;
        this.column = column;
        this.prior = prior;
        lowest = prior.quantile(RAREST);
        highest = prior.quantile(1 - RAREST);
    }

    @Override
    public void measure(double error, double choice) {
        reading = piece.reading() + bowl.deviation() * Normal.quantile(error);
        plumeFelt = choice <= HeldPiece.PLUME_FELT;
    }

    @Override
    public double pin(double[] inputs, boolean near) {
        double before = inputs[column];
        double size = root(inputs, before);
        double slope = size >= lowest && size <= highest ? slope(inputs, size) : 0;
        inputs[column] = slope > 0 ? size : before;
        return slope > 0 ? prior.logDensity(inputs[column]) - Math.log(slope) : Double.NEGATIVE_INFINITY;
    }

    private double root(double[] inputs, double start) {
        double a = start;
        double atA = over(inputs, a);
        double b = 1.5 * start;
        double atB = over(inputs, b);
        for (int pass = 0; pass < MOST_PASSES && Math.abs(atB) > CLOSE; pass++) {
            double next = b - atB * (b - a) / (atB - atA);
            if (!(next > lowest / 2 && next < 2 * highest)) {
                return Double.NaN;
            }
            a = b;
            atA = atB;
            b = next;
            atB = over(inputs, b);
        }
        return Math.abs(atB) <= CLOSE ? b : Double.NaN;
    }

    private double slope(double[] inputs, double size) {
        double step = SLOPE_STEP * size;
        return (over(inputs, size + step) - over(inputs, size - step)) / (2 * step);
    }

    private double over(double[] inputs, double size) {
        inputs[column] = size;
        return bowl.reading(inputs, plumeFelt) - reading;
    }
}
