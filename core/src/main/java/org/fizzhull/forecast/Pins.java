package org.fizzhull.forecast;

import java.util.Optional;
import org.fizzhull.uncertainty.Pinning;
import org.jspecify.annotations.Nullable;

/**
 * Everything that was measured on pieces of a question, solved draw by draw: the press scale first, which the bath does
 * not touch, then speed and bubble size together.
 */
final class Pins implements Pinning {
    /** Errors of scale, hand and press; of the rise; of the fizz, and the choice between its roots. */
    private static final int UNIFORMS = 6;

    private final @Nullable PressPin press;
    private final @Nullable RisePin rise;
    private final @Nullable FizzPin fizz;
    private final int[] pinned;
    private final double[] scratch;

    Pins(@Nullable PressPin press, @Nullable RisePin rise, @Nullable FizzPin fizz, Factors factors) {
        this.press = press;
        this.rise = rise;
        this.fizz = fizz;
        int count = (press != null ? 1 : 0) + (rise != null ? 1 : 0) + (fizz != null ? 1 : 0);
        pinned = new int[count];
        int at = 0;
        if (press != null) {
            pinned[at++] = factors.column(Input.PRESS_SCALE);
        }
        if (rise != null) {
            pinned[at++] = factors.column(Input.BUBBLE_SIZE);
        }
        if (fizz != null) {
            pinned[at] = factors.column(Input.RECESSION);
        }
        scratch = new double[factors.priors().size()];
    }

    /** For one thread. */
    static Pins of(Posed posed, Observations seen) {
        Question question = posed.question();
        Factors factors = posed.factors();
        PressPin press = seen.weighed()
                .map(piece -> new PressPin(piece, question.making(), question.shape(), factors))
                .orElse(null);
        RisePin rise = seen.rise()
                .map(piece -> new RisePin(
                        new TimedVoyage(posed, piece.mass()),
                        piece,
                        factors.column(Input.BUBBLE_SIZE),
                        factors.solved(Input.BUBBLE_SIZE)))
                .orElse(null);
        FizzPin fizz = seen.fizz()
                .map(piece -> new FizzPin(
                        new TimedVoyage(posed, piece.mass()),
                        piece,
                        factors.column(Input.RECESSION),
                        factors.solved(Input.RECESSION),
                        Optional.ofNullable(rise)))
                .orElse(null);
        return new Pins(press, rise, fizz, factors);
    }

    @Override
    public int[] pinned() {
        return pinned.clone();
    }

    @Override
    public int uniforms() {
        return UNIFORMS;
    }

    @Override
    public double pin(double[] inputs, double[] u) {
        System.arraycopy(inputs, 0, scratch, 0, scratch.length);
        double weight = press == null ? 0 : press.pin(scratch, u[0], u[1], u[2]);
        if (weight > Double.NEGATIVE_INFINITY && fizz != null) {
            double risen = rise == null ? 0 : rise.truth(u[3]);
            weight += fizz.pin(scratch, fizz.truth(u[4]), risen, u[5]);
        } else if (weight > Double.NEGATIVE_INFINITY && rise != null) {
            weight += rise.pin(scratch, rise.truth(u[3]), false);
        }
        if (weight > Double.NEGATIVE_INFINITY) {
            for (int column : pinned) {
                inputs[column] = scratch[column];
            }
        }
        return weight;
    }
}
