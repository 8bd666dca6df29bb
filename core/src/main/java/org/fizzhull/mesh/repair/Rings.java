package org.fizzhull.mesh.repair;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Rings that directed pieces of a boundary make up, each from a corner to another. A ring passes a corner once: where a way
 * comes back to a corner, what it went since is a ring of its own. O(pieces).
 */
final class Rings {
    /** Where the pieces that begin at a corner lead, in the order in which they were added. */
    private final Map<Integer, Deque<Integer>> next = new LinkedHashMap<>();

    /** Adds a piece from one corner to another. */
    void add(int from, int to) {
        next.computeIfAbsent(from, v -> new ArrayDeque<>()).add(to);
    }

    /** The rings, which use the pieces up; none where some pieces belong to no ring. */
    List<int[]> closed() {
        List<int[]> rings = new ArrayList<>();
        for (int begin : next.keySet()) {
            // the corners on the way, each with its place
            Map<Integer, Integer> place = new LinkedHashMap<>();
            List<Integer> path = new ArrayList<>();
            int at = begin;
            while (true) {
                Integer since = place.get(at);
                if (since != null) {
                    List<Integer> ring = path.subList(since, path.size());
                    rings.add(ring.stream().mapToInt(v -> v).toArray());
                    place.keySet().removeAll(ring);
                    ring.clear();
                }
                Deque<Integer> ways = next.get(at);
                if (ways == null || ways.isEmpty()) {
                    break;
                }
                place.put(at, path.size());
                path.add(at);
                at = ways.remove();
            }
            if (!path.isEmpty()) {
                return List.of();
            }
        }
        return rings;
    }
}
