package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/** Boxes around shells, for finding the facets that can meet another shell at all. */
final class ShellBoxes {
    private final Corners at;
    private final int[] corners;
    private final int[] shell;
    private final int count;

    /** Smallest x, y, z, then largest x, y, z of each shell, m. */
    private final double[] box;

    private ShellBoxes(Corners at, int[] corners, int[] shell, int count) {
        this.at = at;
        this.corners = corners;
        this.shell = shell;
        this.count = count;
        box = new double[6 * count];
    }

    static ShellBoxes of(Corners at, int[] corners, int[] shell, int count) {
        ShellBoxes boxes = new ShellBoxes(at, corners, shell, count);
        for (int b = 0; b < count; b++) {
            Arrays.fill(boxes.box, 6 * b, 6 * b + 3, Double.POSITIVE_INFINITY);
            Arrays.fill(boxes.box, 6 * b + 3, 6 * b + 6, Double.NEGATIVE_INFINITY);
        }
        for (int f = 0; f < shell.length; f++) {
            boxes.widen(boxes.box, 6 * shell[f], f);
        }
        return boxes;
    }

    private void widen(double[] sides, int first, int f) {
        for (int h = 3 * f; h < 3 * f + 3; h++) {
            for (int k = 0; k < 3; k++) {
                double x = at.grown[3 * corners[h] + k];
                sides[first + k] = Math.min(sides[first + k], x);
                sides[first + 3 + k] = Math.max(sides[first + 3 + k], x);
            }
        }
    }

    /** Facets that come into the box of another shell. */
    int[] meeting() {
        int[][] others = new int[count][];
        for (int a = 0; a < count; a++) {
            int[] found = new int[count];
            int used = 0;
            for (int b = 0; b < count; b++) {
                if (a != b && meet(box, 6 * a, box, 6 * b)) {
                    found[used++] = b;
                }
            }
            others[a] = Arrays.copyOf(found, used);
        }
        int[] facets = new int[shell.length];
        int used = 0;
        double[] own = new double[6];
        for (int f = 0; f < shell.length; f++) {
            Arrays.fill(own, 0, 3, Double.POSITIVE_INFINITY);
            Arrays.fill(own, 3, 6, Double.NEGATIVE_INFINITY);
            widen(own, 0, f);
            boolean meets = false;
            for (int b : others[shell[f]]) {
                meets |= meet(own, 0, box, 6 * b);
            }
            if (meets) {
                facets[used++] = f;
            }
        }
        return Arrays.copyOf(facets, used);
    }

    private static boolean meet(double[] one, int a, double[] other, int b) {
        for (int k = 0; k < 3; k++) {
            if (one[a + k] > other[b + 3 + k] || other[b + k] > one[a + 3 + k]) {
                return false;
            }
        }
        return true;
    }
}
