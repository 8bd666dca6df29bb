package org.fizzhull.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Proposals for a name that was not known, by the optimal string alignment distance: letters inserted, left out,
 * changed, or two neighbours swapped, each counting once (a restricted Damerau distance; G. Navarro, ACM Computing
 * Surveys 33 (2001) 31, section 2.2; from memory). A name is near where at most a third of the letters differ, and at
 * least one.
 * <pre>{@code
 * String hint = NearName.hint("doem", List.of("dome", "cone"));   // Did you mean dome?
 * }</pre>
 *
 * <p>Cost: the product of the lengths for each name. Stateless.
 */
public final class NearName {
    /** Longer words are no slip of a name, and would take long to compare. */
    private static final int LONGEST = 60;

    private NearName() {}

    /**
     * Words a proposal for a misread name: "Did you mean dome?".
     *
     * @param read the name that was not known
     * @param names the names that are
     * @return the question, or an empty text where no name is near
     */
    public static String hint(String read, List<String> names) {
        String best = of(read, names);
        return best.isEmpty() ? "" : "Did you mean " + best + "?";
    }

    /**
     * {@return the nearest name, the first of several; empty where none is near}
     *
     * @param read the name that was not known
     * @param names the names that are
     */
    public static String of(String read, List<String> names) {
        List<String> near = among(read, names, 1);
        return near.isEmpty() ? "" : near.get(0);
    }

    /**
     * {@return the nearest names, at most so many, nearest first, those as near in the order given}
     *
     * @param read the name that was not known
     * @param names the names that are
     * @param most how many to return at most
     */
    public static List<String> among(String read, List<String> names, int most) {
        List<String> near = new ArrayList<>();
        if (read.length() > LONGEST) {
            return near;
        }
        // a third of the letters, one at least, but never all of them
        int limit = Math.min(Math.max(1, read.length() / 3), read.length() - 1);
        for (int distance = 0; distance <= limit; distance++) {
            for (String name : names) {
                boolean possible = Math.abs(name.length() - read.length()) <= limit && distance < name.length();
                if (near.size() < most && possible && distance(read, name) == distance && !near.contains(name)) {
                    near.add(name);
                }
            }
        }
        return near;
    }

    /**
     * {@return the names in a sentence: "a, b or c"}
     *
     * @param names the names, in the order to be shown
     * @param word the word before the last: "or", "and"
     */
    public static String list(List<String> names, String word) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < names.size(); i++) {
            text.append(i == 0 ? "" : i + 1 == names.size() ? " " + word + " " : ", ")
                    .append(names.get(i));
        }
        return text.toString();
    }

    /**
     * {@return the optimal string alignment distance of two words}
     *
     * @param a one word
     * @param b the other word
     */
    public static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                // cost of changing, putting in or leaving out a letter, and of swapping two neighbours
                int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
