package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Facets that lie on the same three vertices as another one, the same way round or back to back. */
final class FacetTwins {
    /** Three vertices, the lowest first, in the order of a facet. */
    private record Corners(int a, int b, int c) {
        static Corners of(int[] corners, int f) {
            int a = corners[3 * f];
            int b = corners[3 * f + 1];
            int c = corners[3 * f + 2];
            return a < b && a < c ? new Corners(a, b, c) : b < c ? new Corners(b, c, a) : new Corners(c, a, b);
        }

        Corners turned() {
            return new Corners(a, c, b);
        }
    }

    private final int[] corners;
    private final boolean[] same;

    /** For a facet back to back with another: 1 the earlier one, 2 the later one. */
    private final byte[] opposite;

    private int sameCount;
    private int oppositeCount;

    private FacetTwins(int[] corners) {
        this.corners = corners;
        same = new boolean[corners.length / 3];
        opposite = new byte[same.length];
    }

    /** Looks among the facets that some sides (three times the facet plus the corner) belong to. */
    static FacetTwins among(int[] corners, int[] sides) {
        FacetTwins twins = new FacetTwins(corners);
        Map<Corners, Integer> known = new HashMap<>();
        int[] facets = Arrays.stream(sides).map(h -> h / 3).sorted().distinct().toArray();
        for (int f : facets) {
            Corners own = Corners.of(corners, f);
            if (known.putIfAbsent(own, f) != null) {
                twins.same[f] = true;
                twins.sameCount++;
                continue;
            }
            Integer back = known.get(own.turned());
            if (back != null) {
                twins.opposite[back] = 1;
                twins.opposite[f] = 2;
                twins.oppositeCount++;
            }
        }
        return twins;
    }

    /** Number of facets that repeat another the same way round. */
    int same() {
        return sameCount;
    }

    /** Number of pairs of facets back to back. */
    int opposite() {
        return oppositeCount;
    }

    /** The facets without repetitions. */
    int[] withoutSame() {
        return MeshMending.without(corners, same);
    }

    /** The facets without both of each pair back to back, or only without the later one. */
    int[] withoutOpposite(boolean both) {
        boolean[] drop = new boolean[opposite.length];
        for (int f = 0; f < drop.length; f++) {
            drop[f] = opposite[f] == 2 || (opposite[f] == 1 && both);
        }
        return MeshMending.without(corners, drop);
    }
}
