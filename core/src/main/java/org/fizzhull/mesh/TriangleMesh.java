package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * A closed triangle mesh: shared vertices and, for each facet, three vertex indices in the order that is anticlockwise
 * seen from outside. Immutable; the arrays are not copied on the way in, so that a million facets are held once: the
 * maker hands them over.
 */
public final class TriangleMesh {
    /** Multiple of three. */
    private static final int BLOCK = 192;

    private final Vertices vertices;
    private final int[] corners;

    /**
     * @param xyz coordinates x, y, z of one vertex after another, m
     * @param corners three vertex indices a facet
     */
    public TriangleMesh(double[] xyz, int[] corners) {
        if (xyz.length % 3 != 0 || corners.length % 3 != 0 || corners.length == 0) {
            throw new IllegalArgumentException("a mesh needs whole vertices and at least one whole facet");
        }
        this.vertices = Vertices.of(xyz);
        this.corners = corners;
    }

    TriangleMesh(Vertices vertices, int[] corners) {
        this.vertices = vertices;
        this.corners = corners;
    }

    /** Number of vertices. */
    public int vertexCount() {
        return vertices.count();
    }

    /** Number of facets. */
    public int facetCount() {
        return corners.length / 3;
    }

    /** Coordinate {@code axis} (0 x, 1 y, 2 z) of a vertex, m. */
    public double at(int vertex, int axis) {
        return vertices.at(3 * vertex + axis);
    }

    /** Smallest x, y, z, then largest x, y, z of the vertices, m. */
    public double[] box() {
        double[] box = new double[6];
        Arrays.fill(box, 0, 3, Double.POSITIVE_INFINITY);
        Arrays.fill(box, 3, 6, Double.NEGATIVE_INFINITY);
        int end = 3 * vertices.count();
        for (int from = 0; from < end; from += BLOCK) {
            widen(box, from, Math.min(end, from + BLOCK));
        }
        return box;
    }

    private void widen(double[] box, int from, int to) {
        for (int axis = 0; axis < 3; axis++) {
            double low = box[axis];
            double high = box[axis + 3];
            for (int i = from + axis; i < to; i += 3) {
                double x = vertices.at(i);
                low = x < low ? x : low;
                high = x > high ? x : high;
            }
            box[axis] = low;
            box[axis + 3] = high;
        }
    }

    /** Adds every facet to some sums, block by block so that the machine code of a block is ready early. */
    void addTo(MassSums sums) {
        for (int from = 0; from < facetCount(); from += BLOCK) {
            sums.add(vertices, corners, from, Math.min(facetCount(), from + BLOCK));
        }
    }

    /** Vertex index at corner 0, 1 or 2 of a facet. */
    public int corner(int facet, int corner) {
        return corners[3 * facet + corner];
    }
}
