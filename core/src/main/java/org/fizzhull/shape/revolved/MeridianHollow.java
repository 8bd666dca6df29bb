package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.jspecify.annotations.Nullable;

/**
 * The hollow of a body of revolution whose outline runs from the axis below to the axis on top: what would fill with
 * water up to its highest point, which is its rim, since no water can cross the outline below that.
 * <ol>
 *   <li>The edges are put in order from the axis to the axis; an outline that does not run so has no hollow.
 *   <li>The rim is the end of the first edge that reaches the full height. What follows it is the inside; where the
 *       outline ends at full height too, there is none.
 *   <li>The hull closed by the rim plane is what the outline sweeps up to the rim; the air is its volume less the
 *       material.
 * </ol>
 *
 * <p>Exact for the edges of the outline. Only a hollow around the axis is found: not the moat around a peak on the
 * axis, nor the gutter of a ring. Immutable. Used by {@link RevolvedShape}.
 *
 * @param hollow the hollow, its closed hull and its rim
 * @param inside for each edge of the meridian, whether it bounds the hollow
 */
record MeridianHollow(Hollow hollow, boolean[] inside) {
    /** Heights and radii closer than this share of the body are the same. */
    private static final double SAME = 1e-9;

    /** The hollow of a body of a volume, m3; null where there is none. */
    static @Nullable MeridianHollow of(Meridian body, double volume) {
        double same = SAME * Math.max(body.height(), body.widest());
        int[] way = way(body, same);
        if (way.length == 0) {
            return null;
        }
        // from the bottom of the axis up the outside to the first edge that ends at full height
        int rim = 0;
        while (body.z1(way[rim]) < body.height() - same) {
            rim++;
        }
        // an outline whose end on the axis is as high as the rim has no hollow
        int last = way[way.length - 1];
        if (body.z1(last) >= body.height() - same) {
            return null;
        }
        // everything after the rim looks into the hollow
        boolean[] inside = new boolean[body.count()];
        for (int i = rim + 1; i < way.length; i++) {
            inside[way[i]] = true;
        }
        // the outside up to the rim: its level edges are faces that no piece names
        Profile2D.Builder closed = Profile2D.builder();
        for (int i = 0; i <= rim; i++) {
            int e = way[i];
            if (body.z1(e) > body.z0(e)) {
                closed.outer().line(body.z0(e), body.r0(e), body.z1(e), body.r1(e));
            } else if (body.z1(e) < body.z0(e)) {
                closed.inner().line(body.z1(e), body.r1(e), body.z0(e), body.r0(e));
            }
        }
        RevolvedHull hull = new RevolvedHull(closed.build());
        double air = hull.volume() - volume;
        Hollow hollow = Hollow.round(hull, body.height(), body.r1(way[rim]), air, wall(body, way, rim));
        return new MeridianHollow(hollow, inside);
    }

    /** The edges in the order in which they follow one another from the axis to the axis; none where they do not. */
    private static int[] way(Meridian body, double same) {
        int[] way = new int[body.count()];
        boolean[] used = new boolean[body.count()];
        double r = 0;
        double z = Double.NaN;
        for (int i = 0; i < way.length; i++) {
            int next = -1;
            for (int e = 0; e < way.length && next < 0; e++) {
                // starts where the last edge ended; the first edge starts anywhere on the axis
                boolean follows =
                        body.r0(e) - r <= same && r - body.r0(e) <= same && !(Math.abs(body.z0(e) - z) > same);
                next = follows && !used[e] ? e : next;
            }
            if (next < 0) {
                return new int[0];
            }
            used[next] = true;
            way[i] = next;
            r = body.r1(next);
            z = body.z1(next);
        }
        return r <= same ? way : new int[0];
    }

    /**
     * The thinnest wall between the lower half of the hollow and the outside, m. Higher up a rim may taper to an edge,
     * which stands out of the water and stays. The least distance of two straight edges that do not cross lies at an
     * end of one of them, so ends are checked against edges, both ways.
     */
    private static double wall(Meridian body, int[] way, int rim) {
        double floor = Double.POSITIVE_INFINITY;
        for (int i = rim + 1; i < way.length; i++) {
            floor = Math.min(floor, Math.min(body.z0(way[i]), body.z1(way[i])));
        }
        // half way between the lowest point of the hollow and the rim
        double middle = (floor + body.height()) / 2;
        double least = Double.POSITIVE_INFINITY;
        for (int i = rim + 1; i < way.length; i++) {
            int in = way[i];
            double rise = body.z1(in) - body.z0(in);
            // the share of the edge that lies in the lower half
            double cross = rise == 0 ? Double.NaN : (middle - body.z0(in)) / rise;
            double from = body.z0(in) <= middle ? 0 : cross;
            double to = body.z1(in) <= middle ? 1 : cross;
            if (!(from < to && from < 1 && to > 0)) {
                continue;
            }
            double r0 = body.r0(in) + from * (body.r1(in) - body.r0(in));
            double z0 = body.z0(in) + from * rise;
            double r1 = body.r0(in) + to * (body.r1(in) - body.r0(in));
            double z1 = body.z0(in) + to * rise;
            for (int k = 0; k <= rim; k++) {
                int out = way[k];
                least = Math.min(least, apart(body, out, r0, z0));
                least = Math.min(least, apart(body, out, r1, z1));
                least = Math.min(least, apart(r0, z0, r1, z1, body.r0(out), body.z0(out)));
                least = Math.min(least, apart(r0, z0, r1, z1, body.r1(out), body.z1(out)));
            }
        }
        return least;
    }

    /** Distance of a point (r, z), m, from an edge of the meridian, m. */
    private static double apart(Meridian body, int edge, double r, double z) {
        return apart(body.r0(edge), body.z0(edge), body.r1(edge), body.z1(edge), r, z);
    }

    /** Distance of a point (r, z) from an edge, m. */
    private static double apart(double r0, double z0, double r1, double z1, double r, double z) {
        double dr = r1 - r0;
        double dz = z1 - z0;
        double square = dr * dr + dz * dz;
        double t = square > 0 ? ((r - r0) * dr + (z - z0) * dz) / square : 0;
        double on = Math.max(0, Math.min(1, t));
        return Math.hypot(r - r0 - on * dr, z - z0 - on * dz);
    }

    /** Volume of the hollow over that of the closed hull. */
    double share() {
        return hollow.volume() / hollow.closed().volume();
    }

    /** What is left of a body of a volume, m3, from the outside alone: rim and hollow stay dry and do not fizz. */
    DepthProfile outside(Meridian body, double volume) {
        return MeridianDepth.withWalls(body.shutting(inside), volume);
    }
}
