package org.fizzhull.mesh.measure;

import java.util.Arrays;
import java.util.Optional;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/**
 * Sets of facets of a closed mesh, as flags: the flat ones it rests on, and those that bound closed hollows. A hollow is
 * a surface of its own that encloses a negative volume; the hollow of an open bowl is not told apart.
 */
public final class FaceSets {
    /**
     * Corners this close to the lowest plane, in shares of the box diagonal, lie in it: twenty times the rounding of
     * single precision, in which STL files are written, and a thousandth of what the lowest facets of a ball of 500
     * segments rise by.
     */
    private static final double FLAT = 1e-6;

    private FaceSets() {}

    /**
     * {@return every facet}
     *
     * @param mesh the mesh
     */
    public static boolean[] all(TriangleMesh mesh) {
        boolean[] set = new boolean[mesh.facetCount()];
        Arrays.fill(set, true);
        return set;
    }

    /**
     * {@return the facets that face down in the lowest horizontal plane; none for a body without a flat resting
     * face}
     *
     * @param mesh the mesh
     */
    public static boolean[] resting(TriangleMesh mesh) {
        double[] box = mesh.box();
        double level = floor(box);
        boolean[] set = new boolean[mesh.facetCount()];
        for (int f = 0; f < set.length; f++) {
            boolean low = true;
            for (int k = 0; k < 3; k++) {
                low &= mesh.at(mesh.corner(f, k), 2) <= level;
            }
            // a facet without area in that plane would leave a line of the resting face open
            set[f] = low && shadow(mesh, f) <= 0;
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
    public static boolean[] level(TriangleMesh mesh, Vec3 n, double depth) {
        double[] up = new double[mesh.vertexCount()];
        double top = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < up.length; v++) {
            up[v] = mesh.at(v, 0) * n.x() + mesh.at(v, 1) * n.y() + mesh.at(v, 2) * n.z();
            top = Math.max(top, up[v]);
        }
        boolean[] set = new boolean[mesh.facetCount()];
        for (int f = 0; f < set.length; f++) {
            double low = Math.min(up[mesh.corner(f, 0)], Math.min(up[mesh.corner(f, 1)], up[mesh.corner(f, 2)]));
            set[f] = low >= top - depth;
        }
        return set;
    }

    /**
     * {@return the facets of closed hollows}
     *
     * @param mesh the mesh
     */
    public static boolean[] hollows(TriangleMesh mesh) {
        int[] group = surfaces(mesh);
        double[] volume = volumes(mesh, group);
        boolean[] set = new boolean[mesh.facetCount()];
        for (int f = 0; f < set.length; f++) {
            set[f] = volume[group[mesh.corner(f, 0)]] < 0;
        }
        return set;
    }

    /**
     * {@return what fills the largest closed hollow, as a body of its own; empty where there is none}
     *
     * @param mesh the mesh
     */
    public static Optional<TriangleMesh> largestHollow(TriangleMesh mesh) {
        int[] group = surfaces(mesh);
        double[] volume = volumes(mesh, group);
        int largest = 0;
        for (int g = 0; g < volume.length; g++) {
            largest = volume[g] < volume[largest] ? g : largest;
        }
        if (!(volume[largest] < 0)) {
            return Optional.empty();
        }
        double[] xyz = new double[3 * group.length];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = mesh.at(i / 3, i % 3);
        }
        int[] corners = new int[3 * mesh.facetCount()];
        int used = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3 && group[mesh.corner(f, 0)] == largest; k++) {
                corners[used++] = mesh.corner(f, (3 - k) % 3);
            }
        }
        return Optional.of(TriangleMesh.compact(xyz, Arrays.copyOf(corners, used)));
    }

    /** For each vertex the lowest vertex of the surface it belongs to. */
    private static int[] surfaces(TriangleMesh mesh) {
        int[] group = new int[mesh.vertexCount()];
        for (int v = 0; v < group.length; v++) {
            group[v] = v;
        }
        for (int f = 0; f < mesh.facetCount(); f++) {
            join(group, mesh.corner(f, 0), mesh.corner(f, 1));
            join(group, mesh.corner(f, 1), mesh.corner(f, 2));
        }
        for (int v = 0; v < group.length; v++) {
            group[v] = root(group, v);
        }
        return group;
    }

    /** Volume that each surface encloses, m3, at its lowest vertex; negative for a hollow. */
    private static double[] volumes(TriangleMesh mesh, int[] group) {
        double low = mesh.box()[2];
        double[] volume = new double[group.length];
        for (int f = 0; f < mesh.facetCount(); f++) {
            double lift = 0;
            for (int k = 0; k < 3; k++) {
                lift += mesh.at(mesh.corner(f, k), 2) - low;
            }
            volume[group[mesh.corner(f, 0)]] += shadow(mesh, f) * lift / 3;
        }
        return volume;
    }

    /**
     * {@return the facets of one set that are not in the other}
     *
     * @param set a set of facets, true where a facet belongs to it
     * @param taken facets that are taken already
     */
    public static boolean[] without(boolean[] set, boolean[] taken) {
        boolean[] left = new boolean[set.length];
        for (int f = 0; f < set.length; f++) {
            left[f] = set[f] && !taken[f];
        }
        return left;
    }

    /**
     * {@return the facets of either set}
     *
     * @param one a set of facets
     * @param other another set of facets
     */
    public static boolean[] either(boolean[] one, boolean[] other) {
        boolean[] both = new boolean[one.length];
        for (int f = 0; f < both.length; f++) {
            both[f] = one[f] || other[f];
        }
        return both;
    }

    /**
     * {@return whether a set holds a facet}
     *
     * @param set a set of facets, true where a facet belongs to it
     */
    public static boolean any(boolean[] set) {
        for (boolean in : set) {
            if (in) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return area of the facets in a set, m2}
     *
     * @param mesh the mesh
     * @param set a set of facets, true where a facet belongs to it
     */
    public static double area(TriangleMesh mesh, boolean[] set) {
        double sum = 0;
        for (int f = 0; f < set.length; f++) {
            if (set[f]) {
                double x = doubled(mesh, f, 1, 2);
                double y = doubled(mesh, f, 2, 0);
                double z = doubled(mesh, f, 0, 1);
                sum += Math.sqrt(x * x + y * y + z * z) / 2;
            }
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

    private static void join(int[] group, int a, int b) {
        int i = root(group, a);
        int j = root(group, b);
        group[Math.max(i, j)] = Math.min(i, j);
    }

    private static int root(int[] group, int v) {
        int at = v;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }
}
