package org.fizzhull.cli.option;

import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.uncertainty.Workers;

/** The options of a command that draws. */
public final class DrawOptions {
    /** Below this many draws one thread is faster (measured). */
    private static final int WORTH_THREADS = 1024;

    /** As {@link Sampling} has it. */
    private static final int MOST_SAMPLES = 1 << 20;

    private static final int MOST_THREADS = 1024;

    private DrawOptions() {}

    /** Refuses what cannot be read, also where the command draws nothing this time. */
    public static void check(Arguments arguments) {
        if (arguments.knows(CommonOptions.SAMPLES)) {
            workers(arguments, sampling(arguments));
        }
    }

    public static Sampling sampling(Arguments arguments) {
        long seed = arguments.whole(CommonOptions.SEED, 1, Long.MIN_VALUE, Long.MAX_VALUE);
        long samples = arguments.whole(CommonOptions.SAMPLES, Sampling.DEFAULT_SAMPLES, 0, MOST_SAMPLES);
        try {
            return new Sampling(seed, (int) samples);
        } catch (Refusal refusal) {
            throw refusal.of(CommonOptions.SAMPLES);
        }
    }

    /** As many threads as asked for, all processors without a word; one for few draws, where starting costs more. */
    public static Workers workers(Arguments arguments, Sampling sampling) {
        int threads = threads(arguments);
        return threads == 1 || sampling.samples() < WORTH_THREADS
                ? Workers.CALLER
                : Workers.on(work -> new Thread(work, "draws").start(), threads);
    }

    /** As many threads as asked for, all processors without a word. */
    public static int threads(Arguments arguments) {
        int processors = Runtime.getRuntime().availableProcessors();
        return (int) arguments.whole(CommonOptions.THREADS, processors, 1, MOST_THREADS);
    }
}
