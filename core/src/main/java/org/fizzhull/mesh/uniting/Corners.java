package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import org.fizzhull.geometry.Vec3;

/**
 * Corners of facets with two places each: where it is, and its perturbed place ({@link PerturbedShells}), by which it is
 * decided what crosses what. New corners are added where an edge passes through a facet.
 */
final class Corners {
    /** Coordinates x, y, z of one corner after another, m. */
    double[] place;

    /** The same of the grown bodies, m. */
    double[] grown;

    /** How far a grown corner lies from its place at most, m. */
    private final double growth;

    private int count;

    Corners(double[] place, double[] grown, double growth) {
        this.place = place;
        this.grown = grown;
        this.growth = growth;
        count = place.length / 3;
    }

    int count() {
        return count;
    }

    /**
     * Adds the corner at which the edge from p to q passes through the facet a b c; returns its number. Its place is where
     * the edge meets the facet as they are, unless the two hardly cross there: then the grown ones tell.
     */
    int add(int p, int q, int a, int b, int c) {
        if (3 * count == place.length) {
            place = Arrays.copyOf(place, 2 * place.length);
            grown = Arrays.copyOf(grown, 2 * grown.length);
        }
        double share = share(grown, p, q, a, b, c);
        double there = Math.min(1, Math.max(0, share(place, p, q, a, b, c)));
        double length = point(place, q).minus(point(place, p)).norm();
        boolean clean = Math.abs(there - share) * length <= 32 * growth;
        set(place, p, q, clean ? there : share);
        set(grown, p, q, share);
        return count++;
    }

    private void set(double[] at, int p, int q, double share) {
        for (int k = 0; k < 3; k++) {
            at[3 * count + k] = at[3 * p + k] + share * (at[3 * q + k] - at[3 * p + k]);
        }
    }

    /** Share of the way from p to q at which it passes through the plane of a, b and c. */
    private static double share(double[] at, int p, int q, int a, int b, int c) {
        double one = sixTimesVolume(at, a, b, c, p);
        return one / (one - sixTimesVolume(at, a, b, c, q));
    }

    /**
     * Whether the grown corner d lies before the facet a b c, from where its corners run anticlockwise. The same numbers
     * decide whatever the order the four are given in, so that all who ask agree.
     */
    boolean before(int a, int b, int c, int d) {
        int[] four = {a, b, c, d};
        boolean turned = false;
        for (int i = 0; i < four.length; i++) {
            for (int j = 0; j < i; j++) {
                turned ^= four[j] > four[i];
            }
        }
        Arrays.sort(four);
        return sixTimesVolume(grown, four[0], four[1], four[2], four[3]) >= 0 != turned;
    }

    /** Six times the volume of a tetrahedron, m3; above 0 where d lies before the facet a b c. */
    private static double sixTimesVolume(double[] at, int a, int b, int c, int d) {
        Vec3 origin = point(at, a);
        Vec3 normal = point(at, b).minus(origin).cross(point(at, c).minus(origin));
        return normal.dot(point(at, d).minus(origin));
    }

    private static Vec3 point(double[] at, int v) {
        return new Vec3(at[3 * v], at[3 * v + 1], at[3 * v + 2]);
    }
}
