package org.fizzhull.shape.kind;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.shape.size.SizeText;

/**
 * A torus lying flat, with tube radius r and centre circle radius c:
 * <pre>
 *   V = 2 pi^2 c r^2,   S = 4 pi^2 c r        (Pappus; docs/physics/hydrostatics.md, 1)
 * </pre>
 * At depth d the tube has the radius r - d. The hole closes at r = c, which is allowed.
 * <pre>{@code
 * Ring ring = Ring.ofDiameterAndTube(millimetres(90), millimetres(30));   // hole of 30 mm
 * }</pre>
 *
 * <p>Exact. Immutable.
 *
 * @param diameter outer diameter, 0.005 to 1 m
 * @param tube diameter of the tube, up to half the outer diameter, where the hole closes, m
 */
public record Ring(double diameter, double tube) implements TurnedShape {
    /**
     * Refuses sizes out of range.
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param tube diameter of the tube, up to half the outer diameter, where the hole closes, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range}
     */
    public Ring {
        SizeCheck.size("diameter", diameter);
        SizeCheck.upTo(
                "tube",
                tube,
                SizeCheck.THINNEST,
                diameter / 2,
                " for a ring of outer diameter ",
                diameter,
                "At half the outer diameter the hole is closed.");
    }

    /**
     * {@return a ring of outer diameter and tube diameter, m}
     *
     * @param diameter outer diameter, 0.005 to 1 m
     * @param tube diameter of the tube, up to half the outer diameter, where the hole closes, m
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for sizes beyond these
     */
    public static Ring ofDiameterAndTube(double diameter, double tube) {
        return new Ring(diameter, tube);
    }

    /** The tube of these sizes. */
    @Override
    public Erosion erosion() {
        return new Tube((diameter - tube) / 2, tube / 2);
    }

    @Override
    public String kind() {
        return "ring";
    }

    @Override
    public String text() {
        return "ring(diameter=" + SizeText.mm(diameter) + ", tube=" + SizeText.mm(tube) + ")";
    }

    @Override
    public Extents extents() {
        return new Extents(diameter, diameter, tube);
    }

    @Override
    public double planArea() {
        return Math.PI * tube * (diameter - tube);
    }

    /** Flat. */
    @Override
    public RestingAttitude restingAttitude() {
        return new RestingAttitude(Vec3.UP, tube, planArea(), false);
    }

    /** Exact: the tube thins. It has no flat face: every exposure is {@link Exposure#ALL}. */
    @Override
    public DepthProfile depthProfile(DepthProfile.Exposure exposure) {
        return ProfileTable.cubic(erosion(), 0, tube / 2);
    }

    @Override
    public boolean mouldedInHalves() {
        return true;
    }

    /** The outer half of the circle, less the inner half. */
    @Override
    public Profile2D meridian() {
        double r = tube / 2;
        double c = (diameter - tube) / 2;
        return Profile2D.builder()
                .arc(r, c, r, r, 1, 0, tube)
                .inner()
                .arc(r, c, r, r, -1, 0, tube)
                .build();
    }

    /** What is left: a tube about the same centre circle; c and r in m. */
    private record Tube(double c, double r) implements Erosion {
        @Override
        public double volume(double d) {
            return 2 * Math.PI * Math.PI * c * (r - d) * (r - d);
        }

        @Override
        public double front(double d) {
            return 4 * Math.PI * Math.PI * c * (r - d);
        }
    }
}
