package org.fizzhull.shape.size;

import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Unit;

/** Sizes and masses in the units of shape text; a number that is none is shown as it is, for messages. */
public final class SizeText {
    /** Digits of a proposal: as many as anybody measures. */
    private static final int DIGITS_OF_A_PROPOSAL = 4;

    private SizeText() {}

    /**
     * {@return a length in mm that reads back to the same double}
     *
     * @param metres length, m
     */
    public static String mm(double metres) {
        return Double.isFinite(metres) ? QuantityText.format(metres, Unit.MILLIMETRE) : metres + " mm";
    }

    /**
     * {@return a mass in g that reads back to the same double}
     *
     * @param kilograms mass, kg
     */
    public static String grams(double kilograms) {
        return Double.isFinite(kilograms) ? QuantityText.format(kilograms, Unit.GRAM) : kilograms + " g";
    }

    /**
     * Words a proposal: "Did you mean 4.8 mm?".
     *
     * @param si proposed value, SI
     * @param unit unit in which to write it
     * @return the question, the value rounded for people
     */
    public static String proposal(double si, Unit unit) {
        return "Did you mean " + QuantityText.rounded(si, unit, DIGITS_OF_A_PROPOSAL) + "?";
    }
}
