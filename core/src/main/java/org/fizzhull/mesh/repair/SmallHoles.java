package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Closes small holes: rings of open edges, each by a fan around the middle of its corners, which lies nearer to the
 * surface than a fan from a corner. A hole is small when its rim is no longer than a third of the diagonal of the box,
 * and all together cover no more than a hundredth of the surface: what is larger was meant, or is lost.
 */
final class SmallHoles {
    /** Longest rim, as a share of the diagonal of the box. */
    private static final double RIM = 0.33;

    /** Largest area of all fans, as a share of the surface. */
    private static final double COVER = 0.01;

    private final double[] xyz;
    private final Map<Integer, Integer> next = new HashMap<>();
    private boolean branches;
    private int holes;
    private double longest;
    private double area;
    private double[] newXyz;
    private int[] newCorners;

    /** @param open the open edges, as three times the facet plus the corner */
    SmallHoles(double[] xyz, int[] corners, int[] open, double size) {
        this.xyz = xyz;
        newXyz = xyz;
        newCorners = corners;
        for (int h : open) {
            // the fan runs the edge the other way round
            branches |= next.put(corners[FacetEdges.next(h)], corners[h]) != null;
        }
        int[] begins =
                next.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
        for (int begin : begins) {
            if (!branches && next.containsKey(begin)) {
                ring(begin);
            }
        }
        double surface = 0;
        for (int f = 0; f < corners.length; f += 3) {
            surface += area(xyz, corners[f], corners[f + 1], corners[f + 2]);
        }
        if (branches || longest > RIM * size || area > COVER * surface) {
            holes = 0;
        }
    }

    private void ring(int begin) {
        int count = 0;
        double rim = 0;
        double[] middle = new double[3];
        int v = begin;
        do {
            Integer to = next.get(v);
            if (to == null || count > next.size()) {
                branches = true;
                return;
            }
            for (int k = 0; k < 3; k++) {
                middle[k] += xyz[3 * v + k];
            }
            rim += MeshMending.distance(xyz, v, to);
            count++;
            v = to;
        } while (v != begin);
        int centre = newXyz.length / 3;
        newXyz = Arrays.copyOf(newXyz, newXyz.length + 3);
        for (int k = 0; k < 3; k++) {
            newXyz[3 * centre + k] = middle[k] / count;
        }
        int used = newCorners.length;
        newCorners = Arrays.copyOf(newCorners, used + 3 * count);
        for (int i = 0; i < count; i++) {
            int to = Objects.requireNonNull(next.remove(v), "a ring of open edges is closed");
            newCorners[used++] = v;
            newCorners[used++] = to;
            newCorners[used++] = centre;
            area += area(newXyz, v, to, centre);
            v = to;
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
