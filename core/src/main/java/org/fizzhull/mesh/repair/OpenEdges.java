package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Divides facets at corners of others that lie within their open edges (T-junctions). At most one edge of a facet is
 * divided in a pass; the caller repeats the pass as long as one divides anything.
 */
final class OpenEdges {
    /** Most open edges that are looked at: a mesh with more is not a body with a few cracks, and is left as it is. */
    private static final int MOST = 50_000;

    private final double[] xyz;
    private final double tolerance;

    /** The facets, divided ones included. */
    int[] corners;

    /** Number of places where a facet was divided. */
    int divided;

    /** The first corner a facet was divided at; -1 where there is none. */
    int first = -1;

    private final IntStream.Builder added = IntStream.builder();

    /** Corners of the edges, by x, and their x, m. */
    private final int[] ends;

    private final double[] x;

    /** @param edges the edges to look at, as three times the facet plus the corner */
    OpenEdges(double[] xyz, int[] corners, int[] edges, double tolerance) {
        this.xyz = xyz;
        this.tolerance = tolerance;
        this.corners = corners.clone();
        ends = Vertices.byX(xyz, corners, edges);
        x = Arrays.stream(ends).mapToDouble(v -> xyz[3 * v]).toArray();
        if (edges.length <= MOST) {
            boolean[] done = new boolean[corners.length / 3];
            for (int h : edges) {
                done[h / 3] = done[h / 3] || divide(h);
            }
        }
        this.corners =
                IntStream.concat(Arrays.stream(this.corners), added.build()).toArray();
    }

    /** Divides the facet of a side where corners stand on it, by distance from its first corner; returns whether any does. */
    private boolean divide(int h) {
        int side = FacetEdges.next(h);
        int a = corners[h];
        int b = corners[side];
        int opposite = corners[FacetEdges.next(side)];
        double length = Vertices.distance(xyz, a, b);
        double high = Math.max(xyz[3 * a], xyz[3 * b]) + tolerance;
        int place = Arrays.binarySearch(x, Math.min(xyz[3 * a], xyz[3 * b]) - tolerance);
        NavigableMap<Double, Integer> on = new TreeMap<>();
        for (int n = place < 0 ? -place - 1 : place; n < x.length && x[n] <= high; n++) {
            double t = Vertices.along(xyz, a, b, ends[n]);
            if (t > tolerance
                    && t < length - tolerance
                    && ends[n] != opposite
                    && Vertices.offLine(xyz, a, b, ends[n]) <= tolerance) {
                on.putIfAbsent(t, ends[n]);
            }
        }
        if (!on.isEmpty()) {
            fan(h, withoutTies(on));
        }
        return !on.isEmpty();
    }

    /** The corners along an edge, of several at one place the first. */
    private int[] withoutTies(NavigableMap<Double, Integer> on) {
        IntStream.Builder kept = IntStream.builder();
        double last = Double.NEGATIVE_INFINITY;
        for (Map.Entry<Double, Integer> entry : on.entrySet()) {
            if (entry.getKey() - last > tolerance) {
                kept.add(entry.getValue());
                last = entry.getKey();
            }
        }
        return kept.build().toArray();
    }

    /** Divides a facet at the corners on one of its sides into triangles with the opposite corner. */
    private void fan(int h, int[] on) {
        int side = FacetEdges.next(h);
        int b = corners[side];
        int opposite = corners[FacetEdges.next(side)];
        corners[side] = on[0];
        for (int i = 0; i < on.length; i++) {
            added.add(on[i]).add(i + 1 < on.length ? on[i + 1] : b).add(opposite);
        }
        first = first < 0 ? on[0] : first;
        divided += on.length;
    }
}
