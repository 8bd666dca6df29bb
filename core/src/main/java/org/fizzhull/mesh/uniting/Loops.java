package org.fizzhull.mesh.uniting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is left of one facet: the pieces of its boundary, put together to loops, those filled with triangles. */
final class Loops {
    private final Corners at;
    private int[] from = new int[16];
    private int[] to = new int[16];
    private int pieces;

    /** Axes of the plane the facet is seen in. */
    private int u;

    private int v;

    Loops(Corners at) {
        this.at = at;
    }

    /** Begins with a facet: seen along the axis across which it is widest, so that it runs anticlockwise. */
    void begin(int a, int b, int c) {
        pieces = 0;
        double widest = 0;
        for (int k = 0; k < 3; k++) {
            int l = (k + 1) % 3;
            int m = (k + 2) % 3;
            double doubled = new Plane(at.grown, l, m).doubled(a, b, c);
            if (Math.abs(doubled) > widest) {
                widest = Math.abs(doubled);
                u = doubled > 0 ? l : m;
                v = doubled > 0 ? m : l;
            }
        }
    }

    void add(int start, int end) {
        if (pieces == from.length) {
            from = Arrays.copyOf(from, 2 * pieces);
            to = Arrays.copyOf(to, 2 * pieces);
        }
        from[pieces] = start;
        to[pieces++] = end;
    }

    /** Triangles that fill what the pieces bound, anticlockwise. */
    List<int[]> triangles() {
        Plane plane = new Plane(at.grown, u, v);
        List<int[]> outer = new ArrayList<>();
        List<int[]> holes = new ArrayList<>();
        for (int[] loop : closed()) {
            (plane.doubled(loop) > 0 ? outer : holes).add(loop);
        }
        if (outer.isEmpty()) {
            outer.addAll(holes);
            holes.clear();
        }
        List<int[]> all = new ArrayList<>();
        for (int[] loop : outer) {
            List<int[]> inside = new ArrayList<>();
            for (int[] hole : holes) {
                if (loop == around(hole[0], outer, plane)) {
                    inside.add(hole);
                }
            }
            new Ears(plane, Bridges.joined(plane, loop, inside)).cut(all);
        }
        return all;
    }

    /** The smallest loop around a point; any where rounding puts it outside all. */
    private static int[] around(int point, List<int[]> outer, Plane plane) {
        int[] best = outer.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (int[] loop : outer) {
            double area = plane.doubled(loop);
            if (outer.size() > 1 && area < least && plane.around(loop, point)) {
                best = loop;
                least = area;
            }
        }
        return best;
    }

    /** Follows the pieces; loops of two, which go there and back, enclose nothing. */
    private List<int[]> closed() {
        long[] byStart = new long[pieces];
        for (int i = 0; i < pieces; i++) {
            byStart[i] = (long) from[i] << 32 | i;
        }
        Arrays.sort(byStart);
        boolean[] done = new boolean[pieces];
        List<int[]> loops = new ArrayList<>();
        int[] loop = new int[pieces];
        for (int begin = 0; begin < pieces; begin++) {
            int used = 0;
            int piece = begin;
            while (!done[piece]) {
                done[piece] = true;
                loop[used++] = from[piece];
                if (to[piece] == from[begin]) {
                    break;
                }
                piece = following(to[piece], byStart, done);
            }
            if (used > 2) {
                loops.add(Arrays.copyOf(loop, used));
            }
        }
        return loops;
    }

    private static int following(int point, long[] byStart, boolean[] done) {
        int i = Arrays.binarySearch(byStart, (long) point << 32);
        for (int k = i < 0 ? -i - 1 : i; k < byStart.length && byStart[k] >> 32 == point; k++) {
            if (!done[(int) byStart[k]]) {
                return (int) byStart[k];
            }
        }
        throw new UnclearException("a facet whose parts have no closed boundary");
    }
}
