package org.fizzhull.voyage.result;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.check.SerialForm;
import org.jspecify.annotations.Nullable;

/**
 * What became of a piece, from the drop to its end: the result of a {@link FullVoyage}. Times in s since it was let go.
 *
 * @param outcome in one word
 * @param sinksLater whether a piece that floated at once went under before its end
 * @param floatsToTheEnd whether a piece that floated at once stayed up until a tenth of its dissolving body was left;
 *     toppings and insets do not count as dissolving
 * @param riseTime when it came up, s; empty unless it rises later
 * @param fizzTime when 1 % of the body was left, s
 * @param temperature of the bath, K
 * @param peakGasRate largest rate of gas seen at the surface, mol/s
 * @param events what happened, in order
 * @param series the course: depth, mass and gas at rising times
 * @param notices what the reader must know
 */
public record Voyage(
        Outcome outcome,
        boolean sinksLater,
        boolean floatsToTheEnd,
        OptionalDouble riseTime,
        double fizzTime,
        double temperature,
        double peakGasRate,
        List<Event> events,
        Series series,
        List<Notice> notices)
        implements Serializable {

    /**
     * Copies the lists.
     *
     * @param outcome in one word
     * @param sinksLater whether a piece that floated at once went under before its end
     * @param floatsToTheEnd whether a piece that floated at once stayed up until a tenth of its dissolving body was
     *     left; toppings and insets do not count as dissolving
     * @param riseTime when it came up, s; empty unless it rises later
     * @param fizzTime when 1 % of the body was left, s
     * @param temperature of the bath, K
     * @param peakGasRate largest rate of gas seen at the surface, mol/s
     * @param events in their order
     * @param series the course
     * @param notices what the reader must know
     */
    public Voyage {
        events = List.copyOf(events);
        notices = List.copyOf(notices);
    }

    /**
     * {@return the volume of moles of carbon dioxide as a dry ideal gas at the bath's temperature and 1 atm, m3}
     *
     * @param moles amount of carbon dioxide, mol
     */
    public double dryVolume(double moles) {
        return moles * PhysicalConstants.GAS_CONSTANT * temperature / PhysicalConstants.ATMOSPHERE;
    }

    private Object writeReplace() {
        return SerialForm.of(this);
    }

    /**
     * What becomes of a piece in the bath, in one of three words. The rules are those of {@link OutcomeTracker}; why 20 s
     * and a tenth: docs/physics/voyage.md, 8.
     */
    public enum Outcome {
        /** At the surface 20 s after it was let go. */
        FLOATS_AT_ONCE("floats at once"),
        /** It comes up after that with at least 10 % of its mass left. */
        RISES_LATER("rises later"),
        /** Neither. */
        STAYS_DOWN("stays down");

        /** When it is judged whether a piece floats at once, s. */
        public static final double AT_ONCE = 20;

        /** Share of the mass below which what comes up is a crumb. */
        public static final double CRUMB = 0.1;

        /** Share of the mass at which the voyage ends. */
        public static final double END = 0.01;

        /** What people read. */
        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        /** {@return the words} */
        public String words() {
            return words;
        }
    }

    /**
     * Something that happened to a piece in a {@link FullVoyage}: the ends of its legs, and its coming up and going down.
     *
     * @param kind what happened
     * @param time s after it was let go
     */
    public record Event(Kind kind, double time) implements Serializable {
        /** What can happen. */
        public enum Kind {
            /** It came to rest on the bottom. */
            BOTTOM("reaches the bottom"),
            /** Its lift overcame its weight. */
            LIFT_OFF("lifts off"),
            /** It broke the surface after it had been under. */
            SURFACES("comes to the surface"),
            /** It went under after it had been at the surface. */
            SINKS("goes under"),
            /** It lies still at the surface. */
            SETTLES("lies still at the surface"),
            /** The rim of a dry hollow went under. */
            SWAMPS("swamps"),
            /** The wall of a hollow was eaten through. */
            PIERCED("is eaten through"),
            /** 1 % of the body is left. */
            END("is gone");

            /** What people read, after "it". */
            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** {@return what happened in words that follow "it", {@code comes up} for example} */
            public String words() {
                return words;
            }
        }
    }

    /**
     * The voyage as columns of equal length, one row a moment, rising in time.
     *
     * <p>The rows are the ends of the legs of a {@link FullVoyage} and times between them, a tenth of a second apart at
     * first and 2 % of the time later. At an event two rows may have the same time. The arrays are not copied: whoever
     * writes into one changes the series.
     *
     * @param time s after the piece was let go
     * @param eroded how far every face has moved in where so much is left, m; the wet faces of a piece that floats with a
     *     flat face up have moved further
     * @param mass of the piece without the water in its pores, kg
     * @param centreDepth depth of its centre below the surface, m; negative above it
     * @param size what is left of its height, m, every face moved in by {@code eroded}
     * @param immersed share of its hull under water, 0 to 1
     * @param gasRate carbon dioxide seen as gas at the surface, mol/s
     * @param gas the same so far, mol
     * @param dissolved carbon dioxide that went into the bath so far, mol
     * @param left carbon dioxide still in the piece, mol
     */
    public record Series(
            double[] time,
            double[] eroded,
            double[] mass,
            double[] centreDepth,
            double[] size,
            double[] immersed,
            double[] gasRate,
            double[] gas,
            double[] dissolved,
            double[] left)
            implements Serializable {

        /** Number of columns. */
        private static final int COLUMNS = 10;

        /** From rows in the order of the columns. */
        public static Series of(List<double[]> rows) {
            double[][] c = new double[COLUMNS][rows.size()];
            for (int i = 0; i < rows.size(); i++) {
                for (int k = 0; k < COLUMNS; k++) {
                    c[k][i] = rows.get(i)[k];
                }
            }
            return new Series(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9]);
        }

        /** The columns in the order of the components. */
        private double[][] columns() {
            return new double[][] {time, eroded, mass, centreDepth, size, immersed, gasRate, gas, dissolved, left};
        }

        /** Equal columns make equal series. */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Series that && Arrays.deepEquals(columns(), that.columns());
        }

        @Override
        public int hashCode() {
            return Arrays.deepHashCode(columns());
        }

        @Override
        public String toString() {
            return rows() + " rows to " + time[rows() - 1] + " s";
        }

        /** {@return the number of rows} */
        public int rows() {
            return time.length;
        }
    }
}
