package org.fizzhull.mesh.reading;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Numbers as STL and 3MF write them: decimal, with a point, an exponent perhaps; no words, no hexadecimal forms. */
final class ModelNumber {
    private static final Pattern DECIMAL = Pattern.compile("[-+.0-9eE]{1,64}");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");

    private ModelNumber() {}

    /** The number; NaN where it is missing, is none, or is no usable size. */
    static double of(@Nullable String text) {
        double value = text == null ? Double.NaN : decimal(text);
        return Math.abs(value) <= VertexWeld.LARGEST ? value : Double.NaN;
    }

    /** The number of any size; NaN where it is none. */
    static double decimal(String text) {
        try {
            return DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** A whole number from 0 up to below a limit; -1 where it is missing, is none or is not below. */
    static int index(@Nullable String text, int limit) {
        int value = text != null && WHOLE.matcher(text).matches() ? Integer.parseInt(text) : limit;
        return value < limit ? value : -1;
    }
}
