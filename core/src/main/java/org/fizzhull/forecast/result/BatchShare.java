package org.fizzhull.forecast.result;

import java.io.Serializable;
import org.fizzhull.evidence.Interval;

/**
 * What share of the pieces of one batch floats to the end. What differs from piece to piece (hand, reading of the
 * scale, one press against the next) makes it a share; what is the same for the whole batch but not known makes it
 * uncertain.
 *
 * <p>Worked out by {@link CriticalWeights#batch}: in each draw of what is common to the batch the share of its pieces
 * that weigh less than the critical weight. What is unknown for the whole batch is never told as a share of its pieces.
 * Kinds of inputs: {@link org.fizzhull.forecast.prior.Input.Kind}; docs/physics/uncertainty.md, 6. Immutable.
 *
 * @param share median and 95 % interval over what is not known of the batch, 0 to 1
 * @param mean of the share: the chance that one piece taken at random floats to the end
 * @param nineOfTen chance that at least 9 of 10 pieces of the batch do
 * @param oneOfTen chance that at most 1 of 10 does
 */
public record BatchShare(Interval share, double mean, double nineOfTen, double oneOfTen) implements Serializable {
    /** Chance of a whole or no batch above which everything between is left unsaid. */
    private static final double MOSTLY = 0.66;

    /** A share that counts as the whole batch. */
    public static final double NEARLY_ALL = 0.9;

    /** A share that counts as none of it. */
    public static final double NEARLY_NONE = 0.1;

    /** {@return whether the batch mostly floats or sinks as a whole} */
    public boolean together() {
        return nineOfTen + oneOfTen > MOSTLY;
    }

    /** {@return whether nearly all may float as well as nearly none: the interval reaches over both} */
    public boolean undecided() {
        return share.low() < NEARLY_NONE && share.high() > NEARLY_ALL;
    }
}
