package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;

/**
 * How often a surface winds around each corner of another one: a ray for one corner of each part that hangs together, from
 * there along the edges, each crossing counted. All edges must agree, which only closed surfaces do.
 */
final class Windings {
    private final Corners at;
    private final FacetEdges own;
    private final Crossings crossings;
    private final int[] winding;
    private final int[] start;

    private Windings(Corners at, FacetEdges own, Crossings crossings) {
        this.at = at;
        this.own = own;
        this.crossings = crossings;
        winding = new int[at.count()];
        start = new int[winding.length];
        Arrays.fill(start, -1);
    }

    /** Winding at each corner that an edge of the surface has, 0 elsewhere. */
    static int[] of(Corners at, FacetEdges own, FacetEdges other, Crossings crossings) {
        Windings found = new Windings(at, own, crossings);
        int[] starts = found.spread();
        double[] x = new double[starts.length];
        double[] y = new double[starts.length];
        int[] number = new int[at.count()];
        for (int i = 0; i < starts.length; i++) {
            x[i] = at.grown[3 * starts[i]];
            y[i] = at.grown[3 * starts[i] + 1];
            number[starts[i]] = i;
        }
        RayTable rays = new RayTable(new TriangleMesh(at.grown, other.facetCorners()), 2, x, y);
        int[] around = new int[starts.length];
        for (int i = 0; i < starts.length; i++) {
            for (int k = rays.first(i); k < rays.end(i); k++) {
                if (rays.height(k) > at.grown[3 * starts[i] + 2]) {
                    around[i] += rays.leaves(k) ? 1 : -1;
                }
            }
        }
        for (int v = 0; v < found.winding.length; v++) {
            found.winding[v] += found.start[v] < 0 ? 0 : around[number[found.start[v]]];
        }
        found.check();
        return found.winding;
    }

    /** Carries the number from one corner of each part to all others; returns those corners. */
    private int[] spread() {
        int[] first = new int[at.count() + 1];
        for (int e = 0; e < own.count(); e++) {
            first[own.low(e) + 1]++;
            first[own.high(e) + 1]++;
        }
        for (int v = 1; v < first.length; v++) {
            first[v] += first[v - 1];
        }
        int[] around = new int[2 * own.count()];
        int[] next = first.clone();
        for (int e = 0; e < own.count(); e++) {
            around[next[own.low(e)]++] = e;
            around[next[own.high(e)]++] = e;
        }
        int[] starts = new int[0];
        int[] queue = new int[at.count()];
        for (int v = 0; v < start.length; v++) {
            if (start[v] < 0 && first[v + 1] > first[v]) {
                starts = Arrays.copyOf(starts, starts.length + 1);
                starts[starts.length - 1] = v;
                start[v] = v;
                queue[0] = v;
                int used = 1;
                for (int i = 0; i < used; i++) {
                    used = reach(queue[i], around, first, queue, used);
                }
            }
        }
        return starts;
    }

    private int reach(int from, int[] around, int[] first, int[] queue, int used) {
        int end = used;
        for (int i = first[from]; i < first[from + 1]; i++) {
            int e = around[i];
            int to = own.low(e) == from ? own.high(e) : own.low(e);
            if (start[to] < 0) {
                start[to] = start[from];
                winding[to] = winding[from] + (own.low(e) == from ? rise(e) : -rise(e));
                queue[end++] = to;
            }
        }
        return end;
    }

    /** By how much the number rises along an edge, from its lower corner to the upper one. */
    private int rise(int e) {
        int rise = 0;
        for (int i = crossings.first(e); i < crossings.first(e + 1); i++) {
            rise += crossings.enters(i) ? 1 : -1;
        }
        return rise;
    }

    private void check() {
        for (int e = 0; e < own.count(); e++) {
            int w = winding[own.low(e)];
            for (int i = crossings.first(e); i < crossings.first(e + 1); i++) {
                w += crossings.enters(i) ? 1 : -1;
                if (w < 0 || w > 1) {
                    throw new UnclearException("an edge around which a surface winds " + w + " times");
                }
            }
            if (w != winding[own.high(e)]) {
                throw new UnclearException("an edge whose ends disagree about what is around it");
            }
        }
    }
}
