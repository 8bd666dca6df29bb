package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.Buckets;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * How often a surface winds around each corner of another one, or of itself on the side its facets look to: a ray for one
 * place of each part that hangs together, from there along the edges, each crossing counted. All edges must agree, which only
 * closed surfaces do.
 */
final class Windings {
    private final Corners at;
    private final FacetEdges own;
    private final Crossings crossings;
    private final int[] winding;

    /** For each corner the one from which the number was carried there, -1 where no edge ends. */
    private final int[] start;

    /** For each crossing the number on that side of it where it is less. */
    private final int[] least;

    private Windings(Corners at, FacetEdges own, Crossings crossings) {
        this.at = at;
        this.own = own;
        this.crossings = crossings;
        winding = new int[at.count()];
        start = new int[winding.length];
        least = new int[crossings.count()];
        Arrays.fill(start, -1);
    }

    /** Winding of another surface, which must be 0 or 1 everywhere. */
    static Windings of(Corners at, FacetEdges own, FacetEdges other, Crossings crossings) {
        Windings found = new Windings(at, own, crossings);
        int[] starts = found.spread();
        double[] x = new double[starts.length];
        double[] y = new double[starts.length];
        for (int i = 0; i < starts.length; i++) {
            x[i] = at.grown[3 * starts[i]];
            y[i] = at.grown[3 * starts[i] + 1];
        }
        RayTable rays = new RayTable(new TriangleMesh(at.grown, other.facetCorners()), 2, x, y);
        int[] around = new int[at.count()];
        for (int i = 0; i < starts.length; i++) {
            around[starts[i]] = above(rays, i, at.grown[3 * starts[i] + 2]);
        }
        found.raise(around, 1);
        return found;
    }

    /** Winding of a surface around itself, which must be 0 or more: the ray starts on a facet that nothing crosses. */
    static Windings within(Corners at, FacetEdges own, Crossings crossings) {
        Windings found = new Windings(at, own, crossings);
        int[] starts = found.spread();
        TriangleMesh mesh = new TriangleMesh(at.grown, own.facetCorners());
        int[] facet = found.uncrossed(mesh);
        double[] x = new double[starts.length];
        double[] y = new double[starts.length];
        for (int i = 0; i < starts.length; i++) {
            int f = facet[starts[i]];
            if (f < 0) {
                throw new UnclearException("a part of which every facet is crossed");
            }
            x[i] = middle(mesh, f, 0);
            y[i] = middle(mesh, f, 1);
        }
        RayTable rays = new RayTable(mesh, 2, x, y);
        int[] around = new int[at.count()];
        for (int i = 0; i < starts.length; i++) {
            int f = facet[starts[i]];
            int k = rays.first(i);
            while (k < rays.end(i) && rays.facet(k) != f) {
                k++;
            }
            if (k == rays.end(i)) {
                throw new UnclearException("a facet that its own ray misses");
            }
            int outside = above(rays, i, rays.height(k)) - (rays.leaves(k) ? 0 : 1);
            around[starts[i]] = outside - found.winding[mesh.corner(f, 0)];
        }
        found.raise(around, Integer.MAX_VALUE);
        return found;
    }

    private static int above(RayTable rays, int i, double height) {
        int around = 0;
        for (int k = rays.first(i); k < rays.end(i); k++) {
            if (rays.height(k) > height) {
                around += rays.leaves(k) ? 1 : -1;
            }
        }
        return around;
    }

    private static double middle(TriangleMesh mesh, int f, int axis) {
        return (mesh.at(mesh.corner(f, 0), axis) + mesh.at(mesh.corner(f, 1), axis) + mesh.at(mesh.corner(f, 2), axis))
                / 3;
    }

    /** For the start of each part its facet with the largest shadow among those that nothing crosses, or -1. */
    private int[] uncrossed(TriangleMesh mesh) {
        boolean[] crossed = new boolean[own.facets()];
        for (int i = 0; i < crossings.count(); i++) {
            crossed[crossings.facet(i)] = true;
            int e = crossings.edge(i);
            for (int k = own.first(e); k < own.first(e + 1); k++) {
                crossed[own.side(k) / 3] = true;
            }
        }
        int[] best = new int[at.count()];
        double[] largest = new double[at.count()];
        Arrays.fill(best, -1);
        for (int f = 0; f < crossed.length; f++) {
            int part = start[mesh.corner(f, 0)];
            double shadow = Math.abs(FaceSets.shadow(mesh, f));
            if (!crossed[f] && shadow > largest[part]) {
                best[part] = f;
                largest[part] = shadow;
            }
        }
        return best;
    }

    /** Adds the number at the start of each part, and checks every edge. */
    private void raise(int[] around, int most) {
        for (int v = 0; v < winding.length; v++) {
            winding[v] += start[v] < 0 ? 0 : around[start[v]];
        }
        check(most);
    }

    /** Number at a corner that an edge of the surface has, 0 elsewhere. */
    int at(int corner) {
        return winding[corner];
    }

    /** Number on that side of a crossing where it is less. */
    int least(int crossing) {
        return least[crossing];
    }

    /** Carries the number from one corner of each part to all others; returns those corners. */
    private int[] spread() {
        Buckets ends = Buckets.of(at.count(), 2 * own.count(), i -> i % 2 == 0 ? own.low(i / 2) : own.high(i / 2));
        int[] starts = new int[0];
        int[] queue = new int[at.count()];
        for (int v = 0; v < start.length; v++) {
            if (start[v] < 0 && ends.end(v) > ends.first(v)) {
                starts = Arrays.copyOf(starts, starts.length + 1);
                starts[starts.length - 1] = v;
                start[v] = v;
                queue[0] = v;
                int used = 1;
                for (int i = 0; i < used; i++) {
                    used = reach(queue[i], ends, queue, used);
                }
            }
        }
        return starts;
    }

    private int reach(int from, Buckets ends, int[] queue, int used) {
        int end = used;
        for (int i = ends.first(from); i < ends.end(from); i++) {
            int e = ends.at(i) / 2;
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

    private void check(int most) {
        for (int e = 0; e < own.count(); e++) {
            int w = winding[own.low(e)];
            boolean clear = w >= 0 && w <= most;
            for (int i = crossings.first(e); i < crossings.first(e + 1); i++) {
                least[i] = crossings.enters(i) ? w : w - 1;
                w += crossings.enters(i) ? 1 : -1;
                clear &= w >= 0 && w <= most;
            }
            if (!clear) {
                throw new UnclearException("an edge around which a surface winds less than 0 or too many times");
            }
            if (w != winding[own.high(e)]) {
                throw new UnclearException("an edge whose ends disagree about what is around it");
            }
        }
    }
}
