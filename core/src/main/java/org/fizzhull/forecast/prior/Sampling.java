package org.fizzhull.forecast.prior;

import java.io.Serializable;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.sampling.MonteCarlo;

/**
 * How many draws and from which seed. The same numbers give the same draws on any machine and any number of threads.
 * More draws make the ends of intervals smoother, with an error that falls about as one over their number for smooth
 * outputs ({@link org.fizzhull.uncertainty.sampling.MonteCarlo}); they say nothing more of what the priors do not know. Cost: in
 * proportion.
 *
 * @param seed any number
 * @param samples number of draws, a multiple of 16 from 128 to 1,048,576, or 0 for central values only
 */
public record Sampling(long seed, int samples) implements Serializable {
    /** Draws where none are asked for. */
    public static final int DEFAULT_SAMPLES = 4096;

    /** Fewest draws: 16 in each of eight blocks. */
    private static final int FEWEST = 128;
    /** Most draws: what one machine's memory holds, at some 150 bytes each. */
    private static final int MOST = 1 << 20;

    /**
     * Refuses any other number of draws.
     *
     * @param seed any number
     * @param samples number of draws, a multiple of 16 from 128 to 1,048,576, or 0 for central values only
     * @throws Refusal {@code out-of-range}, naming the nearest number that is allowed
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
