package org.fizzhull.mesh;

import java.util.Arrays;

/**
 * Gathers facets and gives corners with the same three float32 numbers one vertex index. Equality is of bits, with -0
 * counted as 0: writers repeat a vertex bit for bit, and any tolerance here can join edges that belong apart
 * (docs/physics/hydrostatics.md, 6).
 *
 * <p>Most files list neighbours after one another, so a corner is mostly one of the facet before, and else often the
 * vertex that follows the one last met again. Others are sought in a table: open addressing over int arrays, a slot holding the vertex number and eight bits of its hash, so that a wrong
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

    /** Bits of the coordinates, three a vertex, without a -0. */
    private int[] xyz;

    private int vertices;
    private int[] slots;
    private int[] corners;
    private int used;
    private int added;
    private int collapsed;

    /** Corners of the facet before, as bits and as vertices; at first the bits of a NaN, which is no corner's. */
    private final int[] before = new int[9];

    private int lastA = -1;
    private int lastB = -1;
    private int lastC = -1;

    /** The vertex that comes after the one last met again: rows of facets meet the vertices of the row before in order. */
    private int guess;

    /** Vertices of the corners that are none of the facet before, one after another; -1 where the guess was wrong. */
    private final int[] known = new int[3 * Chunks.MOST];

    private int fresh;

    /** Hashes of those that have to be sought. */
    private final int[] hashes = new int[3 * Chunks.MOST];

    private int sought;

    /** What the fetching summed up: kept so that no compiler leaves it out, and read by nobody. */
    private int unusedSum;

    /** @param facetsExpected facets that are surely there; sizes the first arrays */
    VertexWeld(int facetsExpected) {
        int expected = facetsExpected / 2 + 16;
        xyz = new int[3 * expected];
        corners = new int[3 * Math.max(Chunks.MOST, facetsExpected)];
        Arrays.fill(before, -1);
        rehash(expected);
    }

    /**
     * Adds the first facets of a block; one two of whose corners fall together is left out and counted. The block is told
     * how each facet hangs on the one before.
     *
     * @return false where a coordinate is NaN, infinite or larger than {@link #LARGEST}: then {@link #added} is the index
     *     of that facet
     */
    boolean add(FacetBits block, int facets) {
        int began = added;
        int f = 0;
        while (f < facets) {
            int to = Chunks.end(began + f, began + facets) - began;
            prepare(block, f, to);
            if (!addAll(block, f, to)) {
                return false;
            }
            f = to;
        }
        return true;
    }

    /** Tells the corners of the facet before from fresh ones, and has ready in the cache what these will look at. */
    private void prepare(FacetBits block, int from, int to) {
        sought = 0;
        fresh = 0;
        int ax = before[0];
        int ay = before[1];
        int az = before[2];
        int bx = before[3];
        int by = before[4];
        int bz = before[5];
        int cx = before[6];
        int cy = before[7];
        int cz = before[8];
        for (int f = from; f < to; f++) {
            int[] bits = block.array(f);
            int at = block.at(f);
            int x = bits[at];
            int y = bits[at + 1];
            int z = bits[at + 2];
            int a = x == cx && y == cy && z == cz
                    ? 3
                    : x == ax && y == ay && z == az ? 1 : x == bx && y == by && z == bz ? 2 : fresh(x, y, z);
            int x1 = bits[at + 3];
            int y1 = bits[at + 4];
            int z1 = bits[at + 5];
            int b = x1 == cx && y1 == cy && z1 == cz
                    ? 3
                    : x1 == ax && y1 == ay && z1 == az ? 1 : x1 == bx && y1 == by && z1 == bz ? 2 : fresh(x1, y1, z1);
            int x2 = bits[at + 6];
            int y2 = bits[at + 7];
            int z2 = bits[at + 8];
            int c = x2 == cx && y2 == cy && z2 == cz
                    ? 3
                    : x2 == ax && y2 == ay && z2 == az ? 1 : x2 == bx && y2 == by && z2 == bz ? 2 : fresh(x2, y2, z2);
            block.hinge(f, a, b, c);
            ax = x;
            ay = y;
            az = z;
            bx = x1;
            by = y1;
            bz = z1;
            cx = x2;
            cy = y2;
            cz = z2;
        }
        System.arraycopy(block.array(to - 1), block.at(to - 1), before, 0, 9);
        unusedSum += fetch(slots, hashes, sought);
    }

    /** Takes a corner that is none of the facet before; returns 0, which says so. */
    private int fresh(int x, int y, int z) {
        int v = guess;
        if (v < vertices && xyz[3 * v] == x && xyz[3 * v + 1] == y && xyz[3 * v + 2] == z) {
            known[fresh++] = v;
            guess = v + 1;
        } else {
            known[fresh++] = -1;
            hashes[sought++] = hash(positive(x), positive(y), positive(z));
        }
        return 0;
    }

    /**
     * Looks at some slots one after another. The sum means nothing: these loads do not wait for one another, as those of
     * the search do, and a short loop has many of them under way. Saves two fifths of the time (measured).
     */
    private static int fetch(int[] slots, int[] hashes, int count) {
        int sum = 0;
        for (int i = 0; i < count; i++) {
            sum += slots[place(hashes[i], slots.length)];
        }
        return sum;
    }

    private boolean addAll(FacetBits block, int from, int to) {
        sought = 0;
        fresh = 0;
        makeRoom(3 * (to - from));
        for (int f = from; f < to; f++) {
            int[] bits = block.array(f);
            int at = block.at(f);
            int hinge = block.hinge(f);
            int a = (hinge & 3) == 0 ? number(bits, at) : last(hinge & 3);
            int b = (hinge & 12) == 0 ? number(bits, at + 3) : last(hinge >> 2 & 3);
            int c = (hinge & 48) == 0 ? number(bits, at + 6) : last(hinge >> 4);
            if ((a | b | c) < 0) {
                return false;
            }
            lastA = a;
            lastB = b;
            lastC = c;
            added++;
            if (a == b || b == c || c == a) {
                collapsed++;
            } else {
                int[] into = corners;
                int h = used;
                into[h] = a;
                into[h + 1] = b;
                into[h + 2] = c;
                used = h + 3;
            }
        }
        return true;
    }

    private void makeRoom(int more) {
        if (used + more > corners.length) {
            corners = Arrays.copyOf(corners, Math.max(used + more, corners.length + corners.length / 2));
        }
    }

    private int last(int twin) {
        return twin == 3 ? lastC : twin == 1 ? lastA : lastB;
    }

    private static int positive(int bits) {
        return bits == NEGATIVE_ZERO ? 0 : bits;
    }

    /** Number of the vertex of the next fresh corner; -1 where one of its numbers is no usable one. */
    private int number(int[] bits, int at) {
        int v = known[fresh++];
        return v >= 0 ? v : search(bits, at);
    }

    private int search(int[] bits, int at) {
        int x = positive(bits[at]);
        int y = positive(bits[at + 1]);
        int z = positive(bits[at + 2]);
        int hash = hashes[sought++];
        int slot = place(hash, slots.length);
        int entry;
        while ((entry = slots[slot]) != 0) {
            if (((entry ^ tag(hash)) & ~NUMBER) == 0) {
                int v = 3 * (entry & NUMBER) - 3;
                if (xyz[v] == x && xyz[v + 1] == y && xyz[v + 2] == z) {
                    guess = entry & NUMBER;
                    return guess - 1;
                }
            }
            slot = slot + 1 == slots.length ? 0 : slot + 1;
        }
        return insert(x, y, z, hash, slot);
    }

    /** Where a hash is sought first: its part of 2^32, of a table of any size. */
    private static int place(int hash, int slots) {
        return (int) (((hash & 0xffffffffL) * slots) >>> 32);
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
        slots = new int[atLeast / 3 * 5 + 32];
        for (int v = 0; v < vertices; v++) {
            int hash = hash(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
            int slot = place(hash, slots.length);
            while (slots[slot] != 0) {
                slot = slot + 1 == slots.length ? 0 : slot + 1;
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

    /** The vertices so far. */
    Vertices places(double metresPerUnit) {
        return Vertices.of(xyz, vertices, metresPerUnit);
    }

    /** Coordinates of the vertices, m. */
    double[] coordinates(double metresPerUnit) {
        return places(metresPerUnit).metres();
    }
}
