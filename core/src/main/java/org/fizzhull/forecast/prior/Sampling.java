package org.fizzhull.forecast.prior;

import java.io.Serializable;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.MonteCarlo;

/**
 * How many draws and from which seed. Same seed, same bytes.
 *
 * @param seed any number
 * @param samples number of draws, a multiple of 16 from 128 to 1,048,576, or 0 for central values only
 */
public record Sampling(long seed, int samples) implements Serializable {
    /** Draws where none are asked for. */
    public static final int DEFAULT_SAMPLES = 4096;

    private static final int FEWEST = 128;
    private static final int MOST = 1 << 20;

    /**
     * Refuses any other number of draws.
     *
     * @param seed any number
     * @param samples number of draws, a multiple of 16 from 128 to 1,048,576, or 0 for central values only
     */
    public Sampling {
        boolean fits = samples >= FEWEST && samples <= MOST && samples % MonteCarlo.STEP == 0;
        if (!(samples == 0 || fits)) {
            int near =
                    Math.min(MOST, Math.max(FEWEST, Math.round(samples / (float) MonteCarlo.STEP) * MonteCarlo.STEP));
            throw new Refusal(
                    "out-of-range",
                    "samples",
                    Integer.toString(samples),
                    "0, or a multiple of " + MonteCarlo.STEP + " from " + FEWEST + " to " + MOST,
                    "The nearest is " + near + "; 0 gives central values only.");
        }
    }

    /** {@return the usual sampling: seed 1 and 4,096 draws} */
    public static Sampling standard() {
        return new Sampling(1, DEFAULT_SAMPLES);
    }
}
