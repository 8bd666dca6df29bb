package org.fizzhull.recipe;

import org.fizzhull.quantity.Refusal;

/**
 * Reads a number without a unit: money, parts, a count. Digits with one decimal point at most, 18 characters at most; no
 * sign and no exponent, which nobody writes in a recipe.
 */
final class PlainNumber {
    private PlainNumber() {}

    /**
     * {@return the number, 0 or more}
     *
     * @param field what is read, for the refusal
     * @param text the number as written; blanks around it do not matter
     * @throws Refusal {@code not-a-number} for anything else; a decimal comma is named
     */
    static double read(String field, String text) {
        String digits = text.strip();
        int points = 0;
        boolean sound = !digits.isEmpty() && digits.length() <= 18;
        for (int i = 0; i < digits.length() && sound; i++) {
            char c = digits.charAt(i);
            points += c == '.' ? 1 : 0;
            sound = (c >= '0' && c <= '9') || (c == '.' && points == 1 && digits.length() > 1);
        }
        if (!sound) {
            boolean comma = digits.indexOf(',') >= 0;
            throw new Refusal(
                    "not-a-number",
                    field,
                    text,
                    "a number such as 2 or 3.10",
                    comma ? "Write the decimal sign as a point." : "");
        }
        return Double.parseDouble(digits);
    }
}
