package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Gathers facets and gives corners with the same three float32 numbers one vertex index. Equality is of bits, with -0
 * counted as 0: writers repeat a vertex bit for bit, and any tolerance here can join edges that belong apart
 * (hydrostatics sheet, section 6 rule 5).
 *
 * <p>Most files list neighbours after one another, so a corner is mostly one of the facet before. Else it is sought in a
 * table: open addressing over int arrays, a slot holding the vertex number and eight bits of its hash, so that a wrong
 * slot is mostly seen without a look at the coordinates. Nothing is boxed, and no array is larger than the facets that
 * are really there call for.
 */
final class VertexWeld {
    /** Largest coordinate that is taken, in units of the file; beyond it a file is damaged, not large. */
    static final float LARGEST = 1e6f;

    private static final int LARGEST_BITS = Float.floatToRawIntBits(LARGEST);
    private static final int MAGNITUDE = 0x7fffffff;
    private static final int NEGATIVE_ZERO = 0x80000000;
    private static final int NUMBER = 0xffffff;

    /** Facets at a time. */
    private static final int FEW = 64;

    /** Bits of the coordinates, three a vertex, without a -0. */
    private int[] xyz;

    private int vertices;
    private int[] slots;
    private int shift;
    private int[] corners;
    private int used;
    private int added;
    private int collapsed;

    /** Corners of the facet before. */
    private int lastA;

    private int lastB;
    private int lastC;

    /** For each corner of a few facets, which corner of the facet before it is, from 1; 0 for none. */
    private final int[] twins = new int[3 * FEW];

    /** Hashes of the corners that are none of the facet before, one after another. */
    private final int[] hashes = new int[3 * FEW];

    private int sought;

    /** What the fetching summed up: kept so that no compiler leaves it out, and read by nobody. */
    private int unusedSum;

    /** @param facetsExpected facets that are surely there; sizes the first arrays */
    VertexWeld(int facetsExpected) {
        int expected = facetsExpected / 2 + 16;
        xyz = new int[3 * expected];
        corners = new int[3 * Math.max(4, facetsExpected)];
        rehash(expected);
    }

    /**
     * Adds the first facets of a block; one two of whose corners fall together is left out and counted.
     *
     * @return false where a coordinate is NaN, infinite or larger than {@link #LARGEST}: then {@link #added} is the index
     *     of that facet
     */
    boolean add(FacetBits block, int facets) {
        for (int f = 0; f < facets; f += FEW) {
            int to = Math.min(facets, f + FEW);
            prepare(block, f, to);
            if (!addAll(block, f, to)) {
                return false;
            }
        }
        return true;
    }

    /** Tells the corners of the facet before from fresh ones, and has ready in the cache what these will look at. */
    private void prepare(FacetBits block, int from, int to) {
        sought = 0;
        for (int f = from; f < to; f++) {
            int i = 3 * (f - from);
            int[] bits = block.array(f);
            int at = block.at(f);
            if (f == 0) {
                twins[i] = fresh(bits, at);
                twins[i + 1] = fresh(bits, at + 3);
                twins[i + 2] = fresh(bits, at + 6);
            } else {
                int[] before = block.array(f - 1);
                int first = block.at(f - 1);
                twins[i] = twin(bits, at, before, first);
                twins[i + 1] = twin(bits, at + 3, before, first);
                twins[i + 2] = twin(bits, at + 6, before, first);
            }
        }
        unusedSum += fetch(slots, hashes, sought, shift);
    }

    /** Which corner of the facet before is this one, from 1; 0 for none. */
    private int twin(int[] bits, int at, int[] before, int first) {
        int x = bits[at];
        if (before[first + 6] == x && rest(bits, at, before, first + 6)) {
            return 3;
        }
        if (before[first] == x && rest(bits, at, before, first)) {
            return 1;
        }
        if (before[first + 3] == x && rest(bits, at, before, first + 3)) {
            return 2;
        }
        return fresh(bits, at);
    }

    /** Whether y and z are the same, too; apart, to be short enough to be compiled into its caller. */
    private static boolean rest(int[] bits, int at, int[] before, int first) {
        return before[first + 1] == bits[at + 1] && before[first + 2] == bits[at + 2];
    }

    private int fresh(int[] bits, int at) {
        hashes[sought++] = hash(positive(bits[at]), positive(bits[at + 1]), positive(bits[at + 2]));
        return 0;
    }

    /**
     * Looks at some slots one after another. The sum means nothing: these loads do not wait for one another, as those of
     * the search do, and a short loop has many of them under way. Saves two fifths of the time (measured).
     */
    private static int fetch(int[] slots, int[] hashes, int count, int shift) {
        int sum = 0;
        for (int i = 0; i < count; i++) {
            sum += slots[hashes[i] >>> shift];
        }
        return sum;
    }

    private boolean addAll(FacetBits block, int from, int to) {
        sought = 0;
        for (int f = from; f < to; f++) {
            int[] bits = block.array(f);
            int at = block.at(f);
            int i = 3 * (f - from);
            int a = twins[i] == 0 ? search(bits, at) : last(twins[i]);
            int b = twins[i + 1] == 0 ? search(bits, at + 3) : last(twins[i + 1]);
            int c = twins[i + 2] == 0 ? search(bits, at + 6) : last(twins[i + 2]);
            if ((a | b | c) < 0) {
                return false;
            }
            lastA = a;
            lastB = b;
            lastC = c;
            keep(a, b, c);
        }
        return true;
    }

    private int last(int twin) {
        return twin == 3 ? lastC : twin == 1 ? lastA : lastB;
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

    private static int positive(int bits) {
        return bits == NEGATIVE_ZERO ? 0 : bits;
    }

    /** Number of the vertex with these bits; -1 where one of them is no usable number. */
    private int search(int[] bits, int at) {
        int x = positive(bits[at]);
        int y = positive(bits[at + 1]);
        int z = positive(bits[at + 2]);
        int hash = hashes[sought++];
        int mask = slots.length - 1;
        int slot = hash >>> shift;
        int entry;
        while ((entry = slots[slot]) != 0) {
            if (((entry ^ tag(hash)) & ~NUMBER) == 0) {
                int v = 3 * (entry & NUMBER) - 3;
                if (xyz[v] == x && xyz[v + 1] == y && xyz[v + 2] == z) {
                    return (entry & NUMBER) - 1;
                }
            }
            slot = slot + 1 & mask;
        }
        return insert(x, y, z, hash, slot);
    }

    /** The bits of a hash that a slot keeps; the place of the slot tells the upper ones. */
    private static int tag(int hash) {
        return hash << 20 & ~NUMBER;
    }

    private int insert(int x, int y, int z, int hash, int slot) {
        if ((x & MAGNITUDE) > LARGEST_BITS || (y & MAGNITUDE) > LARGEST_BITS || (z & MAGNITUDE) > LARGEST_BITS) {
            return -1;
        }
        int at = 3 * vertices;
        if (at + 3 > xyz.length) {
            xyz = Arrays.copyOf(xyz, xyz.length + xyz.length / 2 + 3);
        }
        xyz[at] = x;
        xyz[at + 1] = y;
        xyz[at + 2] = z;
        slots[slot] = ++vertices | tag(hash);
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
            int hash = hash(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
            int slot = hash >>> shift;
            while (slots[slot] != 0) {
                slot = slot + 1 & mask;
            }
            slots[slot] = v + 1 | tag(hash);
        }
    }

    /**
     * Mixed one coordinate after another: in a plain weighted sum the sign bits of two coordinates cancel, and mirrored
     * vertices, which every symmetrical body has, fall together.
     */
    private static int hash(int x, int y, int z) {
        int h = x * 0x9e3779b1;
        h = ((h ^ h >>> 15) + y) * 0x85ebca77;
        return ((h ^ h >>> 13) + z) * 0xc2b2ae3d;
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

    /** Bits of the coordinates, with spare room behind; the array may be another one after more facets. */
    int[] roomyBits() {
        return xyz;
    }

    /** Vertex indices, three a facet; after the last facet, since the spare room is cut off. */
    int[] corners() {
        if (used < corners.length) {
            corners = Arrays.copyOf(corners, used);
        }
        return corners;
    }

    /** Coordinates of the vertices, m. */
    double[] coordinates(double metresPerUnit) {
        double[] metres = new double[3 * vertices];
        for (int i = 0; i < metres.length; i++) {
            metres[i] = Float.intBitsToFloat(xyz[i]) * metresPerUnit;
        }
        return metres;
    }
}
