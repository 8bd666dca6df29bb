package org.fizzhull.mesh.distance;

import org.fizzhull.geometry.Vec3;

/**
 * The deepest point of a body, from a point near it: steps in directions spread over the sphere, halved when none leads
 * deeper. Inside no step is longer than the distance to the surface, so that none leaves the body. Where facets are shut the
 * deepest point may lie on one of them, as in the middle of the face that a piece rests on: such steps come ever nearer to the
 * face and never there, so the search goes on over the shut facets, each step drawn to the nearest point of them. Every
 * point that is tried belongs to the body with its surface. Error: a few ten thousandths of the depth, those of {@link
 * NearestFacet} included.
 */
final class DeepestPoint {
    private static final int DIRECTIONS = 24;
    private static final double SHORTEST = 1e-4;

    private final NearestFacet open;
    private final NearestFacet any;

    /** Shut facets; at an infinite distance where there are none. */
    private final NearestFacet shut;

    /**
     * @param open facets that depth is measured from
     * @param any all facets
     * @param shut all facets but the open ones
     */
    DeepestPoint(NearestFacet open, NearestFacet any, NearestFacet shut) {
        this.open = open;
        this.any = any;
        this.shut = shut;
    }

    /** Depth that is reached from a point inside, m. */
    double from(Vec3 start) {
        Vec3 inside = climbed(start, false);
        double depth = depth(inside);
        if (shut.distance(inside.x(), inside.y(), inside.z()) == Double.POSITIVE_INFINITY) {
            return depth;
        }
        return Math.max(depth, depth(climbed(shut.foot(), true)));
    }

    /** The point from which no step leads deeper; {@code over} the shut facets, or inside. */
    private Vec3 climbed(Vec3 from, boolean over) {
        Vec3 at = from;
        double depth = depth(at);
        double step = Math.min(depth, longest(at, over)) / 2;
        double least = SHORTEST * depth;
        int turn = 0;
        while (step > least) {
            Vec3 best = at;
            double most = depth;
            for (int i = 0; i < DIRECTIONS; i++) {
                Vec3 there = at.plus(Vec3.spread(i, DIRECTIONS, turn).times(step));
                if (over) {
                    shut.distance(there.x(), there.y(), there.z());
                    there = shut.foot();
                }
                double found = depth(there);
                if (found > most) {
                    most = found;
                    best = there;
                }
            }
            turn += DIRECTIONS;
            step = most > depth ? Math.min(step * 1.5, longest(best, over) / 2) : step / 2;
            at = best;
            depth = most;
        }
        return at;
    }

    private double longest(Vec3 at, boolean over) {
        return over ? depth(at) : any.distance(at.x(), at.y(), at.z());
    }

    private double depth(Vec3 at) {
        return open.distance(at.x(), at.y(), at.z());
    }
}
