package org.fizzhull.mesh;

/**
 * A closed triangle mesh: shared vertices and, for each facet, three vertex indices in the order that is anticlockwise
 * seen from outside. Immutable; the arrays are not copied on the way in, so that a million facets are held once: the
 * maker hands them over.
 */
public final class TriangleMesh {
    private final double[] xyz;
    private final int[] corners;

    /**
     * @param xyz coordinates x, y, z of one vertex after another, m
     * @param corners three vertex indices a facet
     */
    public TriangleMesh(double[] xyz, int[] corners) {
        if (xyz.length % 3 != 0 || corners.length % 3 != 0 || corners.length == 0) {
            throw new IllegalArgumentException("a mesh needs whole vertices and at least one whole facet");
        }
        this.xyz = xyz;
        this.corners = corners;
    }

    /** Number of vertices. */
    public int vertexCount() {
        return xyz.length / 3;
    }

    /** Number of facets. */
    public int facetCount() {
        return corners.length / 3;
    }

    /** Coordinate {@code axis} (0 x, 1 y, 2 z) of a vertex, m. */
    public double at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    /** Vertex index at corner 0, 1 or 2 of a facet. */
    public int corner(int facet, int corner) {
        return corners[3 * facet + corner];
    }
}
