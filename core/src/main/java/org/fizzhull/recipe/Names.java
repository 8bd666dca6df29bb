package org.fizzhull.recipe;

import java.util.Locale;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/**
 * Plain form of ingredient names, by which they are compared: lower case, single blanks for blanks, hyphens, underscores and
 * commas, "sulf" for "sulph", a blank on each side of a percent sign.
 */
final class Names {
    /** Most characters of a name. */
    static final int LONGEST = 80;

    private Names() {}

    /**
     * {@return the name itself}
     *
     * @param field what is named, for the refusal
     * @param name name as the user wrote it
     * @throws Refusal {@code bad-name} for one that is too long or has characters that cannot be seen
     */
    static String visible(String field, String name) {
        if (name.length() > LONGEST || PrintableText.hiddenAt(name) >= 0) {
            throw new Refusal(
                    "bad-name",
                    field,
                    name,
                    "a name of at most " + LONGEST + " characters, each of them to be seen",
                    "Type the name anew.");
        }
        return name;
    }

    /**
     * {@return the plain form; empty for a name of separators only}
     *
     * @param name name as written
     */
    static String plain(String name) {
        String lower = name.toLowerCase(Locale.ROOT).replace("sulph", "sulf").replace("%", " % ");
        StringBuilder text = new StringBuilder(lower.length());
        boolean gap = false;
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if (c == ' ' || c == '-' || c == '_' || c == ',' || c == '\t' || c == '\u00a0') {
                gap = text.length() > 0;
            } else {
                if (gap) {
                    text.append(' ');
                    gap = false;
                }
                text.append(c);
            }
        }
        return text.toString();
    }
}
