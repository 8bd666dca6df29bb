package org.fizzhull.mesh.distance;

import java.util.Arrays;
import org.fizzhull.mesh.TriangleMesh;

/**
 * The facets of a mesh in the order of Morton: the box around the mesh is halved again and again, along x, y and z in
 * turn, and facets follow one another by the halves that their middles lie in. One sort, O(n log n).
 */
final class FacetOrder {
    /** Bits for each axis, and for the number of a facet: 39 and 24 in all. */
    private static final int BITS = 13;

    private static final int NUMBER = 24;

    /** Halves along x, y, z from the highest bit, then the number of the facet; rising. */
    private final long[] key;

    /** All facets of a mesh. */
    FacetOrder(TriangleMesh mesh) {
        int n = mesh.facetCount();
        if (n >= 1 << NUMBER) {
            throw new IllegalArgumentException(n + " facets are too many");
        }
        double[] box = mesh.box();
        double[] scale = new double[3];
        for (int k = 0; k < 3; k++) {
            // a middle is kept as the sum of three corners
            scale[k] = ((1 << BITS) - 1) / Math.max(3 * (box[k + 3] - box[k]), Double.MIN_NORMAL);
        }
        key = new long[n];
        for (int f = 0; f < n; f++) {
            int a = mesh.corner(f, 0);
            int b = mesh.corner(f, 1);
            int c = mesh.corner(f, 2);
            long code = 0;
            for (int k = 0; k < 3; k++) {
                double middle = mesh.at(a, k) + mesh.at(b, k) + mesh.at(c, k) - 3 * box[k];
                code |= spread((long) (middle * scale[k])) << (2 - k);
            }
            key[f] = code << NUMBER | f;
        }
        Arrays.sort(key);
    }

    /** Leaves two free bits between the bits of a number. */
    private static long spread(long number) {
        long x = (number | number << 16) & 0xff0000ffL;
        x = (x | x << 8) & 0xf00f00f00fL;
        x = (x | x << 4) & 0xc30c30c30c3L;
        return (x | x << 2) & 0x249249249249L;
    }

    /** Number in the mesh of the facet at a place of the order. */
    int facet(int place) {
        return (int) key[place] & (1 << NUMBER) - 1;
    }

    /** Where the facets from one place up to another go over into the other half; the middle where they share all halves. */
    int halve(int from, int to) {
        long bit = Long.highestOneBit((key[from] ^ key[to - 1]) >>> NUMBER) << NUMBER;
        if (bit == 0) {
            return (from + to) >>> 1;
        }
        int low = from;
        int high = to - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if ((key[middle] & bit) == 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
