package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Gathers facets and gives corners with the same three float32 numbers one vertex index. Equality is of bits, with -0
 * counted as 0: writers repeat a vertex bit for bit, and any tolerance here can join edges that belong apart
 * (hydrostatics sheet, section 6 rule 5).
 *
 * <p>The table is open addressing over int arrays: nothing is boxed, and no array is larger than the facets that are
 * really there call for. A slot holds the vertex number and eight bits of its hash, so that a wrong slot is mostly
 * seen without a look at the coordinates. A small direct-mapped table in front holds the last vertices met and stays in
 * the processor's cache: neighbours are mostly listed near each other.
 */
final class VertexWeld {
    /** Largest coordinate that is taken, in units of the file; beyond it a file is damaged, not large. */
    static final float LARGEST = 1e6f;

    private static final int LARGEST_BITS = Float.floatToRawIntBits(LARGEST);
    private static final int MAGNITUDE = 0x7fffffff;
    private static final int NEGATIVE_ZERO = 0x80000000;
    private static final int NUMBER = 0xffffff;
    private static final int RECENT = 1 << 13;

    private float[] xyz;
    private int vertices;
    private int[] slots;
    private int shift;
    private final int[] recent = new int[RECENT];
    private int[] corners;
    private int used;
    private int added;
    private int collapsed;

    /** @param facetsExpected facets that are surely there; sizes the first arrays */
    VertexWeld(int facetsExpected) {
        int expected = facetsExpected / 2 + 16;
        xyz = new float[3 * expected];
        corners = new int[3 * Math.max(4, facetsExpected)];
        rehash(expected);
    }

    /**
     * Adds one facet from the bits of its nine float32 coordinates; a facet two of whose corners fall together is left
     * out and counted.
     *
     * @return false where a coordinate is NaN, infinite or larger than {@link #LARGEST}
     */
    boolean add(int ax, int ay, int az, int bx, int by, int bz, int cx, int cy, int cz) {
        int a = vertex(ax, ay, az);
        int b = vertex(bx, by, bz);
        int c = vertex(cx, cy, cz);
        if ((a | b | c) < 0) {
            return false;
        }
        added++;
        if (a == b || b == c || c == a) {
            collapsed++;
            return true;
        }
        int at = used;
        if (at + 3 > corners.length) {
            corners = Arrays.copyOf(corners, corners.length + corners.length / 2);
        }
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        used = at + 3;
        return true;
    }

    /** Number of the vertex with these bits; -1 where one of them is no usable number. */
    private int vertex(int xBits, int yBits, int zBits) {
        int x = xBits == NEGATIVE_ZERO ? 0 : xBits;
        int y = yBits == NEGATIVE_ZERO ? 0 : yBits;
        int z = zBits == NEGATIVE_ZERO ? 0 : zBits;
        int hash = hash(x, y, z);
        int entry = recent[hash >>> 8 & RECENT - 1];
        if (entry != 0 && (entry ^ hash << 24) >>> 24 == 0 && is(entry & NUMBER, x, y, z)) {
            return (entry & NUMBER) - 1;
        }
        return search(x, y, z, hash);
    }

    private boolean is(int number, int x, int y, int z) {
        int at = 3 * number;
        return xyz[at - 3] == Float.intBitsToFloat(x)
                && xyz[at - 2] == Float.intBitsToFloat(y)
                && xyz[at - 1] == Float.intBitsToFloat(z);
    }

    private int search(int x, int y, int z, int hash) {
        int mask = slots.length - 1;
        int slot = hash >>> shift;
        int entry;
        while ((entry = slots[slot]) != 0) {
            if ((entry ^ hash << 24) >>> 24 == 0 && is(entry & NUMBER, x, y, z)) {
                recent[hash >>> 8 & RECENT - 1] = entry;
                return (entry & NUMBER) - 1;
            }
            slot = slot + 1 & mask;
        }
        return insert(x, y, z, hash, slot);
    }

    private int insert(int x, int y, int z, int hash, int slot) {
        if ((x & MAGNITUDE) > LARGEST_BITS || (y & MAGNITUDE) > LARGEST_BITS || (z & MAGNITUDE) > LARGEST_BITS) {
            return -1;
        }
        int at = 3 * vertices;
        if (at + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, xyz.length + xyz.length / 2 + 3);
        }
        xyz[at] = Float.intBitsToFloat(x);
        xyz[at + 1] = Float.intBitsToFloat(y);
        xyz[at + 2] = Float.intBitsToFloat(z);
        int entry = ++vertices | hash << 24;
        slots[slot] = entry;
        recent[hash >>> 8 & RECENT - 1] = entry;
        if (vertices > slots.length / 5 * 3) {
            rehash(slots.length);
        }
        return vertices - 1;
    }

    private void rehash(int atLeast) {
        int log = 5;
        while (1 << log < atLeast * 5L / 3 + 1) {
            log++;
        }
        slots = new int[1 << log];
        shift = 32 - log;
        int mask = slots.length - 1;
        for (int v = 0; v < vertices; v++) {
            int hash = hash(bits(3 * v), bits(3 * v + 1), bits(3 * v + 2));
            int slot = hash >>> shift;
            while (slots[slot] != 0) {
                slot = slot + 1 & mask;
            }
            slots[slot] = v + 1 | hash << 24;
        }
    }

    private int bits(int at) {
        return Float.floatToRawIntBits(xyz[at]);
    }

    /**
     * Mixed one coordinate after another: in a plain weighted sum the sign bits of two coordinates cancel, and mirrored
     * vertices, which every symmetrical body has, fall together.
     */
    private static int hash(int x, int y, int z) {
        int h = x * 0x9e3779b1;
        h = ((h ^ h >>> 15) + y) * 0x85ebca77;
        h = ((h ^ h >>> 13) + z) * 0xc2b2ae3d;
        return h ^ h >>> 16;
    }

    /** Facets handed in so far, collapsed ones included. */
    int added() {
        return added;
    }

    /** Facets left out because two of their corners fall together. */
    int collapsed() {
        return collapsed;
    }

    /** Facets kept so far. */
    int facets() {
        return used / 3;
    }

    /** Vertices so far. */
    int vertices() {
        return vertices;
    }

    /** Vertex indices, three a facet, with spare room behind; the array may be another one after more facets. */
    int[] roomyCorners() {
        return corners;
    }

    /** Coordinates in units of the file, with spare room behind; the array may be another one after more facets. */
    float[] roomyCoordinates() {
        return xyz;
    }

    /** Vertex indices, three a facet, with the spare room cut off. */
    int[] corners() {
        return used == corners.length ? corners : Arrays.copyOf(corners, used);
    }

    /** Coordinates of the vertices, m. */
    double[] coordinates(double metresPerUnit) {
        double[] metres = new double[3 * vertices];
        for (int i = 0; i < metres.length; i++) {
            metres[i] = xyz[i] * metresPerUnit;
        }
        return metres;
    }
}
