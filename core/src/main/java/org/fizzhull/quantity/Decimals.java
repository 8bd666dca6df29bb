package org.fizzhull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text: a point, no grouping, no locale, trailing zeros dropped, never {@code -0}. Rounding is half to even
 * on the exact value of the double, so the same bits are written everywhere.
 */
public final class Decimals {
    /** Significant digits of a number in JSON (command line contract). */
    public static final int JSON_DIGITS = 6;

    /** Powers of ten that a double holds exactly. */
    private static final double[] TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private static final double LOG10_OF_2 = 0.3010299956639812;

    /** Numbers from 1e-6 up to below 1e15 are written without an exponent. */
    private static final int PLAIN_FROM = -6;

    private static final int PLAIN_BELOW = 15;

    private Decimals() {}

    /**
     * A JSON number with six significant digits.
     *
     * @throws IllegalArgumentException for NaN and infinities, which JSON has no word for: write null and a notice
     */
    public static String json(double value) {
        return text(value, JSON_DIGITS);
    }

    /** The number with at most that many significant digits (1 to 17): 138, 4.8, 1.2e-9. */
    public static String text(double value, int digits) {
        StringBuilder out = new StringBuilder(24);
        append(out, value, digits);
        return out.toString();
    }

    /** As {@link #text}, onto an existing text. */
    public static void append(StringBuilder out, double value, int digits) {
        if (!Double.isFinite(value) || digits < 1 || digits > 17) {
            throw new IllegalArgumentException("cannot write " + value + " with " + digits + " digits");
        }
        if (value == 0) {
            out.append('0');
            return;
        }
        if (value < 0) {
            out.append('-');
        }
        double size = Math.abs(value);
        int exponent = (int) Math.floor(Math.getExponent(size) * LOG10_OF_2);
        if (exponent < -TEN.length || exponent > TEN.length - 2 || digits > 15) {
            appendExactly(out, size, digits);
            return;
        }
        // The power of two under the number may lie one decade below it.
        if (size >= (exponent + 1 >= 0 ? TEN[exponent + 1] : 1 / TEN[-exponent - 1])) {
            exponent++;
        }
        int shift = digits - 1 - exponent;
        if (Math.abs(shift) >= TEN.length) {
            appendExactly(out, size, digits);
            return;
        }
        double scaled = shift >= 0 ? size * TEN[shift] : size / TEN[-shift];
        double toTie = Math.abs(scaled - Math.floor(scaled) - 0.5);
        if (toTie <= scaled * 0x1p-51) { // the one rounding in scaled could decide
            appendExactly(out, size, digits);
            return;
        }
        layOut(out, (long) Math.rint(scaled), -shift);
    }

    private static void appendExactly(StringBuilder out, double size, int digits) {
        BigDecimal rounded = new BigDecimal(size).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        layOut(out, rounded.unscaledValue().longValueExact(), -rounded.scale());
    }

    /** Writes mantissa times ten to the exponent. */
    private static void layOut(StringBuilder out, long mantissa, int exponent) {
        long digits = mantissa;
        int last = exponent;
        while (digits % 10 == 0) {
            digits /= 10;
            last++;
        }
        String text = Long.toString(digits);
        int first = last + text.length() - 1;
        if (first < PLAIN_FROM || first >= PLAIN_BELOW) {
            out.append(text.charAt(0));
            if (text.length() > 1) {
                out.append('.').append(text, 1, text.length());
            }
            out.append('e').append(first);
        } else if (last >= 0) {
            out.append(text);
            zeros(out, last);
        } else if (first >= 0) {
            out.append(text, 0, first + 1).append('.').append(text, first + 1, text.length());
        } else {
            out.append("0.");
            zeros(out, -first - 1);
            out.append(text);
        }
    }

    private static void zeros(StringBuilder out, int count) {
        for (int i = 0; i < count; i++) {
            out.append('0');
        }
    }
}
