package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;
import org.fizzhull.shape.size.SizeText;

/**
 * Half of a hollow ball, open side up: a boat, as long as its hollow stays dry.
 * <pre>
 *   V = 2 pi (R^3 - r^3)/3,   r = R - wall
 * </pre>
 *
 * <p>Exact ({@code HalfShell}). How it floats, and what it carries until its rim goes under: {@link
 * org.fizzhull.hydrostatics.Boat}. Closed forms: docs/physics/hydrostatics.md, 1. Immutable.
 *
 * @param diameter outer diameter, 0.005 to 1 m
 * @param wall thickness, between 0 and half the diameter, m
 */
public record Bowl(double diameter, double wall) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness, between 0 and half the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Bowl {
        HalfShell.of(" for a bowl of diameter ", diameter, wall);
    }

    /**
     * {@return a bowl of outer diameter and wall, m}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param wall thickness, between 0 and half the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Bowl ofDiameterAndWall(double diameter, double wall) {
        return new Bowl(diameter, wall);
    }

    @Override
    public HalfShell erosion() {
        return new HalfShell(diameter / 2, inner());
    }

    /** Inner radius r, m. */
    private double inner() {
        return diameter / 2 - wall;
    }

    @Override
    public String kind() {
        return "bowl";
    }

    @Override
    public String text() {
        return "bowl(diameter=" + SizeText.mm(diameter) + ", wall=" + SizeText.mm(wall) + ")";
    }

    /** On the axis, 3 (R^4 - r^4)/(8 (R^3 - r^3)) below the rim, written without the factor R - r. */
    @Override
    public Vec3 centroid() {
        double outer = diameter / 2;
        double inner = inner();
        double squares = outer * outer + outer * inner + inner * inner;
        double under = 3 * (outer * outer + inner * inner) * (outer + inner) / (8 * squares);
        return new Vec3(0, 0, outer - under);
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, diameter / 2);
    }

    /** By its rim: the centroid lies 3/8 to 1/2 of the radius below it, and so no nearer to the round side. */
    @Override
    public RestingAttitude restingAttitude() {
        return new RestingAttitude(Vec3.UP, diameter / 2, planArea(), false);
    }

    /**
     * Exact. It rests on its round side, so a tray covers nothing; outside is the outer face without rim and hollow.
     */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion().profile(exposure);
    }

    /** Outer arc, less the inner one; the rim is a level face. */
    @Override
    public Profile2D meridian() {
        double outer = diameter / 2;
        double inner = inner();
        return Profile2D.builder()
                .arc(outer, 0, outer, outer, 1, 0, outer)
                .inner()
                .arc(outer, 0, inner, inner, 1, outer - inner, outer)
                .build();
    }

    /** Closed at the height of the rim. */
    @Override
    public Optional<Hollow> hollow() {
        double outer = diameter / 2;
        Profile2D half =
                Profile2D.builder().arc(outer, 0, outer, outer, 1, 0, outer).build();
        double air = halfBall(inner());
        return Optional.of(Hollow.round(new RevolvedHull(half), outer, outer, air, outer - inner()));
    }

    @Override
    public double hullVolume() {
        return halfBall(diameter / 2);
    }

    /** Volume of half a ball of radius r, m3. */
    private static double halfBall(double r) {
        return 2 * Math.PI * r * r * r / 3;
    }
}
