package org.fizzhull.recipe;

import java.util.Locale;

/**
 * Plain form of ingredient names, by which they are compared: lower case, single blanks for blanks, hyphens, underscores and
 * commas, "sulf" for "sulph", a blank on each side of a percent sign.
 */
final class Names {
    private Names() {}

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
