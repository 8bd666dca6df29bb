package org.fizzhull.mesh.reading;

import java.util.Arrays;

/**
 * Facets as they come out of a file, corners with the same coordinates made one vertex: a hash table with open addressing
 * over the bits of the float32 numbers; -0 counts as 0. Facets with two corners in one place are counted and left out.
 */
final class VertexWeld {
    /** Largest coordinate of a file, in its unit: beyond, float32 numbers are no longer fine enough, or damaged. */
    static final float LARGEST = 1_000_000;

    private float[] xyz = new float[3 << 10];
    private int vertices;
    private int[] corners = new int[3 << 10];
    private int used;

    /** Vertex number plus one at each place; its length is a power of two. */
    private int[] table = new int[1 << 12];

    private int read;
    private int collapsed;

    /** Adds a facet of nine coordinates, all of them usable. */
    void add(float[] facet) {
        read++;
        int a = vertex(facet[0], facet[1], facet[2]);
        int b = vertex(facet[3], facet[4], facet[5]);
        int c = vertex(facet[6], facet[7], facet[8]);
        if (a == b || b == c || c == a) {
            collapsed++;
            return;
        }
        if (used == corners.length) {
            corners = Arrays.copyOf(corners, 2 * used);
        }
        corners[used++] = a;
        corners[used++] = b;
        corners[used++] = c;
    }

    private int vertex(float x, float y, float z) {
        int mask = table.length - 1;
        // a sum with +0 turns -0 into 0
        int hash = Float.floatToRawIntBits(x + 0f) * 0x9e3779b1;
        hash = (Integer.rotateLeft(hash, 15) ^ Float.floatToRawIntBits(y + 0f)) * 0x85ebca77;
        hash = (Integer.rotateLeft(hash, 15) ^ Float.floatToRawIntBits(z + 0f)) * 0xc2b2ae3d;
        int place = (hash ^ hash >>> 15) & mask;
        while (table[place] != 0) {
            int at = 3 * (table[place] - 1);
            if (xyz[at] == x && xyz[at + 1] == y && xyz[at + 2] == z) {
                return table[place] - 1;
            }
            place = (place + 1) & mask;
        }
        if (3 * vertices == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        xyz[3 * vertices] = x + 0f;
        xyz[3 * vertices + 1] = y + 0f;
        xyz[3 * vertices + 2] = z + 0f;
        table[place] = ++vertices;
        int found = vertices - 1;
        if (2 * vertices > table.length) {
            grow();
        }
        return found;
    }

    private void grow() {
        int count = vertices;
        table = new int[2 * table.length];
        float[] before = xyz;
        xyz = new float[before.length];
        vertices = 0;
        for (int v = 0; v < count; v++) {
            vertex(before[3 * v], before[3 * v + 1], before[3 * v + 2]);
        }
    }

    /** Facets that were added, those left out included. */
    int read() {
        return read;
    }

    /** Facets that were left out because two corners lie in one place. */
    int collapsed() {
        return collapsed;
    }

    /** Coordinates of the vertices, m, for a unit of the file of some metres. */
    double[] coordinates(double metresPerUnit) {
        double[] metres = new double[3 * vertices];
        for (int i = 0; i < metres.length; i++) {
            metres[i] = xyz[i] * metresPerUnit;
        }
        return metres;
    }

    /** Three vertices a facet. */
    int[] corners() {
        return Arrays.copyOf(corners, used);
    }
}
