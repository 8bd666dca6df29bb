package org.fizzhull.shape;

/** Proposals for a name that was not known. */
final class NearestName {
    private static final int LONGEST = 30;

    private NearestName() {}

    /** "Did you mean dome?", or nothing where no name is near. */
    static String hint(String read, String[] names) {
        if (read.length() > LONGEST) {
            return "";
        }
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String name : names) {
            int distance = distance(read, name);
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        boolean near = least <= 2 && least < best.length() && least < read.length();
        return near ? "Did you mean " + best + "?" : "";
    }

    /** "a, b or c". */
    static String list(String[] names, String word) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < names.length; i++) {
            if (i > 0) {
                text.append(i + 1 == names.length ? " " + word + " " : ", ");
            }
            text.append(names[i]);
        }
        return text.toString();
    }

    /** Edits between two words: letters put in, left out, changed, or two neighbours swapped. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                d[i][j] = Math.min(change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                boolean swap =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swap) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
