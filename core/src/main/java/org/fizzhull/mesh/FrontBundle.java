package org.fizzhull.mesh;

/**
 * A bundle of straight ways that a front follows inwards: from the points {@code o + b p + c q + b c r} in the
 * directions {@code d + b e + c f + b c g}, for b and c from 0 to 1; of a triangle those with b + c at most 1.
 */
final class FrontBundle {
    /** The vectors of the points, m. */
    final double[] o = new double[3];

    final double[] p = new double[3];
    final double[] q = new double[3];
    final double[] r = new double[3];

    /** The vectors of the directions, of about length 1. */
    final double[] d = new double[3];

    final double[] e = new double[3];
    final double[] f = new double[3];
    final double[] g = new double[3];

    /** Whether the bundle is a triangle. */
    boolean triangle;

    /** Start of the way that {@link #way} chose, m; its direction, of length 1; and how wide the bundle is along it. */
    final double[] start = new double[3];

    final double[] direction = new double[3];
    /** Coefficients of 1, s and s2 of the volume of the bundle a length of way, at the depth s, for db dc = 1: m2, m, 1. */
    final double[] width = new double[3];

    /** How the point and the direction change with b and c. */
    private final double[] pointB = new double[3];

    private final double[] pointC = new double[3];
    private final double[] turnB = new double[3];
    private final double[] turnC = new double[3];

    /** Turns e, f and g from the directions at the corners b, c and b and c into what they add. */
    void fromCorners() {
        for (int k = 0; k < 3; k++) {
            g[k] += d[k] - e[k] - f[k];
            e[k] -= d[k];
            f[k] -= d[k];
        }
    }

    /** Chooses the way at b and c in the unit square, folded for a triangle. */
    void way(double squareB, double squareC) {
        boolean fold = triangle && squareB + squareC > 1;
        double b = fold ? 1 - squareB : squareB;
        double c = fold ? 1 - squareC : squareC;
        double size = 0;
        for (int k = 0; k < 3; k++) {
            start[k] = o[k] + b * p[k] + c * q[k] + b * c * r[k];
            direction[k] = d[k] + b * e[k] + c * f[k] + b * c * g[k];
            pointB[k] = p[k] + c * r[k];
            pointC[k] = q[k] + b * r[k];
            turnB[k] = e[k] + c * g[k];
            turnC[k] = f[k] + b * g[k];
            size += direction[k] * direction[k];
        }
        size = Math.sqrt(size);
        double half = triangle ? 0.5 : 1;
        width[0] = half * volume(pointB, pointC) / size;
        width[1] = half * (volume(pointB, turnC) + volume(turnB, pointC)) / (size * size);
        width[2] = half * volume(turnB, turnC) / (size * size * size);
        for (int k = 0; k < 3; k++) {
            direction[k] /= size;
        }
        double first = width[0] != 0 ? width[0] : width[1] != 0 ? width[1] : width[2];
        for (int k = 0; first < 0 && k < 3; k++) {
            width[k] = -width[k];
        }
    }

    private double volume(double[] u, double[] v) {
        return (u[1] * v[2] - u[2] * v[1]) * direction[0]
                + (u[2] * v[0] - u[0] * v[2]) * direction[1]
                + (u[0] * v[1] - u[1] * v[0]) * direction[2];
    }

    /**
     * Depth at which ways from an edge meet, m; infinite where they do not, and for ways from facets: chords of a cone tell
     * too little about where they meet, and the width that is negative behind makes up for it.
     */
    double focus() {
        double meet = width[0] == 0 ? -width[1] / width[2] : 0;
        return meet > 0 ? meet : Double.POSITIVE_INFINITY;
    }

    /** Width of the bundle at a depth, m2, negative behind a focus of two sides. */
    double at(double depth) {
        return width[0] + depth * (width[1] + depth * width[2]);
    }

    /** Volume of the bundle down to a depth, m3. */
    double content(double depth) {
        return depth * (width[0] + depth * (width[1] / 2 + depth * width[2] / 3));
    }
}
