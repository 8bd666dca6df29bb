package org.fizzhull.shape;

import java.util.Optional;
import org.fizzhull.numeric.Vec3;

/**
 * A spherical cap on its flat base; half a ball where the height is half the diameter. The diameter is that of the base.
 * V = pi h^2 (3R - h)/3 with the radius R = (a^2 + h^2)/(2h) of the ball and a of the base
 * (docs/physics/hydrostatics.md, 1).
 *
 * @param diameter diameter of the base, 0.005 to 1 m
 * @param height from base to top, more than 0 up to half the diameter, m
 */
public record Dome(double diameter, double height) implements Shape {
    /** Refuses sizes out of range, and caps that bulge over their base. */
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

    /** Half a ball. */
    public static Dome ofDiameter(double diameter) {
        return new Dome(diameter, diameter / 2);
    }

    /** A cap of that height on a base of that diameter, m. */
    public static Dome ofDiameterAndHeight(double diameter, double height) {
        return new Dome(diameter, height);
    }

    /** Radius of the ball the cap is cut from, m. */
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
    public double volume() {
        return new AllFaces(ballRadius(), height).volume(0);
    }

    @Override
    public double surface() {
        return new AllFaces(ballRadius(), height).front(0);
    }

    @Override
    public Vec3 centroid() {
        double r = ballRadius();
        return new Vec3(0, 0, height * (4 * r - height) / (4 * (3 * r - height)));
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, height);
    }

    @Override
    public double planArea() {
        return Math.PI * diameter * diameter / 4;
    }

    /** Exact: on a tray the cap of radius R - d over the base plane, else the base moves up as well. */
    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        return exposure == Exposure.TRAY
                ? ProfileTable.cubic(new OnTray(ballRadius(), height), 0, height)
                : ProfileTable.cubic(new AllFaces(ballRadius(), height), 0, height / 2);
    }

    @Override
    public Optional<Hull> hull() {
        return Optional.of(new RevolvedHull(meridian()));
    }

    Profile2D meridian() {
        double r = ballRadius();
        return Profile2D.builder().arc(height - r, 0, r, r, 1, 0, height).build();
    }

    private record AllFaces(double r, double h) implements Erosion {
        @Override
        public double volume(double d) {
            double k = h - 2 * d;
            return Math.PI * k * k * (3 * r - h - d) / 3;
        }

        @Override
        public double front(double d) {
            double k = h - 2 * d;
            return Math.PI * k * (4 * (3 * r - h - d) + k) / 3;
        }
    }

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
