package org.fizzhull.recipe;

import java.util.Locale;

/**
 * How names of ingredients are compared: case, hyphens, commas, spaces and the two spellings of sulfur do not matter.
 */
final class Names {
    private Names() {}

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
