package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/**
 * The facets of a surface that lie outside of what it encloses, those that cross others cut. The part of a facet that is
 * left is bounded by what is left of its sides and by a segment for each facet that it crosses; along these, one after
 * another, the boundary closes. Both facets of a segment get the same corners, so that the parts fit together.
 */
final class CutFacets {
    private final FacetEdges all;
    private final Crossings crossings;
    private final Windings winding;

    /** Edge of each side. */
    private final int[] edge;

    /** For each end of a segment the facet whose part it bounds, then the facet that crosses it. */
    private long[] key = new long[64];

    /** Twice the point, plus one where the segment starts; it runs with what is left of the facet on its left. */
    private int[] end = new int[64];

    private int ends;
    private int[] out = new int[256];
    private int used;
    private final Loops loops;

    CutFacets(Corners at, FacetEdges all, Crossings crossings, Windings winding) {
        this.all = all;
        this.crossings = crossings;
        this.winding = winding;
        edge = all.edges();
        loops = new Loops(at);
    }

    /** Three corners for each facet that is left. */
    int[] left() {
        gatherEnds();
        int next = 0;
        for (int f = 0; f < all.facets(); f++) {
            int from = next;
            while (next < ends && key[next] >> 32 == f) {
                next++;
            }
            if (next > from || crossed(f)) {
                cut(f, from, next);
            } else if (winding.at(all.corner(3 * f)) == 0) {
                emit(all.corner(3 * f), all.corner(3 * f + 1), all.corner(3 * f + 2));
            }
        }
        return Arrays.copyOf(out, used);
    }

    private boolean crossed(int f) {
        for (int h = 3 * f; h < 3 * f + 3; h++) {
            if (crossings.first(edge[h] + 1) > crossings.first(edge[h])) {
                return true;
            }
        }
        return false;
    }

    private void emit(int a, int b, int c) {
        if (used + 3 > out.length) {
            out = Arrays.copyOf(out, 2 * out.length);
        }
        out[used++] = a;
        out[used++] = b;
        out[used++] = c;
    }

    /**
     * Both ends of the segment of each two facets that cross, for either, sorted by facet. Where a side passes behind the
     * other facet, what is left of it ends, and the segment of its own facet starts; the segment of the other, which runs
     * the other way round, ends there. A segment inside what something else fills bounds nothing that is left.
     */
    private void gatherEnds() {
        for (int i = 0; i < crossings.count(); i++) {
            if (winding.least(i) != 0) {
                continue;
            }
            int e = crossings.edge(i);
            for (int k = all.first(e); k < all.first(e + 1); k++) {
                int h = all.side(k);
                boolean start = all.rises(h) == crossings.enters(i);
                add(h / 3, crossings.facet(i), crossings.point(i), start);
                add(crossings.facet(i), h / 3, crossings.point(i), !start);
            }
        }
        Integer[] order = new Integer[ends];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (i, j) -> key[i] != key[j] ? Long.compare(key[i], key[j]) : Integer.compare(end[i], end[j]));
        long[] sortedKey = new long[ends];
        int[] sortedEnd = new int[ends];
        for (int i = 0; i < ends; i++) {
            sortedKey[i] = key[order[i]];
            sortedEnd[i] = end[order[i]];
        }
        key = sortedKey;
        end = sortedEnd;
    }

    private void add(int f, int g, int point, boolean start) {
        if (ends == key.length) {
            key = Arrays.copyOf(key, 2 * ends);
            end = Arrays.copyOf(end, 2 * ends);
        }
        key[ends] = (long) f << 32 | g;
        end[ends++] = 2 * point + (start ? 1 : 0);
    }

    private void cut(int f, int from, int to) {
        loops.begin(all.corner(3 * f), all.corner(3 * f + 1), all.corner(3 * f + 2));
        for (int h = 3 * f; h < 3 * f + 3; h++) {
            side(h);
        }
        for (int i = from; i < to; i += 2) {
            if (i + 1 == to || key[i] != key[i + 1] || (end[i] + end[i + 1]) % 2 == 0) {
                throw new UnclearException("two facets that cross at other than two points");
            }
            int start = end[i] % 2 == 1 ? i : i + 1;
            loops.add(end[start] / 2, end[start == i ? i + 1 : i] / 2);
        }
        for (int[] triangle : loops.triangles()) {
            emit(triangle[0], triangle[1], triangle[2]);
        }
    }

    /** The pieces of a side that nothing else is around. */
    private void side(int h) {
        int e = edge[h];
        int before = all.corner(h);
        int w = winding.at(before);
        int first = crossings.first(e);
        int count = crossings.first(e + 1) - first;
        for (int k = 0; k < count; k++) {
            int i = all.rises(h) ? first + k : first + count - 1 - k;
            if (w == 0) {
                loops.add(before, crossings.point(i));
            }
            w += crossings.enters(i) == all.rises(h) ? 1 : -1;
            before = crossings.point(i);
        }
        if (w == 0) {
            loops.add(before, all.end(h));
        }
    }
}
