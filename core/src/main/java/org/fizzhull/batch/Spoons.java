package org.fizzhull.batch;

import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;

/**
 * A volume in the cups and spoons a person would reach for: {@code 2 1/4 cups}, {@code 3 tbsp + 1/2 tsp}, {@code 7
 * drops}; never {@code 0.37 cups}. The text is within 3 % of the volume or says "about", which happens below 21 mL
 * only.
 *
 * <p>Tried are all sums of cups around the volume, up to three tablespoons and up to two and three quarter teaspoons; among
 * those within 3 % the one with the fewest kinds of spoon is taken.
 */
final class Spoons {
    /** Relative error up to which a text stands without "about". */
    private static final double CLOSE = 0.03;
    /** Volume of a drop, m3 (common practice, no source). */
    private static final double DROP = 0.05e-6;
    /** Fractions as they are written, and as numbers. */
    private static final String[] NAMES = {"", "1/8", "1/4", "1/3", "1/2", "2/3", "3/4"};

    private static final double[] PARTS = {0, 0.125, 0.25, 1.0 / 3, 0.5, 2.0 / 3, 0.75};
    /** Indices of the fractions of a cup, then of a teaspoon, that measuring sets have. */
    private static final int[] CUP_PARTS = {0, 2, 3, 4, 5, 6};

    private static final int[] TEASPOON_PARTS = {0, 1, 2, 4, 6};
    /** Tablespoons beside cups at most: four are a quarter of a cup. */
    private static final int MOST_TABLESPOONS = 3;
    /** Whole teaspoons at most: three are a tablespoon. */
    private static final int MOST_TEASPOONS = 2;

    /** Volumes of the measures, m3. */
    private final double cup;

    private final double tablespoon;
    private final double teaspoon;

    /**
     * Takes the volumes of a set of measures.
     *
     * @param measures what a cup and the spoons hold
     */
    public Spoons(Measures measures) {
        cup = QuantityText.parseExact("cup", "1 cup", Dimension.VOLUME, measures);
        tablespoon = QuantityText.parseExact("tablespoon", "1 tbsp", Dimension.VOLUME, measures);
        teaspoon = QuantityText.parseExact("teaspoon", "1 tsp", Dimension.VOLUME, measures);
    }

    /**
     * {@return the volume in words}
     *
     * @param volume volume, m3, above 0
     * @throws IllegalArgumentException for a volume of 0 or less, or NaN
     */
    public String text(double volume) {
        if (!(volume > 0)) {
            throw new IllegalArgumentException("no spoon holds " + volume + " m3");
        }
        // below an eighth of a teaspoon: drops
        if (volume < 0.95 * PARTS[1] * teaspoon) {
            long drops = Math.max(1, Math.round(volume / DROP));
            return drops + (drops == 1 ? " drop" : " drops");
        }
        // all sums of cups, tablespoons and teaspoons near it
        Search best = new Search(volume);
        int wholeCups = (int) Math.floor(volume / cup);
        for (int whole = wholeCups; whole <= wholeCups + 1; whole++) {
            for (int part : CUP_PARTS) {
                String cups = counted(whole, part, whole + PARTS[part] > 1.01 ? " cups" : " cup");
                cupsAnd(best, cups, (whole + PARTS[part]) * cup);
            }
        }
        return best.error <= CLOSE ? best.text : "about " + best.text;
    }

    /** Tries all spoons beside some cups, which hold {@code held} m3. */
    private void cupsAnd(Search best, String cups, double held) {
        for (int spoons = 0; spoons <= MOST_TABLESPOONS; spoons++) {
            String withSpoons = joined(cups, spoons == 0 ? "" : spoons + " tbsp");
            for (int whole = 0; whole <= MOST_TEASPOONS; whole++) {
                for (int part : TEASPOON_PARTS) {
                    double teas = whole + PARTS[part];
                    String text = joined(withSpoons, counted(whole, part, " tsp"));
                    int kinds = (cups.isEmpty() ? 0 : 1) + (spoons == 0 ? 0 : 1) + (teas == 0 ? 0 : 1);
                    best.offer(text, held + spoons * tablespoon + teas * teaspoon, kinds, teas == 0 ? 0 : 1);
                }
            }
        }
    }

    /** A count with a fraction and its unit; empty for none. */
    private static String counted(int whole, int part, String unit) {
        if (whole == 0 && part == 0) {
            return "";
        }
        String number = whole == 0 ? NAMES[part] : part == 0 ? Integer.toString(whole) : whole + " " + NAMES[part];
        return number + unit;
    }

    /** Two texts with a plus between them, where both are there. */
    private static String joined(String first, String second) {
        return first.isEmpty() || second.isEmpty() ? first + second : first + " + " + second;
    }

    /**
     * The best text so far. Among those that are close: fewest kinds of spoon, then without teaspoons, then the closest. Else
     * the closest of all.
     */
    private static final class Search {
        /** Wanted, m3. */
        private final double volume;

        private String text = "";
        /** Relative error of the text. */
        private double error = Double.POSITIVE_INFINITY;
        /** Rank of the text, lower is better; the largest for one that is not close. */
        private int trouble = Integer.MAX_VALUE;

        Search(double volume) {
            this.volume = volume;
        }

        /**
         * Takes a text if it is better: {@code held} its volume, m3, {@code kinds} number of kinds of spoon, {@code teaspoons} 1
         * where it has teaspoons.
         */
        void offer(String words, double held, int kinds, int teaspoons) {
            if (words.isEmpty()) {
                return;
            }
            double off = Math.abs(held / volume - 1);
            int rank = off <= CLOSE ? 2 * kinds + teaspoons : Integer.MAX_VALUE;
            if (rank < trouble || (rank == trouble && off < error - 1e-12)) {
                text = words;
                error = off;
                trouble = rank;
            }
        }
    }
}
