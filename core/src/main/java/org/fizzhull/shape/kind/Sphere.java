package org.fizzhull.shape.kind;

import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A ball, with the belt that stays between two overfilled halves of the mould where there is one.
 * <pre>{@code
 * Sphere ball = Sphere.ofDiameter(millimetres(65));
 * double grams = inGrams(ball.volume() * 950);   // 136.6 g at 0.95 g/cm3
 * }</pre>
 *
 * <p>Exact ({@code BeltedBall}). Closed forms: docs/physics/hydrostatics.md, 1. Immutable.
 *
 * @param diameter of the two half balls, 0.005 to 1 m
 * @param seam length of the cylinder between the two half balls, 0 to the diameter, m
 */
public record Sphere(double diameter, double seam) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param diameter of the two half balls, 0.005 to 1 m
     * @param seam length of the cylinder between the two half balls, 0 to the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Sphere {
        SizeCheck.size("diameter", diameter);
        SizeCheck.upTo(
                "seam",
                seam,
                0,
                diameter,
                " for a ball of diameter ",
                diameter,
                "A longer body is a capsule(length=..., diameter=...).");
    }

    /**
     * {@return a plain ball}
     *
     * @param diameter of the two half balls, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Sphere ofDiameter(double diameter) {
        return new Sphere(diameter, 0);
    }

    /**
     * {@return a ball with a belt of length {@code seam} between its halves, m}
     *
     * @param diameter of the two half balls, 0.005 to 1 m
     * @param seam length of the cylinder between the two half balls, 0 to the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Sphere ofDiameterAndSeam(double diameter, double seam) {
        return new Sphere(diameter, seam);
    }

    /** The belted ball of these sizes. */
    @Override
    public BeltedBall erosion() {
        return new BeltedBall(diameter / 2, seam);
    }

    @Override
    public String kind() {
        return "sphere";
    }

    @Override
    public String text() {
        String belt = seam == 0 ? "" : ", seam=" + SizeText.mm(seam);
        return "sphere(diameter=" + SizeText.mm(diameter) + belt + ")";
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, diameter + seam);
    }

    /** Exact. A ball has no flat face: every exposure is {@link DepthProfile.Exposure#ALL}. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion().profile();
    }

    @Override
    public boolean mouldedInHalves() {
        return true;
    }

    /** A plain ball in closed form: R^2/15, the mean of (R^2 - r^2)/6. Diffusion along its depth profile is exact. */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        return seam == 0 ? OptionalDouble.of(diameter * diameter / 60) : TurnedShape.super.diffusionTime(exposure);
    }

    @Override
    public Profile2D meridian() {
        return erosion().meridian();
    }
}
