package org.fizzhull.mesh.measure;

import java.util.BitSet;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Sets of facets of a closed mesh, by number, that lie flat in a plane, and the measures of single facets that others are
 * made of.
 */
public final class FaceSets {
    /**
     * Corners this close to the lowest plane, in shares of the box diagonal, lie in it: twenty times the rounding of
     * single precision, in which STL files are written, and a thousandth of what the lowest facets of a ball of 500
     * segments rise by.
     */
    private static final double FLAT = 1e-6;

    private static final Vec3 DOWN = new Vec3(0, 0, -1);

    private FaceSets() {}

    /**
     * {@return the facets that face down in the lowest horizontal plane; none for a body without a flat resting
     * face}
     *
     * @param mesh the mesh
     */
    public static BitSet resting(TriangleMesh mesh) {
        BitSet set = level(mesh, DOWN, FLAT * diagonal(mesh.box()));
        for (int f = set.nextSetBit(0); f >= 0; f = set.nextSetBit(f + 1)) {
            // a facet without area in that plane stays, or it would leave a line of the resting face open
            set.set(f, shadow(mesh, f) <= 0);
        }
        return set;
    }

    /**
     * {@return the facets that lie in the plane that touches the mesh across a direction, or nearly so}
     *
     * @param mesh the mesh
     * @param n unit vector out of the mesh, across the plane
     * @param depth how far below the plane a facet may lie, m
     */
    public static BitSet level(TriangleMesh mesh, Vec3 n, double depth) {
        double[] up = new double[mesh.vertexCount()];
        double top = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < up.length; v++) {
            up[v] = mesh.at(v, 0) * n.x() + mesh.at(v, 1) * n.y() + mesh.at(v, 2) * n.z();
            top = Math.max(top, up[v]);
        }
        BitSet set = new BitSet();
        for (int f = 0; f < mesh.facetCount(); f++) {
            double low = Math.min(up[mesh.corner(f, 0)], Math.min(up[mesh.corner(f, 1)], up[mesh.corner(f, 2)]));
            set.set(f, low >= top - depth);
        }
        return set;
    }

    /**
     * {@return the facets that are shut to a front or to a flux}
     *
     * @param mesh closed, facing outward
     * @param resting whether those it rests on are shut
     * @param hollows whether those of closed hollows are shut
     */
    public static BitSet shut(TriangleMesh mesh, boolean resting, boolean hollows) {
        BitSet shut = hollows ? new Shells(mesh).hollows() : new BitSet();
        if (resting) {
            shut.or(resting(mesh));
        }
        return shut;
    }

    /**
     * {@return the facets of a mesh that are not in a set}
     *
     * @param mesh the mesh
     * @param set numbers of facets; it stays as it is
     */
    public static BitSet others(TriangleMesh mesh, BitSet set) {
        BitSet others = (BitSet) set.clone();
        others.flip(0, mesh.facetCount());
        return others;
    }

    /**
     * {@return area of the facets in a set, m2}
     *
     * @param mesh the mesh
     * @param set numbers of facets
     */
    public static double area(TriangleMesh mesh, BitSet set) {
        double sum = 0;
        for (int f = set.nextSetBit(0); f >= 0; f = set.nextSetBit(f + 1)) {
            sum += doubled(mesh, f).norm() / 2;
        }
        return sum;
    }

    /**
     * {@return horizontal projection of a facet, m2; negative where it faces down}
     *
     * @param mesh the mesh
     * @param f number of the facet
     */
    public static double shadow(TriangleMesh mesh, int f) {
        return doubled(mesh, f, 0, 1) / 2;
    }

    /**
     * {@return twice the area of a facet projected along one axis onto the other two, m2: positive where it is
     * anticlockwise}
     *
     * @param mesh the mesh
     * @param f number of the facet
     * @param u first of the two axes, 0 to 2
     * @param v second of the two axes, 0 to 2
     */
    public static double doubled(TriangleMesh mesh, int f, int u, int v) {
        int a = mesh.corner(f, 0);
        int b = mesh.corner(f, 1);
        int c = mesh.corner(f, 2);
        return (mesh.at(b, u) - mesh.at(a, u)) * (mesh.at(c, v) - mesh.at(a, v))
                - (mesh.at(c, u) - mesh.at(a, u)) * (mesh.at(b, v) - mesh.at(a, v));
    }

    /**
     * {@return twice the area of a facet along its normal, m2}
     *
     * @param mesh the mesh
     * @param f number of the facet
     */
    public static Vec3 doubled(TriangleMesh mesh, int f) {
        return new Vec3(doubled(mesh, f, 1, 2), doubled(mesh, f, 2, 0), doubled(mesh, f, 0, 1));
    }

    /**
     * {@return length of the diagonal of a box, m}
     *
     * @param box the least three coordinates, then the largest, m
     */
    public static double diagonal(double[] box) {
        double x = box[3] - box[0];
        double y = box[4] - box[1];
        double z = box[5] - box[2];
        return Math.sqrt(x * x + y * y + z * z);
    }

    /**
     * {@return height below which a corner lies in the lowest plane, m}
     *
     * @param box the least three coordinates, then the largest, m
     */
    public static double floor(double[] box) {
        return box[2] + FLAT * diagonal(box);
    }
}
