package org.fizzhull.mesh.repair;

import java.util.Arrays;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Divides facets at corners of others that stand in the middle of their open edges (T-junctions). At most one edge of a
 * facet is divided at a time; the maker calls again while there is something to divide.
 */
final class OpenEdges {
    /** Open edges looked at; with more, the mesh is no body with cracks but a heap of facets. */
    private static final int MOST = 50_000;

    private final double[] xyz;
    private final double tolerance;
    private int[] corners;
    private int used;
    private int divided;
    private int first = -1;

    /** Corners of the edges, by x, and their x, m. */
    private final int[] ends;

    private final double[] x;

    /** @param edges the edges to look at, as three times the facet plus the corner */
    OpenEdges(double[] xyz, int[] corners, int[] edges, double tolerance) {
        this.xyz = xyz;
        this.tolerance = tolerance;
        this.corners = corners;
        used = corners.length;
        ends = NearCorners.ends(corners, edges);
        x = new double[ends.length];
        if (edges.length <= MOST) {
            NearCorners.sortByX(xyz, ends, x);
            boolean[] done = new boolean[corners.length / 3];
            for (int h : edges) {
                done[h / 3] = done[h / 3] || divide(h);
            }
            this.corners = Arrays.copyOf(this.corners, used);
        }
    }

    private boolean divide(int h) {
        int a = corners[h];
        int b = corners[FacetEdges.next(h)];
        int[] on = new int[4];
        double[] along = new double[4];
        int count = 0;
        double length = MeshMending.distance(xyz, a, b);
        double low = Math.min(xyz[3 * a], xyz[3 * b]) - tolerance;
        double high = Math.max(xyz[3 * a], xyz[3 * b]) + tolerance;
        int place = Arrays.binarySearch(x, low);
        for (int n = place < 0 ? -place - 1 : place; n < x.length && x[n] <= high; n++) {
            int v = ends[n];
            double t = along(a, b, v);
            if (t > tolerance && t < length - tolerance && MeshMending.offLine(xyz, a, b, v) <= tolerance) {
                if (count == on.length) {
                    on = Arrays.copyOf(on, 2 * count);
                    along = Arrays.copyOf(along, 2 * count);
                }
                int i = count++;
                while (i > 0 && along[i - 1] > t) {
                    along[i] = along[i - 1];
                    on[i] = on[i - 1];
                    i--;
                }
                along[i] = t;
                on[i] = v;
            }
        }
        int opposite = corners[FacetEdges.next(FacetEdges.next(h))];
        count = withoutTies(on, along, count, opposite);
        if (count > 0) {
            fan(h, a, b, opposite, on, count);
        }
        return count > 0;
    }

    /** Leaves out corners at one place, and the facet's own. */
    private int withoutTies(int[] on, double[] along, int count, int opposite) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (on[i] != opposite && (kept == 0 || along[i] - along[kept - 1] > tolerance)) {
                on[kept] = on[i];
                along[kept++] = along[i];
            }
        }
        return kept;
    }

    private void fan(int h, int a, int b, int opposite, int[] on, int count) {
        if (used + 3 * count > corners.length || first < 0) {
            corners = Arrays.copyOf(corners, used + 3 * count + corners.length / 8);
        }
        first = first < 0 ? on[0] : first;
        divided += count;
        int facet = h - h % 3;
        corners[facet] = a;
        corners[facet + 1] = on[0];
        corners[facet + 2] = opposite;
        for (int i = 0; i < count; i++) {
            corners[used++] = on[i];
            corners[used++] = i + 1 < count ? on[i + 1] : b;
            corners[used++] = opposite;
        }
    }

    /** Distance from a to the foot of v on the line from a to b, m. */
    private double along(int a, int b, int v) {
        double ux = xyz[3 * b] - xyz[3 * a];
        double uy = xyz[3 * b + 1] - xyz[3 * a + 1];
        double uz = xyz[3 * b + 2] - xyz[3 * a + 2];
        double wx = xyz[3 * v] - xyz[3 * a];
        double wy = xyz[3 * v + 1] - xyz[3 * a + 1];
        double wz = xyz[3 * v + 2] - xyz[3 * a + 2];
        double length = Math.sqrt(ux * ux + uy * uy + uz * uz);
        return length > 0 ? (ux * wx + uy * wy + uz * wz) / length : 0;
    }

    /** The facets, divided ones included. */
    int[] corners() {
        return corners;
    }

    /** Number of places where a facet was divided. */
    int divided() {
        return divided;
    }

    /** The first corner a facet was divided at; -1 where there is none. */
    int first() {
        return first;
    }
}
