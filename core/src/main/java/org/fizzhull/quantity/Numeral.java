package org.fizzhull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A written, unsigned number kept as an exact ratio, so that it can be multiplied by a unit and rounded only once.
 *
 * @param top numerator, 0 or more
 * @param bottom denominator, above 0
 */
record Numeral(BigDecimal top, BigDecimal bottom) {
    /** Digits of the quotient: its double is the nearest one, but for quotients within 1e-40 of a tie. */
    private static final MathContext DIGITS = new MathContext(40);

    /** Powers of ten beyond this are zero or infinite as doubles, whatever 120 characters of digits stand before. */
    private static final int LARGEST_POWER = 9999;

    /** A whole number, 0 or more. */
    static Numeral whole(long value) {
        return new Numeral(BigDecimal.valueOf(value), BigDecimal.ONE);
    }

    /** A vulgar fraction, {@code whole + top/bottom}: whole numbers, bottom positive. */
    static Numeral fraction(Numeral whole, Numeral top, Numeral bottom) {
        return new Numeral(whole.top.multiply(bottom.top).add(top.top), bottom.top);
    }

    /** Digits, optionally a point with digits, optionally an exponent: checked by the scanner. */
    static Numeral decimal(String text) {
        int e = Math.max(text.indexOf('e'), text.indexOf('E'));
        BigDecimal digits = new BigDecimal(e < 0 ? text : text.substring(0, e));
        BigDecimal value = e < 0 || digits.signum() == 0 ? digits : digits.scaleByPowerOfTen(power(text, e + 1));
        return new Numeral(value, BigDecimal.ONE);
    }

    /** The exponent written from a place on, bounded. */
    private static int power(String text, int from) {
        char sign = text.charAt(from);
        int power = 0;
        for (int i = sign == '+' || sign == '-' ? from + 1 : from; i < text.length(); i++) {
            power = Math.min(10 * power + (text.charAt(i) - '0'), LARGEST_POWER);
        }
        return sign == '-' ? -power : power;
    }

    /** One of the last place that is written: 0.1 of 3.4, 1 of 140, a quarter of 2 1/4. */
    Numeral lastPlace() {
        return new Numeral(top.ulp(), bottom);
    }

    /** Whether it is 0. */
    boolean isZero() {
        return top.signum() == 0;
    }

    /** The nearest double. */
    double value() {
        return times(1, 1);
    }

    /** The double nearest to this number times numerator over denominator; infinite or zero when out of reach. */
    double times(long numerator, long denominator) {
        return top.multiply(BigDecimal.valueOf(numerator))
                .divide(bottom.multiply(BigDecimal.valueOf(denominator)), DIGITS)
                .doubleValue();
    }
}
