package org.fizzhull.validation.table;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text, no finer than a tolerance can tell, so that the last bits of a processor's logarithm never show. */
public final class Rounding {
    private Rounding() {}

    private static final int DIGITS = 13;

    /** Rounded to a hundredth of the tolerance's decade, 0.02 shows 0.0001, and to 13 digits of the scale. */
    public static String toTolerance(double value, double tolerance, double scale) {
        int decimals = Math.min(2 - decade(tolerance), DIGITS - 1 - decade(Math.max(Math.abs(scale), tolerance)));
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : text(rounded);
    }

    /** As many digits as were written. */
    public static String plain(double value) {
        return text(new BigDecimal(Double.toString(value)));
    }

    private static int decade(double positive) {
        return (int) Math.floor(Math.log10(positive) + 1e-9);
    }

    private static String text(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        boolean tiny = stripped.abs().compareTo(new BigDecimal("0.0001")) < 0;
        return tiny ? stripped.toString().replace("E", "e") : stripped.toPlainString();
    }
}
