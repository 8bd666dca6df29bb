package org.fizzhull.shape;

import org.jspecify.annotations.Nullable;

/**
 * The hollow of a body of revolution whose outline runs from the axis below to the axis on top: what would fill with
 * water up to its highest point, which is its rim, since no water can cross the outline below that. The hull closed by
 * the rim plane is what the outline sweeps up to the rim. Exact for the edges of the outline.
 *
 * <p>Only a hollow around the axis is found: not the moat around a peak on the axis, nor the gutter of a ring.
 */
final class MeridianHollow {
    /** Heights and radii closer than this share of the body are the same. */
    private static final double SAME = 1e-9;

    private final Hollow hollow;
    private final boolean[] inside;

    private MeridianHollow(Hollow hollow, boolean[] inside) {
        this.hollow = hollow;
        this.inside = inside;
    }

    /** The hollow of a body of a volume, m3; null where there is none. */
    static @Nullable MeridianHollow of(Meridian body, double volume) {
        double same = SAME * Math.max(body.height(), body.widest());
        int[] way = way(body, same);
        if (way.length == 0) {
            return null;
        }
        int rim = 0;
        while (body.z1(way[rim]) < body.height() - same) {
            rim++;
        }
        int last = way[way.length - 1];
        if (body.z1(last) >= body.height() - same) {
            return null;
        }
        boolean[] inside = new boolean[body.count()];
        for (int i = rim + 1; i < way.length; i++) {
            inside[way[i]] = true;
        }
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
        return new MeridianHollow(new Hollow(hull, body.height(), body.r1(way[rim]), air), inside);
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

    Hollow hollow() {
        return hollow;
    }

    /** Volume of the hollow over that of the closed hull. */
    double share() {
        return hollow.volume() / hollow.closed().volume();
    }

    /** What is left from the outside alone: rim and hollow stay dry. */
    DepthProfile outside(Meridian body, double volume) {
        return MeridianDepth.withWalls(body.shutting(inside), volume);
    }
}
