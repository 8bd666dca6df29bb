package org.fizzhull.mesh.uniting;

import java.util.ArrayList;
import java.util.List;

/** What is left of one facet: the pieces of its boundary, put together to loops, those filled with triangles. */
final class Loops {
    private final Plane plane;
    private final Rings rings = new Rings();
    private int pieces;

    /** Of a facet, seen along the axis across which it is widest, so that it runs anticlockwise. */
    Loops(Corners at, int a, int b, int c) {
        Plane found = new Plane(at.grown, 0, 1);
        double widest = -1;
        for (int k = 0; k < 3; k++) {
            int l = (k + 1) % 3;
            int m = (k + 2) % 3;
            double doubled = new Plane(at.grown, l, m).doubled(a, b, c);
            if (Math.abs(doubled) > widest) {
                widest = Math.abs(doubled);
                found = doubled > 0 ? new Plane(at.grown, l, m) : new Plane(at.grown, m, l);
            }
        }
        plane = found;
    }

    void add(int start, int end) {
        rings.add(start, end);
        pieces++;
    }

    /** Triangles that fill what the pieces bound, anticlockwise. */
    List<int[]> triangles() {
        List<int[]> closed = rings.closed();
        if (closed.isEmpty() && pieces > 0) {
            throw new UnclearException("a facet whose parts have no closed boundary");
        }
        // loops of two, which go there and back, enclose nothing
        closed.removeIf(loop -> loop.length < 3);
        List<int[]> outer = new ArrayList<>();
        List<int[]> holes = new ArrayList<>();
        for (int[] loop : closed) {
            (plane.doubled(loop) > 0 ? outer : holes).add(loop);
        }
        if (outer.isEmpty()) {
            outer.addAll(holes);
            holes.clear();
        }
        List<int[]> all = new ArrayList<>();
        for (int[] loop : outer) {
            List<int[]> inside = new ArrayList<>(holes);
            inside.removeIf(hole -> loop != around(hole[0], outer));
            new Ears(plane, Bridges.joined(plane, loop, inside)).cut(all);
        }
        return all;
    }

    /** The smallest loop around a point; any where rounding puts it outside all. */
    private int[] around(int point, List<int[]> outer) {
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
}
