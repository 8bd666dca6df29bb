package org.fizzhull.mesh.uniting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.Buckets;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Winding number of a surface at each of its corners, just outside its facets. In each connected component it is
 * carried from one corner along the edges, changing at each crossing; an upward ray from the highest corner then
 * gives the constant to add. All edges must agree, which only those of closed surfaces do. O(edges + crossings), and
 * a ray for each component.
 */
final class Windings {
    private final Corners at;
    private final FacetEdges all;
    private final Crossings crossings;

    /** The ends of all edges, by corner: 2 e at the lower corner of edge e, 2 e + 1 at its upper one. */
    private final Buckets ends;

    private final int[] winding;

    /** Connected component of each corner; -1 for a corner without edges. */
    private final int[] component;

    /**
     * Finds the winding numbers.
     *
     * @throws UnclearException where edges disagree or a number is negative
     */
    Windings(Corners at, FacetEdges all, Crossings crossings) {
        this.at = at;
        this.all = all;
        this.crossings = crossings;
        ends = Buckets.of(at.count(), 2 * all.count(), i -> i % 2 == 0 ? all.low(i / 2) : all.high(i / 2));
        winding = new int[at.count()];
        component = new int[at.count()];
        Arrays.fill(component, -1);
        List<Integer> tops = new ArrayList<>();
        for (int v = 0; v < component.length; v++) {
            if (component[v] < 0 && ends.end(v) > ends.first(v)) {
                tops.add(spread(v, tops.size()));
            }
        }
        int[] shift = atTops(tops);
        Arrays.setAll(shift, i -> shift[i] - winding[tops.get(i)]);
        Arrays.setAll(winding, v -> component[v] < 0 ? 0 : winding[v] + shift[component[v]]);
        check();
    }

    /** Winding numbers at the highest corners of the components, by the facets that upward rays from them cross. */
    private int[] atTops(List<Integer> tops) {
        TriangleMesh mesh = new TriangleMesh(at.grown, all.facetCorners());
        double[] x = tops.stream().mapToDouble(v -> mesh.at(v, 0)).toArray();
        double[] y = tops.stream().mapToDouble(v -> mesh.at(v, 1)).toArray();
        RayTable rays = new RayTable(mesh, 2, x, y);
        int[] number = new int[x.length];
        for (int i = 0; i < x.length; i++) {
            int top = tops.get(i);
            number[i] = looksUp(top, mesh) ? 0 : -1;
            for (int k = rays.first(i); k < rays.end(i); k++) {
                // facets at the top itself do not rise above it
                if (rays.height(k) > mesh.at(top, 2)) {
                    number[i] += rays.leaves(k) ? 1 : -1;
                }
            }
        }
        return number;
    }

    /** Winding number at a corner; 0 for one that has no edge. */
    int at(int corner) {
        return winding[corner];
    }

    /** Carries the number from one corner, where it is set to 0, through its component; returns the highest corner. */
    private int spread(int start, int number) {
        int top = start;
        Deque<Integer> waiting = new ArrayDeque<>(List.of(start));
        component[start] = number;
        while (!waiting.isEmpty()) {
            int from = waiting.remove();
            top = height(from) > height(top) ? from : top;
            for (int i = ends.first(from); i < ends.end(from); i++) {
                int e = ends.at(i) / 2;
                boolean rises = all.low(e) == from;
                int to = rises ? all.high(e) : all.low(e);
                if (component[to] < 0) {
                    component[to] = number;
                    int rise =
                            crossings.along(e).stream().mapToInt(Crossing::step).sum();
                    winding[to] = winding[from] + (rises ? rise : -rise);
                    waiting.add(to);
                }
            }
        }
        return top;
    }

    private double height(int corner) {
        return at.grown[3 * corner + 2];
    }

    /**
     * Whether a surface looks up at its highest corner. Nothing of it lies above the edge that falls least from there, nor,
     * near that edge, above the flattest of its facets.
     */
    private boolean looksUp(int top, TriangleMesh mesh) {
        int edge = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = ends.first(top); i < ends.end(top); i++) {
            int e = ends.at(i) / 2;
            int other = all.low(e) == top ? all.high(e) : all.low(e);
            double away = Math.hypot(mesh.at(other, 0) - mesh.at(top, 0), mesh.at(other, 1) - mesh.at(top, 1));
            double fall = (height(top) - height(other)) / away;
            if (edge < 0 || fall < least) {
                edge = e;
                least = fall;
            }
        }
        boolean up = false;
        double flattest = -1;
        for (int i = all.first(edge); i < all.first(edge + 1); i++) {
            int f = all.side(i) / 3;
            double z = FaceSets.doubled(mesh, f, 0, 1);
            double flat = Math.abs(z) / Math.hypot(FaceSets.doubled(mesh, f, 1, 2), FaceSets.doubled(mesh, f, 2, 0));
            if (flat > flattest) {
                up = z > 0;
                flattest = flat;
            }
        }
        return up;
    }

    /** Follows each edge from one end to the other: the number must nowhere be less than 0, and end as the other end has it. */
    private void check() {
        for (int e = 0; e < all.count(); e++) {
            int w = winding[all.low(e)];
            boolean clear = w >= 0;
            for (Crossing crossing : crossings.along(e)) {
                crossing.lowerWinding = Math.min(w, w + crossing.step());
                w += crossing.step();
                clear &= w >= 0;
            }
            if (!clear) {
                throw new UnclearException("an edge around which a surface winds less than 0 times");
            }
            if (w != winding[all.high(e)]) {
                throw new UnclearException("an edge whose ends disagree about what is around it");
            }
        }
    }
}
