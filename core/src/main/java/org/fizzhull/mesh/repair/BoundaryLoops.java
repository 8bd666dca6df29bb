package org.fizzhull.mesh.repair;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Boundary loops made up of directed edges. A loop passes a corner once: where a path comes back to a corner, the part
 * since then is a loop of its own. O(edges).
 */
final class BoundaryLoops {
    /** Ends of the edges that begin at a corner and are not used yet, in the order in which they were added. */
    private final Map<Integer, Deque<Integer>> next = new LinkedHashMap<>();

    /** Adds an edge from one corner to another. */
    void add(int from, int to) {
        next.computeIfAbsent(from, v -> new ArrayDeque<>()).add(to);
    }

    /** The loops; empty where some edges belong to no loop. Consumes the edges. */
    List<int[]> closed() {
        List<int[]> loops = new ArrayList<>();
        for (int begin : next.keySet()) {
            // the corners passed, each with its place on the path
            Map<Integer, Integer> place = new LinkedHashMap<>();
            List<Integer> path = new ArrayList<>();
            int at = begin;
            while (true) {
                Integer since = place.get(at);
                if (since != null) {
                    List<Integer> loop = path.subList(since, path.size());
                    loops.add(loop.stream().mapToInt(v -> v).toArray());
                    place.keySet().removeAll(loop);
                    loop.clear();
                }
                Deque<Integer> ends = next.get(at);
                if (ends == null || ends.isEmpty()) {
                    break;
                }
                place.put(at, path.size());
                path.add(at);
                at = ends.remove();
            }
            if (!path.isEmpty()) {
                return List.of();
            }
        }
        return loops;
    }
}
