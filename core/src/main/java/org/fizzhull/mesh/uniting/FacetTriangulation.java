package org.fizzhull.mesh.uniting;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Constrained Delaunay triangulation of the outer part of one facet, by an advancing front (Chew, Algorithmica 4,
 * 1989; from memory). The front is the boundary of what is not yet filled, holes included: directed edges with the
 * inside on their left. Its first edge becomes a side of the triangle to the visible corner from which it appears
 * under the widest angle; the two other sides replace it. Where rounding leaves no corner visible, the end of the
 * following edge is taken: triangles always fit their neighbours, and may overlap by the rounding. About
 * O(corners^2).
 */
final class FacetTriangulation {
    private record Edge(int from, int to) {}

    private final Plane plane;
    private final Set<Edge> front = new LinkedHashSet<>();

    /** An empty front on a facet, projected along the axis that leaves it largest, so that it runs anticlockwise. */
    FacetTriangulation(Corners at, int a, int b, int c) {
        plane = Plane.across(at.grown, a, b, c);
    }

    /** Adds an edge to the front, or removes the opposite one: between the two nothing is left to fill. */
    void add(int from, int to) {
        if (!front.remove(new Edge(to, from)) && !front.add(new Edge(from, to))) {
            throw new UnclearException("an edge of a boundary that is there twice");
        }
    }

    /** Adds the corners of the triangles that fill the front, anticlockwise. */
    void triangles(IntStream.Builder out) {
        Map<Integer, Integer> balance = new HashMap<>();
        for (Edge edge : front) {
            balance.merge(edge.from, 1, Integer::sum);
            balance.merge(edge.to, -1, Integer::sum);
        }
        if (balance.values().stream().anyMatch(sum -> sum != 0)) {
            throw new UnclearException("a facet whose parts have no closed boundary");
        }
        while (!front.isEmpty()) {
            Edge base = front.iterator().next();
            int apex = apex(base);
            front.remove(base);
            add(base.from, apex);
            add(apex, base.to);
            out.add(base.from).add(base.to).add(apex);
        }
    }

    /** The corner with the widest angle, that is the least cotangent, of those visible from both ends of an edge. */
    private int apex(Edge base) {
        PriorityQueue<Integer> candidates =
                new PriorityQueue<>(Comparator.comparingDouble(c -> plane.cotangent(base.from, c, base.to)));
        int following = -1;
        for (Edge edge : front) {
            int c = edge.from;
            if (plane.twiceArea(base.from, base.to, c) > 0) {
                candidates.add(c);
            }
            following = c == base.to ? edge.to : following;
        }
        while (!candidates.isEmpty()) {
            int c = candidates.remove();
            if (visible(base.from, c) && visible(base.to, c)) {
                return c;
            }
        }
        return following;
    }

    /** Whether two corners are visible from each other: no edge of the front meets the line between them but at its ends. */
    private boolean visible(int p, int q) {
        for (Edge edge : front) {
            int a = edge.from;
            int b = edge.to;
            boolean meets = a == p || a == q || b == p || b == q;
            if (!meets
                    && plane.twiceArea(p, q, a) * plane.twiceArea(p, q, b) <= 0
                    && plane.twiceArea(a, b, p) * plane.twiceArea(a, b, q) <= 0) {
                return false;
            }
        }
        return true;
    }
}
