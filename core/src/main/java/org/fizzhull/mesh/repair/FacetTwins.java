package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Facets that have the same three vertices as another one, by number.
 *
 * @param same those that repeat an earlier one the same way round
 * @param earlier of each two that lie back to back (wound in opposite senses) the earlier one
 * @param later the other one of each
 */
record FacetTwins(Set<Integer> same, Set<Integer> earlier, Set<Integer> later) {
    /** The twins among the facets to which some sides belong ({@link EdgePairing} numbers them). */
    static FacetTwins among(int[] corners, int[] sides) {
        FacetTwins twins = new FacetTwins(new HashSet<>(), new HashSet<>(), new HashSet<>());
        Map<List<Integer>, Integer> known = new HashMap<>();
        for (int f : Arrays.stream(sides).map(h -> h / 3).sorted().distinct().toArray()) {
            List<Integer> own = Arrays.asList(corners[3 * f], corners[3 * f + 1], corners[3 * f + 2]);
            Collections.rotate(own, -own.indexOf(Collections.min(own)));
            Integer back = known.get(List.of(own.get(0), own.get(2), own.get(1)));
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
