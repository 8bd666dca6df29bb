package org.fizzhull.mesh.distance;

import org.fizzhull.mesh.TriangleMesh;

/**
 * Where parallel rays on a square lattice leave and enter a closed mesh. The rays run along one axis of the mesh; those
 * that meet an edge or a vertex are counted for one of its facets exactly, whatever the rounding, because an edge is
 * always looked at from its lower vertex.
 */
public final class RayTable {
    private final TriangleMesh mesh;
    private final int axis;
    private final int uAxis;
    private final int vAxis;
    private final double u0;
    private final double v0;
    private final double step;
    private final int nu;
    private final int nv;
    private final int[] first;
    private final double[] height;
    /** Facet times two, plus one where it faces up the ray. */
    private final int[] facing;

    /**
     * @param wanted facets to meet
     * @param axis along which the rays run; u is the next axis, v the one after
     * @param u0 coordinate of the first ray along u, m; v0 likewise
     * @param step distance of rays, m
     * @param nu number of rays along u; nv likewise
     */
    public RayTable(TriangleMesh mesh, boolean[] wanted, int axis, double u0, double v0, double step, int nu, int nv) {
        this.mesh = mesh;
        this.axis = axis;
        this.uAxis = (axis + 1) % 3;
        this.vAxis = (axis + 2) % 3;
        this.u0 = u0;
        this.v0 = v0;
        this.step = step;
        this.nu = nu;
        this.nv = nv;
        this.first = new int[nu * nv + 1];
        int[] none = {};
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (wanted[f]) {
                meet(f, none);
            }
        }
        for (int ray = 0; ray < nu * nv; ray++) {
            first[ray + 1] += first[ray];
        }
        height = new double[first[nu * nv]];
        facing = new int[first[nu * nv]];
        int[] used = new int[nu * nv];
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (wanted[f]) {
                meet(f, used);
            }
        }
    }

    /** Counts the rays a facet meets where {@code used} is empty, else enters them, each ray's heights in order. */
    private void meet(int f, int[] used) {
        int a = mesh.corner(f, 0);
        int b = mesh.corner(f, 1);
        int c = mesh.corner(f, 2);
        double ua = mesh.at(a, uAxis);
        double ub = mesh.at(b, uAxis);
        double uc = mesh.at(c, uAxis);
        double va = mesh.at(a, vAxis);
        double vb = mesh.at(b, vAxis);
        double vc = mesh.at(c, vAxis);
        int fromU = Math.max(0, (int) Math.ceil((Math.min(ua, Math.min(ub, uc)) - u0) / step) - 1);
        int toU = Math.min(nu - 1, (int) Math.floor((Math.max(ua, Math.max(ub, uc)) - u0) / step) + 1);
        int fromV = Math.max(0, (int) Math.ceil((Math.min(va, Math.min(vb, vc)) - v0) / step) - 1);
        int toV = Math.min(nv - 1, (int) Math.floor((Math.max(va, Math.max(vb, vc)) - v0) / step) + 1);
        for (int j = fromV; j <= toV; j++) {
            double v = v0 + j * step;
            for (int i = fromU; i <= toU; i++) {
                double u = u0 + i * step;
                boolean left = left(a, b, u, v);
                if (left != left(b, c, u, v) || left != left(c, a, u, v)) {
                    continue;
                }
                int ray = j * nu + i;
                if (used.length == 0) {
                    first[ray + 1]++;
                } else {
                    double whole = (ub - ua) * (vc - va) - (uc - ua) * (vb - va);
                    double s = ((u - ua) * (vc - va) - (uc - ua) * (v - va)) / whole;
                    double r = ((ub - ua) * (v - va) - (u - ua) * (vb - va)) / whole;
                    double w = mesh.at(a, axis)
                            + s * (mesh.at(b, axis) - mesh.at(a, axis))
                            + r * (mesh.at(c, axis) - mesh.at(a, axis));
                    enter(ray, used[ray]++, w, 2 * f + (left ? 1 : 0));
                }
            }
        }
    }

    /** Whether a point lies to the left of an edge; the same numbers decide for both facets of the edge. */
    private boolean left(int from, int to, double u, double v) {
        int i = Math.min(from, to);
        int j = Math.max(from, to);
        double ui = mesh.at(i, uAxis);
        double vi = mesh.at(i, vAxis);
        boolean side = (mesh.at(j, uAxis) - ui) * (v - vi) - (mesh.at(j, vAxis) - vi) * (u - ui) >= 0;
        return side == from < to;
    }

    private void enter(int ray, int count, double w, int facet) {
        int at = first[ray] + count;
        while (at > first[ray] && height[at - 1] > w) {
            height[at] = height[at - 1];
            facing[at] = facing[at - 1];
            at--;
        }
        height[at] = w;
        facing[at] = facet;
    }

    /** Whether the point at height w of ray (i, j) lies in the material: more facets above look up than down. */
    boolean inside(int i, int j, double w) {
        int ray = j * nu + i;
        int winding = 0;
        for (int k = first[ray + 1] - 1; k >= first[ray] && height[k] > w; k--) {
            winding += (facing[k] & 1) == 0 ? -1 : 1;
        }
        return winding > 0;
    }

    /** Index of the first crossing of ray (i, j) above height w, or -1. */
    int above(int i, int j, double w) {
        int ray = j * nu + i;
        for (int k = first[ray]; k < first[ray + 1]; k++) {
            if (height[k] > w) {
                return k;
            }
        }
        return -1;
    }

    /** Index of the last crossing of ray (i, j) at or below height w, or -1. */
    int below(int i, int j, double w) {
        int ray = j * nu + i;
        for (int k = first[ray + 1] - 1; k >= first[ray]; k--) {
            if (height[k] <= w) {
                return k;
            }
        }
        return -1;
    }

    /** Height of a crossing, m. */
    public double height(int crossing) {
        return height[crossing];
    }

    /** Facet met at a crossing. */
    public int facet(int crossing) {
        return facing[crossing] >>> 1;
    }

    /** Index of the first crossing of ray (i, j), counted in the order of rays; crossings of a ray rise in height. */
    public int first(int i, int j) {
        return first[j * nu + i];
    }

    /** Index after the last crossing of ray (i, j). */
    public int end(int i, int j) {
        return first[j * nu + i + 1];
    }

    /** Whether the facet met at a crossing looks up the ray: there the ray leaves the material. */
    public boolean leaves(int crossing) {
        return (facing[crossing] & 1) != 0;
    }
}
