package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.RayTable;
import org.fizzhull.mesh.measure.Buckets;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * How often a surface winds around each of its corners, on the side its facets look to: a ray for one place of each part
 * that hangs together, from there along the edges, each crossing counted. All edges must agree, which only closed surfaces
 * do.
 */
final class Windings {
    private final Corners at;
    private final FacetEdges all;
    private final Crossings crossings;
    private final int[] winding;

    /** For each corner the one from which the number was carried there, -1 where no edge ends. */
    private final int[] start;

    /** For each crossing the number on that side of it where it is less. */
    private final int[] least;

    private Windings(Corners at, FacetEdges all, Crossings crossings) {
        this.at = at;
        this.all = all;
        this.crossings = crossings;
        winding = new int[at.count()];
        start = new int[winding.length];
        least = new int[crossings.count()];
        Arrays.fill(start, -1);
    }

    /** The numbers, which must be 0 or more everywhere: for each part a ray from near a corner of one of its facets. */
    static Windings of(Corners at, FacetEdges all, Crossings crossings) {
        Windings found = new Windings(at, all, crossings);
        int[] starts = found.spread();
        TriangleMesh mesh = new TriangleMesh(at.grown, all.facetCorners());
        double[] free = found.free(mesh);
        int[] side = found.widest(mesh, free);
        double[] x = new double[starts.length];
        double[] y = new double[starts.length];
        for (int i = 0; i < starts.length; i++) {
            int h = side[starts[i]];
            if (h < 0) {
                throw new UnclearException("a part that throws no shadow");
            }
            x[i] = near(mesh, h, free[h], 0);
            y[i] = near(mesh, h, free[h], 1);
        }
        RayTable rays = new RayTable(mesh, 2, x, y);
        int[] around = new int[at.count()];
        for (int i = 0; i < starts.length; i++) {
            int h = side[starts[i]];
            int k = rays.first(i);
            while (k < rays.end(i) && rays.facet(k) != h / 3) {
                k++;
            }
            if (k == rays.end(i)) {
                throw new UnclearException("a facet that its all ray misses");
            }
            int outside = above(rays, i, rays.height(k)) - (rays.leaves(k) ? 0 : 1);
            around[starts[i]] = outside - found.winding[all.corner(h)];
        }
        for (int v = 0; v < found.winding.length; v++) {
            found.winding[v] += found.start[v] < 0 ? 0 : around[found.start[v]];
        }
        found.check();
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

    /** A coordinate of the point in a facet that shares its free corner evenly between the two sides. */
    private static double near(TriangleMesh mesh, int h, double free, int axis) {
        double corner = mesh.at(mesh.corner(h / 3, h % 3), axis);
        double next = mesh.at(mesh.corner(h / 3, (h + 1) % 3), axis);
        double before = mesh.at(mesh.corner(h / 3, (h + 2) % 3), axis);
        return corner + free / 3 * (next + before - 2 * corner);
    }

    /**
     * For each side of a facet how much of the facet is free at the corner it runs from: up to the line across, in shares
     * of the height over it, that no crossing lies before. Between two ends of a segment nothing is nearer than they are.
     */
    private double[] free(TriangleMesh mesh) {
        double[] free = new double[3 * all.facets()];
        Arrays.fill(free, 1);
        for (int i = 0; i < crossings.count(); i++) {
            int p = crossings.point(i);
            narrow(mesh, crossings.facet(i), p, free);
            int e = crossings.edge(i);
            for (int k = all.first(e); k < all.first(e + 1); k++) {
                narrow(mesh, all.side(k) / 3, p, free);
            }
        }
        return free;
    }

    /** Barycentric shares of a point of a facet, along the axis across which it is widest: its all shadow in three parts. */
    private void narrow(TriangleMesh mesh, int f, int point, double[] free) {
        int u = 0;
        double whole = 0;
        for (int axis = 0; axis < 3; axis++) {
            double doubled = FaceSets.doubled(mesh, f, axis, (axis + 1) % 3);
            u = Math.abs(doubled) > Math.abs(whole) ? axis : u;
            whole = Math.abs(doubled) > Math.abs(whole) ? doubled : whole;
        }
        Plane plane = new Plane(at.grown, u, (u + 1) % 3);
        for (int k = 0; k < 3; k++) {
            double share = plane.doubled(point, mesh.corner(f, (k + 1) % 3), mesh.corner(f, (k + 2) % 3)) / whole;
            free[3 * f + k] = Math.min(free[3 * f + k], Math.max(0, 1 - share));
        }
    }

    /** For the start of each part the side at whose corner the free triangle has the largest shadow, or -1. */
    private int[] widest(TriangleMesh mesh, double[] free) {
        int[] best = new int[winding.length];
        double[] largest = new double[winding.length];
        Arrays.fill(best, -1);
        for (int h = 0; h < free.length; h++) {
            int part = start[all.corner(h)];
            double shadow = Math.abs(FaceSets.shadow(mesh, h / 3)) * free[h] * free[h];
            if (shadow > largest[part]) {
                best[part] = h;
                largest[part] = shadow;
            }
        }
        return best;
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
        Buckets ends = Buckets.of(at.count(), 2 * all.count(), i -> i % 2 == 0 ? all.low(i / 2) : all.high(i / 2));
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
            int to = all.low(e) == from ? all.high(e) : all.low(e);
            if (start[to] < 0) {
                start[to] = start[from];
                winding[to] = winding[from] + (all.low(e) == from ? rise(e) : -rise(e));
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
        for (int e = 0; e < all.count(); e++) {
            int w = winding[all.low(e)];
            boolean clear = w >= 0;
            for (int i = crossings.first(e); i < crossings.first(e + 1); i++) {
                least[i] = crossings.enters(i) ? w : w - 1;
                w += crossings.enters(i) ? 1 : -1;
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
