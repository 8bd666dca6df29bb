package org.fizzhull.cli.command;

import java.util.stream.IntStream;
import org.fizzhull.forecast.Sampling;
import org.fizzhull.uncertainty.MonteCarlo;
import org.fizzhull.uncertainty.Workers;

/** The options of a command that draws. */
final class DrawOptions {
    /** Below this many draws, starting threads costs more than it saves (measured). */
    private static final int WORTH_THREADS = 1 << 15;

    private DrawOptions() {}

    static Sampling sampling(Arguments arguments) {
        long seed = arguments.whole(CommonOptions.SEED, 1, Long.MIN_VALUE, Long.MAX_VALUE);
        long samples = arguments.whole(CommonOptions.SAMPLES, Sampling.DEFAULT_SAMPLES, 0, Integer.MAX_VALUE);
        return new Sampling(seed, (int) samples);
    }

    static Workers workers(Arguments arguments, Sampling sampling) {
        long threads = arguments.whole(CommonOptions.THREADS, MonteCarlo.BLOCKS, 1, 1024);
        boolean alone = threads == 1 || sampling.samples() < WORTH_THREADS;
        return alone
                ? Workers.CALLER
                : (count, task) -> IntStream.range(0, count).parallel().forEach(task::run);
    }
}
