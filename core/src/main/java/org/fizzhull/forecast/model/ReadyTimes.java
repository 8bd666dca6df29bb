package org.fizzhull.forecast.model;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.uncertainty.sampling.Statistics;

/** When each draw of a batch is dry, s from pressing; some never are. Immutable. */
public final class ReadyTimes {
    /** How long a piece is waited for, s: 60 days. */
    public static final double LONGEST = 60 * 86400.0;

    /** Of every draw, ascending; those that are never ready last. */
    private final double[] sorted;

    private ReadyTimes(double[] sorted) {
        this.sorted = sorted;
    }

    /**
     * {@return ready times of one time per draw, s; infinite for one that is not ready within 60 days}
     *
     * @param times time of each draw, s
     */
    public static ReadyTimes of(double[] times) {
        return new ReadyTimes(Statistics.sorted(times));
    }

    /** {@return the times of the draws that are ready within 60 days, s, ascending} */
    public double[] times() {
        return Arrays.copyOf(sorted, Math.toIntExact(Math.round(within(LONGEST) * sorted.length)));
    }

    /** {@return the number of draws, those that are never ready included} */
    public int draws() {
        return sorted.length;
    }

    /**
     * {@return the share of the draws that are ready within so many seconds}
     *
     * @param seconds time from pressing, s
     */
    public double within(double seconds) {
        Given.finite("seconds", seconds);
        int ready = 0;
        for (double time : sorted) {
            ready += time <= seconds ? 1 : 0;
        }
        return (double) ready / sorted.length;
    }

    /** {@return the share of the draws that are not ready within 60 days} */
    public double late() {
        return 1 - within(LONGEST);
    }

    /**
     * {@return the median, low and high, s; empty where more than half of the draws are never ready} An upper point of
     * 60 days stands for any later time.
     */
    public Optional<Interval> interval() {
        double median = Statistics.quantile(sorted, 0.5);
        if (!(median <= LONGEST)) {
            return Optional.empty();
        }
        double high = Statistics.quantile(sorted, 0.975);
        return Optional.of(new Interval(median, Statistics.quantile(sorted, 0.025), high <= LONGEST ? high : LONGEST));
    }
}
