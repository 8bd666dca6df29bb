package org.fizzhull.mesh.measure;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;

/** A mesh in the making: vertices and facets are added one by one and numbered from 0. Not thread-safe. */
public final class MeshBuilder {
    private double[] xyz = new double[3 << 8];
    private int vertices;
    private int[] corners = new int[3 << 8];
    private int facets;

    /**
     * Adds a vertex, in the unit of the others.
     *
     * @param x first coordinate
     * @param y second coordinate
     * @param z third coordinate
     * @return its number
     */
    public int vertex(double x, double y, double z) {
        if (3 * vertices == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        xyz[3 * vertices] = x;
        xyz[3 * vertices + 1] = y;
        xyz[3 * vertices + 2] = z;
        return vertices++;
    }

    /**
     * Adds a facet, its vertices in the order that is anticlockwise seen from outside; they may be added later.
     *
     * @param a number of a vertex
     * @param b number of the next
     * @param c number of the last
     */
    public void facet(int a, int b, int c) {
        if (3 * facets == corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[3 * facets] = a;
        corners[3 * facets + 1] = b;
        corners[3 * facets + 2] = c;
        facets++;
    }

    /** {@return number of vertices so far} */
    public int vertices() {
        return vertices;
    }

    /** {@return number of facets so far} */
    public int facets() {
        return facets;
    }

    /**
     * {@return a coordinate of a vertex, in the unit it was added in}
     *
     * @param vertex number of the vertex
     * @param axis 0, 1 or 2 for x, y or z
     */
    public double at(int vertex, int axis) {
        return xyz[3 * vertex + axis];
    }

    /**
     * {@return vertex at corner 0, 1 or 2 of a facet}
     *
     * @param facet number of the facet
     * @param corner 0 to 2
     */
    public int corner(int facet, int corner) {
        return corners[3 * facet + corner];
    }

    /**
     * {@return coordinates x, y, z of one vertex after another, m}
     *
     * @param metresPerUnit length of one unit of the coordinates, m
     */
    public double[] coordinates(double metresPerUnit) {
        double[] metres = Arrays.copyOf(xyz, 3 * vertices);
        for (int i = 0; i < metres.length; i++) {
            metres[i] *= metresPerUnit;
        }
        return metres;
    }

    /** {@return three vertices a facet} */
    public int[] corners() {
        return Arrays.copyOf(corners, 3 * facets);
    }

    /** {@return the mesh of the facets, without vertices that none of them uses; coordinates are m} */
    public TriangleMesh mesh() {
        return TriangleMesh.compact(coordinates(1), corners());
    }
}
