package org.fizzhull.mesh;

import java.io.Serializable;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A closed triangle mesh: shared vertices and, for each facet, three vertex indices in the order that is anticlockwise
 * seen from outside. Immutable; the arrays given to the constructor are not copied, so that a million facets are
 * held once: the caller must not change them afterwards.
 */
public final class TriangleMesh implements Serializable {
    private static final long serialVersionUID = 1;

    private final double[] xyz;
    private final int[] corners;
    private final double[] box = new double[6];

    /**
     * @param xyz coordinates x, y, z of one vertex after another, m
     * @param corners three vertex indices a facet
     * @throws IllegalArgumentException for array lengths that are not multiples of three, no facet at all, an index
     *     of no vertex, and a coordinate that is NaN or infinite
     */
    public TriangleMesh(double[] xyz, int[] corners) {
        if (xyz.length % 3 != 0 || corners.length % 3 != 0 || corners.length == 0) {
            throw new IllegalArgumentException("a mesh needs whole vertices and at least one whole facet");
        }
        int vertices = xyz.length / 3;
        for (int i = 0; i < corners.length; i++) {
            if (corners[i] < 0 || corners[i] >= vertices) {
                throw new IllegalArgumentException(
                        "facet " + i / 3 + " names vertex " + corners[i] + " of " + vertices);
            }
        }
        this.xyz = xyz;
        this.corners = corners;
        Arrays.fill(box, 0, 3, Double.POSITIVE_INFINITY);
        Arrays.fill(box, 3, 6, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < xyz.length; i += 3) {
            for (int k = 0; k < 3; k++) {
                double at = xyz[i + k];
                if (!Double.isFinite(at)) {
                    throw new IllegalArgumentException("vertex " + i / 3 + " lies at " + at);
                }
                box[k] = at < box[k] ? at : box[k];
                box[k + 3] = at > box[k + 3] ? at : box[k + 3];
            }
        }
    }

    /**
     * {@return the mesh of some facets without the vertices that none of them uses; the others keep their order}
     *
     * @param xyz coordinates x, y, z of one vertex after another, m
     * @param corners three vertex indices a facet
     */
    public static TriangleMesh compact(double[] xyz, int[] corners) {
        int[] renamed = new int[xyz.length / 3];
        for (int v : corners) {
            renamed[v] = 1;
        }
        double[] left = new double[xyz.length];
        int kept = 0;
        for (int v = 0; v < renamed.length; v++) {
            if (renamed[v] != 0) {
                System.arraycopy(xyz, 3 * v, left, 3 * kept, 3);
                renamed[v] = kept++;
            }
        }
        if (kept == renamed.length) {
            return new TriangleMesh(xyz, corners);
        }
        int[] facets = new int[corners.length];
        for (int h = 0; h < corners.length; h++) {
            facets[h] = renamed[corners[h]];
        }
        return new TriangleMesh(Arrays.copyOf(left, 3 * kept), facets);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TriangleMesh that
                && Arrays.equals(xyz, that.xyz)
                && Arrays.equals(corners, that.corners);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(xyz) + Arrays.hashCode(corners);
    }

    /** {@return number of vertices} */
    public int vertexCount() {
        return xyz.length / 3;
    }

    /** {@return number of facets} */
    public int facetCount() {
        return corners.length / 3;
    }

    /**
     * {@return coordinate {@code axis} (0 x, 1 y, 2 z) of a vertex, m}
     *
     * @param vertex number of the vertex
     * @param axis 0, 1 or 2 for x, y or z
     */
    public double at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    /**
     * {@return vertex index at corner 0, 1 or 2 of a facet}
     *
     * @param facet number of the facet
     * @param corner number of the corner, 0 to 2
     */
    public int corner(int facet, int corner) {
        return corners[3 * facet + corner];
    }

    /**
     * {@return the three vertices of a facet}
     *
     * @param facet number of the facet
     */
    public IntStream corners(int facet) {
        return IntStream.of(corners[3 * facet], corners[3 * facet + 1], corners[3 * facet + 2]);
    }

    /** {@return smallest x, y, z, then largest x, y, z of the vertices, m} */
    public double[] box() {
        return box.clone();
    }

    /**
     * {@return the same mesh turned, then shifted}
     *
     * @param turn rows of the matrix that each vertex is multiplied by, its determinant 1
     * @param shift added to x, y and z after that, m
     */
    public TriangleMesh moved(double[][] turn, double[] shift) {
        double[] there = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            for (int k = 0; k < 3; k++) {
                double[] row = turn[k];
                there[i + k] = row[0] * xyz[i] + row[1] * xyz[i + 1] + row[2] * xyz[i + 2] + shift[k];
            }
        }
        return new TriangleMesh(there, corners);
    }

    /**
     * {@return the mesh of some of the facets, which must close by themselves; vertices that none of them uses are left out}
     *
     * @param facets whether the facet of a number belongs to it; true for at least one
     */
    public TriangleMesh part(IntPredicate facets) {
        IntStream sides = IntStream.range(0, corners.length).filter(h -> facets.test(h / 3));
        return compact(xyz, sides.map(h -> corners[h]).toArray());
    }

    /** {@return the mesh turned by half a turn about the x axis; twice gives it back} */
    public TriangleMesh upsideDown() {
        return moved(new double[][] {{1, 0, 0}, {0, -1, 0}, {0, 0, -1}}, new double[3]);
    }

    /** {@return the mesh with its facets turned over, so that what was outside is inside} */
    public TriangleMesh insideOut() {
        int[] turned = corners.clone();
        for (int h = 0; h < turned.length; h += 3) {
            turned[h + 1] = corners[h + 2];
            turned[h + 2] = corners[h + 1];
        }
        return new TriangleMesh(xyz, turned);
    }
}
