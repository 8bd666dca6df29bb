package org.fizzhull.cli.agreement;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as a person reads them in a text. */
final class Told {
    private static final Pattern GRAMS = Pattern.compile("(-?[0-9.]+) (k?)g\\b");

    private Told() {}

    /** The first weight in a text, g; NaN where there is none. */
    static double grams(String text) {
        Matcher found = GRAMS.matcher(text);
        return found.find()
                ? Double.parseDouble(found.group(1)) * (found.group(2).isEmpty() ? 1 : 1000)
                : Double.NaN;
    }

    /** The first number behind a mark; NaN where there is none. */
    static double after(String text, String mark) {
        Matcher found = Pattern.compile(Pattern.quote(mark) + "\\s*(-?[0-9.]+)").matcher(text);
        return found.find() ? Double.parseDouble(found.group(1)) : Double.NaN;
    }

    /** Whether a told number is a value rounded to tenths, or to three digits where that is coarser; both may be missing. */
    static boolean same(double told, double value) {
        if (Double.isNaN(told) || Double.isNaN(value)) {
            return Double.isNaN(told) == Double.isNaN(value);
        }
        return Math.abs(told - value) <= Math.max(0.051, Math.abs(value) * (Math.abs(value) < 100 ? 0 : 5e-4));
    }

    /** Whether two numbers of two objects are one; both may be missing. */
    static boolean equal(double one, double other) {
        if (Double.isNaN(one) || Double.isNaN(other)) {
            return Double.isNaN(one) == Double.isNaN(other);
        }
        return Math.abs(one - other) <= 1.1e-5 * Math.max(Math.abs(one), Math.abs(other));
    }

    /** Whether a number of an object is the difference of two others, each rounded to its six digits. */
    static boolean difference(double one, double other, double difference) {
        double rounding = 0.5 * (lastDigit(one) + lastDigit(other) + lastDigit(difference));
        return Math.abs(one - other - difference) <= rounding * (1 + 1e-6);
    }

    private static double lastDigit(double value) {
        return value == 0 ? 0 : Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 5);
    }

    /** A chance as it is told. */
    static String chance(double probability) {
        long percent = Math.round(100 * probability);
        return percent >= 100 ? "above 99 %" : percent <= 0 ? "below 1 %" : percent + " %";
    }
}
