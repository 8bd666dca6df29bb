package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.Buckets;

/**
 * Where parallel rays enter and leave a closed mesh. The rays run along one axis of the mesh, wherever they stand. One that
 * meets an edge or a vertex is counted for one of its facets exactly, whatever the rounding, because an edge is always
 * looked at from its lower vertex: so none slips through a seam.
 *
 * <p>Cost: the rays stand in a grid of cells, and those in the box around each facet are looked at. Immutable.
 */
public final class RayTable {
    private final TriangleMesh mesh;
    private final int axis;
    private final int uAxis;
    private final int vAxis;
    private final double[] u;
    private final double[] v;

    /** Cells to a side, their corner and sizes. */
    private final int across;

    private final double u0;
    private final double v0;
    private final double du;
    private final double dv;

    /** Rays by cell, row after row. */
    private final Buckets cells;

    /** Crossings as they are found, then by ray: how high, and the facet times two, plus one where it faces up the ray. */
    private int[] met = new int[1 << 10];

    private double[] height = new double[1 << 10];
    private int[] facing = new int[1 << 10];
    private int used;

    /** Crossings by ray. */
    private final Buckets byRay;

    /**
     * Looks for the crossings.
     *
     * @param mesh closed
     * @param axis along which the rays run, 0 x, 1 y, 2 z; u is the next axis, v the one after
     * @param u coordinate u of each ray, m
     * @param v coordinate v of each ray, m
     */
    public RayTable(TriangleMesh mesh, int axis, double[] u, double[] v) {
        this.mesh = mesh;
        this.axis = axis;
        this.uAxis = (axis + 1) % 3;
        this.vAxis = (axis + 2) % 3;
        this.u = u;
        this.v = v;
        across = (int) Math.max(1, Math.ceil(Math.sqrt(u.length)));
        u0 = Arrays.stream(u).min().orElse(0);
        v0 = Arrays.stream(v).min().orElse(0);
        du = cellSize(Arrays.stream(u).max().orElse(0) - u0);
        dv = cellSize(Arrays.stream(v).max().orElse(0) - v0);
        cells = Buckets.of(across * across, u.length, i -> row(v[i]) * across + column(u[i]));
        for (int f = 0; f < mesh.facetCount(); f++) {
            meet(f);
        }
        byRay = Buckets.of(u.length, used, k -> met[k]);
        met = new int[0];
        sort();
    }

    /**
     * {@return rays on a lattice, ray i + nu j at u0 + i du and v0 + j dv}
     *
     * @param mesh closed
     * @param axis along which the rays run
     * @param u0 coordinate of the first ray along u, m; v0 likewise
     * @param v0 first of the second coordinate, m
     * @param du distance of rays along u, m; dv likewise
     * @param dv distance of rays along v, m
     * @param nu number of rays along u; nv likewise
     * @param nv number of rays along v
     */
    public static RayTable lattice(
            TriangleMesh mesh, int axis, double u0, double v0, double du, double dv, int nu, int nv) {
        double[] u = new double[nu * nv];
        double[] v = new double[nu * nv];
        Arrays.setAll(u, r -> u0 + r % nu * du);
        Arrays.setAll(v, r -> v0 + Math.floorDiv(r, nu) * dv);
        return new RayTable(mesh, axis, u, v);
    }

    /**
     * {@return rays spread over a box, as many to each side, off round numbers and diagonals, where edges of drawn bodies
     * are}
     *
     * @param mesh closed
     * @param axis along which the rays run
     * @param box the least three coordinates, then the largest, m
     * @param side number of rays to a side
     */
    public static RayTable over(TriangleMesh mesh, int axis, double[] box, int side) {
        int uAxis = (axis + 1) % 3;
        int vAxis = (axis + 2) % 3;
        double du = (box[uAxis + 3] - box[uAxis]) / side;
        double dv = (box[vAxis + 3] - box[vAxis]) / side;
        double u0 = box[uAxis] + 0.4142135623730951 * du;
        double v0 = box[vAxis] + 0.7548776662466927 * dv;
        return lattice(mesh, axis, u0, v0, du, dv, side, side);
    }

    private double cellSize(double width) {
        return width > 0 ? width / across : 1;
    }

    private int column(double at) {
        return cellAt((at - u0) / du);
    }

    private int row(double at) {
        return cellAt((at - v0) / dv);
    }

    /** Number of a cell of a row or column, for a place in cells; places outside count to the first and the last. */
    private int cellAt(double place) {
        return place >= across ? across - 1 : place > 0 ? (int) place : 0;
    }

    /** Enters the rays a facet meets. */
    private void meet(int f) {
        int a = mesh.corner(f, 0);
        int b = mesh.corner(f, 1);
        int c = mesh.corner(f, 2);
        double ua = mesh.at(a, uAxis);
        double ub = mesh.at(b, uAxis);
        double uc = mesh.at(c, uAxis);
        double va = mesh.at(a, vAxis);
        double vb = mesh.at(b, vAxis);
        double vc = mesh.at(c, vAxis);
        double low = Math.min(va, Math.min(vb, vc));
        double high = Math.max(va, Math.max(vb, vc));
        double left = Math.min(ua, Math.min(ub, uc));
        double right = Math.max(ua, Math.max(ub, uc));
        int begin = column(left);
        int end = column(right);
        int to = row(high);
        for (int j = row(low); j <= to; j++) {
            for (int i = cells.first(j * across + begin); i < cells.end(j * across + end); i++) {
                int r = cells.at(i);
                if (v[r] >= low && v[r] <= high && u[r] >= left && u[r] <= right) {
                    cross(f, a, b, c, r);
                }
            }
        }
    }

    private void cross(int f, int a, int b, int c, int r) {
        boolean left = left(a, b, u[r], v[r]);
        if (left != left(b, c, u[r], v[r]) || left != left(c, a, u[r], v[r])) {
            return;
        }
        if (used == met.length) {
            met = Arrays.copyOf(met, 2 * used);
            height = Arrays.copyOf(height, 2 * used);
            facing = Arrays.copyOf(facing, 2 * used);
        }
        double bu = mesh.at(b, uAxis) - mesh.at(a, uAxis);
        double bv = mesh.at(b, vAxis) - mesh.at(a, vAxis);
        double cu = mesh.at(c, uAxis) - mesh.at(a, uAxis);
        double cv = mesh.at(c, vAxis) - mesh.at(a, vAxis);
        double pu = u[r] - mesh.at(a, uAxis);
        double pv = v[r] - mesh.at(a, vAxis);
        double whole = bu * cv - cu * bv;
        double wa = mesh.at(a, axis);
        double wb = mesh.at(b, axis);
        double wc = mesh.at(c, axis);
        double w = wa + (pu * cv - cu * pv) / whole * (wb - wa) + (bu * pv - pu * bv) / whole * (wc - wa);
        // a facet along the ray, met by rounding alone, has no height of its own
        w = Double.isNaN(w) ? wa : w;
        met[used] = r;
        height[used] = Math.max(Math.min(wa, Math.min(wb, wc)), Math.min(Math.max(wa, Math.max(wb, wc)), w));
        facing[used++] = 2 * f + (left ? 1 : 0);
    }

    /** Whether a point lies to the left of an edge; the same numbers decide for both facets of the edge. */
    private boolean left(int from, int to, double pu, double pv) {
        int i = Math.min(from, to);
        int j = Math.max(from, to);
        double ui = mesh.at(i, uAxis);
        double vi = mesh.at(i, vAxis);
        boolean side = (mesh.at(j, uAxis) - ui) * (pv - vi) - (mesh.at(j, vAxis) - vi) * (pu - ui) >= 0;
        return side == from < to;
    }

    /** Puts the crossings of each ray together, the lowest first. */
    private void sort() {
        double[] high = new double[used];
        int[] facet = new int[used];
        for (int r = 0; r < u.length; r++) {
            for (int k = byRay.first(r); k < byRay.end(r); k++) {
                int met = byRay.at(k);
                int at = k;
                while (at > byRay.first(r) && high[at - 1] > height[met]) {
                    high[at] = high[at - 1];
                    facet[at] = facet[at - 1];
                    at--;
                }
                high[at] = height[met];
                facet[at] = facing[met];
            }
        }
        height = high;
        facing = facet;
    }

    /** The rays in an order in which neighbours follow one another: row by row of the grid. */
    int[] inRows() {
        return cells.all();
    }

    /** Whether the point at height w of a ray lies in the material: more facets above look up than down. */
    boolean inside(int r, double w) {
        int winding = 0;
        for (int k = end(r) - 1; k >= first(r) && height[k] > w; k--) {
            winding += leaves(k) ? 1 : -1;
        }
        return winding > 0;
    }

    /** Index of the first crossing of a ray above height w, or -1. */
    int above(int r, double w) {
        for (int k = first(r); k < end(r); k++) {
            if (height[k] > w) {
                return k;
            }
        }
        return -1;
    }

    /** Index of the last crossing of a ray at or below height w, or -1. */
    int below(int r, double w) {
        for (int k = end(r) - 1; k >= first(r); k--) {
            if (height[k] <= w) {
                return k;
            }
        }
        return -1;
    }

    /**
     * {@return coordinate u of a ray, m}
     *
     * @param r number of the ray
     */
    public double u(int r) {
        return u[r];
    }

    /**
     * {@return coordinate v of a ray, m}
     *
     * @param r number of the ray
     */
    public double v(int r) {
        return v[r];
    }

    /**
     * {@return height of a crossing, m}
     *
     * @param crossing number of the crossing
     */
    public double height(int crossing) {
        return height[crossing];
    }

    /**
     * {@return facet met at a crossing}
     *
     * @param crossing number of the crossing
     */
    public int facet(int crossing) {
        return facing[crossing] >>> 1;
    }

    /**
     * {@return index of the first crossing of a ray; crossings of a ray rise in height}
     *
     * @param r number of the ray
     */
    public int first(int r) {
        return byRay.first(r);
    }

    /**
     * {@return index after the last crossing of a ray}
     *
     * @param r number of the ray
     */
    public int end(int r) {
        return byRay.end(r);
    }

    /**
     * {@return whether the facet met at a crossing looks up the ray: there the ray leaves the material}
     *
     * @param crossing number of the crossing
     */
    public boolean leaves(int crossing) {
        return (facing[crossing] & 1) != 0;
    }
}
