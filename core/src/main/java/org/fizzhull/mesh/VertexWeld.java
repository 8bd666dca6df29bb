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
    private int[] hashes = new int[0];
    private int fetched;

    /** @param facetsExpected facets that are surely there; sizes the first arrays */
    VertexWeld(int facetsExpected) {
        int expected = facetsExpected / 2 + 16;
        xyz = new float[3 * expected];
        corners = new int[3 * Math.max(4, facetsExpected)];
        rehash(expected);
    }

    /**
     * Adds facets from the bits of their float32 coordinates, nine a facet; a facet two of whose corners fall together
     * is left out and counted.
     *
     * @return false where a coordinate is NaN, infinite or larger than {@link #LARGEST}: then {@link #added} is the index
     *     of that facet
     */
    boolean add(int[] bits, int facets) {
        if (hashes.length < 3 * facets) {
            hashes = new int[3 * facets];
        }
        hashAll(bits, hashes, 3 * facets);
        fetched += fetch(slots, hashes, 3 * facets, shift);
        for (int f = 0; f < facets; f++) {
            int a = vertex(bits, 9 * f, hashes[3 * f]);
            int b = vertex(bits, 9 * f + 3, hashes[3 * f + 1]);
            int c = vertex(bits, 9 * f + 6, hashes[3 * f + 2]);
            if ((a | b | c) < 0) {
                return false;
            }
            keep(a, b, c);
        }
        return true;
    }

    private void keep(int a, int b, int c) {
        added++;
        if (a == b || b == c || c == a) {
            collapsed++;
            return;
        }
        int at = used;
        if (at + 3 > corners.length) {
            corners = Arrays.copyOf(corners, corners.length + corners.length / 2);
        }
        corners[at] = a;
        corners[at + 1] = b;
        corners[at + 2] = c;
        used = at + 3;
    }

    /** Hashes of corners; writes 0 for -0 on the way. */
    private static void hashAll(int[] bits, int[] hashes, int count) {
        for (int i = 0; i < count; i++) {
            int x = bits[3 * i];
            int y = bits[3 * i + 1];
            int z = bits[3 * i + 2];
            if (x == NEGATIVE_ZERO || y == NEGATIVE_ZERO || z == NEGATIVE_ZERO) {
                x = bits[3 * i] = x == NEGATIVE_ZERO ? 0 : x;
                y = bits[3 * i + 1] = y == NEGATIVE_ZERO ? 0 : y;
                z = bits[3 * i + 2] = z == NEGATIVE_ZERO ? 0 : z;
            }
            hashes[i] = hash(x, y, z);
        }
    }

    /**
     * Looks at the slots of a block one after another, for no other end than to have them in the processor's cache: these
     * loads do not wait for one another, as those of the search do. Saves a fifth of the time (measured).
     */
    private static int fetch(int[] slots, int[] hashes, int count, int shift) {
        int sum = 0;
        for (int i = 0; i < count; i++) {
            sum += slots[hashes[i] >>> shift];
        }
        return sum;
    }

    /** Number of the vertex with these bits; -1 where one of them is no usable number. */
    private int vertex(int[] bits, int at, int hash) {
        int x = bits[at];
        int y = bits[at + 1];
        int z = bits[at + 2];
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
