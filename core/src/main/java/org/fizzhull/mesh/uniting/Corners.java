package org.fizzhull.mesh.uniting;

import java.util.Arrays;

/**
 * Corners of facets twice over: the place where each is, and the place it is taken to be at while it is decided what
 * crosses what. New corners are added where an edge passes through a facet.
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
        double length = 0;
        for (int k = 0; k < 3; k++) {
            double d = place[3 * q + k] - place[3 * p + k];
            length += d * d;
        }
        boolean clean = Math.abs(there - share) * Math.sqrt(length) <= 32 * growth;
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
        double one = sixfold(at, a, b, c, p);
        return one / (one - sixfold(at, a, b, c, q));
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
        return sixfold(grown, four[0], four[1], four[2], four[3]) >= 0 != turned;
    }

    /** Six times the volume of a tetrahedron, m3; above 0 where d lies before the facet a b c. */
    private static double sixfold(double[] at, int a, int b, int c, int d) {
        double ox = at[3 * a];
        double oy = at[3 * a + 1];
        double oz = at[3 * a + 2];
        double ux = at[3 * b] - ox;
        double uy = at[3 * b + 1] - oy;
        double uz = at[3 * b + 2] - oz;
        double vx = at[3 * c] - ox;
        double vy = at[3 * c + 1] - oy;
        double vz = at[3 * c + 2] - oz;
        return (uy * vz - uz * vy) * (at[3 * d] - ox)
                + (uz * vx - ux * vz) * (at[3 * d + 1] - oy)
                + (ux * vy - uy * vx) * (at[3 * d + 2] - oz);
    }
}
