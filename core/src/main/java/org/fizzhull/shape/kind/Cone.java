package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A cone on its base, or a frustum where its top is flat. With the radii R1 of the base and R2 of the top and the
 * height h
 * <pre>
 *   V = pi h (R1^2 + R1 R2 + R2^2)/3,   S = pi (R1 + R2) sqrt(h^2 + (R1 - R2)^2) + pi (R1^2 + R2^2)
 * </pre>
 *
 * <p>Exact. Closed forms: docs/physics/hydrostatics.md, 1; what is left at a depth: {@code ConeErosion}. Immutable.
 *
 * @param diameter diameter of the base, 0.005 to 1 m
 * @param height along z from base to top, 0.001 to 1 m
 * @param top diameter of the flat top, 0 to that of the base, m
 */
public record Cone(double diameter, double height, double top) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @param height along z from base to top, 0.001 to 1 m
     * @param top diameter of the flat top, 0 to that of the base, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Cone {
        SizeCheck.size("diameter", diameter);
        SizeCheck.height(height);
        SizeCheck.upTo(
                "top",
                top,
                0,
                diameter,
                " for a base of diameter ",
                diameter,
                "Turn it over: the larger end is the base.");
    }

    /**
     * {@return a pointed cone of base diameter and height, m}
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @param height along z from base to top, 0.001 to 1 m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Cone ofDiameterAndHeight(double diameter, double height) {
        return new Cone(diameter, height, 0);
    }

    /**
     * {@return a frustum of base diameter, height and top diameter, m}
     *
     * @param diameter diameter of the base, 0.005 to 1 m
     * @param height along z from base to top, 0.001 to 1 m
     * @param top diameter of the flat top, 0 to that of the base, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Cone ofDiameterHeightAndTop(double diameter, double height, double top) {
        return new Cone(diameter, height, top);
    }

    @Override
    public String kind() {
        return "cone";
    }

    @Override
    public String text() {
        String flat = top == 0 ? "" : ", top=" + SizeText.mm(top);
        return "cone(diameter=" + SizeText.mm(diameter) + ", height=" + SizeText.mm(height) + flat + ")";
    }

    @Override
    public ConeErosion erosion() {
        return erosion(false);
    }

    private ConeErosion erosion(boolean onTray) {
        return new ConeErosion(diameter / 2, top / 2, height, onTray);
    }

    @Override
    public double volume() {
        return ConeErosion.frustum(height, diameter / 2, top / 2);
    }

    @Override
    public double surface() {
        double r1 = diameter / 2;
        double r2 = top / 2;
        return Math.PI * ((r1 + r2) * Math.hypot(height, r1 - r2) + r1 * r1 + r2 * r2);
    }

    /** On the axis, h (R1^2 + 2 R1 R2 + 3 R2^2)/(4 (R1^2 + R1 R2 + R2^2)) above the base. */
    @Override
    public Vec3 centroid() {
        double r1 = diameter / 2;
        double r2 = top / 2;
        double z = height * (r1 * r1 + 2 * r1 * r2 + 3 * r2 * r2) / (4 * (r1 * r1 + r1 * r2 + r2 * r2));
        return new Vec3(0, 0, z);
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, height);
    }

    /** On its base where that is nearer to the centroid than the slanted side and the top, else as its hull tells. */
    @Override
    public RestingAttitude restingAttitude() {
        double base = centroid().z();
        double lean = (diameter - top) / 2;
        double side = (height * diameter / 2 - base * lean) / Math.hypot(height, lean);
        return base < Math.min(side, height - base)
                ? new RestingAttitude(new Vec3(0, 0, -1), height, planArea(), false)
                : TurnedShape.super.restingAttitude();
    }

    /** Exact: side, top and, where it is open, base move in; the flat top closes to a point on the way. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return erosion(exposure == DepthProfile.Exposure.TRAY).profile();
    }

    /** The slanted side; base and top are level faces. */
    @Override
    public Profile2D meridian() {
        return Profile2D.builder().line(0, diameter / 2, height, top / 2).build();
    }
}
