package org.fizzhull.recipe;

import java.util.Locale;

/** How names of ingredients are compared: case, hyphens, commas, spaces and the two spellings of sulfur do not matter. */
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

    /** Optimal string alignment: insertions, deletions, changes and swaps of neighbours that turn one text into another. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
