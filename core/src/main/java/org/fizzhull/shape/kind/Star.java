package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hull;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.body.PrismMesh;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * An upright star of n points; one point along +x. Area n Ro Ri sin(pi/n), Ro and Ri half the two diameters
 * (docs/physics/hydrostatics.md, 1). At {@code inner = diameter cos(pi/n)} it is a polygon of n sides, above that one
 * of 2n corners.
 * <pre>{@code
 * Star star = Star.ofPointsDiameterInnerAndHeight(5, millimetres(80), millimetres(45), millimetres(30));
 * }</pre>
 *
 * <p>Volume, surface and hull exact; depth profile to 1e-6 ({@code StarOutline}). Immutable.
 *
 * @param points number of points, 3 to 24
 * @param diameter over the outer points, that is of the circle through them, 0.005 to 1 m
 * @param inner diameter of the circle through the notches, up to that of the points, m
 * @param height along z, 0.001 to 1 m
 */
public record Star(int points, double diameter, double inner, double height) implements UprightPrism {
    /** Fewest points. */
    private static final int FEWEST = 3;
    /** Most points: more are a round piece. */
    private static final int MOST = 24;

    /**
     * Refuses sizes out of range.
     *
     * @param points number of points, 3 to 24
     * @param diameter over the outer points, that is of the circle through them, 0.005 to 1 m
     * @param inner diameter of the circle through the notches, up to that of the points, m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range}
     */
    public Star {
        if (points < FEWEST || points > MOST) {
            String hint = points < FEWEST ? "A star begins at three points." : "A round piece is a puck.";
            throw new Refusal(
                    "out-of-range",
                    SizeCheck.field("points"),
                    Integer.toString(points),
                    "a whole number, 3 to 24",
                    hint);
        }
        SizeCheck.size("diameter", diameter);
        SizeCheck.upTo(
                "inner",
                inner,
                SizeCheck.THINNEST,
                diameter,
                " for a diameter over the points of ",
                diameter,
                "The inner diameter is that of the circle through the notches.");
        SizeCheck.height(height);
    }

    /**
     * {@return a star of so many points, diameter over the points, inner diameter and height, m}
     *
     * @param points number of points, 3 to 24
     * @param diameter over the outer points, that is of the circle through them, 0.005 to 1 m
     * @param inner diameter of the circle through the notches, up to that of the points, m
     * @param height along z, 0.001 to 1 m
     * @throws Refusal {@code out-of-range} for sizes beyond these
     */
    public static Star ofPointsDiameterInnerAndHeight(int points, double diameter, double inner, double height) {
        return new Star(points, diameter, inner, height);
    }

    /** The plane outline, for areas and lengths. */
    @Override
    public StarOutline outline() {
        return new StarOutline(points, diameter / 2, inner / 2);
    }

    @Override
    public String kind() {
        return "star";
    }

    @Override
    public String text() {
        return "star(points=" + points + ", diameter=" + SizeText.mm(diameter) + ", inner=" + SizeText.mm(inner)
                + ", height=" + SizeText.mm(height) + ")";
    }

    @Override
    public Extents extents() {
        double[][] at = vertices();
        return new Extents(PrismMesh.span(at[0]), PrismMesh.span(at[1]), height);
    }

    /** The exact polyhedron. */
    @Override
    public Optional<Hull> hull() {
        double[][] at = vertices();
        return Optional.of(new PolyhedronHull(PrismMesh.of(at[0], at[1], 0, 0, height), 0));
    }

    /** {@return the outline, anticlockwise: x and y of points and notches in turn, m} */
    public double[][] vertices() {
        double[][] at = new double[2][2 * points];
        for (int i = 0; i < 2 * points; i++) {
            double radius = i % 2 == 0 ? diameter / 2 : inner / 2;
            at[0][i] = radius * Math.cos(Math.PI * i / points);
            at[1][i] = radius * Math.sin(Math.PI * i / points);
        }
        return at;
    }
}
