package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A prolate spheroid standing on its point: V = 4/3 pi a^2 c and, with e^2 = 1 - a^2/c^2, S = 2 pi a (a + c asin(e)/e),
 * a half the diameter, c half the length (docs/physics/hydrostatics.md, 1). Both ends are alike: the blunt end of a
 * hen's egg is left out.
 *
 * <p>Volume, surface and hull exact; depth profile to 1e-6 ({@code SpheroidErosion}). Immutable.
 *
 * @param length along z, from the diameter to 1 m
 * @param diameter across the middle, 0.005 to 1 m
 */
public record Egg(double length, double diameter) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param length along z, from the diameter to 1 m
     * @param diameter across the middle, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Egg {
        SizeCheck.size("length", length);
        SizeCheck.upTo(
                "diameter",
                diameter,
                SizeCheck.SMALLEST,
                length,
                " for an egg of length ",
                length,
                "An egg is at least as long as it is wide.");
    }

    /**
     * {@return an egg of length and diameter, m}
     *
     * @param length along z, from the diameter to 1 m
     * @param diameter across the middle, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Egg ofLengthAndDiameter(double length, double diameter) {
        return new Egg(length, diameter);
    }

    @Override
    public Erosion erosion() {
        return isBall() ? ball() : spheroid();
    }

    private boolean isBall() {
        return length == diameter;
    }

    private BeltedBall ball() {
        return new BeltedBall(diameter / 2, 0);
    }

    private SpheroidErosion spheroid() {
        return new SpheroidErosion(diameter / 2, length / 2);
    }

    @Override
    public String kind() {
        return "egg";
    }

    @Override
    public String text() {
        return "egg(length=" + SizeText.mm(length) + ", diameter=" + SizeText.mm(diameter) + ")";
    }

    @Override
    public double volume() {
        return Math.PI * diameter * diameter * length / 6;
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, length);
    }

    /** Exact at the nodes, between them to 1e-6. An egg has no flat face: every exposure is {@link DepthProfile.Exposure#ALL}. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return isBall() ? ball().profile() : spheroid().profile();
    }

    @Override
    public double depthError() {
        return ProfileTable.BETWEEN_NODES;
    }

    /** On its side. */
    @Override
    public RestingAttitude restingAttitude() {
        Vec3 up = isBall() ? Vec3.UP : new Vec3(1, 0, 0);
        return new RestingAttitude(up, diameter, Math.PI * diameter * length / 4, false);
    }

    @Override
    public boolean mouldedInHalves() {
        return true;
    }

    /** Half an ellipse about the axis. */
    @Override
    public Profile2D meridian() {
        double c = length / 2;
        return Profile2D.builder().arc(c, 0, diameter / 2, c, 1, 0, length).build();
    }
}
