package org.fizzhull.shape;

/**
 * Sizes and masses as text. The decimal point of the shortest text of the double is moved, not the number multiplied, so
 * that the text, read with one rounding, gives the same double back.
 */
final class SizeText {
    private static final int MILLI = 3;

    private SizeText() {}

    /** A length in mm. */
    static String mm(double metres) {
        return shifted(metres) + " mm";
    }

    /** A mass in g. */
    static String grams(double kilograms) {
        return shifted(kilograms) + " g";
    }

    /** Rounded to four digits, for proposals. */
    static double rounded(double si) {
        double scale = Math.pow(10, 3 - (int) Math.floor(Math.log10(si * 1e3)));
        return Math.rint(si * 1e3 * scale) / scale / 1e3;
    }

    private static String shifted(double si) {
        if (!Double.isFinite(si)) {
            return Double.toString(si);
        }
        String number = Double.toString(Math.abs(si));
        int e = number.indexOf('E');
        StringBuilder digits = new StringBuilder(number);
        int point = number.indexOf('.') + MILLI;
        if (e >= 0) {
            point += Integer.parseInt(number.substring(e + 1));
            digits.setLength(e);
        }
        digits.deleteCharAt(number.indexOf('.'));
        while (point > digits.length()) {
            digits.append('0');
        }
        while (point < 1) {
            digits.insert(0, '0');
            point++;
        }
        digits.insert(point, '.');
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        if (digits.charAt(end - 1) == '.') {
            end--;
        }
        int start = 0;
        while (start + 1 < end && digits.charAt(start) == '0' && digits.charAt(start + 1) != '.') {
            start++;
        }
        String plain = digits.substring(start, end);
        return si < 0 ? "-" + plain : plain;
    }
}
