package org.fizzhull.mesh.reading;

import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers from bytes: sign, digits with one point, exponent. No locale, no hexadecimal forms, no words. Numbers
 * of up to 15 digits with a small exponent are exact products or quotients of two exact doubles; others go the long way.
 */
final class DecimalNumber {
    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    private DecimalNumber() {}

    /** The number written in the first {@code length} bytes; NaN where they are none. */
    static double parse(byte[] text, int length) {
        int i = length > 0 && (text[0] == '-' || text[0] == '+') ? 1 : 0;
        long digits = 0;
        int significant = 0;
        int seen = 0;
        int scale = 0;
        boolean point = false;
        for (; i < length; i++) {
            int b = text[i];
            if (b >= '0' && b <= '9') {
                seen++;
                scale -= point ? 1 : 0;
                significant += significant > 0 || b != '0' ? 1 : 0;
                digits = significant <= 18 ? 10 * digits + (b - '0') : digits;
            } else if (b == '.' && !point) {
                point = true;
            } else {
                break;
            }
        }
        int exponent = i == length ? 0 : exponent(text, i, length);
        if (seen == 0 || exponent == Integer.MIN_VALUE) {
            return Double.NaN;
        }
        int power = scale + exponent;
        if (significant > 15 || Math.abs(power) > 22) {
            return Double.parseDouble(new String(text, 0, length, StandardCharsets.US_ASCII));
        }
        double value = power < 0 ? digits / POWERS[-power] : digits * POWERS[power];
        return text[0] == '-' ? -value : value;
    }

    /** Exponent from its letter on; MIN_VALUE where there is none. Beyond 9999 it stays there: out of range either way. */
    private static int exponent(byte[] text, int from, int length) {
        if (text[from] != 'e' && text[from] != 'E') {
            return Integer.MIN_VALUE;
        }
        int i = from + 1;
        boolean negative = i < length && text[i] == '-';
        if (negative || (i < length && text[i] == '+')) {
            i++;
        }
        if (i == length) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; i < length; i++) {
            if (text[i] < '0' || text[i] > '9') {
                return Integer.MIN_VALUE;
            }
            value = Math.min(9999, 10 * value + text[i] - '0');
        }
        return negative ? -value : value;
    }
}
