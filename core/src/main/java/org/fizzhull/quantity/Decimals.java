package org.fizzhull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text: a point, no grouping, no locale, trailing zeros dropped, never {@code -0}. Rounding is half to even
 * on the exact value of the double, so the same bits are written everywhere. For JSON, messages and tables; a number
 * that must read back to the same bits is written by {@link QuantityText#format(double, Unit)}. Stateless.
 */
public final class Decimals {
    /** Significant digits of a number in JSON (command line contract). */
    public static final int JSON_DIGITS = 6;

    /** Numbers from 1e-6 on are written without an exponent. */
    private static final int PLAIN_FROM = -6;

    /** Numbers up to below 1e15 are written without an exponent. */
    private static final int PLAIN_BELOW = 15;

    /** Below this a tenth is still a digit of its own. */
    private static final double MOST_TENTHS = 9e14;

    private Decimals() {}

    /**
     * {@return a JSON number with six significant digits}
     *
     * @param value finite number
     * @throws IllegalArgumentException for NaN and infinities, which JSON has no word for: write null and a notice
     */
    public static String json(double value) {
        return text(value, JSON_DIGITS);
    }

    /**
     * {@return the number with at most that many significant digits (1 to 17): 138, 4.8, 1.2e-9}
     *
     * @param value finite number
     * @param digits most significant digits, 1 to 17
     * @throws IllegalArgumentException for NaN, infinities and another number of digits
     */
    public static String text(double value, int digits) {
        if (!Double.isFinite(value) || digits < 1 || digits > 17) {
            throw new IllegalArgumentException("cannot write " + value + " with " + digits + " digits");
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value)
                .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        // power of ten of the first digit
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < PLAIN_FROM || exponent >= PLAIN_BELOW
                ? rounded.movePointLeft(exponent).toPlainString() + 'e' + exponent
                : rounded.toPlainString();
    }

    /**
     * {@return the number rounded to a tenth, a half up, without the tenth where it is whole: 3, 0.5}
     *
     * @param value number, below 9e14
     * @throws IllegalArgumentException for NaN and larger numbers
     */
    public static String tenths(double value) {
        if (!(Math.abs(value) < MOST_TENTHS)) {
            throw new IllegalArgumentException("cannot write " + value + " in tenths");
        }
        double shown = Math.round(10 * value) / 10.0;
        return shown == Math.rint(shown) ? Long.toString(Math.round(shown)) : Double.toString(shown);
    }
}
