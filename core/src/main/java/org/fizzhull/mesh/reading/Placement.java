package org.fizzhull.mesh.reading;

import org.jspecify.annotations.Nullable;

/**
 * How a 3MF model places an object: twelve numbers m, row after row of a matrix of four rows and three columns, and
 * {@code (x y z 1) m} is where a point comes to lie (3MF Core Specification, 3.3: https://3mf.io/spec/).
 */
record Placement(double[] m) {
    /** Where it lies already. */
    static final Placement NONE = new Placement(new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0});

    private static final int NUMBERS = 12;

    /** The placement a text gives, numbers parted by blanks; null for a text that gives none. */
    static @Nullable Placement of(String text) {
        String[] words = text.strip().split("[ \t\r\n]+", NUMBERS + 2);
        double[] m = new double[NUMBERS];
        for (int i = 0; i < NUMBERS; i++) {
            m[i] = words.length == NUMBERS ? ModelNumber.of(words[i]) : Double.NaN;
            if (Double.isNaN(m[i])) {
                return null;
            }
        }
        return new Placement(m);
    }

    /** One coordinate of a point as it is placed. */
    double at(int axis, double x, double y, double z) {
        return x * m[axis] + y * m[3 + axis] + z * m[6 + axis] + m[9 + axis];
    }

    /** Volume it makes of a volume of 1: below 0 for a mirror image, 0 for one pressed flat. */
    double volume() {
        return m[0] * (m[4] * m[8] - m[5] * m[7])
                - m[1] * (m[3] * m[8] - m[5] * m[6])
                + m[2] * (m[3] * m[7] - m[4] * m[6]);
    }
}
