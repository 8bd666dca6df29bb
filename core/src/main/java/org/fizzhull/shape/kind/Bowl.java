package org.fizzhull.shape.kind;

import java.util.Optional;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
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

    /** The half shell of these sizes. */
    private HalfShell body() {
        return new HalfShell(diameter / 2, diameter / 2 - wall);
    }

    @Override
    public String kind() {
        return "bowl";
    }

    @Override
    public String text() {
        return "bowl(diameter=" + SizeText.mm(diameter) + ", wall=" + SizeText.mm(wall) + ")";
    }

    @Override
    public double volume() {
        return body().volume();
    }

    @Override
    public double surface() {
        return body().surface();
    }

    @Override
    public Vec3 centroid() {
        return body().centroid();
    }

    @Override
    public Extents extents() {
        return body().extents();
    }

    @Override
    public double planArea() {
        return body().planArea();
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
    public DepthProfile depthProfile(Exposure exposure) {
        return body().profile(exposure);
    }

    @Override
    public Profile2D meridian() {
        return body().meridian();
    }

    @Override
    public Optional<Hollow> hollow() {
        return Optional.of(body().hollow());
    }

    @Override
    public double hullVolume() {
        return body().closedVolume();
    }
}
