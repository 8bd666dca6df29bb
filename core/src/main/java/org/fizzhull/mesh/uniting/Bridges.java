package org.fizzhull.mesh.uniting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Makes one loop of a loop and the holes in it: each hole, the rightmost first, is joined by a way there and back from its
 * rightmost corner to the nearest corner that it sees. O(corners^2) for each hole at worst.
 */
final class Bridges {
    private Bridges() {}

    /** The loop with its holes; holes run clockwise. */
    static int[] joined(Plane plane, int[] loop, List<int[]> holes) {
        List<int[]> left = new ArrayList<>(holes);
        left.sort(Comparator.comparingDouble(hole -> -plane.u(hole[rightmost(plane, hole)])));
        int[] joined = loop;
        while (!left.isEmpty()) {
            int[] hole = left.get(0);
            int start = rightmost(plane, hole);
            int place = seen(plane, joined, left, hole[start]);
            left.remove(0);
            int[] before = joined;
            joined = IntStream.range(0, before.length + hole.length + 2)
                    .map(i -> i <= place
                            ? before[i]
                            : i <= place + 1 + hole.length
                                    ? hole[(start + i - place - 1) % hole.length]
                                    : before[i - hole.length - 2])
                    .toArray();
        }
        return joined;
    }

    private static int rightmost(Plane plane, int[] loop) {
        return IntStream.range(0, loop.length)
                .reduce((best, i) -> plane.u(loop[i]) > plane.u(loop[best]) ? i : best)
                .orElseThrow();
    }

    /** Place of the nearest corner of a loop that nothing stands between and a point; any where rounding hides all. */
    private static int seen(Plane plane, int[] loop, List<int[]> holes, int point) {
        return IntStream.range(0, loop.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> plane.squared(point, loop[i])))
                .filter(i -> within(plane, loop, i, point)
                        && clear(plane, loop, point, loop[i])
                        && holes.stream().allMatch(hole -> clear(plane, hole, point, loop[i])))
                .findFirst()
                .orElse(0);
    }

    /** Whether the way to a point sets out from a corner into what the loop bounds (O'Rourke's cone; from memory). */
    private static boolean within(Plane plane, int[] loop, int i, int point) {
        int before = loop[(i + loop.length - 1) % loop.length];
        int corner = loop[i];
        int after = loop[(i + 1) % loop.length];
        boolean leftOfFirst = plane.doubled(before, corner, point) > 0;
        boolean leftOfSecond = plane.doubled(corner, after, point) > 0;
        return plane.doubled(before, corner, after) > 0 ? leftOfFirst && leftOfSecond : leftOfFirst || leftOfSecond;
    }

    /** Whether no side of a loop crosses or touches the way between two points, of which either may be a corner of it. */
    private static boolean clear(Plane plane, int[] loop, int p, int q) {
        for (int i = 0; i < loop.length; i++) {
            int a = loop[i];
            int b = loop[(i + 1) % loop.length];
            boolean meets = a == p || a == q || b == p || b == q;
            if (!meets
                    && plane.doubled(p, q, a) * plane.doubled(p, q, b) <= 0
                    && plane.doubled(a, b, p) * plane.doubled(a, b, q) <= 0) {
                return false;
            }
        }
        return true;
    }
}
