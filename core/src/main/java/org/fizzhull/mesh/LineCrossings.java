package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Where the lines of a {@link LineGrid} meet a range of facets. Two of these on two threads share the work: each knows
 * its own facets and keeps what it finds.
 */
final class LineCrossings implements Runnable {
    private final LineGrid grid;
    private final Vertices vertices;
    private final int[] corners;
    private final byte[] column;
    private final int fromFacet;
    private final int toFacet;
    private final int mostTests;
    private int tests;

    /** The corners of one facet, those of lower number first. */
    private final double[] xyz = new double[9];

    private int[] line = new int[256];
    private long[] crossing = new long[256];
    private int used;

    /**
     * @param column the grid's column of each vertex
     * @param mostTests line and facet pairs after which the search is given up
     */
    LineCrossings(
            LineGrid grid, Vertices vertices, int[] corners, byte[] column, int fromFacet, int toFacet, int mostTests) {
        this.grid = grid;
        this.vertices = vertices;
        this.corners = corners;
        this.column = column;
        this.fromFacet = fromFacet;
        this.toFacet = toFacet;
        this.mostTests = mostTests;
    }

    @Override
    public void run() {
        int f = fromFacet;
        while (f < toFacet && tests <= mostTests) {
            int end = fromFacet + Chunks.end(f - fromFacet, toFacet - fromFacet);
            gather(f, end);
            f = end;
        }
    }

    private void gather(int from, int to) {
        int[] vertex = corners;
        byte[] columns = column;
        for (int h = 3 * from; h < 3 * to; h += 3) {
            int a = columns[vertex[h]];
            int b = columns[vertex[h + 1]];
            int c = columns[vertex[h + 2]];
            if (a != b || b != c) {
                gatherRows(h, Math.min(a, Math.min(b, c)), Math.max(a, Math.max(b, c)) - 1);
            }
        }
    }

    private void gatherRows(int h, int firstX, int lastX) {
        int a = corners[h];
        int b = corners[h + 1];
        int c = corners[h + 2];
        int rowA = grid.row(vertices.at(3 * a + 1));
        int rowB = grid.row(vertices.at(3 * b + 1));
        int rowC = grid.row(vertices.at(3 * c + 1));
        int firstY = Math.min(rowA, Math.min(rowB, rowC));
        int lastY = Math.max(rowA, Math.max(rowB, rowC)) - 1;
        if (firstY <= lastY) {
            gather(place(a, b, c), place(b, c, a), place(c, a, b), firstX, lastX, firstY, lastY);
        }
    }

    /** Puts a corner into its place among the three, and returns that. */
    private int place(int corner, int second, int third) {
        int place = (corner > second ? 1 : 0) + (corner > third ? 1 : 0);
        for (int axis = 0; axis < 3; axis++) {
            xyz[3 * place + axis] = vertices.at(3 * corner + axis);
        }
        return place;
    }

    private void gather(int a, int b, int c, int firstX, int lastX, int firstY, int lastY) {
        for (int j = firstY; j <= lastY; j++) {
            for (int i = firstX; i <= lastX; i++) {
                tests++;
                int sign = VerticalRay.sign(xyz, a, b, c, grid.x(i), grid.y(j));
                if (sign != 0) {
                    keep(grid.line(i, j), sign, VerticalRay.height(xyz, a, b, c, grid.x(i), grid.y(j)));
                }
            }
        }
    }

    /** Files a crossing so that the natural order of longs is the order of heights; the lowest bit holds the sign. */
    private void keep(int onLine, int sign, double z) {
        if (used == line.length) {
            line = Arrays.copyOf(line, 2 * used);
            crossing = Arrays.copyOf(crossing, 2 * used);
        }
        long bits = Double.doubleToRawLongBits(z);
        bits ^= bits >> 63 & Long.MAX_VALUE;
        line[used] = onLine;
        crossing[used++] = (bits & -2L) | (sign > 0 ? 1 : 0);
    }

    /** Height of a crossing, m. */
    static double height(long code) {
        long bits = code & -2L;
        return Double.longBitsToDouble(bits ^ (bits >> 63 & Long.MAX_VALUE));
    }

    /** +1 where the line enters the body going up, -1 where it leaves. */
    static int sign(long code) {
        return (code & 1) != 0 ? 1 : -1;
    }

    /** Pairs of a line and a facet that were looked at. */
    int tests() {
        return tests;
    }

    /** Adds the number of crossings on each line. */
    void count(int[] perLine) {
        for (int i = 0; i < used; i++) {
            perLine[line[i]]++;
        }
    }

    /** Files each crossing at the next place of its line. */
    void file(long[] into, int[] next) {
        for (int i = 0; i < used; i++) {
            into[next[line[i]]++] = crossing[i];
        }
    }
}
