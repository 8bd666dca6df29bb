package org.fizzhull.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A written, unsigned number kept as a ratio, so that it can be multiplied by a unit and rounded only once.
 *
 * <p>Up to 18 digits and the usual units are one exact long division; anything longer goes through {@link BigDecimal}
 * with 40 digits, which leaves the nearest double except for quotients within 1e-40 of a tie.
 */
final class Numeral {
    /** Beyond this power of ten a number of at most 120 characters is zero or infinite in any unit of the table. */
    private static final int LARGEST_EXPONENT = 600;

    private static final int LONG_DIGITS = 18;
    private static final long PRODUCT_LIMIT = 1L << 62;

    private final long top;
    private final long bottom;
    private final int exponent;
    /** The decimal as written, when its digits do not fit a long; else empty. */
    private final String tooLong;

    private Numeral(long top, long bottom, int exponent, String tooLong) {
        this.top = top;
        this.bottom = bottom;
        this.exponent = exponent;
        this.tooLong = tooLong;
    }

    /** A vulgar fraction, {@code whole + top/bottom}: whole numbers below 1e9, bottom positive. */
    static Numeral fraction(Numeral whole, Numeral top, Numeral bottom) {
        return new Numeral(whole.top * bottom.top + top.top, bottom.top, 0, "");
    }

    static Numeral whole(long value) {
        return new Numeral(value, 1, 0, "");
    }

    /** Digits, optionally a point with digits, optionally an exponent: checked by the scanner. */
    static Numeral decimal(String text) {
        long mantissa = 0;
        int digits = 0;
        int scale = 0;
        boolean fraction = false;
        int i = 0;
        int power = 0;
        for (; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '.') {
                fraction = true;
            } else if (c == 'e' || c == 'E') {
                power = power(text, i + 1);
                break;
            } else {
                if (mantissa != 0 || c != '0') {
                    digits++;
                }
                if (digits <= LONG_DIGITS) {
                    mantissa = 10 * mantissa + (c - '0');
                }
                if (fraction) {
                    scale++;
                }
            }
        }
        return new Numeral(mantissa, 1, power - scale, digits <= LONG_DIGITS ? "" : text);
    }

    private static int power(String text, int from) {
        char sign = text.charAt(from);
        int power = 0;
        for (int i = sign == '+' || sign == '-' ? from + 1 : from; i < text.length(); i++) {
            power = Math.min(10 * power + (text.charAt(i) - '0'), 100_000);
        }
        return sign == '-' ? -power : power;
    }

    /** One of the last place that is written: 0.1 of 3.4, 1 of 140, a quarter of 2 1/4. */
    Numeral lastPlace() {
        int place = tooLong.isEmpty() ? exponent : -new BigDecimal(tooLong).scale();
        return new Numeral(1, bottom, place, "");
    }

    boolean isZero() {
        return top == 0;
    }

    /** The nearest double. */
    double value() {
        return times(1, 1);
    }

    /** The double nearest to this number times numerator over denominator; infinite or zero when out of reach. */
    double times(long numerator, long denominator) {
        if (tooLong.isEmpty() && Math.abs(exponent) <= LONG_DIGITS) {
            long over = product(product(top, numerator), exponent > 0 ? tenTo(exponent) : 1);
            long under = product(product(bottom, denominator), exponent < 0 ? tenTo(-exponent) : 1);
            if (over >= 0 && under >= 0 && (long) (double) over == over && (long) (double) under == under) {
                return (double) over / (double) under;
            }
        }
        if (top == 0) {
            return 0;
        }
        if (Math.abs(exponent) > LARGEST_EXPONENT) {
            return exponent > 0 ? Double.POSITIVE_INFINITY : 0;
        }
        BigDecimal exact =
                tooLong.isEmpty() ? BigDecimal.valueOf(top).scaleByPowerOfTen(exponent) : new BigDecimal(tooLong);
        return exact.multiply(BigDecimal.valueOf(numerator))
                .divide(BigDecimal.valueOf(denominator).multiply(BigDecimal.valueOf(bottom)), new MathContext(40))
                .doubleValue();
    }

    /** The product of non-negative factors, or -1 where it or a factor is too large. */
    private static long product(long a, long b) {
        return a < 0 || b < 0 || (b != 0 && a > PRODUCT_LIMIT / b) ? -1 : a * b;
    }

    private static long tenTo(int exponent) {
        long power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= 10;
        }
        return power;
    }
}
