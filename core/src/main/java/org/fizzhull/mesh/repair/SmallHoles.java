package org.fizzhull.mesh.repair;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Closes small holes. The sides that no other runs against make up rings, since as many of them end at a corner as begin
 * there, also where holes meet in a corner and where three facets share an edge. Each ring is closed by a fan around the
 * middle of its corners, which lies nearer to the surface than a fan from a corner. A hole is small when its rim is no
 * longer than a third of the diagonal of the box, and all together cover no more than a hundredth of the surface: what is
 * larger was meant, or is lost. O(sides).
 */
final class SmallHoles {
    /** Longest rim, as a share of the diagonal of the box. */
    private static final double RIM = 0.33;

    /** Largest area of all fans, as a share of the surface. */
    private static final double COVER = 0.01;

    private final double[] xyz;

    /** Where the sides of the fans that begin at a corner lead, the other way round than those of the facets. */
    private final Map<Integer, Deque<Integer>> next = new HashMap<>();

    private int holes;
    private double longest;
    private double area;
    private double[] newXyz;
    private int[] newCorners;

    /** @param sides what no other side runs against, as three times the facet plus the corner */
    SmallHoles(double[] xyz, int[] corners, int[] sides, double size) {
        this.xyz = xyz;
        newXyz = xyz;
        newCorners = corners;
        for (int h : sides) {
            next.computeIfAbsent(corners[FacetEdges.next(h)], v -> new ArrayDeque<>())
                    .add(corners[h]);
        }
        boolean rings = true;
        for (int h : sides) {
            rings = rings && rings(corners[FacetEdges.next(h)]);
        }
        double surface = 0;
        for (int f = 0; f < corners.length; f += 3) {
            surface += area(xyz, corners[f], corners[f + 1], corners[f + 2]);
        }
        if (!rings || longest > RIM * size || area > COVER * surface) {
            holes = 0;
        }
    }

    /** Follows the sides from a corner and closes each ring as it is met; returns whether all of them end there. */
    private boolean rings(int begin) {
        int[] path = new int[16];
        int used = 0;
        Set<Integer> on = new HashSet<>();
        int v = begin;
        while (true) {
            if (on.contains(v)) {
                int from = used - 1;
                while (path[from] != v) {
                    from--;
                }
                close(Arrays.copyOfRange(path, from, used));
                while (used > from) {
                    on.remove(path[--used]);
                }
            }
            Deque<Integer> ways = next.get(v);
            if (ways == null || ways.isEmpty()) {
                return used == 0;
            }
            path = used == path.length ? Arrays.copyOf(path, 2 * used) : path;
            path[used++] = v;
            on.add(v);
            v = ways.remove();
        }
    }

    /** Closes a ring of corners by a fan. */
    private void close(int[] ring) {
        double rim = 0;
        int centre = newXyz.length / 3;
        newXyz = Arrays.copyOf(newXyz, newXyz.length + 3);
        for (int v : ring) {
            for (int k = 0; k < 3; k++) {
                newXyz[3 * centre + k] += xyz[3 * v + k] / ring.length;
            }
        }
        int used = newCorners.length;
        newCorners = Arrays.copyOf(newCorners, used + 3 * ring.length);
        for (int i = 0; i < ring.length; i++) {
            int to = ring[i + 1 < ring.length ? i + 1 : 0];
            newCorners[used++] = ring[i];
            newCorners[used++] = to;
            newCorners[used++] = centre;
            rim += MeshMending.distance(xyz, ring[i], to);
            area += area(newXyz, ring[i], to, centre);
        }
        holes++;
        longest = Math.max(longest, rim);
    }

    private static double area(double[] xyz, int a, int b, int c) {
        return MeshMending.distance(xyz, a, b) * MeshMending.offLine(xyz, a, b, c) / 2;
    }

    /** Number of holes that were closed; 0 where one is too large or its rim is no ring. */
    int closed() {
        return holes;
    }

    /** The vertices, middles of holes included, m. */
    double[] xyz() {
        return newXyz;
    }

    /** The facets, fans included. */
    int[] corners() {
        return newCorners;
    }

    /** Says what was closed. */
    void tell(List<Notice> notices) {
        notices.add(new Notice(
                "mesh-hole",
                (holes == 1 ? "1 hole was" : holes + " holes were") + " closed, with a rim of at most "
                        + PlaceWords.millimetres(longest) + " mm and an area of "
                        + PlaceWords.squareMillimetres(area) + " mm2 in all."));
    }
}
