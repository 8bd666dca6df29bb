package org.fizzhull.shape;

import org.fizzhull.quantity.EditDistance;

/** Proposals for a name that was not known. */
public final class NearestName {
    private static final int LONGEST = 30;

    private NearestName() {}

    /** "Did you mean dome?", or nothing where no name is near. */
    public static String hint(String read, String[] names) {
        if (read.length() > LONGEST) {
            return "";
        }
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String name : names) {
            int distance = EditDistance.alignment(read, name);
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        boolean near = least <= 2 && least < best.length() && least < read.length();
        return near ? "Did you mean " + best + "?" : "";
    }

    /** "a, b or c". */
    public static String list(String[] names, String word) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < names.length; i++) {
            if (i > 0) {
                text.append(i + 1 == names.length ? " " + word + " " : ", ");
            }
            text.append(names[i]);
        }
        return text.toString();
    }
}
