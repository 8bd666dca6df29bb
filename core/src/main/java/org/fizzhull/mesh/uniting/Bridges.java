package org.fizzhull.mesh.uniting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes one loop of a loop and the holes in it: each hole is joined by a way there and back from its rightmost corner to
 * a corner that sees it. (Held and Eberly describe the search; from memory.)
 */
final class Bridges {
    private Bridges() {}

    /** The loop with its holes, the rightmost hole first; holes run clockwise. */
    static int[] joined(Plane plane, int[] loop, List<int[]> holes) {
        int[] joined = loop;
        List<int[]> order = new ArrayList<>(holes);
        order.sort(Comparator.comparingDouble(hole -> -plane.u(hole[rightmost(plane, hole)])));
        for (int[] hole : order) {
            int start = rightmost(plane, hole);
            int place = seen(plane, joined, hole[start]);
            int[] longer = new int[joined.length + hole.length + 2];
            System.arraycopy(joined, 0, longer, 0, place + 1);
            for (int i = 0; i <= hole.length; i++) {
                longer[place + 1 + i] = hole[(start + i) % hole.length];
            }
            System.arraycopy(joined, place, longer, place + hole.length + 2, joined.length - place);
            joined = longer;
        }
        return joined;
    }

    private static int rightmost(Plane plane, int[] loop) {
        int best = 0;
        for (int i = 1; i < loop.length; i++) {
            best = plane.u(loop[i]) > plane.u(loop[best]) ? i : best;
        }
        return best;
    }

    /** Place of a corner of a loop that nothing stands between and a point of a hole. */
    private static int seen(Plane plane, int[] loop, int point) {
        double u = plane.u(point);
        double v = plane.v(point);
        double nearest = Double.POSITIVE_INFINITY;
        int place = 0;
        for (int i = 0; i < loop.length; i++) {
            int j = i + 1 < loop.length ? i + 1 : 0;
            int a = loop[i];
            int b = loop[j];
            // sides to the right of the point that have the inside on their left run up
            if (plane.v(a) <= v && plane.v(b) > v) {
                double share = (v - plane.v(a)) / (plane.v(b) - plane.v(a));
                double hit = plane.u(a) + share * (plane.u(b) - plane.u(a));
                if (hit >= u && hit < nearest) {
                    nearest = hit;
                    place = plane.u(a) > plane.u(b) ? i : j;
                }
            }
        }
        return unhidden(plane, loop, point, place, nearest);
    }

    /** Of the corners in the triangle of the point, the place to its right and the corner there, the one nearest to level. */
    private static int unhidden(Plane plane, int[] loop, int point, int place, double hit) {
        double u = plane.u(point);
        double v = plane.v(point);
        double cu = plane.u(loop[place]) - u;
        double cv = plane.v(loop[place]) - v;
        double hu = hit - u;
        int best = place;
        double steepest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < loop.length; i++) {
            double du = plane.u(loop[i]) - u;
            double dv = plane.v(loop[i]) - v;
            // barycentric shares of the point in the triangle of (0, 0), (hu, 0) and (cu, cv)
            double t = dv / cv;
            double s = (du - t * cu) / hu;
            if (cv != 0 && t >= 0 && s >= 0 && s + t <= 1 && du > 0 && reflex(plane, loop, i)) {
                double slope = Math.abs(dv) / du;
                if (slope < steepest || (slope == steepest && nearer(plane, point, loop[i], loop[best]))) {
                    steepest = slope;
                    best = i;
                }
            }
        }
        return best;
    }

    private static boolean nearer(Plane plane, int point, int a, int b) {
        return plane.squared(point, a) < plane.squared(point, b);
    }

    private static boolean reflex(Plane plane, int[] loop, int i) {
        int n = loop.length;
        return plane.doubled(loop[(i + n - 1) % n], loop[i], loop[(i + 1) % n]) <= 0;
    }
}
