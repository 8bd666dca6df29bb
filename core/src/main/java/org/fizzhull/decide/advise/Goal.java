package org.fizzhull.decide.advise;

/**
 * What is to be reached: so large a chance that a piece taken at random floats to the end.
 *
 * @param chance chance, above 0 and below 1; 9 of 10 is usual
 */
public record Goal(double chance) {
    /**
     * Checks the chance: certainty no forecast gives.
     *
     * @param chance chance, above 0 and below 1; 9 of 10 is usual
     * @throws IllegalArgumentException for any other number, or NaN
     */
    public Goal {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("a goal is a chance above 0 and below 1, not " + chance);
        }
    }

    /** {@return a chance of 0.9: nine pieces of ten} */
    public static Goal nineOfTen() {
        return new Goal(0.9);
    }
}
