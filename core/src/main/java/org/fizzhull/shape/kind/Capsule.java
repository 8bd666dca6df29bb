package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A cylinder between two half balls, standing on one of them as listed. With R half the diameter and L the length less
 * the diameter
 * <pre>
 *   V = pi R^2 L + 4 pi R^3/3,   S = 2 pi R L + 4 pi R^2
 * </pre>
 * At length = diameter it is a ball. Exact ({@code BeltedBall}). Closed forms: docs/physics/hydrostatics.md, 1.
 * Immutable.
 *
 * @param length whole length along z, from the diameter to 1 m
 * @param diameter of the cylinder and of its round ends, 0.005 to 1 m
 */
public record Capsule(double length, double diameter) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param length whole length along z, from the diameter to 1 m
     * @param diameter of the cylinder and of its round ends, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Capsule {
        SizeCheck.size("length", length);
        SizeCheck.upTo(
                "diameter",
                diameter,
                SizeCheck.SMALLEST,
                length,
                " for a capsule of length ",
                length,
                "The length of a capsule counts its round ends.");
    }

    /**
     * {@return a capsule of whole length and diameter, m}
     *
     * @param length whole length along z, from the diameter to 1 m
     * @param diameter of the cylinder and of its round ends, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Capsule ofLengthAndDiameter(double length, double diameter) {
        return new Capsule(length, diameter);
    }

    /** The belted ball of these sizes. */
    @Override
    public BeltedBall erosion() {
        return new BeltedBall(diameter / 2, length - diameter);
    }

    @Override
    public String kind() {
        return "capsule";
    }

    @Override
    public String text() {
        return "capsule(length=" + SizeText.mm(length) + ", diameter=" + SizeText.mm(diameter) + ")";
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, length);
    }

    /** Exact. A capsule has no flat face: every exposure is {@link DepthProfile.Exposure#ALL}. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion().profile();
    }

    @Override
    public boolean mouldedInHalves() {
        return true;
    }

    @Override
    public Profile2D meridian() {
        return erosion().meridian();
    }
}
