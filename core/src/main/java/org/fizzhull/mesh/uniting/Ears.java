package org.fizzhull.mesh.uniting;

import java.util.List;

/**
 * Fills a loop with triangles by cutting off ears, the best shaped first: three corners in a row that run anticlockwise
 * with no other corner between them. Corners in a row along a side stay corners. Where rounding leaves no ear, any corner
 * is cut off: the triangles still fit their neighbours, and one may lie on another by what is rounded. O(corners^2).
 */
final class Ears {
    private final Plane plane;
    private final int[] loop;
    private final int[] next;
    private final int[] before;

    /** How well shaped the ear at a corner is, up to 1 for a right one; below 0 where there is none. */
    private final double[] shape;

    Ears(Plane plane, int[] loop) {
        this.plane = plane;
        this.loop = loop;
        int n = loop.length;
        next = new int[n];
        before = new int[n];
        shape = new double[n];
        for (int i = 0; i < n; i++) {
            next[i] = (i + 1) % n;
            before[i] = (i + n - 1) % n;
        }
    }

    void cut(List<int[]> out) {
        int left = loop.length;
        for (int i = 0; i < loop.length; i++) {
            shape[i] = judge(i);
        }
        int start = 0;
        while (left > 3) {
            int best = start;
            for (int i = next[start]; i != start; i = next[i]) {
                best = shape[i] > shape[best] ? i : best;
            }
            emit(best, out);
            start = before[best];
            next[start] = next[best];
            before[next[best]] = start;
            left--;
            shape[start] = judge(start);
            shape[next[start]] = judge(next[start]);
        }
        emit(start, out);
    }

    private void emit(int i, List<int[]> out) {
        int a = loop[before[i]];
        int b = loop[i];
        int c = loop[next[i]];
        if (a != b && b != c && c != a) {
            out.add(new int[] {a, b, c});
        }
    }

    private double judge(int i) {
        int a = loop[before[i]];
        int b = loop[i];
        int c = loop[next[i]];
        double doubled = plane.doubled(a, b, c);
        if (!(doubled > 0)) {
            return doubled == 0 ? -1 : -2;
        }
        for (int k = next[next[i]]; k != before[i]; k = next[k]) {
            int p = loop[k];
            if (p != a
                    && p != b
                    && p != c
                    && plane.doubled(a, b, p) >= 0
                    && plane.doubled(b, c, p) >= 0
                    && plane.doubled(c, a, p) >= 0) {
                return -1.5;
            }
        }
        double longest = Math.max(plane.squared(a, b), Math.max(plane.squared(b, c), plane.squared(c, a)));
        return doubled / longest;
    }
}
