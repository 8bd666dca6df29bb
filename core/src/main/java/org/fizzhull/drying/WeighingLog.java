package org.fizzhull.drying;

import java.util.Arrays;
import org.fizzhull.evidence.Interval;

/**
 * Is it dry yet, from a few weighings of one piece? The course of the recipe is stretched in time and in the amount of
 * water until it meets the weighings; every stretch counts by how well it does and how likely it was beforehand (Bayes'
 * rule on a grid). The piece's own weight is left free: only differences between its weighings are used.
 *
 * @param stillToGo water that has to leave after the last weighing until it is ready, kg; 0 where it is
 * @param readyAfter time from pressing until 95 % of the removable water is gone, s
 * @param stretch factor on the drying time of the plain recipe
 * @param misfit root mean square of the best course's deviations over the scale's; above 2 the course is not this one
 */
public record WeighingLog(Interval stillToGo, Interval readyAfter, Interval stretch, double misfit) {
    /** Standard uncertainty of the drying time as a factor: ln 1.9 (docs/physics/drying.md, 6). */
    private static final double TIME_SIGMA = Math.log(1.9);

    /** Standard uncertainty of the amount of liquid in one piece, as a factor [assumed]. */
    private static final double WATER_SIGMA = Math.log(1.15);

    private static final int TIMES = 121;
    private static final int WATERS = 25;
    private static final double REACH = 3;

    /**
     * Fits 2 to 100 weighings of one piece.
     *
     * @param course the recipe's course until ready and beyond, in the room as it was
     * @param times from pressing, s, rising, 0 or more
     * @param weights kg
     * @param scale standard uncertainty of one weighing, kg
     */
    public static WeighingLog fit(DryingCourse course, double[] times, double[] weights, double scale) {
        int n = times.length;
        if (n < 2 || n > 100 || weights.length != n || !(scale > 0)) {
            throw new IllegalArgumentException("a drying log needs 2 to 100 weighings and the scale's uncertainty");
        }
        for (int i = 0; i < n; i++) {
            boolean sound = weights[i] > 0 && (i == 0 ? times[0] >= 0 : times[i] > times[i - 1]) && times[i] < 1e9;
            if (!sound) {
                throw new IllegalArgumentException("weighing " + (i + 1) + " is out of order or not a weight");
            }
        }
        double ready = course.readyAfter().orElseThrow(() -> new IllegalArgumentException("the course is never ready"));
        int cells = TIMES * WATERS;
        double[] weight = new double[cells];
        double[] toGo = new double[cells];
        double[] at = new double[cells];
        double[] factor = new double[cells];
        double least = Double.POSITIVE_INFINITY;
        double best = Double.POSITIVE_INFINITY;
        for (int k = 0; k < cells; k++) {
            int row = k / WATERS;
            double u = REACH * (2.0 * row / (TIMES - 1) - 1);
            double v = REACH * (2.0 * (k % WATERS) / (WATERS - 1) - 1);
            double time = Math.exp(TIME_SIGMA * u);
            double water = Math.exp(WATER_SIGMA * v);
            double chi = deviation(course, times, weights, scale, time, water);
            weight[k] = chi + u * u + v * v;
            least = Math.min(least, weight[k]);
            best = Math.min(best, chi);
            at[k] = ready * time;
            factor[k] = time;
            double now = lost(course, times[n - 1] / time);
            toGo[k] = Math.max(0, water * (lost(course, ready) - now));
        }
        for (int k = 0; k < cells; k++) {
            weight[k] = Math.exp(-0.5 * (weight[k] - least));
        }
        return new WeighingLog(
                interval(toGo, weight), interval(at, weight), interval(factor, weight), Math.sqrt(best / (n - 1)));
    }

    /** Sum of squared deviations over the scale's, the piece's own weight fitted as their mean. */
    private static double deviation(
            DryingCourse course, double[] times, double[] weights, double scale, double time, double water) {
        int n = times.length;
        double mean = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double off = (weights[i] + water * lost(course, times[i] / time)) / scale;
            double before = off - mean;
            mean += before / (i + 1);
            squares += before * (off - mean);
        }
        return squares;
    }

    /** Mass lost since pressing at a time of the course; its end stands for all later times. */
    private static double lost(DryingCourse course, double seconds) {
        return course.at(0).mass() - course.at(Math.min(seconds, course.end())).mass();
    }

    private static Interval interval(double[] values, double[] weights) {
        Integer[] order = new Integer[values.length];
        double total = 0;
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
            total += weights[i];
        }
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double[] quantile = {0.025, 0.5, 0.975};
        double[] found = new double[3];
        double sum = 0;
        int q = 0;
        for (int i = 0; i < order.length && q < 3; i++) {
            sum += weights[order[i]] / total;
            while (q < 3 && sum >= quantile[q]) {
                found[q++] = values[order[i]];
            }
        }
        return new Interval(found[1], found[0], found[2]);
    }
}
