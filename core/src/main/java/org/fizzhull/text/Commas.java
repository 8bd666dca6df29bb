package org.fizzhull.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Commas in what people write: between the parts of a list, {@code 38 C, 25 cm}, and inside a number, where they stand
 * for the decimal point or part the thousands.
 *
 * <p>A comma is inside a number where a digit stands on both sides and the digits before it are no part of a word: the
 * comma of {@code 38,5 C} is, that of {@code 25 m3,0.5 changes/h} is not. Linear in the length of the text. Stateless.
 */
public final class Commas {
    /** Thousands parted by commas, with decimals or without. */
    private static final Pattern COMMA_GROUPS = Pattern.compile("[1-9]\\d{0,2}(,\\d{3})+(\\.\\d+)?");
    /** Thousands parted by points, and decimals after a comma. */
    private static final Pattern POINT_GROUPS = Pattern.compile("[1-9]\\d{0,2}(\\.\\d{3})+,\\d+");
    /** One comma and nothing else. */
    private static final Pattern ONE_COMMA = Pattern.compile("(\\d*),(\\d+)");

    private Commas() {}

    /**
     * {@return whether the comma at a place is inside a number}
     *
     * @param text any text
     * @param comma index of the comma
     */
    public static boolean inNumber(String text, int comma) {
        if (!digit(text, comma - 1) || !digit(text, comma + 1)) {
            return false;
        }
        int from = comma - 1;
        while (from >= 0 && (isDigit(text.charAt(from)) || text.charAt(from) == '.')) {
            from--;
        }
        return from < 0 || !Character.isLetter(text.charAt(from));
    }

    /**
     * {@return the parts between commas, without the blanks around them; a comma inside a number parts nothing}
     *
     * @param text any text
     */
    public static List<String> parts(String text) {
        List<String> parts = new ArrayList<>(3);
        int from = 0;
        for (int at = text.indexOf(','); at >= 0; at = text.indexOf(',', at + 1)) {
            if (!inNumber(text, at)) {
                parts.add(text.substring(from, at).strip());
                from = at + 1;
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    /**
     * The text with the number around a comma written as it may be meant, the likeliest first: {@code 6.5} for
     * {@code 6,5}; {@code 1.000} and {@code 1000} for {@code 1,000}; {@code 1234.5} for {@code 1.234,5} and
     * {@code 1,234.5}. Empty where it can mean no number, as {@code 772.1,50}.
     *
     * @param text any text
     * @param comma index of a comma in it
     */
    public static List<String> written(String text, int comma) {
        int from = comma;
        while (from > 0 && inside(text.charAt(from - 1))) {
            from--;
        }
        int to = comma;
        while (to < text.length() && inside(text.charAt(to))) {
            to++;
        }
        String before = text.substring(0, from);
        String after = text.substring(to);
        return numbers(text.substring(from, to)).stream()
                .map(number -> before + number + after)
                .toList();
    }

    /** The numbers that digits, points and commas may mean. */
    private static List<String> numbers(String written) {
        List<String> numbers = new ArrayList<>(2);
        Matcher one = ONE_COMMA.matcher(written);
        if (one.matches()) {
            numbers.add((one.group(1).isEmpty() ? "0" : one.group(1)) + '.' + one.group(2));
        }
        if (COMMA_GROUPS.matcher(written).matches()) {
            numbers.add(written.replace(",", ""));
        }
        if (POINT_GROUPS.matcher(written).matches()) {
            numbers.add(written.replace(".", "").replace(',', '.'));
        }
        return numbers;
    }

    private static boolean inside(char c) {
        return isDigit(c) || c == '.' || c == ',';
    }

    private static boolean digit(String text, int at) {
        return at >= 0 && at < text.length() && isDigit(text.charAt(at));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
