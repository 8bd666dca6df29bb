package org.fizzhull.mesh.reading;

import org.jspecify.annotations.Nullable;

/** Numbers as STL and 3MF write them: decimal, with a point, an exponent perhaps; no words, no hexadecimal forms. */
final class ModelNumber {
    private static final int LONGEST = 64;

    private ModelNumber() {}

    /** The number; NaN where it is missing, is none, or is no usable size. */
    static double of(@Nullable String text) {
        double value = text == null ? Double.NaN : decimal(text);
        return Math.abs(value) <= VertexWeld.LARGEST ? value : Double.NaN;
    }

    /** The number of any size; NaN where it is none. */
    static double decimal(String text) {
        if (text.isEmpty() || text.length() > LONGEST) {
            return Double.NaN;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean digit = c >= '0' && c <= '9';
            if (!digit && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E') {
                return Double.NaN;
            }
        }
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** A whole number from 0 up to below a limit; -1 where it is missing, is none or is not below. */
    static int index(@Nullable String text, int limit) {
        if (text == null || text.isEmpty() || text.length() > 9) {
            return -1;
        }
        int value = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            value = 10 * value + c - '0';
        }
        return value < limit ? value : -1;
    }
}
