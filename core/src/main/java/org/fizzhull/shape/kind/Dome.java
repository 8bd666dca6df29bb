package org.fizzhull.shape.kind;

import java.util.OptionalDouble;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A spherical cap on its flat base; half a ball where the height is half the diameter. The diameter is that of the
 * base. V = pi h^2 (3R - h)/3 with the radius R = (a^2 + h^2)/(2h) of the ball and a of the base
 * (docs/physics/hydrostatics.md, 1).
 * <pre>{@code
 * Dome half = Dome.ofDiameter(millimetres(80));
 * }</pre>
 *
 * <p>Exact. A cap higher than half a ball bulges over its base and is refused. Immutable.
 *
 * @param diameter diameter of the base, 0.005 to 1 m
 * @param height from base to top, more than 0 up to half the diameter, m
 */
public record Dome(double diameter, double height) implements TurnedShape {
    /**
     * Refuses sizes out of range, and caps that bulge over their base.
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @param height from base to top, more than 0 up to half the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Dome {
        SizeCheck.size("diameter", diameter);
        SizeCheck.upTo(
                "height",
                height,
                SizeCheck.THINNEST,
                diameter / 2,
                " for a base of diameter ",
                diameter,
                "A taller body is an egg, a cone or a sphere.");
    }

    /**
     * {@return half a ball of that diameter}
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Dome ofDiameter(double diameter) {
        return new Dome(diameter, diameter / 2);
    }

    /**
     * {@return a cap of that height on a base of that diameter, m}
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @param height from base to top, more than 0 up to half the diameter, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Dome ofDiameterAndHeight(double diameter, double height) {
        return new Dome(diameter, height);
    }

    /** {@return the radius of the ball the cap is cut from, m} */
    public double ballRadius() {
        return (diameter * diameter / 4 + height * height) / (2 * height);
    }

    @Override
    public String kind() {
        return "dome";
    }

    @Override
    public String text() {
        String tall = height == diameter / 2 ? "" : ", height=" + SizeText.mm(height);
        return "dome(diameter=" + SizeText.mm(diameter) + tall + ")";
    }

    @Override
    public Erosion erosion() {
        return new AllFaces(ballRadius(), height);
    }

    /** On the axis, h (4R - h)/(4 (3R - h)) above the base. */
    @Override
    public Vec3 centroid() {
        double r = ballRadius();
        return new Vec3(0, 0, height * (4 * r - height) / (4 * (3 * r - height)));
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, height);
    }

    /** On its base: the centroid lies below the middle of the height, and the base is the nearest of all its planes. */
    @Override
    public RestingAttitude restingAttitude() {
        return new RestingAttitude(new Vec3(0, 0, -1), height, planArea(), false);
    }

    /** Exact: on a tray the cap of radius R - d over the base plane, else the base moves up as well. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return exposure == DepthProfile.Exposure.TRAY
                ? ProfileTable.cubic(new OnTray(ballRadius(), height), 0, height)
                : ProfileTable.cubic(erosion(), 0, height / 2);
    }

    /**
     * Half a ball on its closed flat face dries as the whole ball, since no vapour crosses the middle plane of that:
     * R^2/15.
     */
    @Override
    public OptionalDouble diffusionTime(DepthProfile.Exposure exposure) {
        return exposure == DepthProfile.Exposure.TRAY && height == diameter / 2
                ? OptionalDouble.of(diameter * diameter / 60)
                : TurnedShape.super.diffusionTime(exposure);
    }

    /** The arc from the rim of the base to the top. */
    @Override
    public Profile2D meridian() {
        double r = ballRadius();
        return Profile2D.builder().arc(height - r, 0, r, r, 1, 0, height).build();
    }

    /** Every face moves in: a cap of the ball of radius R - d above a base that has risen by d. */
    private record AllFaces(double r, double h) implements Erosion {
        @Override
        public double volume(double d) {
            // height of the cap that is left
            double k = h - 2 * d;
            return Math.PI * k * k * (3 * r - h - d) / 3;
        }

        @Override
        public double front(double d) {
            double k = h - 2 * d;
            return Math.PI * k * (4 * (3 * r - h - d) + k) / 3;
        }
    }

    /** The base stays: a cap of the ball of radius R - d above the same plane. */
    private record OnTray(double r, double h) implements Erosion {
        @Override
        public double volume(double d) {
            double k = h - d;
            return Math.PI * k * k * (3 * (r - d) - k) / 3;
        }

        @Override
        public double front(double d) {
            return 2 * Math.PI * (r - d) * (h - d);
        }
    }
}
