package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/**
 * The facets of one surface that lie outside another, those that cross it cut. The part of a facet that is left is
 * bounded by what is left of its sides and by a segment for each facet of the other surface that it crosses; along these,
 * one after another, the boundary closes. Both surfaces get the same corners, so that the parts fit together.
 */
final class CutFacets {
    private final FacetEdges own;
    private final FacetEdges other;
    private final Crossings mine;
    private final Crossings theirs;

    /** How often the other surface winds around each corner. */
    private final int[] winding;

    /** Edge of each side. */
    private final int[] edge;

    /** Facet of this surface, then of the other, for each end of a segment. */
    private long[] key = new long[64];

    /** Twice the point, plus one where the segment starts; it runs with what is left of this surface on its left. */
    private int[] end = new int[64];

    private int ends;
    private int[] out = new int[256];
    private int used;
    private final Loops loops;

    CutFacets(Corners at, FacetEdges own, FacetEdges other, Crossings mine, Crossings theirs, int[] winding) {
        this.own = own;
        this.other = other;
        this.mine = mine;
        this.theirs = theirs;
        this.winding = winding;
        edge = own.edges();
        loops = new Loops(at);
    }

    /** Three corners for each facet that is left. */
    int[] left() {
        gatherEnds();
        int next = 0;
        for (int f = 0; f < own.facets(); f++) {
            int from = next;
            while (next < ends && key[next] >> 32 == f) {
                next++;
            }
            if (next > from || crossed(f)) {
                cut(f, from, next);
            } else if (winding[own.corner(3 * f)] <= 0) {
                emit(own.corner(3 * f), own.corner(3 * f + 1), own.corner(3 * f + 2));
            }
        }
        return Arrays.copyOf(out, used);
    }

    private boolean crossed(int f) {
        for (int h = 3 * f; h < 3 * f + 3; h++) {
            if (mine.first(edge[h] + 1) > mine.first(edge[h])) {
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
     * Both ends of the segment of each two facets that cross, sorted by facet. Where a side passes behind the other
     * surface, what is left of it ends, and the segment starts; where a side of the other surface passes behind this one,
     * what is left of that one ends, and the segment, which runs the other way round for it, ends here.
     */
    private void gatherEnds() {
        for (int i = 0; i < mine.count(); i++) {
            int e = mine.edge(i);
            for (int k = own.first(e); k < own.first(e + 1); k++) {
                int h = own.side(k);
                add(h / 3, mine.facet(i), mine.point(i), own.rises(h) == mine.enters(i));
            }
        }
        for (int i = 0; i < theirs.count(); i++) {
            int e = theirs.edge(i);
            for (int k = other.first(e); k < other.first(e + 1); k++) {
                int h = other.side(k);
                add(theirs.facet(i), h / 3, theirs.point(i), other.rises(h) != theirs.enters(i));
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
        loops.begin(own.corner(3 * f), own.corner(3 * f + 1), own.corner(3 * f + 2));
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

    /** The pieces of a side outside the other surface. */
    private void side(int h) {
        int e = edge[h];
        int before = own.corner(h);
        int w = winding[before];
        int first = mine.first(e);
        int count = mine.first(e + 1) - first;
        for (int k = 0; k < count; k++) {
            int i = own.rises(h) ? first + k : first + count - 1 - k;
            if (w <= 0) {
                loops.add(before, mine.point(i));
            }
            w += mine.enters(i) == own.rises(h) ? 1 : -1;
            before = mine.point(i);
        }
        if (w <= 0) {
            loops.add(before, own.end(h));
        }
    }
}
