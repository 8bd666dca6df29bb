package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Facets that lie on the same three vertices as another one, by number.
 *
 * @param same those that repeat an earlier one the same way round
 * @param earlier of each two that lie back to back the earlier one
 * @param later the later one
 */
record FacetTwins(Set<Integer> same, Set<Integer> earlier, Set<Integer> later) {
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

    /** Looks among the facets that some sides (three times the facet plus the corner) belong to. */
    static FacetTwins among(int[] corners, int[] sides) {
        FacetTwins twins = new FacetTwins(new HashSet<>(), new HashSet<>(), new HashSet<>());
        Map<Corners, Integer> known = new HashMap<>();
        for (int f : Arrays.stream(sides).map(h -> h / 3).sorted().distinct().toArray()) {
            Corners own = Corners.of(corners, f);
            Integer back = known.get(own.turned());
            if (known.putIfAbsent(own, f) != null) {
                twins.same.add(f);
            } else if (back != null) {
                twins.earlier.add(back);
                twins.later.add(f);
            }
        }
        return twins;
    }
}
