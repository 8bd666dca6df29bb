package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.body.PrismMesh;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * An upright heart: a square of side q with half discs of diameter q on two sides that meet, so that it is q (1 +
 * 1/sqrt 2) wide across the lobes. The width lies along x, the tip points to -y, the centroid is on the z axis.
 *
 * <p>Volume and surface exact; depth profile to 1e-6 ({@code HeartOutline}); as a hull a prism with chords for the
 * lobes, of exactly the same volume. Closed forms: docs/physics/hydrostatics.md, 1. Immutable.
 *
 * @param width across the lobes, 0.005 to 1 m
 * @param height along z, 0.001 to 1 m
 */
public record Heart(double width, double height) implements UprightPrism {
    /** Width across the lobes over the side of the square. */
    private static final double WIDTH_OF_SIDE = 1 + 1 / Math.sqrt(2);
    /** Chords of each half disc in the mesh. */
    private static final int CHORDS = 32;

    /**
     * Refuses sizes out of range.
     *
     * @param width across the lobes, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Heart {
        SizeCheck.size("width", width);
        SizeCheck.height(height);
    }

    /**
     * {@return a heart of width across the lobes and height, m}
     *
     * @param width across the lobes, 0.005 to 1 m
     * @param height along z, 0.001 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Heart ofWidthAndHeight(double width, double height) {
        return new Heart(width, height);
    }

    /** {@return the side of the square, m} */
    public double side() {
        return width / WIDTH_OF_SIDE;
    }

    /** The plane outline, for areas and lengths. */
    @Override
    public HeartOutline outline() {
        return new HeartOutline(side());
    }

    @Override
    public String kind() {
        return "heart";
    }

    @Override
    public String text() {
        return "heart(width=" + SizeText.mm(width) + ", height=" + SizeText.mm(height) + ")";
    }

    @Override
    public Extents extents() {
        double q = side();
        return new Extents(width, 1.5 * q / Math.sqrt(2) + q / 2, height);
    }

    /** Each lobe is {@value #CHORDS} chords of exactly the area of the half disc. */
    @Override
    public Optional<Hull> hull() {
        return Optional.of(new PolyhedronHull(mesh(), relativeError()));
    }

    /** {@return the closed triangle mesh of the heart, facing outward, m; its round sides are drawn as chords} */
    public TriangleMesh mesh() {
        double[][] at = vertices();
        return PrismMesh.of(at[0], at[1], 0, -outline().lobeShift(), height);
    }

    /**
     * Largest distance between chords and lobes, times the area of the lobes, over the volume: a bound on the error of
     * any part cut off.
     */
    double relativeError() {
        double r = side() / 2;
        double off = Math.max(r - chordRadius() * Math.cos(Math.PI / (2 * CHORDS)), chordRadius() - r);
        return off * 2 * Math.PI * r * height / volume();
    }

    /**
     * Radius on which the chord ends lie, m, but for the first and last, which stay on the half disc: so chosen that
     * the n chords span pi r^2/2, from r s r' + (n - 2) r'^2 s/2 = pi r^2/2 with s = sin(pi/n).
     */
    private double chordRadius() {
        double r = side() / 2;
        double s = Math.sin(Math.PI / CHORDS);
        int n = CHORDS - 2;
        return r * (Math.sqrt(1 + n * Math.PI / s) - 1) / n;
    }

    /** Outline, anticlockwise from the tip, m. */
    double[][] vertices() {
        double q = side();
        double r = q / 2;
        double[][] at = new double[2][2 * CHORDS + 2];
        int n = 0;
        n = put(at, n, 0, 0);
        // the two half discs, in a frame with the tip at the origin and the straight sides on the axes
        for (int i = 0; i <= CHORDS; i++) {
            double angle = Math.PI * ((double) i / CHORDS - 0.5);
            double radius = i == 0 || i == CHORDS ? r : chordRadius();
            n = put(at, n, q + radius * Math.cos(angle), r + radius * Math.sin(angle));
        }
        for (int i = 1; i <= CHORDS; i++) {
            double angle = Math.PI * i / CHORDS;
            double radius = i == CHORDS ? r : chordRadius();
            n = put(at, n, r + radius * Math.cos(angle), q + radius * Math.sin(angle));
        }
        return at;
    }

    /**
     * Writes point n, given with the tip at the origin and the straight sides on the axes, in the body frame; returns n
     * + 1.
     */
    private int put(double[][] at, int n, double u, double v) {
        double half = Math.sqrt(0.5);
        at[0][n] = (u - v) * half;
        at[1][n] = (u + v - side()) * half - outline().lobeShift();
        return n + 1;
    }
}
