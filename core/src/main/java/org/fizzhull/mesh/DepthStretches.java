package org.fizzhull.mesh;

import java.util.Arrays;

/** Stretches of ways into a body, each with the coefficients of 1, d and d2 of its width at the depth d. */
final class DepthStretches {
    /** Share of the volume below which what is left is rounding. */
    private static final double NOTHING = 1e-12;

    private static final int HALVINGS = 40;

    private double[] from;
    private double[] to;
    private double[] width;
    private int[] way;
    private int count;

    /** Room for so many stretches, and for more when they come. */
    DepthStretches(int room) {
        from = new double[room];
        to = new double[room];
        width = new double[3 * room];
        way = new int[room];
    }

    /**
     * Adds a stretch.
     *
     * @param number of its way
     * @param weight factor of the widths; negative to take the stretch away
     * @param widths coefficients of 1, d and d2
     * @param start depth, m, to the depth {@code end}
     */
    void add(int number, double weight, double[] widths, double start, double end) {
        if (count == to.length) {
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
            width = Arrays.copyOf(width, 6 * count);
            way = Arrays.copyOf(way, 2 * count);
        }
        from[count] = start;
        to[count] = end;
        way[count] = number;
        for (int m = 0; m < 3; m++) {
            width[3 * count + m] = weight * widths[m];
        }
        count++;
    }

    /** Mean end of the stretches, weighed by their volume, m. */
    double meanEnd() {
        double sum = 0;
        double whole = 0;
        for (int i = 0; i < count; i++) {
            double volume = content(i, to[i]) - content(i, from[i]);
            sum += volume * to[i];
            whole += volume;
        }
        return sum / whole;
    }

    /** Depth behind which nothing is left, m. */
    double deepest() {
        double high = 0;
        for (int i = 0; i < count; i++) {
            high = Math.max(high, to[i]);
        }
        double least = NOTHING * volume(0);
        double low = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (volume(middle) > least) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Volume left at a depth, m3. */
    double volume(double depth) {
        return volume(depth, 0, 1);
    }

    /** Volume left at a depth by every so many-th way from one on, m3. */
    double volume(double depth, int first, int every) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            if (to[i] > depth && way[i] % every == first) {
                sum += content(i, to[i]) - content(i, Math.max(depth, from[i]));
            }
        }
        return sum;
    }

    /** Area of the front at a depth, m2. */
    double area(double depth) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            if (to[i] > depth && from[i] <= depth) {
                sum += width[3 * i] + depth * (width[3 * i + 1] + depth * width[3 * i + 2]);
            }
        }
        return sum;
    }

    private double content(int i, double d) {
        return d * (width[3 * i] + d * (width[3 * i + 1] / 2 + d * width[3 * i + 2] / 3));
    }
}
