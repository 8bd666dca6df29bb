package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import org.fizzhull.geometry.Vec3;

/**
 * Corners of facets, each with two places: its true one, and a perturbed one ({@link PerturbedShells}) by which
 * crossings are decided. New corners are added where an edge passes through a facet.
 */
final class Corners {
    /** True coordinates x, y, z of one corner after another, m. */
    double[] place;

    /** Perturbed coordinates, those of the grown shells, in the same order, m. */
    double[] grown;

    /** Largest distance of a perturbed corner from its true place, m. */
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
     * Adds the corner at which the edge from p to q passes through the facet a b c; returns its number. Its true
     * place is the intersection of the true edge and facet. Where that is ill-conditioned (farther than 32
     * perturbations along the edge from the perturbed intersection) the share of the edge is taken from the perturbed
     * one.
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
     * Whether the perturbed corner d lies in front of the facet a b c, on the side from which its corners run
     * anticlockwise. The determinant is always evaluated with the four in rising order, so that its rounding, and
     * with it the answer, does not depend on the order in which they are given.
     */
    boolean inFront(int a, int b, int c, int d) {
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

    /** Six times the signed volume of a tetrahedron, m3; above 0 where d lies in front of the facet a b c. */
    private static double sixTimesVolume(double[] at, int a, int b, int c, int d) {
        Vec3 origin = point(at, a);
        Vec3 normal = point(at, b).minus(origin).cross(point(at, c).minus(origin));
        return normal.dot(point(at, d).minus(origin));
    }

    private static Vec3 point(double[] at, int v) {
        return new Vec3(at[3 * v], at[3 * v + 1], at[3 * v + 2]);
    }
}
