package org.fizzhull.mesh.reading;

import org.fizzhull.mesh.measure.MeshBuilder;

/**
 * Facets as they come out of a file, corners with the same coordinates made one vertex: a hash table with open addressing
 * over float32 numbers; -0 counts as 0. Facets with two corners in one place are counted and left out.
 */
final class VertexWeld {
    /** Most facets that are read. */
    static final int MOST_FACETS = 4_000_000;

    /** Largest coordinate of a file, in its unit: beyond, float32 numbers are no longer fine enough, or damaged. */
    static final float LARGEST = 1_000_000;

    private final MeshBuilder welded = new MeshBuilder();

    /** Vertex number plus one at each place; its length is a power of two. */
    private int[] table = new int[1 << 12];

    private int read;

    /** Adds a facet of nine coordinates, all of them usable. */
    void add(float[] facet) {
        read++;
        int a = vertex(facet[0], facet[1], facet[2]);
        int b = vertex(facet[3], facet[4], facet[5]);
        int c = vertex(facet[6], facet[7], facet[8]);
        if (a != b && b != c && c != a) {
            welded.facet(a, b, c);
        }
    }

    private int vertex(float x, float y, float z) {
        // a sum with +0 turns -0 into 0
        int place = place(x + 0f, y + 0f, z + 0f);
        if (table[place] == 0) {
            table[place] = welded.vertex(x + 0f, y + 0f, z + 0f) + 1;
            if (2 * welded.vertices() > table.length) {
                table = new int[2 * table.length];
                for (int v = 0; v < welded.vertices(); v++) {
                    table[place((float) welded.at(v, 0), (float) welded.at(v, 1), (float) welded.at(v, 2))] = v + 1;
                }
                return welded.vertices() - 1;
            }
        }
        return table[place] - 1;
    }

    /** Where the vertex with these coordinates stands in the table, or would. */
    private int place(float x, float y, float z) {
        int hash = Float.floatToRawIntBits(x) * 0x9e3779b1;
        hash = (Integer.rotateLeft(hash, 15) ^ Float.floatToRawIntBits(y)) * 0x85ebca77;
        hash = (Integer.rotateLeft(hash, 15) ^ Float.floatToRawIntBits(z)) * 0xc2b2ae3d;
        int place = (hash ^ hash >>> 15) & table.length - 1;
        while (table[place] != 0 && !at(table[place] - 1, x, y, z)) {
            place = (place + 1) & table.length - 1;
        }
        return place;
    }

    private boolean at(int v, float x, float y, float z) {
        return welded.at(v, 0) == x && welded.at(v, 1) == y && welded.at(v, 2) == z;
    }

    /** Facets that were added, those left out included. */
    int read() {
        return read;
    }

    /** Facets that were left out because two corners lie in one place. */
    int collapsed() {
        return read - welded.facets();
    }

    /** The vertices and the other facets, in units of the file. */
    MeshBuilder welded() {
        return welded;
    }
}
