package org.fizzhull.quantity.check;

import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.Commas;

/**
 * A number without a unit, in the digits 0 to 9: money, parts, a count, a cell below a heading that names the unit.
 * {@link Double#parseDouble} takes more than people write ({@code NaN}, {@code 0x1p7}, {@code 141f}); this does not.
 */
public final class BareNumber {
    private static final Pattern FORM = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private static final int LONGEST = 40;
    private static final int MOST_DIGITS = 18;

    private BareNumber() {}

    /**
     * {@return the number that a text is: digits with a decimal point at most, a sign, a power of ten; empty for any
     * other text and for what a double cannot hold}
     *
     * @param text without blanks around it
     */
    public static OptionalDouble of(String text) {
        if (text.length() > LONGEST || !FORM.matcher(text).matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(text);
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /**
     * {@return the number, 0 or more, that a text is: up to 18 digits with a decimal point at most; refuses any other}
     *
     * @param field option or key of the text
     * @param text as written, blanks around it passed over
     */
    public static double read(String field, String text) {
        String digits = text.strip();
        OptionalDouble value = of(digits);
        boolean plain =
                digits.length() <= MOST_DIGITS && digits.chars().allMatch(c -> c == '.' || (c >= '0' && c <= '9'));
        if (value.isEmpty() || !plain) {
            int comma = digits.indexOf(',');
            String mend = comma < 0
                    ? ""
                    : Commas.written(digits, comma).stream()
                            .filter(number -> of(number).isPresent())
                            .findFirst()
                            .map(number -> "Write " + number + ", with a point.")
                            .orElse("A number has one decimal sign, a point.");
            throw new Refusal("not-a-number", field, text, "a number such as 2 or 3.10", mend);
        }
        return value.getAsDouble();
    }
}
