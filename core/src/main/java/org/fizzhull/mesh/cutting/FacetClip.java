package org.fizzhull.mesh.cutting;

import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.distance.FacetTree;

/**
 * Adds to a cut what facets have below its plane: tetrahedra from a point p on the plane, so that no cap is needed, and
 * the directed edges of the cut face. Of a facet that the plane crosses one corner is alone on its side. A corner on the
 * plane counts as above it; a crossing point is always computed from the vertex with the lower index, so that both facets
 * of an edge see the same point to the last bit. For one cut, not thread-safe.
 */
final class FacetClip {
    /** Places of the points at which the plane crosses two sides, behind the three corners. */
    private static final int FIRST = 9;

    private static final int SECOND = 12;

    private final FacetTree tree;
    private final Vec3 n;
    private final double[] origin;
    private final PlaneCut out;

    /** Points of the facet that is looked at, from p: x, y, z of the corners, then of the crossing points, m. */
    private final double[] at = new double[15];

    /** How far the corners lie above the plane, m. */
    private final double[] height = new double[3];

    FacetClip(FacetTree tree, Vec3 n, Vec3 p, PlaneCut out) {
        this.tree = tree;
        this.n = n;
        this.origin = new double[] {p.x(), p.y(), p.z()};
        this.out = out;
    }

    /** Adds a facet, by its place in the tree. */
    void facet(int f) {
        for (int i = 0; i < 9; i++) {
            at[i] = tree.at(f, i) - origin[i % 3];
        }
        int wet = 0;
        for (int k = 0; k < 3; k++) {
            height[k] = n.x() * at[3 * k] + n.y() * at[3 * k + 1] + n.z() * at[3 * k + 2];
            wet += height[k] < 0 ? 1 : 0;
        }
        if (wet == 3) {
            add(0, 3, 6);
        }
        if (wet == 0 || wet == 3) {
            return;
        }
        int a = 0;
        while (height[a] < 0 != (wet == 1)) {
            a++;
        }
        int b = (a + 1) % 3;
        int c = (a + 2) % 3;
        cross(f, a, b, FIRST);
        cross(f, a, c, SECOND);
        if (wet == 1) {
            add(3 * a, FIRST, SECOND);
            segment(SECOND, FIRST);
        } else {
            add(FIRST, 3 * b, 3 * c);
            add(FIRST, 3 * c, SECOND);
            segment(FIRST, SECOND);
        }
    }

    /** Puts the point at which the plane crosses the side between two corners. */
    private void cross(int f, int a, int b, int place) {
        int facet = tree.facet(f);
        boolean rises = tree.mesh().corner(facet, a) < tree.mesh().corner(facet, b);
        int i = rises ? a : b;
        int j = rises ? b : a;
        double share = height[i] / (height[i] - height[j]);
        for (int k = 0; k < 3; k++) {
            at[place + k] = at[3 * i + k] + share * (at[3 * j + k] - at[3 * i + k]);
        }
    }

    /** Adds volume and moments of the tetrahedron from p to the triangle of three points. */
    private void add(int a, int b, int c) {
        double d = at[a] * (at[b + 1] * at[c + 2] - at[b + 2] * at[c + 1])
                + at[a + 1] * (at[b + 2] * at[c] - at[b] * at[c + 2])
                + at[a + 2] * (at[b] * at[c + 1] - at[b + 1] * at[c]);
        out.volume += d / 6;
        out.mx += d * (at[a] + at[b] + at[c]) / 24;
        out.my += d * (at[a + 1] + at[b + 1] + at[c + 1]) / 24;
        out.mz += d * (at[a + 2] + at[b + 2] + at[c + 2]) / 24;
    }

    /** Green's theorem for one directed edge of the cut face, anticlockwise about n; sums are left in the holder. */
    private void segment(int from, int to) {
        double u0 = at[from] * out.ux + at[from + 1] * out.uy + at[from + 2] * out.uz;
        double w0 = at[from] * out.wx + at[from + 1] * out.wy + at[from + 2] * out.wz;
        double u1 = at[to] * out.ux + at[to + 1] * out.uy + at[to + 2] * out.uz;
        double w1 = at[to] * out.wx + at[to + 1] * out.wy + at[to + 2] * out.wz;
        double cross = u0 * w1 - u1 * w0;
        out.area += cross / 2;
        out.ax += cross * (u0 + u1) / 6;
        out.ay += cross * (w0 + w1) / 6;
        out.juu += cross * (u0 * u0 + u0 * u1 + u1 * u1) / 12;
        out.jww += cross * (w0 * w0 + w0 * w1 + w1 * w1) / 12;
        out.juw += cross * (u0 * w1 + 2 * u0 * w0 + 2 * u1 * w1 + u1 * w0) / 24;
    }
}
