package org.fizzhull.forecast.result;

import java.io.Serializable;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to aim for where each piece of a batch comes out a little different, read off the critical weights. Weights are
 * as they are entered, kg: of a fill the damp weight that goes into the mould, else the weight of the piece on the
 * scale.
 *
 * <p>Told for a batch whose fill scatters; a single piece has nothing to aim for. The second number is larger than the
 * first, the more the hand spreads. Immutable.
 *
 * @param aimFor heaviest mean at which a piece taken at random floats to the end nine times of ten, never above the
 *     second
 * @param neverAbove heaviest weight of a single piece that floats to the end nine times of ten
 */
public record BatchAim(double aimFor, double neverAbove) implements Serializable {
    /** Chance that is aimed for. */
    private static final double NINE_OF_TEN = 0.9;

    /**
     * {@return the target weight; empty where no weight, or every weight, of a pressed piece reaches nine of ten, and
     * where floating is not monotone in the weight in a tenth of the draws or more: there a limit from above says
     * nothing}
     *
     * @param critical critical weights of the draws
     */
    public static Optional<BatchAim> of(CriticalWeights critical) {
        OptionalDouble aim = critical.aim(NINE_OF_TEN);
        OptionalDouble most = critical.single(NINE_OF_TEN);
        boolean ends =
                critical.share(CriticalWeights.Met.BELOW_RANGE) + critical.share(CriticalWeights.Met.NOT_MONOTONE)
                                > 1 - NINE_OF_TEN
                        || critical.share(CriticalWeights.Met.ABOVE_RANGE) > NINE_OF_TEN;
        return aim.isPresent() && most.isPresent() && !ends
                ? Optional.of(new BatchAim(Math.min(aim.getAsDouble(), most.getAsDouble()), most.getAsDouble()))
                : Optional.empty();
    }

    /**
     * {@return whether floating is not monotone in the weight in a tenth of the draws or more}
     *
     * @param critical critical weights of the draws
     */
    public static boolean bent(CriticalWeights critical) {
        return critical.share(CriticalWeights.Met.NOT_MONOTONE) >= 1 - NINE_OF_TEN;
    }
}
